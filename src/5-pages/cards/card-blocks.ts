// What stands on the cards of a step, as blocks that know their height at any width: from the step as printed in the handout.
import { cardGaps, cardTypes, countLines, lineCounter, lineWidthOf } from "./card-type.ts";
import type { CardType } from "./card-type.ts";
import { escapeHtml, printedText } from "../printed-text.ts";
import type { CautionView, StepView } from "../step-view.ts";

/** A piece of a card that is never divided. */
export interface CardBlock {
  readonly kind: "facts" | "before" | "caution" | "sizes" | "table" | "action" | "text" | "check" | "wait";
  readonly html: string;
  /** Before anything is done: stands on the first card. */
  readonly isFirst: boolean;
  readonly heightAt: (width: number) => number;
}

/** The blocks of a step in the order of reading. `room` is the height of the largest block that a card holds. */
export function blocksOf(step: StepView, room: { readonly width: number; readonly height: number }): readonly CardBlock[] {
  const tallest = room.height - cardGaps.block;
  return [
    ...factsOf(step),
    ...(step.before === "" ? [] : [paragraph("before", step.before, cardTypes.caution, true)]),
    ...step.cautions.flatMap((caution) => cautionBlocks(caution, room.width, tallest)),
    ...(step.sizes.length === 0 ? [] : [sizesBlock(step.sizes)]),
    ...(step.table === null ? [] : tableBlocks(step.table, room.width, tallest)),
    ...step.action.flatMap((line, index) => actionBlocks(line, letterOf(index), room.width, tallest)),
    ...(step.action.length === 0 && step.ownText !== null ? textBlocks(step.ownText, room.width, tallest) : []),
    ...(step.check === "" ? [] : divide(step.check, (text) => checkBlock(text), room.width, tallest)),
    ...(step.wait === null ? [] : [waitBlock(step.wait)]),
  ];
}

function factsOf({ tools, parts, adhesive }: StepView): readonly CardBlock[] {
  const facts = [
    ...(parts.length === 0 ? [] : [{ label: "Parts", text: parts.join(", ") }]),
    ...(tools.length === 0 ? [] : [{ label: "Tools", text: tools.join(", ") }]),
    ...(adhesive === null ? [] : [{ label: "Adhesive", text: adhesive.note === "" ? adhesive.name : `${adhesive.name}: ${adhesive.note}` }]),
  ];
  if (facts.length === 0) return [];
  const html = facts.map(({ label, text }) => `<div><dt>${label}</dt> <dd>${printedText(text)}</dd></div>`).join(" ");
  const heights = facts.map(({ label, text }) => linesHigh(`${label} ${text}`, cardTypes.small, 600));
  return [{ kind: "facts", isFirst: true, html: `<dl class="card-facts">${html}</dl>`, heightAt: (width) => heights.reduce((sum, heightAt) => sum + heightAt(width), 0) }];
}

function cautionBlocks(caution: CautionView, width: number, tallest: number): readonly CardBlock[] {
  const block = (text: string, html: string): CardBlock => {
    const textAt = linesHigh(text, cardTypes.caution, 600);
    return {
      kind: "caution", isFirst: true,
      html: `<div class="card-caution caution-${caution.signal.toLowerCase()}" role="note"><p class="signal">${caution.injury ? alertSign : ""}<strong>${caution.signal}</strong></p><div class="caution-text">${html}</div></div>`,
      heightAt: (room) => textAt(room - signalRoom - 4 * cardGaps.box) + 2 * cardGaps.box,
    };
  };
  const whole = block(plainOf(caution.html), caution.html);
  return whole.heightAt(width) <= tallest ? [whole] : divide(plainOf(caution.html), (text) => block(text, printedText(text)), width, tallest);
}

/** Width of the field with the signal word, in millimetres: WARNING with its sign in 14 pt. */
const signalRoom = 34;

const alertSign = '<svg class="alert" viewBox="0 0 24 22" aria-hidden="true" focusable="false"><path d="M12 1 23 21H1Z"/><path class="alert-mark" d="M10.7 8h2.6l-.5 7h-1.6z"/><circle class="alert-mark" cx="12" cy="17.6" r="1.4"/></svg>';

/** Sizes stand in two columns where each fits into half of the width. */
function sizesBlock(sizes: StepView["sizes"]): CardBlock {
  const rows = sizes.map(({ label, text }) => ({ label, text, wide: lineWidthOf(label, cardTypes.action) + lineWidthOf(text, cardTypes.action, 600) + 4 }));
  const widest = Math.max(...rows.map((row) => row.wide));
  const html = rows.map(({ label, text }) => `<div><dt>${printedText(label)}</dt> <dd>${printedText(text)}</dd></div>`).join("\n");
  const isPaired = (width: number): boolean => rows.length > 1 && widest <= (width - cardGaps.column) / 2;
  return {
    kind: "sizes", isFirst: true, html: `<dl class="card-sizes" style="--size-width: ${Math.ceil(widest)}mm">${html}</dl>`,
    heightAt: (width) => 1.5 + cardTypes.action.line * (isPaired(width) ? Math.ceil(rows.length / 2) : rows.reduce((sum, { label, text, wide }) => sum + (wide <= width ? 1 : countLines(label, width, cardTypes.action) + countLines(text, width, cardTypes.action, 600)), 0)),
  };
}

/** A table in as many pieces as cards need, each with its head. Columns have their widths written out, so that what is counted is what is printed. */
function tableBlocks({ caption, columns, rows }: NonNullable<StepView["table"]>, width: number, tallest: number): readonly CardBlock[] {
  const type = cardTypes.table;
  const natural = columns.map((column, index) => Math.max(...[column, ...rows.map((row) => row[index] ?? "")].map((cell) => lineWidthOf(cell, type, 600))) + 5);
  const sum = natural.reduce((all, each) => all + each, 0);
  const widths = sum <= width ? natural : natural.map((each) => (each * width) / sum);
  const rowHigh = (row: readonly string[]): number => Math.max(...row.map((cell, index) => countLines(cell, widths[index]! - 5, type, 600))) * type.line + 0.4;
  const tableWidth = widths.reduce((all, each) => all + each, 0);
  const headHigh = linesHigh(caption, type, 600)(tableWidth) + rowHigh(columns);
  const pieces: (readonly string[])[][] = [[]];
  let used = headHigh;
  for (const row of rows) {
    if (used + rowHigh(row) > tallest && pieces.at(-1)!.length > 0) {
      pieces.push([]);
      used = headHigh;
    }
    pieces.at(-1)!.push(row);
    used += rowHigh(row);
  }
  const head = `<thead><tr>${columns.map((column, index) => `<th scope="col" style="width: ${round(widths[index]!)}mm">${printedText(column)}</th>`).join("")}</tr></thead>`;
  return pieces.map((piece) => ({
    kind: "table", isFirst: false,
    html: `<table class="card-table"><caption>${printedText(caption)}</caption>${head}<tbody>${piece.map((row) => `<tr>${row.map((cell, index) => (index === 0 ? `<th scope="row">${printedText(cell)}</th>` : `<td>${printedText(cell)}</td>`)).join("")}</tr>`).join("\n")}</tbody></table>`,
    // Beside a drawing a table would need other columns: there it does not fit.
    heightAt: (room) => (room < tableWidth - 0.01 ? Infinity : headHigh + piece.reduce((all, row) => all + rowHigh(row), 0)),
  }));
}

function actionBlocks(line: string, letter: string, width: number, tallest: number): readonly CardBlock[] {
  return divide(line, (text, index) => {
    const textAt = linesHigh(text, cardTypes.action);
    return {
      kind: "action", isFirst: false,
      html: `<p class="card-action"><span class="card-letter">${index === 0 ? `${letter}.` : ""}</span> <span class="card-words">${printedText(text)}</span></p>`,
      heightAt: (room) => textAt(room - cardGaps.marker),
    };
  }, width, tallest);
}

/** The author's own text paragraph by paragraph; one that no card holds is divided and loses its emphasis. */
function textBlocks(html: string, width: number, tallest: number): readonly CardBlock[] {
  const paragraphs = html.split(/(?<=<\/(?:p|li|h\d|blockquote)>)/).map((piece) => piece.replace(/<\/?(?:ul|ol|blockquote|li|p|h\d)\b[^>]*>/g, "").replace(/<img[^>]*>/g, "").trim());
  return paragraphs.filter((piece) => plainOf(piece) !== "").flatMap((piece) => {
    const whole = paragraph("text", plainOf(piece), cardTypes.action, false, piece);
    return whole.heightAt(width) <= tallest ? [whole] : divide(plainOf(piece), (text) => paragraph("text", text, cardTypes.action, false), width, tallest);
  });
}

function checkBlock(text: string): CardBlock {
  const textAt = linesHigh(`Right when ${text}`, cardTypes.action);
  return {
    kind: "check", isFirst: false,
    html: `<p class="card-check"><span class="label">Right when</span> ${printedText(text)}</p>`,
    heightAt: (width) => textAt(width - cardGaps.marker),
  };
}

function waitBlock({ length, kind, text }: NonNullable<StepView["wait"]>): CardBlock {
  const [headAt, textAt] = [linesHigh(`Wait ${length} ${kind}`, cardTypes.action, 600), linesHigh(text, cardTypes.caution)];
  return {
    kind: "wait", isFirst: false,
    html: `<div class="card-wait"><p><strong>Wait ${printedText(length)}</strong> ${kind}</p><p class="card-wait-how">${printedText(text)}</p></div>`,
    heightAt: (width) => headAt(width - 6) + textAt(width - 6) + 2 * cardGaps.box,
  };
}

function paragraph(kind: "before" | "text", text: string, type: CardType, isFirst: boolean, html = printedText(text)): CardBlock {
  return { kind, isFirst, html: `<p class="card-${kind === "text" ? "own" : kind}">${html}</p>`, heightAt: linesHigh(text, type, 600) };
}

/** A text in as many blocks as it takes for each to fit a card: sentence by sentence, and word by word where one sentence is too long. */
function divide(text: string, make: (text: string, index: number) => CardBlock, width: number, tallest: number): readonly CardBlock[] {
  const fits = (piece: string): boolean => make(piece, 0).heightAt(width) <= tallest;
  if (fits(text)) return [make(text, 0)];
  const units = text.split(/(?<=[.!?]) /).flatMap((sentence) => (fits(sentence) ? [sentence] : sentence.split(" ")));
  const pieces: string[] = [];
  for (const unit of units) {
    const longer = pieces.length === 0 ? unit : `${pieces.at(-1)!} ${unit}`;
    if (pieces.length > 0 && fits(longer)) pieces[pieces.length - 1] = longer;
    else pieces.push(unit);
  }
  return pieces.map(make);
}

/** Height of a text at any width. */
function linesHigh(text: string, type: CardType, weight: 400 | 600 = 400): (width: number) => number {
  const linesAt = lineCounter(text, type, weight);
  return (width) => linesAt(width) * type.line;
}

/** a, b … z, as a list has them. */
function letterOf(index: number): string {
  return String.fromCharCode(97 + (index % 26));
}

/** The words of a piece of HTML of ours. */
function plainOf(html: string): string {
  const bare = html.replace(/<[^>]*>/g, " ").replace(/\s+/g, " ").trim();
  return ["&", "<", ">", '"', "'"].reduce((text, sign) => text.replaceAll(escapeHtml(sign), sign), bare);
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
