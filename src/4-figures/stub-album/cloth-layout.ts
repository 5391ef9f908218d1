// Figure: the hinge cloth, wrong side up, with every line to be drawn on it, measured from its left and its head edge.
import type { PlacementLine } from "../../2-model/types.ts";
import type { Box } from "../../geometry/box.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross, breakAlong } from "../breaks.ts";
import { cornerReach } from "../corner-cut.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, gridCentres, leaderLabel, preferredLeader } from "../leaders.ts";
import { placementLines } from "../placement-lines.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { awayFromTheMiddle, besideThePlan, datumWords, nameIn } from "../bench/plan-labels.ts";
import { mapCloth } from "./cloth-map.ts";
import type { ClothMap } from "./cloth-map.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"stub-album">;

/** Between the left edge and the figures of the level lines, in millimetres: room for the words beside the datum. */
const besideDatum = 7;
/** Length of the pencil marks at head and tail on paper. */
const pencilMark = 2;

/** Figure `cloth-layout`. */
export function drawClothLayout(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const map = mapCloth(geometry);
  const left = map.across.breakAt === null ? (map.down.breakAt === null ? "" : ", the middle of its height left out")
    : map.down.breakAt === null ? ", the middle of its width left out" : ", the middle of its height and width left out";
  const positions = (direction: "vertical" | "horizontal"): string => clothLines(input, direction).map((mark) => `${mark.name} ${words.size(mark.at)}`).join("; ");
  return {
    id: "cloth-layout",
    title: "Lines on the hinge cloth",
    caption: `The hinge cloth, wrong side up, ${map.scale.name}${left}. Measure every upright line from the left edge and every level line from the head edge (the rings at 0), never from the line before it. Mark at head and tail, where the short strokes are, and join the marks. `
      + `The tinted fields are where the strips will be glued. ${input.unitNote}`,
    alternative: `${words.part("hinge-cloth")}, ${words.size(geometry.clothHeight)} high × ${words.size(geometry.clothWidth)} wide, wrong side up. Upright lines from its left edge: ${positions("vertical")}. `
      + `Level lines from its head edge: ${positions("horizontal")}. Between the lines will lie, from left to right, a side strip, a joint gap of ${words.size(geometry.jointGap)}, the spine strip, a joint gap and the other side strip. `
      + `Outside the lines the cloth is left for turning in; its four corners are cut off at 45° in a later step.`,
    items: placeEvery(clothItems(input, map), labelsOf(input, map), { clearance: 0.8 }),
  };
}

function clothLines(input: Input, direction: PlacementLine["direction"]): readonly PlacementLine[] {
  return placementLines(input.model.parts, "hinge-cloth", direction);
}

/** The fields between the lines, on paper. */
interface Fields {
  readonly head: number;
  readonly tail: number;
  readonly leftStrip: Box;
  readonly spineStrip: Box;
  readonly rightStrip: Box;
}

function fieldsOf(input: Input, map: ClothMap): Fields {
  const [outerLeft, innerLeft, spineLeft, spineRight, innerRight, outerRight] = clothLines(input, "vertical").map((mark) => map.across.place(toMillimetres(mark.at))) as [number, number, number, number, number, number];
  const [head, tail] = clothLines(input, "horizontal").map((mark) => map.down.place(toMillimetres(mark.at))) as [number, number];
  const field = (left: number, right: number): Box => ({ left, top: head, right, bottom: tail });
  return { head, tail, leftStrip: field(outerLeft, innerLeft), spineStrip: field(spineLeft, spineRight), rightStrip: field(innerRight, outerRight) };
}

function clothItems(input: Input, map: ClothMap): readonly SceneItem[] {
  const { across, down } = map;
  const { leftStrip, spineStrip, rightStrip } = fieldsOf(input, map);
  const upright = clothLines(input, "vertical").map((mark) => across.place(toMillimetres(mark.at)));
  const level = clothLines(input, "horizontal").map((mark) => down.place(toMillimetres(mark.at)));
  return [
    area(rectangle(0, 0, across.size, down.size), "paper", "outline"),
    ...[leftStrip, spineStrip, rightStrip].map((box) => area(rectangle(box.left, box.top, box.right - box.left, box.bottom - box.top), "card", "none")),
    ...upright.map((x) => stroke(line(point(x, 0), point(x, down.size)), "placement")),
    ...level.map((y) => stroke(line(point(0, y), point(across.size, y)), "placement")),
    ...upright.flatMap((x) => [0, down.size].map((y) => stroke(line(point(x, y), point(x, y === 0 ? pencilMark : y - pencilMark)), "outline"))),
    ...cornerHints(input, map),
    ...(down.breakAt === null ? [] : breakAlong(down.breakAt, -1, across.size + 1)),
    ...(across.breakAt === null ? [] : breakAcross(across.breakAt, -1, down.size + 1)),
    ...runningItems(input, map),
  ];
}

/** The corners as they will be cut, in thin lines. */
function cornerHints(input: Input, { scale, across, down }: ClothMap): readonly SceneItem[] {
  const reach = reachOf(input) * scale.factor;
  if (reach === 0) return [];
  return [[0, 0, 1, 1], [across.size, 0, -1, 1], [0, down.size, 1, -1], [across.size, down.size, -1, -1]].map(([x, y, right, below]) =>
    stroke(line(point(x! + right! * reach, y!), point(x!, y! + below! * reach)), "edge"));
}

function reachOf({ model }: Input): number {
  const turnIn = toMillimetres(model.geometry.turnIn);
  return cornerReach(point(turnIn, turnIn), toMillimetres(model.geometry.cornerDistance));
}

/** Upright lines above the head edge, level lines left of the left edge. */
function runningItems(input: Input, { across, down }: ClothMap): readonly SceneItem[] {
  const { geometry } = input.model;
  const marks = (direction: "vertical" | "horizontal", place: (at: number) => number) =>
    clothLines(input, direction).map((mark) => ({ name: mark.name, at: place(toMillimetres(mark.at)), text: input.number(mark.at) }));
  const above = runningDimensions({
    name: "from the left edge", side: "above", edge: 0, datum: 0, low: -8, high: across.size + 18,
    marks: [{ name: "left edge", at: 0, text: "0" }, ...marks("vertical", across.place), { name: "right edge", at: across.size, text: input.number(geometry.clothWidth) }],
  })!;
  const beside = runningDimensions({
    name: "from the head edge", side: "left", edge: 0, datum: 0, low: -6, high: down.size + 18, start: besideDatum,
    marks: [{ name: "head edge", at: 0, text: "0" }, ...marks("horizontal", down.place), { name: "tail edge", at: down.size, text: input.number(geometry.clothHeight) }],
  })!;
  return [...above.items, ...beside.items];
}

function labelsOf(input: Input, map: ClothMap): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { across, down } = map;
  const fields = fieldsOf(input, map);
  const { head, tail, leftStrip, spineStrip, rightStrip } = fields;
  const reach = reachOf(input) * map.scale.factor;
  const gap = ["joint gap", words.size(geometry.jointGap)];
  const toTheRight = { directions: [0, 15, -15, 30, -30, 45, -45], reach: 6 } as const;
  const below = (name: string, text: string | readonly string[], x: number, directions: readonly number[]): Placeable =>
    preferredLeader({ name, text, target: point(x, (tail + down.size) / 2), directions, reach: (down.size - tail) / 2 + 4 });
  const clothAt = (rightStrip.right + across.size) / 2;
  return [
    datumWords(down.size),
    nameIn("spine strip", words.part("spine-strip"), spineStrip, toTheRight),
    nameIn("left side strip", words.part("side-strip"), leftStrip, toTheRight),
    nameIn("right side strip", words.part("side-strip"), rightStrip, toTheRight),
    below("left joint gap", gap, (leftStrip.right + spineStrip.left) / 2, [270, 260, 250, 240]),
    below("right joint gap", gap, (spineStrip.right + rightStrip.left) / 2, [290, 280, 300, 310]),
    leaderLabel({ name: "hinge cloth", text: [words.part("hinge-cloth"), "wrong side up"], target: point(clothAt, head + (tail - head) * 0.25), ...toTheRight, reach: across.size - clothAt + 5 }),
    ...turnInNames(fields, map),
    ...(reach === 0 ? [] : [preferredLeader({
      name: "corner", text: ["corner: cut", "off later"], end: "arrow", target: point(across.size - reach * 0.25, down.size - reach * 0.75), directions: [10, 0, 20, -10, 30, -20], reach: reach * 0.25 + 6,
    })]),
    grainArrow("grain", "height", [...awayFromTheMiddle(spineStrip, [0.72, 0.66, 0.8, 0.3, 0.4, 0.2, 0.5, 0.88, 0.12]), ...besideThePlan(map)]),
  ];
}

/** "turn-in" in each of the four margins that has room for it; in words outside for the right one when it has none. */
function turnInNames({ head, tail, leftStrip, spineStrip, rightStrip }: Fields, { across, down }: ClothMap): readonly Placeable[] {
  const level = (name: string, text: string, top: number, bottom: number): Placeable => ({
    name, candidates: [...areaLabel(name, text, gridCentres({ left: spineStrip.left, right: spineStrip.right, top, bottom }, 9, 1)).candidates, []],
  });
  const upright = (name: string, left: number, right: number): Placeable => areaLabel(name, "turn-in", awayFromTheMiddle({ left, right, top: head, bottom: tail }), { angle: 90 });
  const rightMiddle = (rightStrip.right + across.size) / 2;
  return [
    level("head turn-in", "turn-in", 0, head),
    level("tail turn-in", "turn-in", tail, down.size),
    { name: "left turn-in", candidates: [...upright("left turn-in", 0, leftStrip.left).candidates, []] },
    firstOf(upright("right turn-in", rightStrip.right, across.size), preferredLeader({ name: "right turn-in", text: "turn-in", target: point(rightMiddle, head + (tail - head) * 0.6), directions: [0, 15, -15, 30, -30], reach: across.size - rightMiddle + 5 })),
  ];
}
