// The safety page: every hazard of the steps gathered, with the steps it belongs to.
import { deferral } from "../catalogue/cautions.ts";
import type { Caution, SignalWord } from "../catalogue/cautions.ts";
import type { SafetySheet, Step } from "./types.ts";

/** Gravest first: the order in which cautions are printed. */
export const signalRank: Readonly<Record<SignalWord, number>> = { DANGER: 0, WARNING: 1, CAUTION: 2, NOTICE: 3 };

/** Injury hazards only, gravest first; NOTICE concerns the work, not people, and stays in its step. */
export function gatherSafety(steps: readonly Step[], supervision: string): SafetySheet {
  const hazards = new Map<string, { readonly caution: Caution; readonly steps: number[] }>();
  for (const step of steps) {
    for (const caution of step.cautions) {
      if (caution.signal === "NOTICE") continue;
      const entry = hazards.get(caution.hazard) ?? { caution, steps: [] };
      entry.steps.push(step.n);
      hazards.set(caution.hazard, entry);
    }
  }
  return {
    hazards: [...hazards.values()].sort((a, b) => signalRank[a.caution.signal] - signalRank[b.caution.signal]).map(({ caution, steps: at }) => ({ ...caution, steps: at })),
    own: gatherOwn(steps),
    supervision,
    deferral,
  };
}

/** The author's cautions, each once; a NOTICE concerns the work and stays in its step. */
function gatherOwn(steps: readonly Step[]): SafetySheet["own"] {
  const own = new Map<string, number[]>();
  for (const step of steps) {
    for (const markdown of step.ownCautions) {
      if (/^\s*NOTICE\b/.test(markdown)) continue;
      own.set(markdown, [...(own.get(markdown) ?? []), step.n]);
    }
  }
  return [...own].map(([markdown, at]) => ({ markdown, steps: at }));
}
