// Texts as schemas: one line of plain text, or Markdown that keeps the place of each of its characters.
import { quoted } from "../units/read-number.ts";
import { defaultSentence, fallbackOf, leaf } from "./leaf.ts";
import type { Common, Field, LeafOptions, Reading } from "./leaf.ts";
import type { ScalarNode } from "./tree.ts";

/** Text on one line. Numbers are taken as they are written, so that `revision: 1.10` stays 1.10. */
export function text(options: Common<string | null> & { readonly most: number; readonly example: string }): Field<string> {
  return plainText<string>(options as Common<string> & { most: number; example: string });
}

/** Text on one line that is null when it is not written. */
export function optionalText(options: { readonly about: string; readonly most: number; readonly example: string }): Field<string | null> {
  return plainText<string | null>({ ...options, default: null });
}

function plainText<T extends string | null>(options: Common<T> & { readonly most: number; readonly example: string }): Field<T> {
  return leaf<T>({
    about: `${options.about}${defaultSentence(options.default)}`,
    expected: `text such as ${quoted(options.example)}`,
    example: options.example,
    json: { type: ["string", "number"], minLength: 1, maxLength: options.most, examples: [options.example] },
    ...fallbackOf(options),
    read: (node) => {
      const line = node.text.replace(/\s+/gu, " ").trim();
      const refused = refuseText(node.text, line.length, options.most, quoted(options.example));
      return refused ?? { ok: true, value: line as T };
    },
  });
}

/** Markdown, handed on as the node it is written in, because a caret may have to land inside it later. */
export function markdown(options: { readonly about: string; readonly most: number }): Field<ScalarNode> {
  return leaf<ScalarNode>(markdownLeaf(options));
}

/** Markdown that is null when it is not written. */
export function optionalMarkdown(options: { readonly about: string; readonly most: number }): Field<ScalarNode | null> {
  return leaf<ScalarNode | null>({ ...markdownLeaf(options), fallback: { value: null } });
}

function markdownLeaf(options: { readonly about: string; readonly most: number }): LeafOptions<ScalarNode> {
  return {
    about: `${options.about} Markdown; {named values} are filled in.`,
    expected: "text",
    example: "…",
    json: { type: ["string", "number"], minLength: 1, maxLength: options.most },
    read: (node) => refuseText(node.text, node.text.length, options.most, "a sentence") ?? { ok: true, value: node },
  };
}

function refuseText(written: string, characters: number, most: number, example: string): Extract<Reading<never>, { ok: false }> | null {
  if (written.trim() === "") return { ok: false, code: "value-missing", says: " is empty", hint: `write text such as ${example}` };
  const control = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ud800-\udfff]/u.exec(written);
  if (control) {
    const code = written.charCodeAt(control.index).toString(16).toUpperCase().padStart(4, "0");
    return { ok: false, code: "value-type", says: ` holds the character U+${code}, which cannot be printed`, hint: "take it out", start: control.index, end: control.index + 1 };
  }
  if (characters > most) return { ok: false, code: "value-range", says: ` is ${characters} characters long, but ${most} is the most`, hint: "shorten it; long texts belong into prose/*.md" };
  return null;
}
