// What a cutter or a pricking needle follows on a template: every line and hole by its act and name, apart from the words beside them.
import { circle, line, pathBox } from "../geometry/path.ts";
import type { Path } from "../geometry/path.ts";
import { midpoint, point } from "../geometry/point.ts";
import type { Point } from "../geometry/point.ts";
import { flatItems } from "./scene.ts";
import type { PathItem, SceneItem } from "./scene.ts";
import type { TemplateDraft } from "./template-draft.ts";
import type { LineKind, TemplateMark } from "./types.ts";

/** What is done along a line: the layers of the files for cutters, in the order in which they are worked. */
export const templateActs = ["place", "pierce", "score", "fold", "cut"] as const;

/** Millimetres across a hole that a template only marks: an awl's point. Common practice, no source. */
const prickedHole = 1;

/** A line or hole of a template. */
export interface NamedLine {
  readonly act: TemplateMark["act"];
  /** As the template and the steps call it. */
  readonly name: string;
  readonly path: Path;
  readonly line: LineKind;
  /** For a hole; null for lines. */
  readonly hole: { readonly centre: Point; readonly radius: number } | null;
}

/** The lines and holes of a template, its words, and where each mark's name belongs. */
export interface TemplateLines {
  readonly lines: readonly NamedLine[];
  /** Everything drawn that is not to be worked along: words, pointers, arms of crosses. */
  readonly words: readonly SceneItem[];
  readonly names: readonly { readonly text: string; readonly at: Point; readonly upright: boolean }[];
}

/**
 * Takes a template apart. Outlines are what is drawn as a line to cut; all else to be worked along is in the marks. A mark to cut is a line of its own where
 * one is drawn (a slit); else it names an edge of an outline.
 */
export function templateLines({ items, marks }: TemplateDraft): TemplateLines {
  const drawn = flatItems(items);
  const outlines = drawn.filter((item): item is PathItem => item.kind === "path" && item.line === "cut");
  const worked = marks.filter((mark) => mark.act !== "cut" || drawn.some((item) => item.kind === "path" && follows(item.path, mark)));
  const taken = new Set<SceneItem>(outlines);
  const lines = worked.map((mark): NamedLine => {
    const same = drawn.filter((item): item is PathItem => item.kind === "path" && item.line !== "none" && follows(item.path, mark));
    for (const item of same) taken.add(item);
    const [from, to] = endsOf(mark);
    const hole = mark.act === "pierce" ? { centre: from, radius: (mark.diameter ?? prickedHole) / 2 } : null;
    return { act: mark.act, name: mark.name, path: hole ? circle(hole.centre, hole.radius) : line(from, to), line: lookOf(same[0]), hole };
  });
  const cuts = outlines.map((item, index): NamedLine => ({ act: "cut", name: outlines.length === 1 ? "outline" : `outline ${index + 1}`, path: item.path, line: "cut", hole: null }));
  return { lines: [...lines, ...cuts], words: drawn.filter((item) => !taken.has(item)), names: marks.map(nameOf) };
}

function lookOf(item: PathItem | undefined): LineKind {
  return item === undefined || item.line === "none" ? "edge" : item.line;
}

function endsOf({ from, to }: TemplateMark): readonly [Point, Point] {
  return [point(from[0], from[1]), point(to[0], to[1])];
}

/** Whether the path is the mark itself: the line between its ends, or a circle round its middle. */
function follows(path: Path, mark: TemplateMark): boolean {
  const [from, to] = endsOf(mark);
  if (mark.act === "pierce") {
    const box = path.some(({ kind }) => kind === "arc") ? pathBox(path) : null;
    return box !== null && isSame(point((box.left + box.right) / 2, (box.top + box.bottom) / 2), from);
  }
  const [start, end] = path;
  if (path.length !== 2 || start?.kind !== "move" || end?.kind !== "line") return false;
  return (isSame(start.to, from) && isSame(end.to, to)) || (isSame(start.to, to) && isSame(end.to, from));
}

function isSame(a: Point, b: Point): boolean {
  return Math.abs(a.x - b.x) < 1e-6 && Math.abs(a.y - b.y) < 1e-6;
}

/** A name stands at a hole's right, and along a line. */
function nameOf(mark: TemplateMark): TemplateLines["names"][number] {
  const [from, to] = endsOf(mark);
  if (mark.act === "pierce") return { text: mark.name, at: point(from.x + (mark.diameter ?? prickedHole) / 2 + 1, from.y + 0.8), upright: false };
  const upright = Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
  const middle = midpoint(from, to);
  return { text: mark.name, at: upright ? point(from.x - 0.6, Math.max(from.y, to.y)) : point(middle.x, middle.y - 0.6), upright };
}
