// The drawing as data in millimetres of paper: lines, filled areas and labels, each label knowing its box and its owner.
import { boxUnion } from "../geometry/box.ts";
import type { Box } from "../geometry/box.ts";
import { pathBox, transformPath } from "../geometry/path.ts";
import type { Path } from "../geometry/path.ts";
import type { Point } from "../geometry/point.ts";
import { translation } from "../geometry/transform.ts";
import type { FillKind } from "./fill-kinds.ts";
import { inkOf, measureText, millimetresPerPoint } from "./text-metrics.ts";
import type { FontWeight } from "./text-metrics.ts";
import type { LineKind } from "./types.ts";

/** A stroke or a filled area. Later items lie over earlier ones. */
export interface PathItem {
  readonly kind: "path";
  readonly path: Path;
  /** `none` draws no outline (arrowheads, plates, tones). */
  readonly line: LineKind | "none";
  readonly fill: FillKind;
  /** The label this line belongs to (its own dimension or leader): only that label may touch it. Empty for the drawing itself. */
  readonly owner: string;
}

/** A label: one line of text. */
export interface TextItem {
  readonly kind: "text";
  /** Name of the label, unique in its figure; the lines with the same `owner` are its own. */
  readonly label: string;
  readonly text: string;
  /** Start, middle or end of the baseline, as `anchor` says. */
  readonly at: Point;
  readonly anchor: "start" | "middle" | "end";
  /** Type size in millimetres. */
  readonly size: number;
  readonly weight: FontWeight;
  /** 0 reads from the bottom of the page; 90 runs up the page and reads from the right. */
  readonly angle: 0 | 90;
}

/** Items that belong together for a reader of the SVG (one view, one band, one part). */
export interface GroupItem {
  readonly kind: "group";
  readonly role: string;
  readonly items: readonly SceneItem[];
}

/** Anything a scene is made of. */
export type SceneItem = PathItem | TextItem | GroupItem;

/** Smallest type in figures: 7 pt. */
export const smallestType = 7 * millimetresPerPoint;
/** Ordinary labels: 8 pt. */
export const labelType = 8 * millimetresPerPoint;
/** Labels with inch fractions: larger, because a fraction's figures are set at two fifths of the type size. */
export const fractionType = 9.5 * millimetresPerPoint;

/** The type size for some labels that belong together: `usual`, or larger when one holds a fraction. */
export function typeFor(texts: readonly string[], usual = labelType): number {
  return texts.some((text) => text.includes("\u2044")) ? Math.max(usual, fractionType) : usual;
}

/** Headings of views inside a figure: 9 pt semibold. */
export const headingType = 9 * millimetresPerPoint;

/** A line of the drawing itself. */
export function stroke(path: Path, line: LineKind, owner = ""): PathItem {
  return { kind: "path", path, line, fill: "none", owner };
}

/** A filled area with an outline (`none` for no outline). */
export function area(path: Path, fill: FillKind, line: LineKind | "none" = "outline", owner = ""): PathItem {
  return { kind: "path", path, line, fill, owner };
}

/** How a text is set: anchor, size in millimetres, weight and the like; each has a default. */
export interface TextOptions {
  readonly anchor?: "start" | "middle" | "end";
  readonly size?: number;
  readonly weight?: FontWeight;
  readonly angle?: 0 | 90;
}

/** A label at a fixed place; for one that should look for a free place see `place.ts`. */
export function label(name: string, text: string, at: Point, options: TextOptions = {}): TextItem {
  return { kind: "text", label: name, text, at, anchor: options.anchor ?? "start", size: options.size ?? labelType, weight: options.weight ?? 400, angle: options.angle ?? 0 };
}

/** A label whose ink is centred on `centre`. */
export function centredLabel(name: string, text: string, centre: Point, options: Omit<TextOptions, "anchor"> = {}): TextItem {
  const item = label(name, text, centre, { ...options, anchor: "middle" });
  const down = item.size * 0.33;
  return { ...item, at: item.angle === 0 ? { x: centre.x, y: centre.y + down } : { x: centre.x + down, y: centre.y } };
}

/** Items that belong together, with a word for what they are. */
export function group(role: string, items: readonly SceneItem[]): GroupItem {
  return { kind: "group", role, items };
}

/** The box of a label's ink: its set width, and from the tops of the letters to the descenders. */
export function textBox(item: TextItem): Box {
  const width = measureText(item.text, item.size, item.weight);
  const before = item.anchor === "start" ? 0 : item.anchor === "middle" ? width / 2 : width;
  const { x, y } = item.at;
  const ink = inkOf(item.text);
  if (item.angle === 0) return { left: x - before, right: x - before + width, top: y - ink.above * item.size, bottom: y + ink.below * item.size };
  return { left: x - ink.above * item.size, right: x + ink.below * item.size, top: y + before - width, bottom: y + before };
}

/** All items without their groups, in drawing order. */
export function flatItems(items: readonly SceneItem[]): readonly (PathItem | TextItem)[] {
  return items.flatMap((item) => (item.kind === "group" ? flatItems(item.items) : [item]));
}

/** The box round everything drawn; line widths are left out. Null for an empty drawing. */
export function sceneBox(items: readonly SceneItem[]): Box | null {
  return boxUnion(flatItems(items).flatMap((item) => (item.kind === "text" ? [textBox(item)] : (pathBox(item.path) ?? []))));
}

/** Everything moved by (dx, dy). */
export function moveItems<Item extends SceneItem>(items: readonly Item[], dx: number, dy: number): readonly Item[] {
  return items.map((item): Item => {
    if (item.kind === "group") return { ...item, items: moveItems(item.items, dx, dy) };
    if (item.kind === "text") return { ...item, at: { x: item.at.x + dx, y: item.at.y + dy } };
    return { ...item, path: transformPath(translation(dx, dy), item.path) };
  });
}

/** The line kinds that occur, in the order of first use. */
export function lineKindsUsed(items: readonly SceneItem[]): readonly LineKind[] {
  return [...new Set(flatItems(items).flatMap((item) => (item.kind === "path" && item.line !== "none" ? [item.line] : [])))];
}
