// Stage 4 of the stub album: the covered hinge, from the marked cloth to the turned-in edges.
import { facesOf, turnInsOf } from "../bench/spread.ts";
import { cutCorners } from "../bench/covering.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** The steps from the marked cloth to the turned-in edges. */
export function makeHinge(context: PlanContext<"stub-album">): readonly DraftStep[] {
  const { definition, model, say } = context;
  const { geometry, parts } = model;
  const cloth = parts.find((part) => part.id === "hinge-cloth")!;
  const lines = cloth.features.filter((feature) => feature.kind === "placement line");
  const upright = lines.filter((line) => line.direction === "vertical");
  const level = lines.filter((line) => line.direction === "horizontal");
  const glue = definition.adhesives["hinge"]!;
  const lay = glue.wet ? `brush ${glue.name} thinly and evenly over one face of it, out to all four edges` : `cover one face of it with ${glue.name}, out to all four edges`;
  return [
    {
      id: "mark-cloth", stage: "The hinge", title: "Mark the cloth",
      action: [
        "Lay the hinge cloth wrong side up, its head edge away from you.",
        "Mark the upright lines at head and tail with a ruler laid from the left edge, all from that one edge, and join the marks.",
        ...(geometry.spineIsGiven ? [] : ["If you cut the spine strip wider than listed, mark the last three upright lines further right by as much."]),
        `Draw the two level lines ${say.size(level[0]!.at)} from the head edge and ${say.size(level[1]!.at)} from the head edge.`,
      ],
      table: {
        caption: `Upright lines on the hinge cloth, from its left edge, in ${say.unitName}`,
        columns: ["line", "from the left edge"],
        rows: upright.map((line) => [line.name, say.number(line.at)]),
      },
      parts: ["hinge-cloth"],
      sizes: [{ label: "turn-in all round", text: say.size(geometry.turnIn) }, { label: "joint gap", text: say.size(geometry.jointGap) }],
      tools: ["pencil", "ruler", "triangle"], minutes: 10, cautions: [], figure: "cloth-layout",
      check: "Turn the ruler round and measure from the right edge: the turn-in and the side strip come out the same as on the left.",
      mistake: { sign: "The last line is off.", repair: "The gaps were measured one after the other. Rub the lines out and measure all of them again from the left edge." },
    },
    {
      id: "glue-strips", stage: "The hinge", title: "Glue the strips to the cloth",
      action: [
        `Lay the spine strip on waste paper and ${lay}.`,
        "Set it down between its lines in the middle of the cloth and press.",
        "Do the same with the left and then the right side strip, each on a fresh sheet of waste paper.",
        "Turn the work over and rub the cloth down through paper from the middle outwards.",
      ],
      parts: ["spine-strip", "side-strip"],
      sizes: [{ label: "joint gap on each side of the spine strip", text: say.size(geometry.jointGap) }],
      tools: [...(glue.wet ? ["brush" as const] : ["scissors" as const]), "wasteSheets", "boneFolder"], minutes: 15,
      glueing: { job: "hinge", openMinutes: 3, spread: [...facesOf(model, "spine-strip"), ...facesOf(model, "side-strip")] },
      cautions: glue.wet ? ["wetAdhesive"] : ["scissors"],
      notices: glue.wet ? [{ hazard: "Adhesive that squeezes out stains cloth.", consequence: "The stain stays.", avoid: "Lay it thinly, wipe the edges of a strip before you set it down, and change the waste paper after each strip." }] : [],
      figure: "glue-strips",
      check: "A strip of board as wide as the joint gap slides along both joints without catching. Head and tail edges of the three strips lie on one line.",
      mistake: { sign: "A strip sits askew.", repair: "Lift it at once, before the adhesive takes, and set it down again; later it tears the cloth." },
    },
    cutCorners(context, { stage: "The hinge", stuff: "cloth", board: "strip", covering: "hinge-cloth", turnIn: geometry.turnIn, distance: geometry.cornerDistance, corners: "all four corners" }),
    {
      id: "turn-in", stage: "The hinge", title: "Turn in the edges",
      action: [
        `${glue.wet ? `Brush ${glue.name} on` : `Lay ${glue.name} on`} the head turn-in, fold it over the strips and pull it tight. Push it down into both joints with the edge of a bone folder. Do the same at the tail.`,
        "At each corner press the little ear of cloth flat against the strip's edge with the point of the bone folder.",
        "Turn in the two long sides in the same way.",
        "Rub everything down. Lay it flat on a barrier sheet, another barrier sheet and a pressing board on it, weights on top.",
      ],
      parts: ["hinge-cloth"],
      sizes: [{ label: "turn-in", text: say.size(geometry.turnIn) }],
      tools: [...(glue.wet ? ["brush" as const, "wasteSheets" as const] : ["scissors" as const]), "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 15,
      glueing: { job: "hinge", openMinutes: 3, spread: turnInsOf(model, "hinge-cloth", geometry.turnIn) }, follows: [{ step: "glue-strips", adhesive: "soft" }], rest: "flat, between barrier sheets, under a pressing board and weights",
      cautions: glue.wet ? ["wetAdhesive", "weights"] : ["scissors", "weights"],
      figure: "turn-in",
      check: "No strip shows at a corner; the cloth is tight over every edge and follows the joints at head and tail.",
      mistake: { sign: "The cloth bridges a joint at head or tail.", repair: "Press it in with the bone folder while the adhesive is still soft; once dry, damp it and try again." },
    },
  ];
}
