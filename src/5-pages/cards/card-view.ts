// The bench cards of a booklet as the templates show them: sheets with one or two cards each.
import type { Figure } from "../../4-figures/types.ts";
import type { PaperId } from "../../1-definition/types.ts";
import { showFigure, resizedWords } from "../inline-figure.ts";
import type { FigureView } from "../inline-figure.ts";
import type { StepView } from "../step-view.ts";
import { blocksOf } from "./card-blocks.ts";
import { cardGaps, cardProperties, cardSize, cardTypes, countLines } from "./card-type.ts";
import type { CardSize } from "./card-type.ts";
import { layOutCards } from "./lay-out-cards.ts";

/** One card ready to show. */
export interface CardView {
  readonly id: string;
  readonly n: number;
  readonly title: string;
  /** "1 of 2"; empty when the step has one card. */
  readonly part: string;
  /** Whether cautions of this step stand on an earlier card. */
  readonly isWarnedBefore: boolean;
  readonly blocks: readonly { readonly kind: string; readonly html: string }[];
  readonly figure: FigureView | null;
  readonly figureAt: "beside" | "below" | "none";
}

/** All cards of a booklet on one paper. */
export interface CardSet {
  /** Millimetres of the sheet, upright for two cards, on its side for one. */
  readonly sheet: { readonly width: number; readonly height: number };
  readonly properties: string;
  readonly isCut: boolean;
  readonly sheets: readonly (readonly CardView[])[];
}

/** A step with the drawing that it shows. */
export interface DrawnStep {
  readonly step: StepView;
  readonly figure: Figure | null;
}

/** Lays every step out on cards. */
export function viewCards(steps: readonly DrawnStep[], paper: PaperId): CardSet {
  const size = cardSize(paper);
  const cards = steps.flatMap((drawn) => cardsOf(drawn, size));
  const sheets = Array.from({ length: Math.ceil(cards.length / size.perSheet) }, (_, index) => cards.slice(index * size.perSheet, (index + 1) * size.perSheet));
  return { sheet: { width: size.width, height: size.height * size.perSheet }, properties: cardProperties(size), isCut: size.perSheet > 1, sheets };
}

function cardsOf({ step, figure }: DrawnStep, size: CardSize): readonly CardView[] {
  const room = roomOf(step, size);
  const drawing = figure && { width: figure.width, height: figure.height, caption: `${figure.caption} ${resizedWords(figure, 2)}` };
  const cards = layOutCards(blocksOf(step, room), drawing, room);
  const warned = cards.findIndex((card) => card.blocks.some((block) => block.kind === "caution"));
  return cards.map(({ blocks, figure: place }, index) => ({
    id: `card-${step.id}-${index + 1}`,
    n: step.n,
    title: step.title,
    part: cards.length === 1 ? "" : `${index + 1} of ${cards.length}`,
    isWarnedBefore: warned >= 0 && index > warned && blocks.every((block) => block.kind !== "caution"),
    blocks: blocks.map(({ kind, html }) => ({ kind, html })),
    figure: figure && place ? showFigure(figure, `card-${step.n}`, place.factor) : null,
    figureAt: place?.at ?? "none",
  }));
}

/** The line, with its gap, which says that cautions stand on an earlier card; its room is kept on every card. */
const reminder = cardTypes.small.line + 1.4;

/** Widths of lines and the rounding to pixels, in millimetres. */
const spare = 1.5;

/** What head and foot leave of a card. */
function roomOf({ title }: StepView, { width, height }: CardSize): { readonly width: number; readonly height: number } {
  const across = width - 2 * cardGaps.side;
  const lines = countLines(title, across - cardGaps.number - cardGaps.counter, cardTypes.title, 600);
  // The title's first line stands level with the middle of the number.
  const head = Math.max(cardTypes.number.line, lines * cardTypes.title.line + (cardTypes.number.line - cardTypes.title.line) / 2) + cardGaps.head;
  return { width: across, height: height - cardGaps.top - cardGaps.foot - head - reminder - spare };
}
