// The room and the people in it: tools to set out, a kit's packing list, hazards with who minds them, and the mistakes to look out for.
import type { Definition } from "../../1-definition/types.ts";
import type { Model } from "../../2-model/types.ts";
import type { ToolId } from "../../catalogue/tools.ts";
import type { Plan } from "../types.ts";
import { listInWords } from "../wording.ts";
import type { HazardLine, KitLine, MistakeLine, RoomLine } from "./types.ts";

/** Every tool of the steps: one for each maker, or as many as the class shares. */
export function listRoom(definition: Definition, plan: Plan, makers: number): readonly RoomLine[] {
  return plan.tools.map(({ id, name, note }) => {
    const has = definition.class!.tools.get(id as ToolId);
    const shared = has !== undefined && has < makers;
    const count = has ?? makers;
    const numbers = plan.steps.filter((step) => step.tools.includes(id)).map((step) => String(step.n));
    return { tool: name, count, shared, peopleEach: shared ? Math.ceil(makers / count) : 1, steps: listInWords(numbers), note };
  });
}

/** What goes into the bag of one maker: every cut part, what is bought in pieces, and the posts. */
export function listKit(plan: Plan, model: Model, definition: Definition): readonly KitLine[] {
  const parts = plan.cutList.map(({ letter, part, heightText, widthText, material }) => ({
    letter, name: part.name, count: part.count, size: `${heightText} × ${widthText}`, material,
  }));
  const posts = plan.materials.filter((material) => material.role === "posts").map((material) => ({
    letter: "", name: material.name, count: new Set(model.holes.map((hole) => hole.id)).size, size: material.pieces.join(", "), material: definition.materials["posts"]!.name,
  }));
  return [...parts, ...posts];
}

/** Each hazard with who could be hurt and what is done; the column of who checks is left to the teacher. */
export function listHazards(plan: Plan): readonly HazardLine[] {
  return plan.safety.hazards.map((hazard) => ({
    hazard: hazard.hazard,
    whoCouldBeHurt: `the maker at work in ${hazard.steps.length === 1 ? "step" : "steps"} ${listInWords(hazard.steps.map(String))}, and whoever stands near`,
    precaution: `${hazard.consequence} ${hazard.avoid}`,
  }));
}

/** The usual mistakes of all steps, each with how the teacher sees it in time. */
export function listMistakes(plan: Plan): readonly MistakeLine[] {
  return plan.steps.flatMap((step) => (step.mistake ? [{ step: step.n, title: step.title, check: step.check, sign: step.mistake.sign, repair: step.mistake.repair }] : []));
}
