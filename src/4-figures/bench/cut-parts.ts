// Figure: every part of the cut list side by side at one scale, with its letter, count, size and grain.
import type { Part } from "../../2-model/types.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { group, label, labelType, moveItems, typeFor } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { bareGrainArrow, drawCell } from "./part-cells.ts";
import type { CellSpec, PartCell } from "./part-cells.ts";
import { sectionWords } from "./section-words.ts";

/** The figure on paper: its width, the height wished for and the gaps between cells and shelves, in millimetres. */
const room = { width: 165, height: 104, between: 5.5, shelves: 5.5 } as const;
/** Widest part on paper; the card for many stubs is broken. */
const widestPart = 118;
/** Largest scale: parts of a very small book need not fill the page. */
const largestFactor = 1 / 1.5;

const allParts = "All parts";

/** Which parts are shown, where they are cut in more than one step. */
export interface CutPartsSpec {
  readonly id: string;
  readonly title: string;
  readonly parts: (part: Part) => boolean;
  /** Height wished for on paper in millimetres, where the usual one is too much for so few parts. */
  readonly height?: number;
}

/** Figure `cut-parts`, or one of several with some of the parts each. */
export function drawCutParts(all: DrawingInput, spec: CutPartsSpec = { id: "cut-parts", title: allParts, parts: () => true }): FigureDraft {
  const input = { ...all, model: { ...all.model, parts: all.model.parts.filter(spec.parts) } };
  const { scale, cells, shelves } = chooseScale(input, spec.height ?? room.height);
  const words = sectionWords(input);
  const broken = input.model.parts.filter((_, index) => cells[index]!.broken).map((part) => part.name);
  const widened = input.model.parts.filter((_, index) => cells[index]!.widened).map((part) => part.name);
  return {
    id: spec.id,
    title: spec.title,
    caption: captionStart(input.model.parts, all.model.parts.length, spec.title, scale)
      + `${broken.length === 0 ? "" : ` Drawn shortened: ${broken.join(", ")}.`}${widened.length === 0 ? "" : ` Drawn wider than they are: ${widened.join(", ")}.`} ${input.unitNote}`,
    alternative: `The parts: ${input.model.parts.map((part) => `${words.part(part.id)}, ${part.count} ${part.count === 1 ? "piece" : "pieces"}, ${words.size(part.height)} high along the spine × ${words.size(part.width)} wide${hasGrain(input, part) ? `, grain along the ${part.grain}` : ""}`).join("; ")}.`,
    items: [...layShelves(shelves), ...legend(input, shelvesHeight(shelves))],
  };
}

/** What is seen, at which scale, and how to read a size and a letter: in the singular for a single part. */
function captionStart(shown: readonly Part[], partsInAll: number, title: string, { name }: Scale): string {
  const isOne = shown.length === 1;
  const what = isOne ? `${title} at` : `${shown.length === partsInAll ? allParts : "The parts"} at one scale,`;
  const counts = shown.some((part) => part.count > 1) ? "; ×2 means two pieces" : "";
  return `${what} ${name}${counts}. Height along the spine × width. Write the ringed letter on ${isOne ? "it" : "each piece"}.`;
}

interface Layout {
  readonly scale: Scale;
  readonly cells: readonly PartCell[];
  readonly shelves: readonly (readonly PartCell[])[];
}

/** The largest scale at which the parts, in the order of the cut list, stand on shelves within the room. */
function chooseScale(input: DrawingInput, height: number): Layout {
  const candidates = scales.filter(({ factor }) => factor <= largestFactor).map((scale) => {
    const cells = cellSpecs(input, scale.factor).map(drawCell);
    return { scale, cells, shelves: fillShelves(cells) };
  });
  return candidates.find(({ shelves }) => shelvesHeight(shelves) <= height) ?? candidates.at(-1)!;
}

function cellSpecs(input: DrawingInput, factor: number): readonly CellSpec[] {
  const { parts } = input.model;
  const words = parts.map((part) => [
    `${part.name} ×${part.count}`,
    `${input.number(part.height)} × ${input.number(part.width)}`,
    ...(part.readyMade ? ["ready-made"] : []),
  ]);
  const type = typeFor(words.flat(), labelType);
  // Ribbons are longer than everything else and say nothing by their length: they are no longer than the tallest other part.
  const tallest = Math.max(...parts.map((part) => (part.material === "ribbon" ? 0 : toMillimetres(part.height) * factor)), 20);
  return parts.map((part, index) => ({
    part, factor, type, words: words[index]!, letter: input.letter(part.id), hasGrain: hasGrain(input, part), longest: { width: widestPart, height: tallest },
  }));
}

function hasGrain(input: DrawingInput, part: Part): boolean {
  return part.grain !== "none" && input.definition.materials[part.material]!.grain !== "none";
}

/** In the order given, a new shelf whenever one is full. */
function fillShelves(cells: readonly PartCell[]): readonly (readonly PartCell[])[] {
  const shelves: PartCell[][] = [];
  let used = Infinity;
  for (const cell of cells) {
    if (used + room.between + cell.width > room.width) {
      shelves.push([]);
      used = -room.between;
    }
    shelves.at(-1)!.push(cell);
    used += room.between + cell.width;
  }
  return shelves;
}

function heightOf(shelf: readonly PartCell[]): { readonly above: number; readonly below: number } {
  return { above: Math.max(...shelf.map((cell) => cell.above)), below: Math.max(...shelf.map((cell) => cell.below)) };
}

function shelvesHeight(shelves: readonly (readonly PartCell[])[]): number {
  return shelves.reduce((sum, shelf) => sum + heightOf(shelf).above + heightOf(shelf).below + room.shelves, 0);
}

/** Every part stands with its foot on its shelf. */
function layShelves(shelves: readonly (readonly PartCell[])[]): readonly SceneItem[] {
  let top = 0;
  return shelves.map((shelf, index) => {
    const { above, below } = heightOf(shelf);
    const foot = top + above;
    top = foot + below + room.shelves;
    let left = 0;
    return group(`shelf ${index + 1}`, shelf.flatMap((cell) => {
      const moved = moveItems(cell.items, left, foot);
      left += cell.width + room.between;
      return moved;
    }));
  });
}

/** What the arrows mean, under the parts. */
function legend(input: DrawingInput, top: number): readonly SceneItem[] {
  if (!input.model.parts.some((part) => hasGrain(input, part))) return [];
  return [...bareGrainArrow("legend grain", point(1.5, top + 3.5), 7), label("legend words", "grain, along the height of the part", point(4.5, top + 3.5 + labelType * 0.3))];
}
