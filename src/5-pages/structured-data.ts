// The how-to as schema.org data for machines: only what the page itself says, nothing about ratings or cost.
import type { Definition } from "../1-definition/types.ts";
import type { Model } from "../2-model/types.ts";
import type { Plan, Step } from "../3-plan/types.ts";
import { scriptJson } from "./printed-text.ts";

/**
 * schema.org `HowTo` as JSON for a script element. `supply` is used up, `tool` is not; `performTime` is hands-on time.
 * There is no `totalTime`: how long it takes with every wait depends on when the reader sits down again. Source: schema.org/HowTo, read in API documentation generated from the vocabulary.
 */
export function structuredData(definition: Definition, model: Model, plan: Plan): string {
  const stages = [...new Set(plan.steps.map((step) => step.stage))];
  return scriptJson({
    "@context": "https://schema.org",
    "@type": "HowTo",
    name: definition.title,
    description: definition.summary,
    inLanguage: definition.language,
    author: { "@type": "Person", name: definition.author.name },
    version: definition.revision,
    performTime: isoDuration(plan.handsOnMinutes),
    supply: plan.materials.map((material) => ({ "@type": "HowToSupply", name: material.name, ...(material.quantity ? { description: material.quantity } : {}) })),
    tool: plan.tools.map((tool) => ({ "@type": "HowToTool", name: tool.name })),
    step: stages.map((stage) => ({
      "@type": "HowToSection",
      name: stage,
      itemListElement: plan.steps.filter((step) => step.stage === stage).map(howToStep),
    })),
    yield: `1 ${model.binding.replace("-", " ")}`,
  });
}

function howToStep(step: Step): object {
  return {
    "@type": "HowToStep",
    position: step.n,
    name: step.title,
    url: `#step-${step.id}`,
    itemListElement: step.action.map((text) => ({ "@type": "HowToDirection", text })),
  };
}

function isoDuration(minutes: number): string {
  return `PT${Math.round(minutes)}M`;
}
