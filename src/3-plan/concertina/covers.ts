// Stage 2 of the concertina: two boards covered and turned in.
import { facesOf, turnInsOf } from "../bench/spread.ts";
import { compareRational, multiplyRational, rational } from "../../units/rational.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** The steps from the flat covering to the pressed covers. */
export function makeConcertinaCovers({ definition, model, say }: PlanContext<"concertina">): readonly DraftStep[] {
  const { geometry } = model;
  const glue = definition.adhesives["covering"]!;
  const stuff = geometry.covering === "cloth" ? "cloth" : "paper";
  // The covering's corner lies √2 turn-ins from the board's: compared squared, so that it stays exact.
  const cutMisses = compareRational(multiplyRational(geometry.cornerDistance, geometry.cornerDistance), multiplyRational(rational(2), multiplyRational(geometry.turnIn, geometry.turnIn))) >= 0;
  return [
    {
      id: "glue-boards", stage: "The covers", title: "Glue the boards to their coverings",
      action: [
        `Lay a covering wrong side up and draw two lines on it, ${say.size(geometry.turnIn)} from the head edge and ${say.size(geometry.turnIn)} from the left edge.`,
        `Lay a board on waste paper and ${glue.wet ? `brush ${glue.name} thinly and evenly over one face` : `cover one face with ${glue.name}`}, out to all four edges.`,
        "Set it down with its corner where the two lines cross and its edges along them, and press.",
        "Turn the work over and rub the covering down through clean paper, from the middle outwards.",
        "Do the other board on a fresh sheet of waste paper.",
      ],
      parts: ["boards", "covering"],
      sizes: [{ label: "turn-in all round", text: say.size(geometry.turnIn) }],
      tools: ["pencil", "ruler", ...(glue.wet ? ["brush" as const] : []), "wasteSheets", "boneFolder"], minutes: 16,
      glueing: { job: "covering", openMinutes: 3, spread: facesOf(model, "boards") },
      cautions: glue.wet ? ["wetAdhesive"] : [],
      notices: glue.wet ? [{ hazard: `Adhesive that squeezes out stains the ${stuff}.`, consequence: "The stain stays.", avoid: "Lay it thinly, wipe the edges of the board before you set it down, and change the waste paper after each board." }] : [],
      figure: "cover-layout",
      check: "The turn-in is the same on all four sides, and with light from the side the outside shows no bubble and no ridge.",
      mistake: { sign: "A bubble.", repair: "Lift the covering from the nearest edge while the adhesive is open, and rub it down again towards that edge." },
    },
    {
      id: "turn-in", stage: "The covers", title: "Cut the corners and turn in the edges",
      action: [
        ...(cutMisses ? ["The boards are so thick that the corner cut would pass outside the covering: leave the corners whole and fold them in with the edges."]
          : [`At each corner draw a line at 45°, ${say.thickness(geometry.cornerDistance)} from the board’s corner (corner template), and cut along it with scissors.`]),
        `${glue.wet ? "Brush" : "Lay"} ${glue.name} on the head turn-in, fold it over the edge and pull it tight. Do the same at the tail.`,
        "At each corner press the little ear of covering flat against the board’s edge with a fingernail.",
        "Turn in the two long sides in the same way. Do the other board.",
        "Press each cover by itself between barrier sheets and pressing boards, with weights on top.",
      ],
      parts: ["covering"],
      sizes: [{ label: "turn-in", text: say.size(geometry.turnIn) }, ...(cutMisses ? [] : [{ label: "board’s corner to the cut", text: say.thickness(geometry.cornerDistance) }])],
      tools: ["pencil", "triangle", "scissors", ...(glue.wet ? ["brush" as const] : []), "wasteSheets", "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 20,
      glueing: { job: "covering", openMinutes: 3, spread: turnInsOf(model, "covering", geometry.turnIn) }, follows: [{ step: "glue-boards", adhesive: "soft" }], rest: "flat, between barrier sheets and pressing boards, under weights",
      cautions: glue.wet ? ["scissors", "wetAdhesive", "weights"] : ["scissors", "weights"],
      figure: "turn-in",
      check: "No board shows at a corner, and the covering is tight over every edge.",
      mistake: { sign: "A corner is cut too close and board shows.", repair: `Glue a scrap of the ${stuff} over the corner before turning in; it will hardly show.` },
    },
  ];
}
