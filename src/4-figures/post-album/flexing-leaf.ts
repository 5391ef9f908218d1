// Figure: why the score lies where it does: a leaf bending beside the guards, cut through.
import { capital } from "../../3-plan/wording.ts";
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { raggedEnd } from "../breaks.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { movementArrow } from "../movement.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scalesThatFit } from "../scale.ts";
import { area, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Thicknesses on paper: they are not to scale, so that single leaves can be told apart. */
const thick = { leaf: 0.9, guard: 2.6, strip: 3.2 } as const;
/** How far the raised leaf turns at its scores, in degrees, and how much of it is shown. */
const raised = { angle: 62, length: 30 } as const;

/** Figure `flexing-leaf`. */
export function drawFlexingLeaf(input: DrawingInput<"post-album">): FigureDraft {
  const { geometry, scores } = input.model;
  const words = sectionWords(input);
  const marked = toMillimetres(scores.at(-1)!.at);
  const { items, scale } = placeAtScale(scalesThatFit(marked, 1, 64, 100, 2).slice(0, 2), ({ factor }) => {
    const hinge = toMillimetres(geometry.hingeWidth) * factor;
    const bends = scores.map((score) => toMillimetres(score.at) * factor);
    return { fixed: sectionItems(input, hinge, bends), labels: labelsOf(input, hinge, bends) };
  });
  const held = geometry.guardStrips > 0 ? "guards and hinge strip" : "the hinge strip";
  return {
    id: "flexing-leaf",
    title: "Where a leaf bends",
    caption: `The hinge of the stacked album cut through, widths ${scale.name}, thicknesses not to scale. ${capital(held)} hold the leaf down as far as ${words.size(geometry.hingeWidth)}; beside them it is free and bends at its ${scores.length === 1 ? "score" : "scores"}. ${input.unitNote}`,
    alternative: `Leaves${geometry.guardStrips > 0 ? " and guards lie in turn" : " lie"} on each other, held by the hinge strip up to ${words.size(geometry.hingeWidth)} from the spine edge. The top leaf is lifted: it stays flat up to its score, ${scores.map((score) => words.size(score.at)).join(" and ")} from the spine edge, and rises from there. The other leaves lie flat.`,
    items,
  };
}

/** From the top down: hinge strip, leaf, guard, leaf, guard, leaf. Top of the raised leaf's level part at y = 0. */
function levels(hasGuards: boolean) {
  const guard = hasGuards ? thick.guard : 0;
  const second = thick.leaf + guard;
  const third = second + thick.leaf + guard;
  return { guard, second, third, foot: third + thick.leaf };
}

function sectionItems(input: DrawingInput<"post-album">, hinge: number, bends: readonly number[]): readonly SceneItem[] {
  const { geometry } = input.model;
  const { guard, second, third, foot } = levels(geometry.guardStrips > 0);
  const right = bends.at(-1)! + 34;
  const post = toMillimetres(geometry.posts.across) * (hinge / toMillimetres(geometry.hingeWidth));
  const guards = guard === 0 ? [] : [thick.leaf, second + thick.leaf].map((y) => area(rectangle(0, y, hinge, guard), "strip", "edge"));
  const running = runningDimensions({
    name: "from the spine edge", side: "below", edge: foot, datum: 0, low: -8, high: right,
    marks: [
      { name: "spine edge", at: 0, text: "0" }, { name: "guards end", at: hinge, text: input.number(geometry.hingeWidth) },
      ...input.model.scores.map((score, index) => ({ name: score.name, at: bends[index]!, text: input.number(score.at) })),
    ].sort((a, b) => a.at - b.at),
  })!;
  return [
    area(rectangle(0, -thick.strip, hinge, thick.strip), "board", "outline"),
    ...guards,
    ...[second, third].map((y) => area(rectangle(0, y, right, thick.leaf), "card", "outline")),
    ...raggedEnd(right - 2, second - 1, foot + 1, 1),
    ...raisedLeaf(bends),
    stroke(line(point(post, -thick.strip - 5), point(post, foot + 2)), "centre"),
    ...running.items,
    label("spine edge words", "spine edge", point(-2.5, (foot - thick.strip) / 2 + 6), { anchor: "middle", angle: 90 }),
  ];
}

/** The top leaf: level to the first score, then bending by equal shares at each. */
function raisedLeaf(bends: readonly number[]): readonly SceneItem[] {
  const share = (raised.angle / bends.length) * (Math.PI / 180);
  const middle: Point[] = [point(0, thick.leaf / 2), point(bends[0]!, thick.leaf / 2)];
  bends.forEach((_, index) => {
    const angle = share * (index + 1);
    const length = index + 1 < bends.length ? bends[index + 1]! - bends[index]! : raised.length;
    const from = middle.at(-1)!;
    middle.push(point(from.x + length * Math.cos(angle), from.y - length * Math.sin(angle)));
  });
  const tip = middle.at(-1)!;
  const band = offset(middle, thick.leaf / 2);
  return [
    area([...polyline(band), { kind: "close" }], "card", "outline"),
    ...movementArrow(point(tip.x + 12, tip.y + 12), point(tip.x + 3, tip.y + 1), 3),
  ];
}

/** A band of even width along a bent line: its outline, mitred at the bends. */
function offset(points: readonly Point[], half: number): readonly Point[] {
  const side = (sign: number): readonly Point[] => points.map((at, index) => {
    const [before, after] = [points[index - 1] ?? at, points[index + 1] ?? at];
    const directions = [[before, at], [at, after]].filter(([a, b]) => a !== b).map(([a, b]) => Math.atan2(b!.y - a!.y, b!.x - a!.x));
    const mean = directions.reduce((sum, each) => sum + each, 0) / directions.length;
    const stretch = directions.length === 2 ? 1 / Math.cos((directions[1]! - directions[0]!) / 2) : 1;
    return point(at.x - Math.sin(mean) * half * sign * stretch, at.y + Math.cos(mean) * half * sign * stretch);
  });
  return [...side(1), ...[...side(-1)].reverse()];
}

function labelsOf(input: DrawingInput<"post-album">, hinge: number, bends: readonly number[]): readonly Placeable[] {
  const { geometry, scores } = input.model;
  const words = sectionWords(input);
  const { guard, second } = levels(geometry.guardStrips > 0);
  const last = bends.at(-1)!;
  const tip = point(last + 0.5 * raised.length * Math.cos((raised.angle * Math.PI) / 180), -0.5 * raised.length * Math.sin((raised.angle * Math.PI) / 180));
  const post = toMillimetres(geometry.posts.across) * (hinge / toMillimetres(geometry.hingeWidth));
  return [
    leaderAnywhere({ name: "hinge strip", text: ["hinge strip of", "the front cover"], target: point(hinge * 0.8, -thick.strip / 2), directions: [110, 100, 120, 90], reach: 10 }),
    ...(guard === 0 ? [] : [leaderAnywhere({ name: "guard", text: words.part("guard"), target: point(hinge * 0.25, thick.leaf + guard / 2), directions: [190, 200, 180, 170], reach: hinge * 0.25 + 8 })]),
    leaderAnywhere({ name: "post", text: "post", target: point(post, -thick.strip - 4), end: "none", directions: [150, 160, 140, 120], reach: 6 }),
    leaderAnywhere({ name: "raised leaf", text: [words.part("leaf"), "being turned"], target: tip, directions: [170, 160, 180, 150], reach: 8 }),
    leaderAnywhere({ name: "score words", text: [scores.length === 1 ? "score: the leaf" : "scores: the leaf", "bends here"], target: point(last + 0.3, 0.3), end: "arrow", directions: [-12, 10, 20, 0, 30], reach: 14 }),
    leaderAnywhere({ name: "flat leaf", text: "next leaf, flat", target: point(last + 24, second + thick.leaf / 2), directions: [-25, -35, 20, 30, 0], reach: 10 }),
  ];
}
