// Stage 5 of a quarter or half binding: cloth corners and paper sides.
import { facesOf } from "../bench/spread.ts";
import type { DraftStep, PlanContext } from "../binding.ts";
import { wetCautions } from "./block.ts";

type Context = PlanContext<"case-binding">;
const stage = "The sides";

/** Corners of a half binding and the paper sides; nothing for full cloth. */
export function coverCase(context: Context): readonly DraftStep[] {
  const { covering } = context.model.geometry;
  return [...(covering.corners ? [coverCorners(context)] : []), ...(covering.sides ? [coverSides(context)] : [])];
}

function coverCorners({ definition, model, say }: Context): DraftStep {
  const { covering } = model.geometry;
  const corners = covering.corners!;
  const glue = definition.adhesives["case"]!;
  const distance = say.thickness(covering.cornerDistance);
  return {
    id: "cover-corners", stage, title: "Cover the corners with cloth",
    action: [
      "Cut each corner square from corner to corner: two triangles. You need four.",
      `On each fore-edge corner of the boards mark ${say.size(corners.reach)} along both edges from the corner and join the marks: so far the cloth reaches.`,
      `Brush ${glue.name} over a triangle and lay its long side on the pencil line, the same turn-in over both edges. Rub it down.`,
      `Cut the tip off at 45°, ${distance} from the board’s corner (corner template). Turn in one edge, press the ear in, turn in the other.`,
    ],
    parts: ["corner-square"],
    sizes: [{ label: "along the board’s edges", text: say.size(corners.reach) }, { label: "turn-in", text: say.size(covering.turnIn) }, { label: "board’s corner to the cut", text: distance }],
    tools: ["pencil", "ruler", "brush", "wasteSheets", "boneFolder", "scissors"], minutes: 20, glueing: { job: "case", openMinutes: 3, spread: facesOf(model, "corner-square") }, rest: "flat",
    cautions: wetCautions(glue.wet, ["scissors", "boneFolder"]), figure: "cover-corners",
    check: "The slanting edges of the four corners are equal, and no board shows at a corner.",
    mistake: { sign: "A corner’s slanting edge is off its line.", repair: "Leave it if the paper will cover it; it laps over the cloth. Else lift it while it is wet." },
  };
}

function coverSides({ definition, model, say }: Context): DraftStep {
  const { covering } = model.geometry;
  const sides = covering.sides!;
  const glue = definition.adhesives["sides"]!;
  return {
    id: "cover-sides", stage, title: "Cover the sides with paper",
    action: [
      `Lay the paper dry on the board: it must lie ${say.size(sides.lap)} over the edge of the cloth and stand out by the turn-in on the other three sides.`,
      ...(covering.corners ? [`At both fore-edge corners of the paper mark ${say.size(covering.corners.paperCut)} along both edges and cut from mark to mark.`] : []),
      `Brush ${glue.name} over the paper from the middle outwards and wait until it has stopped curling.`,
      `Lay it along a pencil line ${say.size(sides.lap)} inside the cloth’s edge and rub it down through clean paper.`,
      covering.corners ? "Turn in fore-edge, head and tail." : `Cut the fore-edge corners at 45°, ${say.thickness(covering.cornerDistance)} from the board’s corner (corner template). Turn in head and tail, press in the ears, turn in the fore-edge.`,
      "Do the other side, then put the case between barrier sheets and pressing boards, with weights on top.",
    ],
    parts: ["side-paper"],
    sizes: [
      { label: "over the cloth", text: say.size(sides.lap) }, { label: "turn-in", text: say.size(covering.turnIn) },
      ...(covering.corners ? [{ label: "cut off at the corners", text: say.size(covering.corners.paperCut) }] : [{ label: "board’s corner to the cut", text: say.thickness(covering.cornerDistance) }]),
    ],
    tools: ["pencil", "ruler", "scissors", "brush", "wasteSheets", "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 25,
    glueing: { job: "sides", openMinutes: 4, spread: facesOf(model, "side-paper") }, needs: [{ step: covering.corners ? "cover-corners" : "turn-in", until: "set", what: covering.corners ? "corners" : "spine cloth" }],
    rest: "flat, between barrier sheets and pressing boards, under weights", cautions: wetCautions(glue.wet, ["scissors", "boneFolder", "weights"]), figure: "cover-sides",
    check: "The same width of cloth shows on both boards at head and tail, and no bubble is left.",
    mistake: { sign: "The paper has stretched and reaches too far over the cloth.", repair: "Lift it while it is wet and slide it back; for the next one trim a sliver off beforehand." },
  };
}
