// The author's Markdown as pieces that know where each of their characters stands.
import { nearestOf } from "../problems/nearest.ts";
import type { Problem } from "../problems/problem.ts";
import { decodeText } from "./decode-text.ts";
import type { ScalarNode } from "./tree.ts";
import type { DefinitionSource, ProsePiece } from "./types.ts";

/** Slots for prose beside the steps. */
const freeSlots: readonly string[] = ["introduction", "closing"];

/** A text of the definition as a piece; blanks at its end are dropped. */
export function pieceFromNode(file: string, slot: string, node: ScalarNode): ProsePiece {
  const markdown = node.text.trimEnd();
  return { slot, markdown, place: { file, span: node.span }, offsets: node.offsets.slice(0, markdown.length) };
}

/** What the folder `prose/` holds, with the texts that problems may point into. */
export interface ProseFiles {
  readonly pieces: readonly ProsePiece[];
  readonly problems: readonly Problem[];
  readonly texts: ReadonlyMap<string, string>;
}

/** Reads `prose/*.md`: `introduction`, `closing`, or the id of a step; `steps` null when the binding is not known. */
export function readProse(source: DefinitionSource, steps: readonly string[] | null): ProseFiles {
  const pieces: ProsePiece[] = [];
  const problems: Problem[] = [];
  const texts = new Map<string, string>();
  const folder = source.file.slice(0, source.file.lastIndexOf("/") + 1);
  for (const [name, bytes] of [...source.prose].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const inProse = name.startsWith("prose/") ? name.slice("prose/".length) : name;
    const file = `${folder}prose/${inProse}`;
    const slot = inProse.replace(/\.md$/i, "");
    const decoded = decodeText(file, bytes);
    texts.set(file, decoded.text);
    problems.push(...decoded.problems);
    if (steps && !freeSlots.includes(slot) && !steps.includes(slot)) problems.push(unknownFile(file, slot, steps));
    // Line ends are made alike, so that Markdown reads the same on every machine; offsets still count the file's own characters.
    const markdown = decoded.text.replaceAll("\r\n", "\n").trimEnd();
    if (markdown.trim() === "") continue;
    pieces.push({ slot, markdown, place: { file, span: null }, offsets: keptOffsets(decoded.text).slice(0, markdown.length) });
  }
  for (const file of [...source.files].sort()) {
    if (/^prose\/[^/.][^/]*$/.test(file) && !/(?:\.md|~)$/i.test(file)) problems.push(notMarkdown(folder + file));
  }
  return { pieces, problems, texts };
}

function keptOffsets(text: string): readonly number[] {
  const offsets: number[] = [];
  for (let at = 0; at < text.length; at += 1) if (!text.startsWith("\r\n", at)) offsets.push(at);
  return offsets;
}

function unknownFile(file: string, slot: string, steps: readonly string[]): Problem {
  const near = nearestOf(slot, [...freeSlots, ...steps]);
  return {
    code: "step-file-unknown", severity: "error", place: { file, span: null },
    message: "this file belongs to no step of this binding",
    hint: near ? `did you mean ${near}.md?` : `name it ${freeSlots.join(".md, ")}.md or after a step: ${steps.join(", ")}`,
  };
}

function notMarkdown(file: string): Problem {
  return { code: "step-file-unknown", severity: "warning", place: { file, span: null }, message: "this file is not read, because it is not Markdown", hint: "give it the ending .md, or keep it elsewhere" };
}
