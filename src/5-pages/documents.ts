// Which pages each booklet has: plain data for Eleventy's templates, one entry a page.
import path from "node:path";
import { viewBooklet } from "./booklet-view.ts";
import { buyingFile } from "./buying-csv.ts";
import type { BookletView } from "./booklet-view.ts";
import { viewClass } from "./class-view.ts";
import type { ClassView } from "./class-view.ts";
import { viewLabels } from "./label-document.ts";
import type { LabelsView } from "./label-document.ts";
import { printName, viewPaper } from "./paper.ts";
import type { PaperView } from "./paper.ts";
import { viewSheets, viewTemplates } from "./template-view.ts";
import type { SheetView, TemplateView } from "./template-view.ts";
import type { Booklet, PrintJob } from "./types.ts";

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
  readonly templates: readonly TemplateView[];
  readonly sheets: readonly SheetView[];
  /** The handout on the same paper, beside this page: what the templates point to. */
  readonly handout: string;
}

/** A document for the teacher of a class. */
export interface ClassDocument extends PageDocument {
  readonly paper: PaperView;
  readonly class: ClassView;
  /** The buying list as a table, from the page. */
  readonly buying: string;
}

/** The sheets of labels for the bags of a class. */
export interface LabelDocument extends PageDocument {
  readonly labels: LabelsView;
}

/** The how-to page of a booklet, with what it links to. */
export interface HowToDocument extends PageDocument {
  readonly prints: readonly { readonly label: string; readonly pdf: string | null; readonly html: string }[];
  /** The buying list as a table for spreadsheets; null without a class. */
  readonly buying: string | null;
  readonly drawings: readonly { readonly label: string; readonly svg: string; readonly dxf: string }[];
}

/** All pages to render, by kind. */
export interface Documents {
  readonly howTos: readonly HowToDocument[];
  readonly handouts: readonly PrintDocument[];
  readonly templateSheets: readonly PrintDocument[];
  readonly classPlans: readonly ClassDocument[];
  readonly kitSlips: readonly ClassDocument[];
  readonly kitLabels: readonly LabelDocument[];
}

/** All pages of all booklets, in order. Without prints the how-to pages link to the pages that would be printed, and to no PDF. */
export function makeDocuments(booklets: readonly Booklet[], { withPrints }: { readonly withPrints: boolean }): Documents {
  const viewed = booklets.map((booklet) => ({ booklet, view: viewBooklet(booklet, booklets) }));
  const printed = (document: string): PrintDocument[] =>
    viewed.flatMap(({ booklet, view }) =>
      booklet.definition.print.papers.map((paper) => ({
        path: `${view.project}/${printName(booklet.definition, document, paper)}.html`,
        root: "../",
        booklet: view,
        paper: viewPaper(paper),
        templates: viewTemplates(booklet.drawings, paper),
        sheets: viewSheets(booklet.drawings, paper),
        handout: `${printName(booklet.definition, "handout", paper)}.${withPrints ? "pdf" : "html"}`,
      })),
    );
  const forTeacher = (document: string): ClassDocument[] =>
    viewed.flatMap(({ booklet, view }) => {
      const own = viewClass(booklet);
      return own ? booklet.definition.print.papers.map((paper) => ({ path: `${view.project}/${printName(booklet.definition, document, paper)}.html`, root: "../", booklet: view, paper: viewPaper(paper), class: own, buying: buyingFile })) : [];
    });
  const hasTemplates = (document: PrintDocument): boolean => document.templates.length > 0;
  return {
    howTos: viewed.map(({ booklet, view }) => viewHowTo(booklet, view, withPrints)),
    handouts: printed("handout"),
    templateSheets: printed("templates").filter(hasTemplates),
    classPlans: forTeacher("class-plan"),
    kitSlips: forTeacher("kit-slips"),
    // One for all papers: labels have a paper of their own.
    kitLabels: viewed.flatMap(({ booklet, view }) => {
      const labels = viewLabels(booklet);
      return labels ? [{ path: `${view.project}/kit-labels.html`, root: "../", booklet: view, labels }] : [];
    }),
  };
}

/** What phase 6 is asked to print of these pages. */
export function printJobs(documents: Documents, output: string): readonly PrintJob[] {
  const job = (document: PageDocument, purpose: PrintJob["purpose"], kind = ""): PrintJob => {
    const html = path.resolve(output, document.path);
    return {
      html,
      pdf: html.replace(/\.html$/, ".pdf"),
      title: kind === "" ? document.booklet.title : `${document.booklet.title}: ${kind}`,
      author: document.booklet.author.name,
      language: document.booklet.language,
      purpose,
    };
  };
  return [
    ...documents.handouts.map((document) => job(document, "document")),
    ...documents.templateSheets.map((document) => job(document, "template", "templates")),
    ...documents.classPlans.map((document) => job(document, "document", "class plan")),
    ...documents.kitSlips.map((document) => job(document, "document", "kit slips")),
    ...documents.kitLabels.map((document) => job(document, "template", "bag labels")),
  ];
}

function viewHowTo({ definition, plan, drawings }: Booklet, booklet: BookletView, withPrints: boolean): HowToDocument {
  const kinds = [
    { document: "handout", label: "Handout for the bench" },
    ...(drawings.templates.length > 0 ? [{ document: "templates", label: "Templates at full size" }] : []),
    ...(plan.class ? [{ document: "class-plan", label: "Class plan for the teacher" }, { document: "kit-slips", label: "Kit slips" }] : []),
  ];
  const link = (label: string, name: string): HowToDocument["prints"][number] => ({ label, pdf: withPrints ? `${name}.pdf` : null, html: `${name}.html` });
  return {
    path: `${booklet.project}/index.html`,
    root: "../",
    booklet,
    prints: [
      ...definition.print.papers.flatMap((paper) => kinds.map(({ document, label }) => link(`${label}, ${viewPaper(paper).name}`, printName(definition, document, paper)))),
      ...(drawings.bagLabels ? [link(`Labels for the bags, ${viewPaper(drawings.bagLabels.paper).name}`, "kit-labels")] : []),
    ],
    buying: plan.class ? buyingFile : null,
    drawings: drawings.templates.map((template) => ({ label: template.title, svg: `templates/${template.id}.svg`, dxf: `templates/${template.id}.dxf` })),
  };
}
