// Sittings: where one maker, working the steps in order, must get up because something has to dry or time is up.
import type { Definition } from "../1-definition/types.ts";
import { overnightMinutes, printDuration } from "../units/duration.ts";
import type { DraftStep } from "./binding.ts";
import { latestAfter, longestIdleMinutes, waitAfter } from "./steps.ts";
import type { Sitting, Step } from "./types.ts";

interface OpenSitting {
  readonly firstStep: number;
  readonly start: number;
  handsOn: number;
}

/**
 * Walks the steps in their printed order with a clock. A step starts when the one before is done and everything it needs has set or dried.
 * A wait of an hour or more, or a step that no longer fits, ends the sitting; the next one is at least a night later.
 * This is one maker's order of work; the timetable of a class is another matter.
 */
export function splitIntoSittings(drafts: readonly DraftStep[], steps: readonly Step[], definition: Definition): { readonly sittings: readonly Sitting[]; readonly idleMinutes: number } {
  const finished = new Map<string, number>();
  const sittings: Sitting[] = [];
  let clock = 0;
  let idleMinutes = 0;
  let open: OpenSitting = { firstStep: 1, start: 0, handsOn: 0 };
  const close = (lastStep: number, endsBecause: string): void => {
    sittings.push({ n: sittings.length + 1, firstStep: open.firstStep, lastStep, handsOnMinutes: open.handsOn, minutes: clock - open.start, endsBecause });
  };

  for (const step of steps) {
    const needs = drafts.find((draft) => draft.id === step.id)?.needs ?? [];
    let ready = clock;
    let reason = "";
    for (const need of needs) {
      const at = (finished.get(need.step) ?? 0) + waitAfter(need.step, need.until, drafts, definition);
      if (at > ready) [ready, reason] = [at, `the ${need.what} must ${need.until === "set" ? "set" : "dry"} before step ${step.n}`];
    }
    const idle = ready - clock;
    const ahead = untilNothingIsWet(step, steps, drafts, definition);
    const overflows = ready + ahead.minutes - open.start > definition.bench.sittingMinutes;
    const isWetBehind = isFollower(step.id, drafts, definition);
    if (open.handsOn > 0 && !isWetBehind && (idle >= longestIdleMinutes || overflows)) {
      close(step.n - 1, idle >= longestIdleMinutes ? reason : `${ahead.last === step.n ? `step ${step.n}` : `steps ${step.n} to ${ahead.last}`}, ${printDuration(ahead.minutes)}, no longer ${ahead.last === step.n ? "fits" : "fit"}`);
      clock = Math.max(ready, clock + overnightMinutes);
      open = { firstStep: step.n, start: clock, handsOn: 0 };
    } else {
      idleMinutes += idle;
      clock = ready;
    }
    clock += step.minutes;
    open.handsOn += step.minutes;
    finished.set(step.id, clock);
  }
  close(steps.length, "the book is finished");
  return { sittings, idleMinutes };
}

/** A step whose adhesive another must find wet does not end a sitting: the number of that other one, or its own, and the minutes until that is done. */
function untilNothingIsWet(step: Step, steps: readonly Step[], drafts: readonly DraftStep[], definition: Definition): { readonly last: number; readonly minutes: number } {
  const follower = drafts.find((draft) => isFollower(draft.id, drafts, definition) && draft.follows!.some((each) => each.step === step.id));
  const last = follower ? steps.find(({ id }) => id === follower.id)!.n : step.n;
  return { last, minutes: steps.filter(({ n }) => n >= step.n && n <= last).reduce((sum, each) => sum + each.minutes, 0) };
}

function isFollower(id: string, drafts: readonly DraftStep[], definition: Definition): boolean {
  const follows = drafts.find((draft) => draft.id === id)?.follows ?? [];
  return follows.some(({ step, adhesive }) => latestAfter(step, adhesive, drafts, definition) !== null);
}
