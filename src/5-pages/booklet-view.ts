// A whole booklet as the templates show it: plain texts and ready HTML, in the order of the page.
import type { Drawings } from "../4-figures/types.ts";
import { wordingFor } from "../3-plan/wording.ts";
import { bindings } from "../catalogue/bindings.ts";
import type { Unit } from "../units/length.ts";
import { printDuration } from "../units/duration.ts";
import { viewFigure } from "./inline-figure.ts";
import type { FigureView } from "./inline-figure.ts";
import { viewLegend } from "./legend-view.ts";
import type { LegendEntry } from "./legend-view.ts";
import { renderProse } from "./markdown.ts";
import type { FigureRoom } from "./paper.ts";
import { projectPictures } from "./project-pictures.ts";
import { runningTitle } from "./running-title.ts";
import { stepList, viewCatalogueCaution, viewOwnCaution, viewStages } from "./step-view.ts";
import type { CautionView, StageView } from "./step-view.ts";
import { structuredData } from "./structured-data.ts";
import type { Booklet } from "./types.ts";
import type { AppendixRow, CutItem, MaterialNeed, MeasureBox, Sitting, Term, Tool, Trouble } from "../3-plan/types.ts";
import type { Finding } from "../2-model/types.ts";

/** One booklet as the templates see it: plain texts, and HTML where a field says so. */
export interface BookletView {
  readonly project: string;
  readonly title: string;
  /** The title as footers and lists print it: with the subtitle where another book of the same project has the same title. */
  readonly runningTitle: string;
  readonly subtitle: string | null;
  readonly summary: string;
  readonly author: { readonly name: string; readonly workshop: string | null };
  readonly revision: string;
  readonly language: string;
  readonly binding: string;
  readonly dual: boolean;
  /** The unit printed behind: in words, and as the class on its sizes has it. */
  readonly otherUnit: string;
  readonly otherUnitSign: Unit;
  readonly cover: FigureView | null;
  /** The drawing that names the parts; beside the words of the trade. */
  readonly namedParts: FigureView | null;
  /** All parts lifted off each other. */
  readonly liftedParts: FigureView | null;
  /** Drawings that no step and no list shows. */
  readonly moreDrawings: readonly FigureView[];
  readonly glance: readonly { readonly label: string; readonly text: string }[];
  readonly introduction: string | null;
  readonly closing: string | null;
  readonly hazards: readonly (CautionView & { readonly steps: string })[];
  readonly supervision: string;
  readonly deferral: string;
  readonly findings: readonly Finding[];
  readonly tools: readonly Tool[];
  readonly materials: readonly MaterialNeed[];
  readonly cutList: readonly (CutItem & { readonly sizes: string; readonly drawing: FigureView | null })[];
  readonly sittings: readonly (Sitting & { readonly steps: string; readonly time: string; readonly handsOn: string })[];
  readonly stages: readonly StageView[];
  readonly troubleshooting: readonly (Trouble & { readonly stepList: string })[];
  readonly glossary: readonly Term[];
  readonly measureYours: readonly MeasureBox[];
  readonly values: readonly AppendixRow[];
  readonly legend: readonly LegendEntry[];
  readonly structuredData: string;
}

const unitNames = { mm: "millimetres", in: "inches" } as const;

/** Everything a template shows of one booklet. */
export function viewBooklet(booklet: Booklet, others: readonly Booklet[] = [], room?: FigureRoom): BookletView {
  const { definition, model, plan, drawings } = booklet;
  const otherUnit = definition.units.governing === "mm" ? "in" : "mm";
  const words = wordingFor(definition.units);
  const setting = { topHeading: 3, pictures: new Set(projectPictures(booklet)) };
  // The cover has facts beside its drawing, the cut list several drawings on a page.
  const half = room && { ...room, height: room.height / 2 };
  const inStep = { ...setting, topHeading: 5 };
  const prose = (slot: string): string | null => {
    const text = plan.prose.get(slot);
    return text === undefined || text.trim() === "" ? null : renderProse(text, setting);
  };
  return {
    project: definition.project,
    title: definition.title,
    runningTitle: runningTitle(definition, others.filter((other) => other.folder === booklet.folder).map((other) => other.definition)),
    subtitle: definition.subtitle,
    summary: definition.summary,
    author: definition.author,
    revision: definition.revision,
    language: definition.language,
    binding: bindings[definition.binding].name,
    dual: definition.units.dual,
    otherUnit: unitNames[otherUnit],
    otherUnitSign: otherUnit,
    cover: figureIfDrawn(drawings, "finished-book", "cover", half),
    namedParts: figureIfDrawn(drawings, "named-parts", "words", room),
    liftedParts: figureIfDrawn(drawings, "lifted-parts", "parts", room),
    moreDrawings: unshownFigures(booklet, room),
    glance: viewGlance(booklet),
    introduction: prose("introduction"),
    closing: prose("closing"),
    hazards: [
      ...plan.safety.hazards.map((hazard) => ({
        ...viewCatalogueCaution(hazard),
        steps: stepList(hazard.steps),
      })),
      ...plan.safety.own.map(({ markdown, steps }) => ({ ...viewOwnCaution(markdown, inStep), steps: stepList(steps) })),
    ],
    supervision: plan.safety.supervision,
    deferral: plan.safety.deferral,
    findings: plan.findings,
    tools: plan.tools,
    materials: plan.materials,
    cutList: plan.cutList.map((item) => ({ ...item, sizes: words.sizes(item.part.height, item.part.width), drawing: figureIfDrawn(drawings, item.figure, `cut-${item.letter}`, half) })),
    sittings: plan.sittings.map((sitting) => ({
      ...sitting,
      steps: sitting.firstStep === sitting.lastStep ? String(sitting.firstStep) : `${sitting.firstStep}–${sitting.lastStep}`,
      time: printDuration(sitting.minutes),
      handsOn: printDuration(sitting.handsOnMinutes),
    })),
    stages: viewStages(plan, drawings, inStep, room),
    troubleshooting: plan.troubleshooting.map((trouble) => ({ ...trouble, stepList: stepList(trouble.steps) })),
    glossary: plan.glossary,
    measureYours: plan.measureYours,
    values: plan.values,
    legend: viewLegend([...drawings.figures.values()]),
    structuredData: structuredData(definition, model, plan),
  };
}

function viewGlance({ definition, model, plan }: Booklet): BookletView["glance"] {
  const words = wordingFor(definition.units);
  const { height, width, thickness } = model.finished;
  return [
    { label: "Finished size", text: `${words.sizes(height, width)}, ${words.size(thickness)} thick` },
    { label: "Hands-on time", text: printDuration(plan.handsOnMinutes) },
    { label: "Longest wait", text: plan.longestWaitMinutes === 0 ? "none" : printDuration(plan.longestWaitMinutes) },
    { label: "Sittings", text: String(plan.sittings.length) },
    { label: "Level", text: definition.level },
    { label: "Binding", text: bindings[definition.binding].name },
  ];
}

function unshownFigures({ plan, drawings }: Booklet, room: FigureRoom | undefined): readonly FigureView[] {
  const shown = new Set(["finished-book", "named-parts", "lifted-parts", ...plan.steps.map((step) => step.figure), ...plan.cutList.map((item) => item.figure)]);
  return [...drawings.figures.values()].filter((figure) => !shown.has(figure.id)).map((figure) => viewFigure(figure, "more", room));
}

function figureIfDrawn(drawings: Drawings, id: string, use: string, room: FigureRoom | undefined): FigureView | null {
  const figure = drawings.figures.get(id);
  return figure ? viewFigure(figure, use, room) : null;
}
