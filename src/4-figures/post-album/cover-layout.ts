// Figure: the cloth of a cover, wrong side up, with every line to be drawn on it, measured from its left and its head edge.
import type { PlacementLine } from "../../2-model/types.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross, breakAlong } from "../breaks.ts";
import { cornerReach } from "../corner-cut.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, gridCentres, leaderLabel, preferredLeader } from "../leaders.ts";
import { placementLines } from "../placement-lines.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { awayFromTheMiddle, besideThePlan, datumWords, nameIn } from "../bench/plan-labels.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxPath, coveringId, planCover } from "./cover-plan.ts";
import type { CoverPlan } from "./cover-plan.ts";

type Input = DrawingInput<"post-album">;

/** Between the left edge and the figures of the level lines, in millimetres: room for the words beside the datum. */
const besideDatum = 7;
/** Length of the pencil marks at head and tail on paper. */
const pencilMark = 2;

/** Figure `cover-layout`. */
export function drawCoverLayout(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const id = coveringId(geometry);
  const { items, scale: plan } = placeAtScale(planCover(geometry), (at) => ({ fixed: clothItems(input, at), labels: labelsOf(input, at) }), { clearance: 0.8 });
  const positions = (direction: "vertical" | "horizontal"): string => clothLines(input, direction).map((mark) => `${mark.name} ${words.size(mark.at)}`).join("; ");
  const beyond = geometry.paper ? ` The board goes on beyond the cloth, which laps ${words.size(geometry.clothLap)} onto it.` : "";
  return {
    id: "cover-layout",
    title: `Lines on the ${partName(input, id)}`,
    caption: `The ${partName(input, id)}, wrong side up, ${plan.scale.name}${plan.left}. Measure every upright line from the left edge and every level line from the head edge (the rings at 0), never from the line before it. Mark at head and tail, where the short strokes are, and join the marks. `
      + `The tinted fields are where hinge strip and board will be glued.${beyond} ${input.unitNote}`,
    alternative: `${words.part(id)}, ${words.size(geometry.clothHeight)} high × ${words.size(geometry.clothWidth)} wide, wrong side up. Upright lines from its left edge: ${positions("vertical")}. Level lines from its head edge: ${positions("horizontal")}. `
      + `Between the lines will lie, from left to right, the hinge strip, the joint gap of ${words.size(geometry.jointGap)} and the board. Outside the lines the cloth is left for turning in; its ${geometry.paper ? "two corners beside the hinge strip are" : "four corners are"} cut off at 45° in a later step.${beyond}`,
    items,
  };
}

function partName(input: Input, id: string): string {
  return input.model.parts.find((part) => part.id === id)!.name;
}

function clothLines(input: Input, direction: PlacementLine["direction"]): readonly PlacementLine[] {
  return placementLines(input.model.parts, coveringId(input.model.geometry), direction);
}

function clothItems(input: Input, plan: CoverPlan): readonly SceneItem[] {
  const { across, down, strip, board, clothRight } = plan;
  const { paper } = input.model.geometry;
  const upright = clothLines(input, "vertical").map((mark) => across.place(toMillimetres(mark.at)));
  const level = clothLines(input, "horizontal").map((mark) => down.place(toMillimetres(mark.at)));
  return [
    area(rectangle(0, 0, clothRight, down.size), "paper", "outline"),
    area(boxPath(strip), "card", "none"),
    area(boxPath({ ...board, right: Math.min(board.right, clothRight) }), "card", "none"),
    ...(paper ? [stroke(boxPath(board), "placement")] : []),
    ...upright.map((x) => stroke(line(point(x, 0), point(x, down.size)), "placement")),
    ...level.map((y) => stroke(line(point(0, y), point(clothRight, y)), "placement")),
    ...upright.flatMap((x) => [0, down.size].map((y) => stroke(line(point(x, y), point(x, y === 0 ? pencilMark : y - pencilMark)), "outline"))),
    ...cornerHints(input, plan),
    ...(down.breakAt === null ? [] : breakAlong(down.breakAt, -1, (paper ? board.right : across.size) + 1)),
    ...(across.breakAt === null ? [] : breakAcross(across.breakAt, -1, down.size + 1)),
    ...runningItems(input, plan),
  ];
}

/** The corners as they will be cut, in thin lines. */
function cornerHints(input: Input, { scale, down, clothRight }: CoverPlan): readonly SceneItem[] {
  const reach = reachOf(input) * scale.factor;
  if (reach === 0) return [];
  const left = [[0, 0, 1, 1], [0, down.size, 1, -1]];
  const right = [[clothRight, 0, -1, 1], [clothRight, down.size, -1, -1]];
  return [...left, ...(input.model.geometry.paper ? [] : right)].map(([x, y, across, below]) =>
    stroke(line(point(x! + across! * reach, y!), point(x!, y! + below! * reach)), "edge"));
}

function reachOf({ model }: Input): number {
  const turnIn = toMillimetres(model.geometry.turnIn);
  return cornerReach(point(turnIn, turnIn), toMillimetres(model.geometry.cornerDistance));
}

/** Upright lines above the head edge, level lines left of the left edge. */
function runningItems(input: Input, { across, down, clothRight }: CoverPlan): readonly SceneItem[] {
  const { geometry } = input.model;
  const marks = (direction: "vertical" | "horizontal", place: (at: number) => number) =>
    clothLines(input, direction).map((mark) => ({ name: mark.name, at: place(toMillimetres(mark.at)), text: input.number(mark.at) }));
  const above = runningDimensions({
    name: "from the left edge", side: "above", edge: 0, datum: 0, low: -8, high: clothRight + 18,
    marks: [{ name: "left edge", at: 0, text: "0" }, ...marks("vertical", across.place), { name: "right edge", at: clothRight, text: input.number(geometry.clothWidth) }],
  })!;
  const beside = runningDimensions({
    name: "from the head edge", side: "left", edge: 0, datum: 0, low: -6, high: down.size + 18, start: besideDatum,
    marks: [{ name: "head edge", at: 0, text: "0" }, ...marks("horizontal", down.place), { name: "tail edge", at: down.size, text: input.number(geometry.clothHeight) }],
  })!;
  return [...above.items, ...beside.items];
}

function labelsOf(input: Input, plan: CoverPlan): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { across, down, strip, board, clothRight } = plan;
  const reach = reachOf(input) * plan.scale.factor;
  const toTheRight = { directions: [0, 15, -15, 30, -30, 45, -45], reach: 6 } as const;
  const right = geometry.paper ? board.right : across.size;
  const id = coveringId(geometry);
  const onCloth = geometry.paper ? point((strip.right + board.left) / 2, strip.top * 0.45) : point((board.right + across.size) / 2, board.top + (board.bottom - board.top) * 0.25);
  const field = geometry.paper ? { ...board, left: clothRight } : board;
  return [
    datumWords(down.size),
    nameIn("hinge strip", words.part("hinge-strip"), strip, toTheRight),
    nameIn("board", words.part("boards"), field.right - field.left > 8 ? field : board, toTheRight),
    preferredLeader({ name: "joint gap", text: ["joint gap", words.size(geometry.jointGap)], target: point((strip.right + board.left) / 2, (strip.bottom + down.size) / 2), directions: [270, 280, 260, 290, 250], reach: (down.size - strip.bottom) / 2 + 4 }),
    geometry.paper
      ? preferredLeader({ name: "covering", text: [words.part(id), "wrong side up"], target: onCloth, directions: [30, 40, 20, 50], reach: 8 })
      : leaderLabel({ name: "covering", text: [words.part(id), "wrong side up"], target: onCloth, ...toTheRight, reach: across.size - onCloth.x + 5 }),
    ...turnInNames(plan, geometry.paper !== null),
    ...(geometry.paper ? [preferredLeader({ name: "lap", text: ["lap on the board", words.size(geometry.clothLap)], target: point((board.left + clothRight) / 2, (board.bottom + down.size) / 2), directions: [300, 310, 320, 330, 290], reach: (down.size - board.bottom) / 2 + 6 })] : []),
    ...(reach === 0 ? [] : [preferredLeader({
      name: "corner", text: ["corner: cut", "off later"], end: "arrow" as const,
      ...(geometry.paper
        ? { target: point(reach * 0.25, down.size - reach * 0.75), directions: [250, 240, 260, 230, 220], reach: reach * 0.75 + 6 }
        : { target: point(across.size - reach * 0.25, down.size - reach * 0.75), directions: [10, 0, 20, -10, 30, -20], reach: reach * 0.25 + 6 }),
    })]),
    grainArrow("grain", "height", [...awayFromTheMiddle(strip), ...awayFromTheMiddle(board), ...besideThePlan({ across: { size: right }, down })]),
  ];
}

/** "turn-in" in each of the margins that has room for it. */
function turnInNames({ strip, board, across, down, clothRight }: CoverPlan, isQuarter: boolean): readonly Placeable[] {
  const right = Math.min(board.right, clothRight);
  const level = (name: string, top: number, bottom: number): Placeable => ({
    name, candidates: [...areaLabel(name, "turn-in", gridCentres({ left: isQuarter ? strip.left : board.left, right, top, bottom }, 9, 1)).candidates, []],
  });
  const upright = (name: string, from: number, to: number): Placeable => ({
    name, candidates: [...areaLabel(name, "turn-in", awayFromTheMiddle({ left: from, right: to, top: strip.top, bottom: strip.bottom }), { angle: 90 }).candidates, []],
  });
  return [
    level("head turn-in", 0, strip.top), level("tail turn-in", strip.bottom, down.size), upright("left turn-in", 0, strip.left),
    ...(isQuarter ? [] : [upright("right turn-in", board.right, across.size)]),
  ];
}
