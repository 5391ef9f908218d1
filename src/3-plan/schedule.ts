// Sittings: where one maker, working the steps in order, must get up because something has to dry or time is up.
import type { Definition } from "../1-definition/types.ts";
import { overnightMinutes, printDuration } from "../units/duration.ts";
import type { DraftStep } from "./binding.ts";
import { longestIdleMinutes, waitAfter } from "./steps.ts";
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
    const overflows = ready + step.minutes - open.start > definition.bench.sittingMinutes;
    if (open.handsOn > 0 && (idle >= longestIdleMinutes || overflows)) {
      close(step.n - 1, idle >= longestIdleMinutes ? reason : `step ${step.n}, ${printDuration(step.minutes)}, no longer fits`);
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
