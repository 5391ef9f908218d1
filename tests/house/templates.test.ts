// House rule: templates hold markup; they add, round and number nothing.
import { expect, test } from "vitest";
import { lineOf, projectFiles, readProjectFile } from "./project-files.ts";

const computingFilters = /\|\s*(?:round|int|float|abs|sum|length\s*[-+*/%])\b/;
const arithmetic = /\*\*|\/\/|[-+*/%]/;

function breachesIn(file: string, text: string): readonly string[] {
  const withoutComments = text.replace(/\{#[\s\S]*?#\}/g, (comment) => comment.replace(/[^\n]/g, " "));
  const expressions = [...withoutComments.matchAll(/\{\{([\s\S]*?)\}\}|\{%([\s\S]*?)%\}/g)];
  const breaches = expressions.flatMap((match) => {
    const written = (match[1] ?? match[2]!).replace(/^-|-$/g, " ");
    const bare = written.replace(/"(?:\\.|[^"\\])*"|'(?:\\.|[^'\\])*'/g, '""');
    if (!arithmetic.test(bare) && !computingFilters.test(bare)) return [];
    return [`${file}:${lineOf(text, match.index)}: a template computes: ${match[0].replace(/\s+/g, " ")}`];
  });
  return /^---js/.test(text) ? [...breaches, `${file}:1: the front matter holds a program`] : breaches;
}

const templates = projectFiles().filter((file) => file.endsWith(".njk"));

test("there are templates, and all of them stand under templates/", () => {
  expect(templates.length).toBeGreaterThan(3);
  expect(templates.filter((file) => !file.startsWith("templates/"))).toEqual([]);
});

test("no template computes", () => {
  expect(templates.flatMap((file) => breachesIn(file, readProjectFile(file)))).toEqual([]);
});

test("the rule finds arithmetic in outputs, conditions and settings, and lets strings, comments and white space control be", () => {
  for (const text of [
    "{{ width + 2 }}", "{{ loop.index - 1 }}", "{% if steps.length * 2 > 4 %}", "{% set half = width / 2 %}", "{{ n % 2 }}", "{{ n ** 2 }}", "{{ n // 2 }}", "{{ width | round }}",
    "{{ 'a' + b }}", "---js\n{}\n---",
  ]) expect(breachesIn("a.njk", text), text).toHaveLength(1);
  expect(breachesIn("a.njk", "\n{{ a\n- b }}")).toEqual(["a.njk:2: a template computes: {{ a - b }}"]);
  for (const text of ['{{- "a-b/c" | printed -}}', "{# 1 + 1 #}", "<p>1 + 1</p>", "{% if steps.length > 1 %}", "{{ 'it\\'s 3 / 4' }}", "{{ loop.index }}"]) expect(breachesIn("a.njk", text), text).toEqual([]);
});
