// Stage 4 of a case binding: boards and spine strip on the cloth, up to the turned-in edges.
import { facesOf, turnInsOf, zone } from "../bench/spread.ts";
import { cutParts } from "../bench/preparation.ts";
import type { DraftStep, PlanContext } from "../binding.ts";
import { blockPartIds } from "../../2-model/case-binding/parts.ts";
import { wetCautions } from "./block.ts";

type Context = PlanContext<"case-binding">;
const stage = "The case";

/** The steps from cutting the boards to the turned-in cloth. */
export function makeCase(context: Context): readonly DraftStep[] {
  const { model } = context;
  const { covering } = model.geometry;
  return [
    cutParts(context, {
      agree: "Both boards and the strip have the same height.", spoils: "A board that is short shows in the squares of the finished book.",
      only: {
        id: "cut-case", stage, title: "Cut the parts of the case", parts: model.parts.map(({ id }) => id).filter((id) => !blockPartIds.includes(id)),
        after: "measure-block",
        first: ["Have your measure of the back at hand: strip and cloth follow it."],
      },
    }),
    markCloth(context), glueBoards(context),
    ...(covering.kind === "full" ? [cutCorners(context)] : []),
    turnIn(context),
  ];
}

function clothOf({ model }: Context) {
  const cloth = model.parts.find((part) => part.id === "cloth")!;
  const lines = cloth.features.filter((feature) => feature.kind === "placement line");
  return { cloth, upright: lines.filter((line) => line.direction === "vertical"), level: lines.filter((line) => line.direction === "horizontal") };
}

function markCloth(context: Context): DraftStep {
  const { model, say } = context;
  const { covering, joint } = model.geometry;
  const { cloth, upright, level } = clothOf(context);
  return {
    id: "mark-cloth", stage, title: `Mark the ${cloth.name}`,
    action: [
      `Lay the ${cloth.name} wrong side up, its head edge away from you.`,
      "Mark the upright lines at head and tail, all measured from the left edge, and join the marks. Or lay the case guide of the templates along both edges and prick through it.",
      `Draw the two level lines ${say.size(level[0]!.at)} and ${say.size(level[1]!.at)} from the head edge.`,
      ...(covering.clothOnBoards ? [`On each board draw a line ${say.size(covering.clothOnBoards)} from its spine edge: so far the cloth will reach.`] : []),
    ],
    table: {
      caption: `Upright lines on the ${cloth.name}, from its left edge, in ${say.unitName}`,
      columns: ["line", "from the left edge"],
      rows: upright.map((line) => [line.name, say.number(line.at)]),
    },
    parts: ["cloth"],
    sizes: [{ label: "turn-in", text: say.size(covering.turnIn) }, { label: "joint", text: say.size(joint) }],
    tools: ["pencil", "ruler", "triangle", "awl"], minutes: 10, cautions: ["awl"], figure: "cloth-layout",
    check: `Measured back from the right edge, the ${covering.kind === "full" ? "turn-in and the board" : "cloth on the board and the joint"} come out the same as on the left.`,
    mistake: { sign: "The last line is off.", repair: "The gaps were measured one after the other. Rub the lines out and measure all of them again from the left edge." },
  };
}

function glueBoards(context: Context): DraftStep {
  const { definition, model, say } = context;
  const { geometry } = model;
  const { cloth } = clothOf(context);
  const glue = definition.adhesives["case"]!;
  const isFull = geometry.covering.kind === "full";
  return {
    id: "glue-boards", stage, title: "Glue boards and strip to the cloth",
    action: [
      `Lay the spine strip on waste paper, brush ${glue.name} thinly over one face and set it down between its lines. Press.`,
      `Brush one ${isFull ? "face of the left board" : "board from its spine edge to the pencil line"} and set it down along its line${isFull ? "s" : "s, head level with the strip’s head"}. Do the right one.`,
      "Lay a ruler along the three heads: they must be in one line. Try the joint spacer between strip and boards.",
      "Turn the work over and rub the cloth down through paper from the middle outwards.",
    ],
    parts: ["boards", "spine-strip", "cloth"], sizes: [{ label: "joint on each side of the strip", text: say.size(geometry.joint) }],
    tools: ["brush", "wasteSheets", "boneFolder", "ruler"], minutes: 15, glueing: { job: "case", openMinutes: 4, spread: [...facesOf(model, "spine-strip"), ...(geometry.covering.clothOnBoards ? zone(geometry.boardHeight, geometry.covering.clothOnBoards, 2) : facesOf(model, "boards"))] },
    cautions: wetCautions(glue.wet, ["boneFolder"]), figure: "glue-boards",
    notices: [{ hazard: "Adhesive that squeezes out stains cloth.", consequence: "The stain stays.", avoid: "Lay it thinly, wipe the edges before you set a board down, and take fresh waste paper for each." }],
    check: `The spacer, ${say.size(geometry.joint)} wide, slides along both joints without catching, and the ${cloth.name} has no bubble.`,
    mistake: { sign: "A board sits askew.", repair: "Lift it at once, before the adhesive takes, and set it down again; later it tears the cloth." },
  };
}

function cutCorners({ model, say }: Context): DraftStep {
  const { covering, boardThickness } = model.geometry;
  const distance = say.thickness(covering.cornerDistance);
  return {
    id: "cut-corners", stage, title: "Cut the corners of the cloth",
    action: [`At each corner draw a line at 45°, ${distance} away from the board’s corner (corner template).`, "Cut along the line with scissors."],
    parts: ["cloth"], sizes: [{ label: "board’s corner to the cut", text: distance }, { label: "board", text: `${say.thickness(boardThickness)} thick` }],
    tools: ["pencil", "triangle", "scissors"], minutes: 4, cautions: ["scissors"], figure: "turn-in",
    check: `Between board and cut ${distance} of cloth are left at all four corners.`,
    mistake: { sign: "A corner is cut too close.", repair: "Glue a scrap of the cloth over the corner before turning in; it will hardly show." },
  };
}

function turnIn({ definition, model, say }: Context): DraftStep {
  const { geometry } = model;
  const { covering } = geometry;
  const glue = definition.adhesives["case"]!;
  const isFull = covering.kind === "full";
  return {
    id: "turn-in", stage, title: isFull ? "Turn in the edges" : "Turn in head and tail of the spine",
    action: [
      `Brush ${glue.name} on the head turn-in, fold it over boards and strip and pull it tight. Push it down into both joints with the edge of a bone folder. Do the same at the tail.`,
      ...(isFull ? ["At each corner press the little ear of cloth flat against the board’s edge with a fingernail.", "Turn in the two fore-edges in the same way."] : []),
      isFull ? "Rub everything down and put the case between barrier sheets and pressing boards, with weights on top." : "Rub everything down.",
    ],
    parts: ["cloth"], sizes: [{ label: "turn-in", text: say.size(covering.turnIn) }],
    tools: ["brush", "wasteSheets", "boneFolder", ...(isFull ? ["barrier", "pressingBoards", "weight"] as const : [])], minutes: isFull ? 15 : 8,
    glueing: { job: "case", openMinutes: 3, spread: turnInsOf(model, "cloth", covering.turnIn, isFull ? "all" : "head and tail") }, follows: [{ step: "glue-boards", adhesive: "soft" }], rest: isFull ? "flat, between barrier sheets and pressing boards, under weights" : "flat",
    cautions: wetCautions(glue.wet, isFull ? ["boneFolder", "weights"] : ["boneFolder"]), figure: isFull ? "turn-in" : "spine-turn-in",
    check: "The cloth is tight over every edge and follows the joints at head and tail.",
    mistake: { sign: "The cloth bridges a joint at head or tail.", repair: "Press it in with the bone folder while the adhesive is still soft; once dry, damp it and try again." },
  };
}
