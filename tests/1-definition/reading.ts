// Shortcuts for tests of phase 1: a sound definition to change, and reading it from text.
import { readDefinition } from "../../src/1-definition/index.ts";
import type { Definition, DefinitionResult } from "../../src/1-definition/types.ts";

/** The keys without which nothing is read; sizes of an invented album. */
export const head = `benchleaf: 1
binding: stub album
title: Invented album
summary: An invented album for a test.
author: {name: I. Nvented}
`;

/** The smallest sound definition. */
export const sound = `${head}units: mm
book:
  stubs: 7
  boards: {height: 251 mm, width: 187 mm}
`;

const encoder = new TextEncoder();

/** What reading gives for texts of stub albums, such as nearly all in this room. */
export interface AlbumResult extends DefinitionResult {
  readonly definitions: readonly Definition<"stub-album">[];
}

/** Reads a stub album's definition from text or bytes, with the other files of its folder and its prose. */
export function read(text: string | Uint8Array, folder: { readonly files?: readonly string[]; readonly prose?: Readonly<Record<string, string>> } = {}): AlbumResult {
  return readAny(text, folder) as AlbumResult;
}

/** The same for a definition of any binding. */
export function readAny(text: string | Uint8Array, folder: { readonly files?: readonly string[]; readonly prose?: Readonly<Record<string, string>> } = {}): DefinitionResult {
  return readDefinition({
    project: "invented",
    file: "content/invented/project.yaml",
    bytes: typeof text === "string" ? encoder.encode(text) : text,
    files: new Set(folder.files ?? []),
    prose: new Map(Object.entries(folder.prose ?? {}).map(([name, markdown]) => [name, encoder.encode(markdown)])),
  });
}

/** Code and marked text of every problem: what the carets stand under. */
export function marked(text: string, folder?: Parameters<typeof read>[1]): readonly string[] {
  const { problems, texts } = read(text, folder);
  return problems.map(({ code, place }) => `${code} ${place.span ? texts.get(place.file)!.slice(place.span.start, place.span.end) : "(file)"}`);
}
