// Puts labels where they touch neither another label nor a line that is not their own: candidates in order of preference, never chance.
import { boxContains, boxesMeet, growBox } from "../geometry/box.ts";
import type { Box } from "../geometry/box.ts";
import { pathBox, pathPoints } from "../geometry/path.ts";
import type { Point } from "../geometry/point.ts";
import { segmentMeetsBox } from "../geometry/box.ts";
import { flatItems, textBox } from "./scene.ts";
import type { PathItem, SceneItem, TextItem } from "./scene.ts";

/** One thing that can be drawn in several ways: all places of the first way, then all of the next. The ways must share one name. */
export function firstOf(first: Placeable, ...others: readonly Placeable[]): Placeable {
  const ways = [first, ...others];
  return { name: first.name, candidates: chained(ways.map((way) => way.candidates)), lastResort: chained(ways.map((way) => way.lastResort ?? [])) };
}

function chained(ways: readonly Iterable<readonly (PathItem | TextItem)[]>[]): Iterable<readonly (PathItem | TextItem)[]> {
  return rerunnable(function* () {
    for (const way of ways) yield* way;
  });
}

/** A generator that can be walked more than once: labels are tried again in another order. */
export function rerunnable<Item>(make: () => Iterator<Item>): Iterable<Item> {
  return { [Symbol.iterator]: make };
}

/** One thing to be placed: a label with its leader, a dimension, a balloon, a grain arrow. */
export interface Placeable {
  /** The `label` of its text and the `owner` of its lines. */
  readonly name: string;
  /** Complete drawings of it, the best place first; made only as far as needed, and more than once. */
  readonly candidates: Iterable<readonly (PathItem | TextItem)[]>;
  /** Drawings taken only when every scale and every order of placing failed: long pointers, odd directions. */
  readonly lastResort?: Iterable<readonly (PathItem | TextItem)[]>;
}

/** Where labels may go. */
export interface PlaceOptions {
  /** Clear space round every label in millimetres. */
  readonly clearance?: number;
  /** Labels and their lines stay inside this box; no limit when left out. */
  readonly bounds?: Box;
  /** Names to place before all others, in this order. */
  readonly first?: readonly string[];
  /** Whether the last resorts may be used. */
  readonly desperate?: boolean;
}

/** What came of placing labels. */
export interface Placement {
  /** The fixed items, then the placed ones in the order given. */
  readonly items: readonly SceneItem[];
  /** Names that found no place: draw at a larger scale. Empty when all is well. */
  readonly unplaced: readonly string[];
}

/**
 * Places each thing in turn at its first candidate that keeps clear of everything fixed and placed before.
 * Candidates whose lines also cross no other label's lines are preferred over those that do.
 */
export function placeLabels(fixed: readonly SceneItem[], placeables: readonly Placeable[], options: PlaceOptions = {}): Placement {
  const clearance = options.clearance ?? 0.5;
  const field = makeField(fixed);
  const placed: SceneItem[] = [];
  const unplaced: string[] = [];
  const first = options.first ?? [];
  const rank = ({ name }: Placeable): number => (first.includes(name) ? first.indexOf(name) : first.length);
  for (const { name, candidates: wished, lastResort } of [...placeables].sort((a, b) => rank(a) - rank(b))) {
    const candidates = options.desperate && lastResort ? chained([wished, lastResort]) : wished;
    let second: readonly (PathItem | TextItem)[] | null = null;
    let chosen: readonly (PathItem | TextItem)[] | null = null;
    for (const candidate of candidates) {
      if (!isClear(field, candidate, clearance, options.bounds)) continue;
      if (!crossesLeaders(field, candidate)) {
        chosen = candidate;
        break;
      }
      second ??= candidate;
    }
    chosen ??= second;
    if (!chosen) {
      unplaced.push(name);
      continue;
    }
    placed.push(...chosen);
    addToField(field, chosen);
  }
  return { items: [...fixed, ...placed], unplaced };
}

/** Every pair of label and label, or label and foreign line, that touch: empty for a good figure. For tests and for whole figures. */
export function findCollisions(items: readonly SceneItem[]): readonly string[] {
  const field = makeField(items);
  return field.texts.flatMap(({ item, box }, index) => [
    ...field.texts.slice(index + 1).filter((other) => other.item.label !== item.label && boxesMeet(box, other.box)).map((other) => `"${item.text}" (${item.label}) touches "${other.item.text}" (${other.item.label})`),
    ...field.lines.filter((line) => line.owner !== item.label && lineMeetsBox(line, box)).map((line) => `"${item.text}" (${item.label}) touches a line of ${line.owner || "the drawing"}`),
  ]);
}

interface FieldLine {
  readonly owner: string;
  readonly box: Box;
  readonly strokes: readonly (readonly Point[])[];
}

interface Field {
  readonly texts: { readonly item: TextItem; readonly box: Box }[];
  readonly lines: FieldLine[];
}

function makeField(items: readonly SceneItem[]): Field {
  const field: Field = { texts: [], lines: [] };
  addToField(field, flatItems(items));
  return field;
}

function addToField(field: Field, items: readonly (PathItem | TextItem)[]): void {
  for (const item of items) {
    if (item.kind === "text") field.texts.push({ item, box: textBox(item) });
    else field.lines.push(...lineOf(item));
  }
}

/** A plain tone without an outline is no obstacle: a label may lie on it. Arrowheads are. */
function lineOf(item: PathItem): readonly FieldLine[] {
  if (item.line === "none" && item.fill !== "arrow") return [];
  const box = pathBox(item.path);
  return box ? [{ owner: item.owner, box, strokes: pathPoints(item.path, 0.1) }] : [];
}

function isClear(field: Field, candidate: readonly (PathItem | TextItem)[], clearance: number, bounds: Box | undefined): boolean {
  return candidate.every((item) => {
    if (item.kind === "text") {
      const box = textBox(item);
      if (bounds && !boxContains(bounds, box)) return false;
      const wide = growBox(box, clearance);
      return !field.texts.some((other) => other.item.label !== item.label && boxesMeet(wide, other.box))
        && !field.lines.some((line) => line.owner !== item.label && lineMeetsBox(line, wide));
    }
    const box = item.fill === "plate" ? pathBox(item.path) : null;
    // A balloon's plate covers what lies under it, so it keeps as clear as a label.
    if (box && (field.lines.some((line) => line.owner !== item.owner && lineMeetsBox(line, growBox(box, clearance))) || field.texts.some((other) => boxesMeet(growBox(box, 2 * clearance), other.box)))) return false;
    return lineOf(item).every((line) => (!bounds || boxContains(bounds, line.box))
      && !field.texts.some((other) => other.item.label !== item.owner && lineMeetsBox(line, growBox(other.box, clearance))));
  });
}

function lineMeetsBox(line: FieldLine, box: Box): boolean {
  const near = line.box.left <= box.right && line.box.right >= box.left && line.box.top <= box.bottom && line.box.bottom >= box.top;
  return near && line.strokes.some((points) => points.some((at, index) => index > 0 && segmentMeetsBox(points[index - 1]!, at, box)));
}

function crossesLeaders(field: Field, candidate: readonly (PathItem | TextItem)[]): boolean {
  const leaders = field.lines.filter((line) => line.owner !== "");
  return candidate.some((item) => item.kind === "path" && lineOf(item).some((mine) => leaders.some((other) => other.owner !== mine.owner && linesCross(mine, other))));
}

function linesCross(a: FieldLine, b: FieldLine): boolean {
  if (a.box.left > b.box.right || a.box.right < b.box.left || a.box.top > b.box.bottom || a.box.bottom < b.box.top) return false;
  return a.strokes.some((p) => p.some((p1, i) => i > 0 && b.strokes.some((q) => q.some((q1, j) => j > 0 && segmentsCross(p[i - 1]!, p1, q[j - 1]!, q1)))));
}

function segmentsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point): number => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
}
