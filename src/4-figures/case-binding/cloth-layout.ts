// Figure: the cloth of the case or of its spine, wrong side up, with every line to be drawn on it as running dimensions.
import type { PlacementLine } from "../../2-model/types.ts";
import { line } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, gridCentres, leaderAnywhere } from "../leaders.ts";
import { placementLines } from "../placement-lines.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scalesThatFit } from "../scale.ts";
import { label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxArea, planCase } from "./case-plan.ts";
import type { CasePlan } from "./case-plan.ts";

type Input = DrawingInput<"case-binding">;

/** Room for the cloth itself on paper; sizes stand above and beside it. */
const room = { width: 122, height: 78 } as const;

/** Figure `cloth-layout`. */
export function drawClothLayout(input: Input): FigureDraft {
  const { covering } = input.model.geometry;
  const words = sectionWords(input);
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(covering.clothWidth), toMillimetres(covering.clothHeight), room.width, room.height), ({ factor }) => {
    const plan = planCase(input.model.geometry, factor);
    return { fixed: clothItems(input, plan), labels: labelsOf(input, plan) };
  });
  const positions = (direction: "vertical" | "horizontal"): string => linesOf(input, direction).map((mark) => `${mark.name} ${words.size(mark.at)}`).join("; ");
  const name = covering.kind === "full" ? "case cloth" : "spine cloth";
  return {
    id: "cloth-layout",
    title: `Lines on the ${name}`,
    caption: `The ${name}, wrong side up, ${scale.name}. Measure every upright line from the left edge and every level line from the head edge (the rings at 0), never from the line before it. The tinted fields are where boards and strip will be glued. ${input.unitNote}`,
    alternative: `${words.part("cloth")}, ${words.size(covering.clothHeight)} high × ${words.size(covering.clothWidth)} wide, wrong side up. Upright lines from its left edge: ${positions("vertical")}. Level lines from its head edge: ${positions("horizontal")}.`
      + (covering.kind === "full" ? " Outside the lines the cloth is left for turning in; its four corners are cut off at 45° in a later step." : " The boards reach beyond the cloth at both sides and are covered with paper later."),
    items,
  };
}

function linesOf({ model }: Input, direction: PlacementLine["direction"]): readonly PlacementLine[] {
  return placementLines(model.parts, "cloth", direction);
}

function clothItems(input: Input, plan: CasePlan): readonly SceneItem[] {
  const { cloth, left, strip, right, factor } = plan;
  const clip = ({ left: from, right: to, ...rest }: typeof left) => ({ ...rest, left: Math.max(0, from), right: Math.min(cloth.right, to) });
  const marks = (direction: "vertical" | "horizontal") => linesOf(input, direction).map((mark) => ({ name: mark.name, at: toMillimetres(mark.at) * factor, text: input.number(mark.at) }));
  const [upright, level] = [marks("vertical"), marks("horizontal")];
  const { covering } = input.model.geometry;
  const above = runningDimensions({
    name: "from the left edge", side: "above", edge: 0, datum: 0, low: -8, high: cloth.right + 18,
    marks: [{ name: "left edge", at: 0, text: "0" }, ...upright, { name: "right edge", at: cloth.right, text: input.number(covering.clothWidth) }],
  })!;
  const beside = runningDimensions({
    name: "from the head edge", side: "left", edge: 0, datum: 0, low: -6, high: cloth.bottom + 14, start: 6,
    marks: [{ name: "head edge", at: 0, text: "0" }, ...level, { name: "tail edge", at: cloth.bottom, text: input.number(covering.clothHeight) }],
  })!;
  return [
    boxArea(cloth, "paper", "outline"),
    ...[clip(left), strip, clip(right)].map((box) => boxArea(box, "card", "none")),
    ...upright.map(({ at }) => stroke(line(point(at, 0), point(at, cloth.bottom)), "placement")),
    ...level.map(({ at }) => stroke(line(point(0, at), point(cloth.right, at)), "placement")),
    ...cornerHints(plan), ...above.items, ...beside.items,
  ];
}

/** The corners as they will be cut, in thin lines. */
function cornerHints({ cloth, cut }: CasePlan): readonly SceneItem[] {
  if (cut === 0) return [];
  return [[0, 0, 1, 1], [cloth.right, 0, -1, 1], [0, cloth.bottom, 1, -1], [cloth.right, cloth.bottom, -1, -1]].map(([x, y, right, below]) =>
    stroke(line(point(x! + right! * cut, y!), point(x!, y! + below! * cut)), "edge"));
}

function labelsOf(input: Input, plan: CasePlan): readonly Placeable[] {
  const words = sectionWords(input);
  const { geometry } = input.model;
  const { cloth, left, strip, right, cut } = plan;
  const boards = [{ name: "left board", box: { ...left, left: Math.max(0, left.left) } }, { name: "right board", box: { ...right, right: Math.min(cloth.right, right.right) } }] as const;
  const below = (name: string, text: string | readonly string[], x: number, directions: readonly number[]): Placeable =>
    leaderAnywhere({ name, text, target: point(x, cloth.bottom - Math.min(2, plan.turnIn / 2)), directions, reach: 6 });
  const joint = ["joint", words.size(geometry.joint)];
  const stripName = words.part("spine-strip");
  return [
    { name: "datum words", candidates: ["measure from this edge", "measure from here", "from here"].flatMap((text) => [2.6, 3.2].map((x) => [label("datum words", text, point(-x, cloth.bottom / 2), { anchor: "middle" as const, angle: 90 as const })])) },
    ...boards.map(({ name, box }) => firstOf(
      areaLabel(name, words.part("boards"), gridCentres(box, 5, 5)), areaLabel(name, words.part("boards"), gridCentres(box, 5, 5), { angle: 90 }),
      leaderAnywhere({ name, text: words.part("boards"), target: point((box.left + box.right) / 2, box.bottom - 3), directions: [280, 260, 300, 240], reach: 9 }),
    )),
    firstOf(
      areaLabel("spine strip", stripName, gridCentres(strip, 1, 7), { angle: 90 }),
      leaderAnywhere({ name: "spine strip", text: stripName, target: point((strip.left + strip.right) / 2, strip.bottom - 4), directions: [270, 280, 260, 290], reach: 14 }),
    ),
    below("left joint", joint, (left.right + strip.left) / 2, [250, 240, 260, 230]),
    below("right joint", joint, (strip.right + right.left) / 2, [290, 300, 280, 310]),
    ...(cut === 0 ? [] : [leaderAnywhere({ name: "corner", text: ["corner: cut", "off later"], end: "arrow", target: point(cloth.right - cut * 0.25, cloth.bottom - cut * 0.75), directions: [340, 350, 330, 0, 320], reach: 6 })]),
    leaderAnywhere({ name: "turn-in", text: "turn-in", target: point(cloth.right - Math.min(6, cloth.right * 0.1), plan.turnIn * 0.5), directions: [20, 10, 30, 0, -10], reach: 9 }),
    grainArrow("grain", "height", [...gridCentres({ ...right, right: Math.min(cloth.right, right.right) }, 5, 5), ...[8, 14, 20, 26].flatMap((out) => [0.5, 0.3, 0.7].map((share) => point(cloth.right + out, cloth.bottom * share)))]),
  ];
}
