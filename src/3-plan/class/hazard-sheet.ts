// The hazard sheet of a class: each hazard of the book with when it comes up, who could be hurt, what is done about it, and who checks.
import type { ClassSettings } from "../../1-definition/types.ts";
import { cautions } from "../../catalogue/cautions.ts";
import type { Caution, CautionId } from "../../catalogue/cautions.ts";
import { roomHazards } from "../../catalogue/hazards.ts";
import type { ToolId } from "../../catalogue/tools.ts";
import type { Plan, Step } from "../types.ts";
import { listInWords } from "../wording.ts";
import type { ClassSteps } from "./class-steps.ts";
import type { HazardLine, RoomLine } from "./types.ts";

const ids = new Map((Object.keys(cautions) as CautionId[]).map((id) => [cautions[id].hazard as string, id]));

/** The id under which the catalogue keeps a caution. */
export function cautionIdOf({ hazard }: Pick<Caution, "hazard">): CautionId {
  const id = ids.get(hazard);
  if (!id) throw new Error(`internal error: no caution of the catalogue says "${hazard}"`);
  return id;
}

/** What the sheet is made from. */
export interface HazardInput {
  readonly plan: Plan;
  readonly steps: ClassSteps;
  readonly room: readonly RoomLine[];
  readonly settings: ClassSettings;
  readonly makers: number;
}

/** Each hazard of the steps, gravest first as on the safety page of the booklet. */
export function listHazards(input: HazardInput): readonly HazardLine[] {
  return input.plan.safety.hazards.map((caution): HazardLine => {
    const own = roomHazards[cautionIdOf(caution)];
    return {
      signal: caution.signal,
      hazard: caution.hazard,
      when: whenInWords(caution.steps, input),
      whoCouldBeHurt: [{ who: "At work", how: own.maker }, { who: "Beside them", how: own.neighbours }, { who: "Also", how: own.others }],
      precautions: [`${caution.consequence} ${caution.avoid}`, own.room],
      check: own.check,
      counted: countInWords(own.counted, input.room),
    };
  });
}

/** What to ask everybody before the class, each question once. */
export function questionsToAsk(hazards: readonly Pick<Caution, "hazard">[]): readonly string[] {
  return [...new Set(hazards.flatMap((hazard) => roomHazards[cautionIdOf(hazard)].ask.split(/(?<=\?) /)).filter((question) => question !== ""))];
}

/** "step 2, before the class; steps 4 and 6, up to 13 people at a time". */
function whenInWords(numbers: readonly number[], { steps: { beforehand, inClass }, settings, makers }: HazardInput): string {
  const at = (steps: readonly Step[]): readonly Step[] => steps.filter((step) => numbers.includes(step.n));
  const named = (steps: readonly Step[]): string => `${steps.length === 1 ? "step" : "steps"} ${listInWords(steps.map((step) => String(step.n)))}`;
  const [before, during] = [at(beforehand), at(inClass)];
  const most = Math.max(0, ...during.map((step) => peopleAtOnce(step, settings, makers)));
  return [
    ...(before.length === 0 ? [] : [`${named(before)}, before the class`]),
    ...(during.length === 0 ? [] : [`${named(during)}, ${most === 1 ? "one person" : `up to ${most} people`} at a time`]),
  ].join("; ");
}

/** A tool that is shared keeps the others waiting. */
function peopleAtOnce(step: Step, { tools }: ClassSettings, makers: number): number {
  return Math.min(makers, ...step.tools.map((id) => tools.get(id as ToolId) ?? makers));
}

function countInWords(counted: readonly ToolId[], room: readonly RoomLine[]): string {
  const lines = room.filter((line) => counted.includes(line.id)).map((line) => `${line.count} × ${line.tool}`);
  return lines.length === 0 ? "" : `Count out and count back: ${lines.join("; ")}.`;
}
