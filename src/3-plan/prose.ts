// Author's prose: every `{name}` is looked up among the computed values and parts; an unknown name is a problem with its place.
import type { Definition, ProsePiece } from "../1-definition/types.ts";
import type { Model } from "../2-model/types.ts";
import { nearestOf } from "../problems/nearest.ts";
import type { Problem } from "../problems/problem.ts";
import { printValue } from "./appendix.ts";
import type { Wording } from "./wording.ts";

/** Fills the author's texts for one book, and gathers the names that no value bears. */
export interface Prose {
  /** Markdown with every name filled in. */
  fill(piece: ProsePiece): string;
  /** Grows while pieces are filled. */
  readonly problems: readonly Problem[];
}

/** Look-up only, no code: `{spine strip.width}`, `{spine strip width}`, `{page paper.count}`, `{card.size}`. `\{` is a plain brace. */
export function openProse(definition: Definition, model: Model, say: Wording): Prose {
  const known = namesOf(definition, model, say);
  const problems: Problem[] = [];
  const fill = (piece: ProsePiece): string =>
    piece.markdown.replace(/\\([{}])|\{([^{}\n]*)\}/g, (whole, brace: string | undefined, name: string | undefined, at: number) => {
      if (brace) return brace;
      const text = known.get(plainName(name!));
      if (text !== undefined) return text;
      problems.push(unknownName(name!, piece, at, whole.length, known.keys()));
      return whole;
    });
  return { fill, problems };
}

/** Introduction, closing and the notes to steps, filled, by slot; several pieces in one slot follow each other. */
export function fillProse(definition: Definition, prose: Prose): ReadonlyMap<string, string> {
  const bySlot = new Map<string, string>();
  for (const piece of definition.prose) {
    const before = bySlot.get(piece.slot);
    bySlot.set(piece.slot, before === undefined ? prose.fill(piece) : `${before}\n\n${prose.fill(piece)}`);
  }
  return bySlot;
}

/** Warnings for texts that belong to a step which this book does not have: they are kept, and printed once it has. */
export function findUnprintedProse(definition: Definition, steps: readonly string[]): readonly Problem[] {
  return definition.prose.filter(({ slot }) => slot !== "introduction" && slot !== "closing" && !steps.includes(slot)).map(({ slot, place }) => ({
    code: "step-file-unknown", severity: "warning", place,
    message: `this text is not printed, because this book has no step "${slot}"`,
    hint: "switch on what the step belongs to, or move the text to another step",
  }));
}

function namesOf(definition: Definition, model: Model, say: Wording): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  for (const value of model.values.values()) names.set(value.name, printValue(value, definition, definition.units.dual));
  for (const part of model.parts) {
    names.set(`${part.name} height`, say.size(part.height));
    names.set(`${part.name} width`, say.size(part.width));
    names.set(`${part.name} thickness`, say.thickness(part.thickness));
    names.set(`${part.name} size`, say.sizes(part.height, part.width));
    names.set(`${part.name} count`, String(part.count));
    names.set(`${part.name} material`, definition.materials[part.material]!.name);
  }
  names.set("finished size", say.sizes(model.finished.height, model.finished.width));
  for (const side of ["height", "width", "thickness"] as const) names.set(`finished ${side}`, say.size(model.finished[side]));
  names.set("title", definition.title);
  return names;
}

function plainName(name: string): string {
  return name.trim().toLowerCase().replaceAll(".", " ").replaceAll("-", " ").replace(/\s+/g, " ");
}

function unknownName(name: string, piece: ProsePiece, at: number, length: number, known: Iterable<string>): Problem {
  const nearest = nearestOf(plainName(name), known);
  const start = piece.offsets[at];
  const end = piece.offsets[at + length - 1];
  return {
    code: "name-unknown", severity: "error",
    message: `no computed value is called "${name.trim()}"`,
    hint: nearest ? `did you mean {${nearest}}? The appendix of the booklet lists every name` : "the appendix of the booklet lists every name; write \\{ for a plain brace",
    place: { file: piece.place.file, span: start === undefined || end === undefined ? piece.place.span : { start, end: end + 1 } },
  };
}
