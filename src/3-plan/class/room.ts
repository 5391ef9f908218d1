// The room and the people in it: tools to set out, a kit's packing list, hazards with who minds them, and the mistakes to look out for.
import type { Definition } from "../../1-definition/types.ts";
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

/** What goes into the bag of one maker: every part of the cut list, thread and posts. */
export function listKit(plan: Plan): readonly KitLine[] {
  const parts = plan.cutList.map(({ letter, part, heightText, widthText }) => ({ letter, name: part.name, count: part.count, size: `${heightText} × ${widthText}` }));
  const threads = plan.materials.filter(({ role }) => role === "thread").map(({ name, pieces }) => ({ letter: "", name, count: 1, size: pieces.join(", ") }));
  const posts = plan.materials.filter(({ role }) => role === "posts").map(({ name, quantity, pieces }) => ({ letter: "", name, count: Number(quantity), size: pieces.join(", ") }));
  return [...parts, ...threads, ...posts];
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
