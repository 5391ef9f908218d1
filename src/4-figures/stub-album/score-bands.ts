// Divides the card's score lines into bands that can be drawn large enough to read, and says where each line then lies on paper.
import type { Score } from "../../2-model/types.ts";
import { toMillimetres } from "../../units/length.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";

/** One stretch of the card: the score lines of some neighbouring stubs, with their places on paper from the band's left end. */
export interface ScoreBand {
  readonly firstStub: number;
  readonly lastStub: number;
  readonly lines: readonly { readonly score: Score; readonly at: number }[];
  readonly width: number;
  /** The band shows the card's left or right edge; elsewhere the card is broken off. */
  readonly showsLeftEdge: boolean;
  readonly showsRightEdge: boolean;
  /** Card millimetres to paper; a place outside the band gives a place outside 0 … `width`. */
  place(cardX: number): number;
}

/** The bands of one card, from its left edge to its right. */
export interface ScoreBands {
  readonly bands: readonly ScoreBand[];
  /** Null when the spaces between the lines are not to scale. */
  readonly scale: Scale | null;
}

/** Width on paper of a band, of the figures over it, and of a whole card with its height, grain and letter beside it, in millimetres. */
export const bandRoom = { lines: 148, figures: 160, whole: 126 } as const;
const mostBands = 5;
/** Clear enough apart on paper to be told apart: wished, and at the very least (twice the wide pen). */
const spacing = { wished: 1.8, least: 1 } as const;
/** Paper left of the first and right of the last line of a broken band, in millimetres. */
const breakRoom = 4;

/** The fewest bands (`pitch` is the room one figure takes along the edge) at the largest scale in which neighbouring lines stay apart and every figure has room. */
export function divideIntoBands(scores: readonly Score[], cardWidth: number, largest: number, pitch: number): ScoreBands {
  const stubs = scores.length / 3;
  const closest = closestLines(scores);
  for (const least of [spacing.wished, spacing.least]) {
    for (let count = 1; count <= Math.min(mostBands, stubs); count += 1) {
      const each = Math.ceil(stubs / count);
      if ((3 * each + 2) * pitch > bandRoom.figures) continue;
      const stretches = stretchesOf(scores, cardWidth, each);
      const widest = Math.max(...stretches.map((stretch) => stretch.to - stretch.from));
      const scale = scales.find(({ factor }) => factor <= largest && widest * factor + 2 * breakRoom <= bandRoom.lines);
      if (scale && closest * scale.factor >= least) return { scale, bands: stretches.map((stretch) => makeBand(stretch, cardWidth, scale.factor)) };
    }
  }
  const most = Math.floor(((bandRoom.lines - 2 * breakRoom) / pitch - 1) / 3);
  const each = Math.ceil(stubs / Math.ceil(stubs / most));
  return { scale: null, bands: stretchesOf(scores, cardWidth, each).map((stretch) => makeEvenBand(stretch, cardWidth, pitch)) };
}

/** The smallest distance between neighbouring score lines, in millimetres of the card. */
export function closestLines(scores: readonly Score[]): number {
  const positions = scores.map((score) => toMillimetres(score.at));
  return positions.slice(1).reduce((least, at, index) => Math.min(least, at - positions[index]!), Infinity);
}

interface Stretch {
  readonly firstStub: number;
  readonly scores: readonly Score[];
  readonly from: number;
  readonly to: number;
}

function stretchesOf(scores: readonly Score[], cardWidth: number, each: number): readonly Stretch[] {
  const count = Math.ceil(scores.length / 3 / each);
  return Array.from({ length: count }, (_, index) => {
    const own = scores.slice(index * each * 3, (index + 1) * each * 3);
    return {
      firstStub: index * each + 1, scores: own,
      from: index === 0 ? 0 : toMillimetres(own[0]!.at),
      to: index === count - 1 ? cardWidth : toMillimetres(own.at(-1)!.at),
    };
  });
}

function makeBand(stretch: Stretch, cardWidth: number, factor: number): ScoreBand {
  const left = stretch.from === 0 ? 0 : breakRoom;
  const place = (cardX: number): number => left + (cardX - stretch.from) * factor;
  return finishBand(stretch, cardWidth, place(stretch.to) + (stretch.to === cardWidth ? 0 : breakRoom), place);
}

/** Lines evenly apart, in order: when no honest scale keeps them apart. */
function makeEvenBand(stretch: Stretch, cardWidth: number, pitch: number): ScoreBand {
  const stops = [...new Set([stretch.from, ...stretch.scores.map((score) => toMillimetres(score.at)), stretch.to])];
  const left = stretch.from === 0 ? 0 : breakRoom;
  const place = (cardX: number): number => {
    const index = stops.findIndex((stop) => Math.abs(stop - cardX) < 1e-6);
    if (index >= 0) return left + index * pitch;
    const after = stops.findIndex((stop) => stop > cardX);
    if (after > 0) return left + (after - 1 + (cardX - stops[after - 1]!) / (stops[after]! - stops[after - 1]!)) * pitch;
    return cardX < stops[0]! ? -1000 : 2000;
  };
  return finishBand(stretch, cardWidth, left + (stops.length - 1) * pitch + (stretch.to === cardWidth ? 0 : breakRoom), place);
}

function finishBand(stretch: Stretch, cardWidth: number, width: number, place: (cardX: number) => number): ScoreBand {
  return {
    firstStub: stretch.firstStub, lastStub: stretch.firstStub + stretch.scores.length / 3 - 1,
    lines: stretch.scores.map((score) => ({ score, at: place(toMillimetres(score.at)) })),
    width, place, showsLeftEdge: stretch.from === 0, showsRightEdge: stretch.to === cardWidth,
  };
}
