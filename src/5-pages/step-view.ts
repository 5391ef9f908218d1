// One step as the templates show it: everything looked up and put into blocks, nothing left to decide there.
import type { CutItem, Plan, Step, StepTable } from "../3-plan/types.ts";
import { capital, listInWords } from "../3-plan/wording.ts";
import type { Drawings } from "../4-figures/types.ts";
import type { Caution, SignalWord } from "../catalogue/cautions.ts";
import { printDuration } from "../units/duration.ts";
import { viewFigure } from "./inline-figure.ts";
import type { FigureView } from "./inline-figure.ts";
import { renderProse } from "./markdown.ts";
import type { ProseSetting } from "./markdown.ts";
import type { FigureRoom } from "./paper.ts";
import { printedText } from "./printed-text.ts";

/** A caution ready to show. */
export interface CautionView {
  readonly signal: SignalWord;
  /** Whether a person may be hurt: only then the alert symbol stands beside the word. */
  readonly injury: boolean;
  /** The words as HTML. */
  readonly html: string;
}

/** A step ready to show. */
export interface StepView {
  readonly id: string;
  readonly n: number;
  readonly title: string;
  readonly minutes: string;
  readonly before: string;
  readonly parts: readonly string[];
  readonly tools: readonly string[];
  readonly cautions: readonly CautionView[];
  readonly action: readonly string[];
  readonly ownText: string | null;
  readonly sizes: readonly { readonly label: string; readonly text: string }[];
  readonly table: StepTable | null;
  readonly adhesive: { readonly name: string; readonly note: string } | null;
  readonly check: string;
  readonly mistake: { readonly sign: string; readonly repair: string } | null;
  readonly tip: string | null;
  readonly picture: { readonly file: string; readonly alternative: string } | null;
  readonly figure: FigureView | null;
  readonly wait: { readonly kind: string; readonly length: string; readonly text: string; readonly meanwhile: string } | null;
}

/** A heading with its steps. */
export interface StageView {
  readonly id: string;
  readonly title: string;
  readonly steps: readonly StepView[];
}

const waitWords = { set: "to set", dry: "to dry", press: "in the press" } as const;

/** Steps under the headings of their stages, in order. A stage that comes back later gets a heading again. */
export function viewStages(plan: Plan, drawings: Drawings, setting: ProseSetting, room?: FigureRoom): readonly StageView[] {
  const stages: { id: string; title: string; steps: StepView[] }[] = [];
  for (const step of plan.steps) {
    if (stages.at(-1)?.title !== step.stage) stages.push({ id: `stage-${stages.length + 1}`, title: step.stage, steps: [] });
    stages.at(-1)!.steps.push(viewStep(step, plan, drawings, setting, room));
  }
  return stages;
}

function viewStep(step: Step, plan: Plan, drawings: Drawings, setting: ProseSetting, room: FigureRoom | undefined): StepView {
  const figure = step.figure === null ? null : drawings.figures.get(step.figure);
  if (figure === undefined) throw new Error(`internal error: step ${step.n} asks for the drawing "${step.figure}", which nobody draws`);
  const prose = (text: string | null): string | null => (text === null ? null : renderProse(text, setting));
  return {
    id: step.id,
    n: step.n,
    title: step.title,
    minutes: printDuration(step.minutes),
    before: step.before,
    // A part whose size the step repeats is named there.
    parts: step.parts.filter((part) => !isSized(part, step, plan.cutList)).map((part) => nameOfPart(part, plan.cutList)),
    tools: step.tools.map((tool) => plan.tools.find((known) => known.id === tool)?.name ?? tool),
    cautions: [
      ...step.cautions.map(viewCatalogueCaution),
      ...step.ownCautions.map((text) => viewOwnCaution(text, setting)),
    ],
    action: step.action,
    // A step has the author's own text when it was added, and a file in prose/ when it is the binding's.
    ownText: prose(step.ownText ?? plan.prose.get(step.id) ?? null),
    sizes: step.sizes,
    table: step.table,
    adhesive: step.adhesive,
    check: step.check,
    mistake: step.mistake,
    tip: prose(step.tip),
    picture: step.picture,
    figure: figure === null ? null : viewFigure(figure, `step-${step.n}`, room),
    wait: step.wait && { ...step.wait, kind: waitWords[step.wait.kind], length: printDuration(step.wait.minutes) },
  };
}

/** A caution from its signal word and its words as HTML. */
export function viewCaution(signal: SignalWord, html: string): CautionView {
  return { signal, injury: signal !== "NOTICE", html };
}

/** A caution of the catalogue, its three sentences one after the other. */
export function viewCatalogueCaution({ signal, hazard, consequence, avoid }: Caution): CautionView {
  return viewCaution(signal, printedText(sentences(hazard, consequence, avoid)));
}

/** An author's caution may begin with its signal word ("NOTICE: …"); without one it is a CAUTION. */
export function viewOwnCaution(text: string, setting: ProseSetting): CautionView {
  const [, word, rest] = /^\s*(DANGER|WARNING|CAUTION|NOTICE)\b[:.!\s–-]*([\s\S]*)$/.exec(text) ?? [];
  return viewCaution((word as SignalWord | undefined) ?? "CAUTION", renderProse(rest ?? text, setting));
}

/** Phrases joined into sentences: each begins with a capital and ends with a full stop. */
export function sentences(...phrases: readonly string[]): string {
  return phrases
    .map((phrase) => phrase.trim())
    .filter((phrase) => phrase !== "")
    .map((phrase) => capital(phrase) + (/[.!?]$/.test(phrase) ? "" : "."))
    .join(" ");
}

/** "step 4", "steps 4, 7 and 9"; empty for none. */
export function stepList(steps: readonly number[]): string {
  if (steps.length === 0) return "";
  return `${steps.length === 1 ? "step" : "steps"}\u00a0${listInWords(steps.map(String))}`;
}

function isSized(part: string, step: Step, cutList: readonly CutItem[]): boolean {
  const item = cutList.find((candidate) => candidate.part.id === part);
  return item !== undefined && step.sizes.some(({ label }) => label === `${item.part.name} (${item.letter})`);
}

function nameOfPart(part: string, cutList: readonly CutItem[]): string {
  const item = cutList.find((candidate) => candidate.part.id === part || candidate.letter === part);
  return item ? `${item.letter}\u00a0${item.part.name}` : part;
}
