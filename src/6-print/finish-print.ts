// From the PDF as the browser made it to the one that is given away: mended, and put on folded sheets where the job asks for them.
import type { PrintJob } from "../5-pages/types.ts";
import { foldPdf } from "./fold/fold-pdf.ts";
import type { PageWords } from "./page-script.ts";
import { mendPdf } from "./pdf/mend-pdf.ts";

/** What came out of a tab, and what it is to become; `folder` is the output folder with links followed. */
export interface RawPrint {
  readonly job: PrintJob;
  readonly folder: string;
  readonly pdf: Uint8Array;
  readonly words: PageWords;
}

/** A PDF to be written as it is, with the number of its pages. */
export interface FinishedPrint {
  readonly pdf: Uint8Array;
  readonly pages: number;
}

/** Throws, with words for the author, when the print cannot be used. */
export async function finishPrint({ job, folder, pdf, words }: RawPrint): Promise<FinishedPrint> {
  const metadata = { title: job.title, author: job.author, language: job.language, isTemplate: job.purpose === "template", isFolded: false };
  const mended = await mendPdf(pdf, metadata, { html: job.html, pdf: job.pdf, folder }, words);
  return job.fold ? foldPdf(mended.pdf, job.fold, { ...metadata, isFolded: true }) : mended;
}
