// Which pages each booklet has: plain data for Eleventy's templates, one entry a page.
import path from "node:path";
import type { Definition, PaperId } from "../1-definition/types.ts";
import { cautions } from "../catalogue/cautions.ts";
import { documents as known, documentIds } from "../catalogue/documents.ts";
import type { DocumentId } from "../catalogue/documents.ts";
import { foldedFrom } from "../catalogue/papers.ts";
import { viewBooklet } from "./booklet-view.ts";
import { buyingFile } from "./buying-csv.ts";
import type { BookletView } from "./booklet-view.ts";
import { viewCards } from "./cards/card-view.ts";
import type { CardSet } from "./cards/card-view.ts";
import { viewClass } from "./class-view.ts";
import type { ClassView } from "./class-view.ts";
import { viewLabels } from "./label-document.ts";
import type { LabelsView } from "./label-document.ts";
import { figureRoom, pageRoom, printName, viewPaper } from "./paper.ts";
import type { FigureRoom, PageRoom, PaperView } from "./paper.ts";
import { viewCatalogueCaution } from "./step-view.ts";
import type { CautionView } from "./step-view.ts";
import { viewSheets, viewTemplates } from "./template-view.ts";
import type { SheetView, TemplateView } from "./template-view.ts";
import type { Booklet, FoldJob, PrintJob } from "./types.ts";

/** One page to render. */
export interface PageDocument {
  /** Path of the page below the output folder, with forward slashes. */
  readonly path: string;
  /** How to get from the page to the output folder. */
  readonly root: string;
  readonly booklet: BookletView;
}

/** A page that is printed too. */
export interface PrintDocument extends PageDocument {
  readonly paper: PaperView;
  /** Which style sheets come last. */
  readonly looks: { readonly isNarrow: boolean; readonly isLarge: boolean; readonly isGrey: boolean };
  /** The room of a page for steps that are shared out to pages when they are printed; null where they break as they come. */
  readonly stepRoom: PageRoom | null;
  /** How the sheets are folded into a booklet; null for pages that are printed as they are. */
  readonly fold: FoldJob | null;
  /** Cautions for whoever folds and sews the print-out. */
  readonly foldCautions: readonly CautionView[];
  /** The handout on the same paper, beside this page: what print-outs that are no reading matter point to; null when none is made. */
  readonly handout: string | null;
}

/** The templates of a booklet on one paper. */
export interface TemplateDocument extends PrintDocument {
  readonly templates: readonly TemplateView[];
  readonly sheets: readonly SheetView[];
}

/** The bench cards of a booklet on one paper. */
export interface CardDocument extends PrintDocument {
  readonly cards: CardSet;
}

/** A document for the teacher of a class. */
export interface ClassDocument extends PrintDocument {
  readonly class: ClassView;
  /** The buying list as a table, from the page. */
  readonly buying: string;
}

/** The sheets of labels for the bags of a class. */
export interface LabelDocument extends PageDocument, Pick<PrintDocument, "looks" | "fold"> {
  readonly labels: LabelsView;
}

/** The how-to page of a booklet, with what it links to. */
export interface HowToDocument extends PageDocument {
  readonly prints: readonly { readonly label: string; readonly pdf: string | null; readonly html: string; readonly note: string }[];
  /** The buying list as a table for spreadsheets; null without a class. */
  readonly buying: string | null;
  readonly drawings: readonly { readonly label: string; readonly svg: string; readonly dxf: string }[];
}

/** All pages to render, by kind. */
export interface Documents {
  readonly howTos: readonly HowToDocument[];
  readonly handouts: readonly PrintDocument[];
  readonly benchCards: readonly CardDocument[];
  readonly templateSheets: readonly TemplateDocument[];
  readonly booklets: readonly PrintDocument[];
  readonly classPlans: readonly ClassDocument[];
  readonly kitSlips: readonly ClassDocument[];
  readonly kitLabels: readonly LabelDocument[];
}

/** All pages of all booklets, in order. Without prints the how-to pages link to the pages that would be printed, and to no PDF. */
export function makeDocuments(booklets: readonly Booklet[], { withPrints }: { readonly withPrints: boolean }): Documents {
  const views = new Map<string, BookletView>();
  const viewFor = (booklet: Booklet, room?: FigureRoom): BookletView => {
    const key = `${booklet.definition.project} ${JSON.stringify(room)}`;
    if (!views.has(key)) views.set(key, viewBooklet(booklet, booklets, room));
    return views.get(key)!;
  };
  const editions = booklets.flatMap((booklet) => booklet.definition.print.papers.map((paper) => ({ booklet, paper })));
  const wanted = (document: DocumentId): typeof editions => editions.filter(({ booklet, paper }) => isMade(booklet, document, paper));
  const page = (document: DocumentId, { booklet, paper }: (typeof editions)[number], pagePaper = viewPaper(paper)): PrintDocument => {
    const { print } = booklet.definition;
    const isLarge = print.isLarge && document === "handout";
    return {
      path: `${booklet.definition.project}/${printName(booklet.definition, document, paper)}.html`,
      root: "../",
      booklet: viewFor(booklet, pagePaper.isNarrow || isLarge ? figureRoom(pagePaper, isLarge) : undefined),
      paper: pagePaper,
      looks: { isNarrow: pagePaper.isNarrow, isLarge, isGrey: print.ink === "grey" },
      stepRoom: document === "handout" && !isLarge ? pageRoom(pagePaper) : null,
      fold: document === "booklet" ? { sheet: paper, thickness: print.paperThickness } : null,
      foldCautions: document === "booklet" ? sewingCautions() : [],
      handout: print.documents.has("handout") ? `${printName(booklet.definition, "handout", paper)}.${withPrints ? "pdf" : "html"}` : null,
    };
  };
  const forTeacher = (document: DocumentId): ClassDocument[] =>
    wanted(document).map((edition) => ({ ...page(document, edition), class: viewClass(edition.booklet, roomOnPaper(edition.paper))!, buying: buyingFile }));
  return {
    howTos: booklets.map((booklet) => viewHowTo(booklet, viewFor(booklet), withPrints)),
    handouts: wanted("handout").map((edition) => page("handout", edition)),
    benchCards: wanted("bench-cards").map((edition) => ({ ...page("bench-cards", edition), cards: viewCards(drawnSteps(edition.booklet, viewFor(edition.booklet)), edition.paper) })),
    templateSheets: wanted("templates").map((edition) => ({ ...page("templates", edition), templates: viewTemplates(edition.booklet.drawings, edition.paper), sheets: viewSheets(edition.booklet.drawings, edition.paper) })),
    booklets: wanted("booklet").map((edition) => page("booklet", edition, viewPaper(foldedFrom[edition.paper]!))),
    classPlans: forTeacher("class-plan"),
    kitSlips: forTeacher("kit-slips"),
    // One for all papers: labels have a paper of their own.
    kitLabels: booklets.flatMap((booklet) => {
      const labels = viewLabels(booklet);
      const { project, print } = booklet.definition;
      return labels ? [{ path: `${project}/kit-labels.html`, root: "../", booklet: viewFor(booklet), looks: { isNarrow: false, isLarge: false, isGrey: print.ink === "grey" }, fold: null, labels }] : [];
    }),
  };
}

/** Whether a document is made: it is wanted, there is something to show, and the paper will do. */
function isMade({ definition, plan, drawings }: Booklet, document: DocumentId, paper: PaperId): boolean {
  if (!definition.print.documents.has(document)) return false;
  switch (document) {
    case "templates": return drawings.templates.length > 0;
    case "booklet": return foldedFrom[paper] !== null;
    case "class-plan": case "kit-slips": return plan.class !== null;
    default: return true;
  }
}

function sewingCautions(): readonly CautionView[] {
  return (["boneFolder", "awl", "needle", "scissors"] as const).map((id) => viewCatalogueCaution(cautions[id]));
}

function roomOnPaper(paper: PaperId): FigureRoom | undefined {
  const view = viewPaper(paper);
  return view.isNarrow ? figureRoom(view, false) : undefined;
}

function drawnSteps({ plan, drawings }: Booklet, view: BookletView): Parameters<typeof viewCards>[0] {
  const figures = new Map(plan.steps.map((step) => [step.n, step.figure === null ? null : drawings.figures.get(step.figure)!]));
  return view.stages.flatMap((stage) => stage.steps).map((step) => ({ step, figure: figures.get(step.n) ?? null }));
}

/** What phase 6 is asked to print of these pages. */
export function printJobs(documents: Documents, output: string): readonly PrintJob[] {
  const job = (document: PageDocument & Pick<PrintDocument, "fold">, purpose: PrintJob["purpose"], kind = ""): PrintJob => {
    const html = path.resolve(output, document.path);
    return {
      html,
      pdf: html.replace(/\.html$/, ".pdf"),
      title: kind === "" ? document.booklet.title : `${document.booklet.title}: ${kind}`,
      author: document.booklet.author.name,
      language: document.booklet.language,
      purpose,
      fold: document.fold,
    };
  };
  return [
    ...documents.handouts.map((document) => job(document, "document")),
    ...documents.benchCards.map((document) => job(document, "document", "bench cards")),
    ...documents.templateSheets.map((document) => job(document, "template", "templates")),
    ...documents.booklets.map((document) => job(document, "document", foldedTitle(document))),
    ...documents.classPlans.map((document) => job(document, "document", "class plan")),
    ...documents.kitSlips.map((document) => job(document, "document", "kit slips")),
    ...documents.kitLabels.map((document) => job(document, "template", "bag labels")),
  ];
}

/** The title of sheets whose pages stand in the order of folding says what they are for, and what to read instead. */
function foldedTitle({ handout }: PrintDocument): string {
  return `booklet to print, fold and sew${handout ? ` (to read: ${handout})` : ""}`;
}

const notes: Partial<Record<DocumentId, string>> = {
  "bench-cards": "Print at 100 % and cut along the marks.",
  booklet: "Print at 100 % on both sides, turned on the short edge; page 2 says how to fold and sew it.",
};

function viewHowTo(booklet: Booklet, view: BookletView, withPrints: boolean): HowToDocument {
  const { definition, plan, drawings } = booklet;
  return {
    path: `${view.project}/index.html`,
    root: "../",
    booklet: view,
    prints: [
      ...definition.print.papers.flatMap((paper) => documentIds.filter((document) => isMade(booklet, document, paper)).map((document) => printLink(definition, document, paper, withPrints))),
      ...(drawings.bagLabels ? [{ label: `Labels for the bags, ${viewPaper(drawings.bagLabels.paper).name}`, pdf: withPrints ? "kit-labels.pdf" : null, html: "kit-labels.html", note: "" }] : []),
    ],
    buying: plan.class ? buyingFile : null,
    drawings: drawings.templates.map((template) => ({ label: template.title, svg: `templates/${template.id}.svg`, dxf: `templates/${template.id}.dxf` })),
  };
}

function printLink(definition: Definition, document: DocumentId, paper: PaperId, withPrints: boolean): HowToDocument["prints"][number] {
  const name = printName(definition, document, paper);
  return { label: `${known[document].label}, ${viewPaper(paper).name}`, pdf: withPrints ? `${name}.pdf` : null, html: `${name}.html`, note: notes[document] ?? "" };
}
