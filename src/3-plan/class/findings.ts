// Findings about the time of a class: it does not fit, a queue outlasts its step, a step pauses.
import { shortToolName } from "../../catalogue/tools.ts";
import type { Definition } from "../../1-definition/types.ts";
import type { Finding } from "../../2-model/types.ts";
import type { Problem } from "../../problems/problem.ts";
import { printDuration } from "../../units/duration.ts";
import type { ClassActivities, ClassTimetable } from "../timetable/class-types.ts";
import { listInWords } from "../wording.ts";
import { makersOf } from "./activities.ts";
import type { TimetableInput } from "./activities.ts";
import { shareOutSteps } from "./class-steps.ts";
import type { Remedy } from "./remedies.ts";
import { blameInWords } from "./time-words.ts";

/** A queue is worth a word when the last must wait longer than the step takes: from three people at one tool on. */
const peopleInQueue = 3;

/** Everything about time that the teacher should know before the class meets. */
export function findClassFindings(input: TimetableInput, activities: ClassActivities, made: ClassTimetable, remedies: readonly Remedy[]): readonly Finding[] {
  return [...(made.fits ? [] : [doesNotFit(input, made, remedies)]), ...longQueues(input), ...(made.fits ? pauses(input, activities, made) : [])];
}

/** The warnings among them as problems with their place in the file; a default stands where nothing was written. */
export function problemsOfClass(findings: readonly Finding[], { file, places }: Pick<Definition, "file" | "places">): readonly Problem[] {
  return findings.filter(({ severity }) => severity === "warn").map(({ message, consequence, remedy, path }) => ({
    code: "class-impossible", severity: "warning", message: `${message}; ${consequence}`, hint: remedy, place: places.get(path!) ?? { file, span: null },
  }));
}

function doesNotFit({ settings, steps }: TimetableInput, { blame, blamedTogether, proven }: ClassTimetable, remedies: readonly Remedy[]): Finding {
  const count = settings.sessions.length;
  return {
    code: "class-does-not-fit", severity: "warn", where: "the class", path: "class/sessions",
    message: `${proven ? "the steps do not fit" : "no timetable was found that fits"} into ${count === 1 ? "the session" : `the ${count} sessions`}: ${blame.map((each) => blameInWords(each, steps)).join(blamedTogether ? ", and " : "; or ")}`,
    consequence: "not everybody finishes the book",
    remedy: remedies.length === 0 ? "plan more sessions, with a night between glueing and the steps that need it dry" : `it fits ${remedies.map(({ words }) => words).join("; or ")}`,
  };
}

/** One for each shared tool, at the step in which its queue is longest. */
function longQueues({ settings, steps, drafts }: TimetableInput): readonly Finding[] {
  const makers = makersOf(settings);
  return [...settings.tools].flatMap(([id, count]): readonly Finding[] => {
    const turns = Math.ceil(makers / count);
    const using = shareOutSteps(steps, drafts, settings).inClass.filter((step) => step.tools.includes(id));
    const longest = using.reduce((best, step) => (best === null || step.minutes > best.minutes ? step : best), null as (typeof steps)[number] | null);
    if (turns < peopleInQueue || !longest) return [];
    return [{
      code: "queue-outlasts-step", severity: "note", where: `step ${longest.n}, ${longest.title}`, path: "class/tools",
      message: `${count} for ${makers} people (${shortToolName(id)}) make ${turns} turns: the last begins ${printDuration((turns - 1) * longest.minutes)} after the first, for a step of ${printDuration(longest.minutes)}`,
      consequence: "whoever waits needs other work",
      remedy: `let the groups go on with other steps as in the timetable; with ${Math.ceil(makers / 2)} nobody waits longer than the step takes`,
    }];
  });
}

/** Steps into which a break or a night falls. */
function pauses({ steps }: TimetableInput, { steps: all, groups: count }: ClassActivities, { slots }: ClassTimetable): readonly Finding[] {
  const divided = [...new Set(all.flatMap(({ part }) => (part ? [part.of] : [])))];
  return divided.flatMap((of): readonly Finding[] => {
    const ids = all.filter(({ part }) => part?.of === of).map(({ id }) => id);
    const work = slots.filter(({ kind, step }) => kind === "work" && step !== null && ids.includes(step));
    const paused = work.filter((slot) => {
      const next = ids[ids.indexOf(slot.step!) + 1];
      return next !== undefined && !work.some((other) => other.step === next && other.group === slot.group && other.session === slot.session && other.start === slot.end);
    });
    const groups = [...new Set(paused.map(({ group }) => group! + 1))].sort((a, b) => a - b);
    if (groups.length === 0) return [];
    const step = steps.find(({ id }) => id === of)!;
    const minutes = all.filter(({ part }) => part?.of === of).reduce((sum, each) => sum + each.minutes, 0);
    return [{
      code: "step-pauses", severity: "note", where: `step ${step.n}, ${step.title}`, path: "class/breaks",
      message: `the step takes ${minutes === step.minutes ? "" : "a group "}${printDuration(minutes)}${minutes === step.minutes ? "" : ", taking turns"}; ${count === 1 ? "the class pauses" : groups.length === count ? "every group pauses" : `${groups.length === 1 ? "group" : "groups"} ${listInWords(groups.map(String))} ${groups.length === 1 ? "pauses" : "pause"}`} in the middle of it`,
      consequence: "work lies half done for a break or a night",
      remedy: "nothing in it is glued: say before the pause where to stop, and have the pieces laid together with the maker's name",
    }];
  });
}
