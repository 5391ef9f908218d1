// Turns drafted steps into printed ones: numbers, sizes of the parts, cautions, what to wait for and what to do meanwhile.
import { cautions } from "../catalogue/cautions.ts";
import type { Caution, CautionId } from "../catalogue/cautions.ts";
import type { Adhesive, Definition } from "../1-definition/types.ts";
import type { Model } from "../2-model/types.ts";
import type { DraftStep } from "./binding.ts";
import { signalRank } from "./safety.ts";
import type { CutItem, Step, Wait } from "./types.ts";
import type { Wording } from "./wording.ts";

interface Bench {
  readonly definition: Definition;
  readonly model: Model;
  readonly say: Wording;
  readonly cutList: readonly CutItem[];
}

/** A wait of this many minutes or more is not sat out: the sitting ends. */
export const longestIdleMinutes = 60;

/** The drafted steps as printed, numbered in their order. */
export function finishSteps(drafts: readonly DraftStep[], bench: Bench): readonly Step[] {
  const numbers = new Map(drafts.map((draft, index) => [draft.id, index + 1]));
  return drafts.map((draft, index): Step => ({
    id: draft.id,
    n: index + 1,
    stage: draft.stage,
    title: draft.title,
    action: draft.action,
    sizes: [...draft.parts.map((id) => sizeOf(id, bench)), ...(draft.sizes ?? [])],
    table: draft.table ?? null,
    parts: draft.parts,
    tools: draft.tools,
    minutes: handsOnMinutes(draft, bench.definition),
    before: beforeInWords(draft, drafts, numbers, bench),
    adhesive: draft.glueing ? adhesiveNote(draft.glueing.job, bench) : null,
    cautions: [...cautionsOf(draft, bench.definition).map((id): Caution => cautions[id]).sort((a, b) => signalRank[a.signal] - signalRank[b.signal]), ...(draft.notices ?? []).map((notice): Caution => ({ signal: "NOTICE", ...notice }))],
    ownCautions: [],
    figure: draft.figure,
    picture: null,
    check: draft.check,
    mistake: draft.mistake,
    wait: waitOf(draft, drafts, numbers, bench),
    tip: null,
    ownText: null,
  }));
}

/** Hands-on minutes at the author's pace, in whole minutes. */
export function handsOnMinutes(draft: DraftStep, definition: Definition): number {
  const own = definition.stepChanges.find((change) => change.step === draft.id)?.minutes;
  return own ?? Math.ceil(draft.minutes * definition.bench.pace);
}

/** Minutes that must pass after a step until its glueing has set or dried; 0 for steps without adhesive. */
export function waitAfter(stepId: string, until: "set" | "dry", drafts: readonly DraftStep[], definition: Definition): number {
  const job = drafts.find((draft) => draft.id === stepId)?.glueing?.job;
  const adhesive = job === undefined ? null : definition.adhesives[job];
  if (!adhesive) return 0;
  return until === "set" ? adhesive.setMinutes : adhesive.dryMinutes;
}

/** Minutes within which a step must begin after the one that it follows; null where nothing is wet. What is open was laid on some minutes before that step's end. */
export function latestAfter(stepId: string, until: "open" | "soft", drafts: readonly DraftStep[], definition: Definition): number | null {
  const glueing = drafts.find((draft) => draft.id === stepId)?.glueing;
  const adhesive = glueing && definition.adhesives[glueing.job];
  if (!glueing || !adhesive || adhesive.openMinutes === null) return null;
  return until === "open" ? Math.max(0, adhesive.openMinutes - Math.ceil(glueing.openMinutes * definition.bench.pace)) : adhesive.setMinutes;
}

/** What must have set or dried, and what must still be wet. */
function beforeInWords(draft: DraftStep, drafts: readonly DraftStep[], numbers: ReadonlyMap<string, number>, { definition, say }: Bench): string {
  const dried = (draft.needs ?? []).map((need) => ({ ...need, minutes: waitAfter(need.step, need.until, drafts, definition) })).filter(({ minutes }) => minutes > 0).map((need) =>
    `Needs the ${need.what} (step ${numbers.get(need.step)}) ${need.until === "set" ? "to have set" : "to be dry"}: ${say.duration(need.minutes)} at least.`);
  const wet = (draft.follows ?? []).flatMap(({ step, adhesive }): readonly string[] => {
    const minutes = latestAfter(step, adhesive, drafts, definition);
    if (minutes === null) return [];
    return [`Begin ${minutes === 0 ? "at once after" : `within ${say.duration(minutes)} of`} step ${numbers.get(step)}, ${adhesive === "open" ? "while its adhesive is open" : "before its adhesive sets"}.`];
  });
  return [...dried, ...wet].join(" ");
}

/** A step's own cautions, and the one about vapour and fire where its adhesive gives off solvent. */
function cautionsOf(draft: DraftStep, definition: Definition): readonly CautionId[] {
  const solvent = draft.glueing !== undefined && definition.adhesives[draft.glueing.job]!.solvent;
  return solvent ? ["solvent", ...draft.cautions.filter((id) => id !== "solvent")] : draft.cautions;
}

function sizeOf(id: string, { model, say, cutList }: Bench): { readonly label: string; readonly text: string } {
  const part = model.parts.find((each) => each.id === id);
  if (!part) throw new Error(`internal error: a step names the unknown part "${id}"`);
  const letter = cutList.find((item) => item.part.id === id)?.letter;
  const count = part.count > 1 ? `${part.count} pieces, ` : "";
  return { label: letter ? `${part.name} (${letter})` : part.name, text: count + say.sizes(part.height, part.width) };
}

function adhesiveNote(job: string, { definition, say }: Bench): Step["adhesive"] {
  const adhesive = definition.adhesives[job];
  if (!adhesive) throw new Error(`internal error: no adhesive for "${job}"`);
  return { name: adhesive.name, note: timesInWords(adhesive, say) };
}

function timesInWords(adhesive: Adhesive, say: Wording): string {
  const open = adhesive.openMinutes === null ? "no hurry to close the joint" : `close the joint within ${say.duration(adhesive.openMinutes)}`;
  if (adhesive.setMinutes === 0 && adhesive.dryMinutes === 0) return `${open}; holds at once`;
  return `${open}; set in ${say.duration(adhesive.setMinutes)}, dry in ${say.duration(adhesive.dryMinutes)}, later in damp air`;
}

function waitOf(draft: DraftStep, drafts: readonly DraftStep[], numbers: ReadonlyMap<string, number>, { definition, say }: Bench): Wait | null {
  const dependents = drafts.flatMap((later) => (later.needs ?? []).filter((need) => need.step === draft.id).map((need) => ({
    n: numbers.get(later.id)!, until: need.until, minutes: waitAfter(draft.id, need.until, drafts, definition),
  }))).filter((each) => each.minutes > 0).sort((a, b) => a.n - b.n);
  const first = dependents[0];
  if (!first) return null;
  const last = dependents.reduce((longest, each) => (each.minutes > longest.minutes ? each : longest));
  const resting = draft.rest ? `Leave it ${draft.rest}` : "Leave it";
  const words = (each: typeof first): string => `${each.until === "set" ? "until it has set" : "until it is dry"}, at least ${say.duration(each.minutes)}, before step ${each.n}`;
  const n = numbers.get(draft.id)!;
  const between = drafts.slice(n, first.n - 1);
  const work = between.reduce((sum, step) => sum + handsOnMinutes(step, definition), 0);
  return {
    minutes: first.minutes,
    longestMinutes: last.minutes,
    kind: first.until,
    text: `${resting} ${words(first)}${last === first ? "" : `; ${words(last)}`}.`,
    meanwhile: meanwhileInWords(n, first.n, work, first.minutes, say),
  };
}

function meanwhileInWords(n: number, next: number, work: number, wait: number, say: Wording): string {
  if (next > n + 1) {
    const steps = next === n + 2 ? `step ${n + 1}` : `steps ${n + 1} to ${next - 1}`;
    return `Go on with ${steps}, about ${say.duration(work)}.`;
  }
  if (wait >= longestIdleMinutes) return "Nothing else can be done: tidy up and end the sitting here.";
  return "Wash the brush, clear the table of waste paper and read the next step.";
}
