// In every demo, whatever its binding: a caution stands in each step before a knife, scissors, needle, awl, punch, drill, hammer or weight is taken up.
import path from "node:path";
import { expect, test } from "vitest";
import { computeProject } from "../../src/build/compute.ts";
import { readContent } from "../../src/build/content.ts";
import { cautions } from "../../src/catalogue/cautions.ts";
import type { CautionId } from "../../src/catalogue/cautions.ts";
import type { Step } from "../../src/3-plan/types.ts";

const rules: readonly (readonly [words: RegExp, one: readonly CautionId[]])[] = [
  [/\b(?:craft knife|knife|scalpel)\b/i, ["knife"]],
  [/\bscissors\b/i, ["scissors"]],
  [/\bneedle\b(?!’s width)/i, ["needle"]],
  [/\b(?:awl|prick|pierce)\b/i, ["awl", "punch", "drill", "needle"]],
  [/\bdrill\b/i, ["drill"]],
  [/\bhollow punch\b/i, ["punch"]],
  [/\bhammer\b/i, ["hammer"]],
  [/\bweights?\b/i, ["weights", "press"]],
];

/** Everything that a step tells its reader to do, repairs and waits included. */
function wordsOf(step: Step, toolNames: readonly string[]): string {
  return [...step.action, step.check, step.mistake?.repair ?? "", step.wait?.text ?? "", ...toolNames].join(" | ").replace(/knitting needles?|its weight|a light weight of/gi, "");
}

const projects = await readContent(path.resolve(import.meta.dirname, "../../content"));

for (const project of projects) {
  test(`${project.name}: no sharp or heavy tool without its caution`, async () => {
    const { booklets } = await computeProject(project);
    const missing = booklets.flatMap(({ definition, plan }) => plan.steps.flatMap((step) => {
      const words = wordsOf(step, step.tools.map((id) => plan.tools.find((tool) => tool.id === id)?.name ?? id));
      const has = (id: CautionId): boolean => step.cautions.some((caution) => caution.hazard === cautions[id].hazard);
      return rules.filter(([asked, one]) => asked.test(words) && !one.some(has)).map(([asked]) => `${definition.project}, step ${step.n}: ${asked.exec(words)![0]}`);
    }));
    expect(missing).toEqual([]);
    // The rules are not met by finding nothing: every book needs at least one of these tools.
    expect(booklets.every(({ plan }) => plan.steps.some((step) => rules.some(([asked]) => asked.test(wordsOf(step, [])))))).toBe(true);
  });
}
