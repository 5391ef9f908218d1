// Blocks and a drawing onto as few cards as hold them: the drawing beside the actions where it can, cautions always first.
import { cardGaps, cardTypes, lineCounter } from "./card-type.ts";
import type { CardBlock } from "./card-blocks.ts";

/** A drawing to be placed: its size as drawn, in millimetres, and the words below it. */
export interface CardFigure {
  readonly width: number;
  readonly height: number;
  readonly caption: string;
}

/** Where the drawing of a card stands and how much it is resized. */
export interface FigurePlace {
  readonly at: "beside" | "below";
  readonly factor: number;
}

/** One card: its blocks in order, and where the drawing stands if this card has it. */
export interface CardContents {
  readonly blocks: readonly CardBlock[];
  readonly figure: FigurePlace | null;
}

interface Room {
  readonly width: number;
  readonly height: number;
}

/** A drawing is never printed smaller than this, and never larger: at a metre, larger is better, but not without end. */
const resizeLimits = { least: 0.7, wished: 0.85, most: 1.6 } as const;
/** The column of text beside a drawing, in millimetres: some 28 letters of 18 pt. */
const narrowestText = 86;

/**
 * The cards of one step. What must be known before anything is done stands on the first card; then as little as possible besides, so that the actions
 * stand beside the drawing; where that is too much for one card, the first cards are filled and the drawing stands on the last.
 */
export function layOutCards(blocks: readonly CardBlock[], figure: CardFigure | null, room: Room): readonly CardContents[] {
  const single = fitCard(blocks, figure, room, resizeLimits.wished) ?? fitCard(blocks, figure, room, resizeLimits.least);
  if (single) return [single];
  const first = blocks.filter((block) => block.isFirst).length;
  const most = howManyFit(blocks, room);
  for (const least of [resizeLimits.wished, resizeLimits.least]) {
    for (let count = Math.max(1, first); count <= most; count += 1) {
      const rest = fitCard(blocks.slice(count), figure, room, least);
      if (rest) return [{ blocks: blocks.slice(0, count), figure: null }, rest];
    }
  }
  // A drawing that is taller than a card stands on one of its own.
  if (blocks.length === 0 && figure) return [{ blocks: [], figure: placeBelow(0, figure, room) }];
  return [{ blocks: blocks.slice(0, most), figure: null }, ...layOutCards(blocks.slice(most), figure, room)];
}

/** Height of blocks one below the other. */
export function heightOf(blocks: readonly CardBlock[], width: number): number {
  return blocks.reduce((sum, block) => sum + block.heightAt(width), 0) + Math.max(0, blocks.length - 1) * cardGaps.block;
}

/** How many of the blocks the first card takes, one at least. */
function howManyFit(blocks: readonly CardBlock[], room: Room): number {
  let count = 1;
  while (count < blocks.length && heightOf(blocks.slice(0, count + 1), room.width) <= room.height) count += 1;
  return count;
}

/** Everything on one card, the drawing as large as can be but not below `least`; null when it does not fit. */
function fitCard(blocks: readonly CardBlock[], figure: CardFigure | null, room: Room, least: number): CardContents | null {
  const text = heightOf(blocks, room.width);
  if (figure === null) return text <= room.height ? { blocks, figure: null } : null;
  const places = [placeBelow(text, figure, room), ...(blocks.length === 0 ? [] : [placeBeside(blocks, figure, room)])];
  const best = places.filter((place) => place !== null).sort((a, b) => b.factor - a.factor)[0];
  return best && best.factor >= least ? { blocks, figure: best } : null;
}

function placeBelow(text: number, { width, height, caption }: CardFigure, room: Room): FigurePlace | null {
  const left = room.height - text - (text === 0 ? 0 : cardGaps.block) - captionHeight(caption)(room.width);
  const factor = downToHundredth(Math.min(resizeLimits.most, room.width / width, left / height));
  return factor > 0 ? { at: "below", factor } : null;
}

/** Captions under a drawing are as wide as it, those of a drawing below the text as wide as the card. */
function captionHeight(caption: string): (width: number) => number {
  const linesAt = lineCounter(caption, cardTypes.caption);
  return (width) => 1 + linesAt(width) * cardTypes.caption.line;
}

/** The largest drawing beside which the text still fits. */
function placeBeside(blocks: readonly CardBlock[], { width, height, caption }: CardFigure, room: Room): FigurePlace | null {
  const largest = Math.min(resizeLimits.most, (room.width - cardGaps.column - narrowestText) / width, room.height / height);
  const captionAt = captionHeight(caption);
  for (let factor = downToHundredth(largest); factor >= resizeLimits.least; factor = downToHundredth(factor - 0.02)) {
    const fitsItself = height * factor + captionAt(width * factor) <= room.height;
    if (fitsItself && heightOf(blocks, room.width - cardGaps.column - width * factor) <= room.height) return { at: "beside", factor };
  }
  return null;
}

function downToHundredth(value: number): number {
  return Math.floor(value * 100 + 1e-6) / 100;
}
