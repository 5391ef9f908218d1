// A drawing made ready to stand inside a page: its ids made unique, so that it may stand there twice.
import type { Figure } from "../4-figures/types.ts";

/** A drawing as the templates show it. */
export interface FigureView {
  readonly svg: string;
  readonly caption: string;
  /** Size on paper in millimetres. */
  readonly width: number;
  readonly height: number;
  /** Where it stands in its step: beside the whole text, beside the last short paragraphs only, or below with the full measure. */
  readonly place: "beside" | "lower" | "below";
  /** Too wide for a phone: it may then be moved sideways in its frame. */
  readonly isWide: boolean;
}

/**
 * Widest drawings, in millimetres, that leave a column of text beside them: of about 60 mm for instructions, of about 40 mm for the check.
 * The measure of a step on A4 is 163 mm, on US Letter 165 mm.
 */
const widest = { beside: 97, lower: 118 } as const;

/** @param use Names the place in the page ("step-3"): the same drawing may be used at several places. */
export function viewFigure(figure: Figure, use: string): FigureView {
  return {
    svg: withUniqueIds(figure.svg, use),
    caption: figure.caption,
    width: figure.width,
    height: figure.height,
    place: figure.width <= widest.beside ? "beside" : figure.width <= widest.lower ? "lower" : "below",
    isWide: figure.width > widest.beside,
  };
}

/** The same SVG with every id, and everything that refers to one, ending in `use`. */
export function withUniqueIds(svg: string, use: string): string {
  const ids = new Set([...svg.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]!));
  const renamed = (id: string): string => (ids.has(id) ? `${id}--${use}` : id);
  return svg
    .replace(/(\sid=")([^"]+)"/g, (_, start: string, id: string) => `${start}${renamed(id)}"`)
    .replace(/url\(#([^)"']+)\)/g, (_, id: string) => `url(#${renamed(id)})`)
    .replace(/((?:xlink:)?href="#)([^"]+)"/g, (_, start: string, id: string) => `${start}${renamed(id)}"`)
    .replace(/(\saria-(?:labelledby|describedby)=")([^"]+)"/g, (_, start: string, list: string) => `${start}${list.split(/\s+/).map(renamed).join(" ")}"`);
}
