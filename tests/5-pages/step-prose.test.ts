// What an author writes about a step in a file of its own stands in that step.
import { expect, test } from "vitest";
import { readDefinition } from "../../src/1-definition/index.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { drawFigures } from "../../src/4-figures/index.ts";
import { viewStages } from "../../src/5-pages/step-view.ts";
import { readProjectFile } from "../house/project-files.ts";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

test("prose/fold-card.md is shown in the step that folds the card, with its named values, and nowhere else", () => {
  const { definitions } = readDefinition({
    project: "example", file: "content/example/project.yaml", bytes: bytes(readProjectFile("examples/stub-album.yaml")), files: new Set(),
    prose: new Map([["prose/fold-card.md", bytes("Aim at a floor of {folded floor}.")]]),
  });
  const definition = definitions[0]!;
  const { model } = buildModel(definition);
  const { plan } = makePlan(definition, model);
  const steps = viewStages(plan, drawFigures({ definition, model, plan }), { topHeading: 5, pictures: new Set() }).flatMap((stage) => stage.steps);
  const written = steps.filter((step) => step.ownText?.includes("Aim at a floor of"));
  expect(written.map((step) => step.id)).toEqual(["fold-card"]);
  expect(written[0]!.ownText).toMatch(/Aim at a floor of \d[\d.]*\u00a0mm\./);
});
