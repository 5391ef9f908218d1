// The papers a booklet is printed on, as templates and stylesheets want them, and which file each print-out goes to.
import type { Definition, PaperId } from "../1-definition/types.ts";
import { papers } from "../catalogue/papers.ts";
import { toMillimetres } from "../units/length.ts";

/** A paper as style sheets want it. */
export interface PaperView {
  readonly id: PaperId;
  readonly name: string;
  /** Millimetres, upright. */
  readonly width: number;
  readonly height: number;
}

/** The paper of an id. */
export function viewPaper(id: PaperId): PaperView {
  const { name, width, height } = papers[id];
  return { id, name, width: toMillimetres(width), height: toMillimetres(height) };
}

/** File name without ending: the first paper of a project has the plain name, every other one carries its own. */
export function printName(definition: Definition, document: string, paper: PaperId): string {
  return definition.print.papers[0] === paper ? document : `${document}-${paper}`;
}
