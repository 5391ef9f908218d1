// Scene to SVG text: one unit is one millimetre, every look is written out, so that the file stands alone.
import { growBox } from "../geometry/box.ts";
import type { Box } from "../geometry/box.ts";
import { hatchLines } from "../geometry/hatch.ts";
import type { Path } from "../geometry/path.ts";
import { fillLooks, hatchStroke } from "./fill-kinds.ts";
import { lineDashes, lineLooks, lineWidth } from "./line-kinds.ts";
import type { Pen } from "./line-kinds.ts";
import type { PathItem, SceneItem, TextItem } from "./scene.ts";
import { sceneBox } from "./scene.ts";
import type { LineKind } from "./types.ts";
import { fractionPull, textRuns } from "./text-metrics.ts";

/** What the SVG of a scene carries besides its shapes. */
export interface SvgOptions {
  /** Unique among all figures of a page; the ids inside the SVG start with it. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly pen: Pen;
  /** White rim round the drawing in millimetres. */
  readonly rim?: number;
  /** The part of the scene to show; the whole scene when left out. */
  readonly box?: Box;
  /** SVG text that lies under the scene. */
  readonly before?: string;
}

/** The SVG text with its size on paper. */
export interface SvgDrawing {
  readonly svg: string;
  /** Millimetres on paper. */
  readonly width: number;
  readonly height: number;
  /** Scene coordinates of the top left corner. */
  readonly origin: readonly [x: number, y: number];
}

/** Writes a scene as a complete `<svg>` element. */
export function writeSvg(items: readonly SceneItem[], options: SvgOptions): SvgDrawing {
  const box = options.box ?? growBox(sceneBox(items) ?? { left: 0, top: 0, right: 1, bottom: 1 }, options.rim ?? 1.5);
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const { id } = options;
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" class="figure-drawing" width="${number(width)}mm" height="${number(height)}mm" viewBox="${[box.left, box.top, width, height].map(number).join(" ")}" `
    + `role="img" aria-labelledby="${id}-title ${id}-description" fill="none" font-family="'Benchleaf Label', 'Source Sans 3', sans-serif">`,
    `<title id="${id}-title">${escapeText(options.title)}</title>`,
    `<desc id="${id}-description">${escapeText(options.description)}</desc>`,
    ...(options.before ? [options.before] : []),
    writeItems(items, options.pen),
    "</svg>",
  ].join("\n");
  return { svg, width: round(width), height: round(height), origin: [round(box.left), round(box.top)] };
}

/** The inside of an SVG element: used for whole figures and for the windows of template sheets. */
export function writeItems(items: readonly SceneItem[], pen: Pen): string {
  return items.map((item) => {
    if (item.kind === "group") return `<g data-role="${escapeText(item.role)}">\n${writeItems(item.items, pen)}\n</g>`;
    return item.kind === "text" ? writeText(item) : writePath(item, pen);
  }).join("\n");
}

/** Path data with three decimals. */
export function pathData(path: Path): string {
  return path.map((step) => {
    if (step.kind === "close") return "Z";
    const to = `${number(step.to.x)} ${number(step.to.y)}`;
    if (step.kind === "move") return `M${to}`;
    if (step.kind === "line") return `L${to}`;
    if (step.kind === "arc") return `A${number(step.radius)} ${number(step.radius)} 0 ${step.large ? 1 : 0} ${step.clockwise ? 1 : 0} ${to}`;
    return `C${number(step.control1.x)} ${number(step.control1.y)} ${number(step.control2.x)} ${number(step.control2.y)} ${to}`;
  }).join("");
}

/** A line that can be found by its id and says its name. */
export function writeNamedPath(path: Path, line: LineKind, pen: Pen, id: string, name: string): string {
  return `<path id="${id}" ${strokeOf(line, pen)} d="${pathData(path)}"><title>${escapeText(name)}</title></path>`;
}

/** Class and look of a stroke, as attributes. */
function strokeOf(line: LineKind, pen: Pen): string {
  const dashes = lineDashes(line, pen);
  const dashing = dashes ? ` stroke-dasharray="${dashes.map(number).join(" ")}"` : "";
  return `class="line-${line}" stroke="${lineLooks[line].colour}" stroke-width="${number(lineWidth(line, pen))}" stroke-linejoin="round"${dashing}`;
}

function writePath(item: PathItem, pen: Pen): string {
  const data = pathData(item.path);
  const owner = item.owner === "" ? "" : ` data-owner="${escapeText(item.owner)}"`;
  const parts: string[] = [];
  const look = item.fill === "none" ? null : fillLooks[item.fill];
  if (look) {
    parts.push(`<path class="fill-${item.fill}" d="${data}" fill="${look.tone}"${owner}/>`);
    const hatching = look.hatching.flatMap(({ angleDegrees, spacing }) => hatchLines(item.path, angleDegrees, spacing));
    const strokes = hatching.map(([from, to]) => `M${number(from.x)} ${number(from.y)}L${number(to.x)} ${number(to.y)}`).join("");
    if (strokes) parts.push(`<path class="hatching" d="${strokes}" stroke="${hatchStroke.colour}" stroke-width="${hatchStroke.width}"/>`);
  }
  if (item.line !== "none") {
    parts.push(`<path class="line-${item.line}" d="${data}" ${strokeOf(item.line, pen).replace(/^class="[^"]*" /, "")}${owner}/>`);
  }
  return parts.join("\n");
}

function writeText(item: TextItem): string {
  const runs = textRuns(item.text);
  const content = runs.map((run) => (run.fraction ? `<tspan class="frac" style="font-feature-settings:'frac';word-spacing:-${fractionPull}em">${run.text}</tspan>` : escapeText(run.text))).join("");
  const [x, y] = [number(item.at.x), number(item.at.y)];
  const turn = item.angle === 90 ? ` transform="rotate(-90 ${x} ${y})"` : "";
  const weight = item.weight === 400 ? "" : ` font-weight="${item.weight}"`;
  const anchor = item.anchor === "start" ? "" : ` text-anchor="${item.anchor}"`;
  return `<text class="label" data-label="${escapeText(item.label)}" x="${x}" y="${y}" font-size="${number(item.size)}"${weight}${anchor}${turn} fill="#000">${content}</text>`;
}

/** Text made safe for SVG content and attribute values. */
export function escapeText(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

function round(value: number): number {
  const rounded = Math.round(value * 1000) / 1000;
  return rounded === 0 ? 0 : rounded;
}

function number(value: number): string {
  return String(round(value));
}
