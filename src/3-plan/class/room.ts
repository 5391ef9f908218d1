// The room and its bags: tools to set out, what is packed for whom, and the mistakes to look out for.
import type { ClassSettings } from "../../1-definition/types.ts";
import { roomHazards } from "../../catalogue/hazards.ts";
import { tools } from "../../catalogue/tools.ts";
import type { ToolId } from "../../catalogue/tools.ts";
import type { Plan, Step } from "../types.ts";
import { listInWords } from "../wording.ts";
import type { Wording } from "../wording.ts";
import type { ClassSteps } from "./class-steps.ts";
import { cautionIdOf } from "./hazard-sheet.ts";
import type { Bag, KitLine, MistakeLine, RoomLine } from "./types.ts";

/** The tools that steps of the class use: one for each maker, or as many as the class shares. */
export function listRoom(plan: Plan, { inClass }: ClassSteps, settings: ClassSettings, makers: number): readonly RoomLine[] {
  return plan.tools.flatMap(({ id, name, note }): readonly RoomLine[] => {
    const steps = inClass.filter((step) => step.tools.includes(id));
    if (steps.length === 0) return [];
    const has = settings.tools.get(id as ToolId);
    const shared = has !== undefined && has < makers;
    const count = has ?? makers;
    return [{ id: id as ToolId, tool: name, count, shared, peopleEach: shared ? Math.ceil(makers / count) : 1, steps: listInWords(steps.map((step) => String(step.n))), note }];
  });
}

/** Tools that only whoever prepares the class needs. */
export function toolsBeforehand({ beforehand, inClass }: ClassSteps): readonly string[] {
  const used = (steps: readonly Step[]): ReadonlySet<string> => new Set(steps.flatMap((step) => step.tools));
  const later = used(inClass);
  return [...used(beforehand)].filter((id) => !later.has(id)).map((id) => tools[id as ToolId].name);
}

/** What goes into the bag of one maker: every part of the cut list, thread and posts. */
export function listKit(plan: Plan, say: Wording): readonly KitLine[] {
  const parts = plan.cutList.map(({ letter, part }) => ({ letter, name: part.name, count: part.count, size: say.sizes(part.height, part.width) }));
  const threads = plan.materials.filter(({ role }) => role === "thread").map(({ name, pieces }) => ({ letter: "", name, count: 1, size: pieces.join(", ") }));
  const posts = plan.materials.filter(({ role }) => role === "posts").map(({ name, quantity, pieces }) => ({ letter: "", name, count: Number(quantity), size: pieces.join(", ") }));
  return [...parts, ...threads, ...posts];
}

/** A bag for every set: the participants', the teacher's, the spare ones. */
export function listBags({ participants, teacherCopy, spares }: ClassSettings): readonly Bag[] {
  const numbered = (count: number, bag: (n: number) => Bag): readonly Bag[] => Array.from({ length: count }, (_, index) => bag(index + 1));
  return [
    ...numbered(participants, (n) => ({ mark: String(n), words: `kit ${n} of ${participants}` })),
    ...(teacherCopy ? [{ mark: "T", words: "teacher’s kit" }] : []),
    ...numbered(spares, (n) => ({ mark: `S${n}`, words: spares === 1 ? "spare kit" : `spare kit ${n} of ${spares}` })),
  ];
}

/** What stands on every bag because of what is in it. */
export function wordsOnBags(plan: Plan): readonly string[] {
  return plan.safety.hazards.map((hazard) => roomHazards[cautionIdOf(hazard)].onBag).filter((words) => words !== "");
}

/** The usual mistakes of all steps, each with how the teacher sees it in time. */
export function listMistakes(plan: Plan): readonly MistakeLine[] {
  return plan.steps.flatMap((step) => (step.mistake ? [{ step: step.n, title: step.title, check: step.check, sign: step.mistake.sign, repair: step.mistake.repair }] : []));
}
