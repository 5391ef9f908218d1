// A drawing made ready to stand inside a page: its ids made unique, so that it may stand there twice.
import type { Figure } from "../4-figures/types.ts";
import type { FigureRoom } from "./paper.ts";

/** A drawing as the templates show it. */
export interface FigureView {
  readonly svg: string;
  readonly caption: string;
  /** How much smaller or larger than its caption says it is printed; empty when it is as large as it says. */
  readonly resized: string;
  /** What the drawing says, for a reader whose eyes do not make out its labels; null when it is not printed. */
  readonly inWords: string | null;
  /** Size on paper in millimetres. */
  readonly width: number;
  readonly height: number;
  /** Where it stands in its step: beside the whole text, beside the last short paragraphs only, or below with the full measure. */
  readonly place: "beside" | "lower" | "below";
  /** So many times as large it still leaves room for the text beside it; 1 where it must stay true to full size. */
  readonly largest: number;
  /** What its caption must then add, "{}" for the per cent; empty when it names no scale. */
  readonly whenResized: string;
  /** Too wide for a phone: it may then be moved sideways in its frame. */
  readonly isWide: boolean;
}

/** The room on A4 and US Letter, which drawings are made for; a screen makes its own. */
const usualRoom: FigureRoom = { width: 176, height: 250, isFilled: false };

/**
 * What a drawing must leave of the page's width for a column of text beside it, in millimetres: the numbers of the steps in the margin, and a measure
 * of about 60 mm for instructions, of about 40 mm for the check.
 */
const kept = { beside: 79, lower: 58 } as const;

/** Larger than this, nothing more is made out. */
const largestResize = 2;

/** @param use Names the place in the page ("step-3"): the same drawing may be used at several places. */
export function viewFigure(figure: Figure, use: string, room: FigureRoom = usualRoom): FigureView {
  return showFigure(figure, use, resizeFactor(figure, room), room);
}

/** A drawing at another size than it was made for. */
export function showFigure(figure: Figure, use: string, factor: number, room: FigureRoom = usualRoom): FigureView {
  const width = figure.width * factor;
  const place = room.isFilled ? "below" : width <= room.width - kept.beside ? "beside" : width <= room.width - kept.lower ? "lower" : "below";
  return {
    svg: withUniqueIds(figure.svg, use),
    caption: figure.caption,
    resized: resizedWords(figure, factor),
    inWords: room.isFilled ? figure.alternative : null,
    width,
    height: figure.height * factor,
    place,
    largest: factor !== 1 || /\b1:1\b/.test(figure.caption) ? 1 : Math.floor(100 * Math.min(room.height / figure.height, (room.width - (place === "below" ? 0 : kept[place])) / width)) / 100,
    whenResized: /\d:\d/.test(figure.caption) ? "Printed at {}\u00a0% of the scale named." : "",
    isWide: figure.width > usualRoom.width - kept.beside,
  };
}

/** What a caption with a scale must add when the drawing is printed at another size. */
export function resizedWords({ caption }: Pick<Figure, "caption">, factor: number): string {
  return Math.round(factor * 100) === 100 || !/\d:\d/.test(caption) ? "" : `Printed at ${Math.round(factor * 100)}\u00a0% of the scale named.`;
}

/** Smaller where the drawing does not fit its room; larger where it is to fill it. */
export function resizeFactor({ width, height }: Pick<Figure, "width" | "height">, room: FigureRoom): number {
  const fitting = Math.min(room.width / width, room.height / height);
  return fitting < 1 || room.isFilled ? Math.min(fitting, largestResize) : 1;
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
