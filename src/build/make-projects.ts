// Takes the projects of one build through the phases, a few at a time, so that the press is busy while the rest is computed; leaves alone what is as it was.
import { setImmediate } from "node:timers/promises";
import type { ListedBooklet, RenderedPages } from "../5-pages/types.ts";
import type { BuildOptions } from "../build.ts";
import { openClaims } from "./choose.ts";
import type { ComputedProject } from "./compute.ts";
import type { ProjectFolder } from "./content.ts";
import { digestOf } from "./digest.ts";
import { listBooklets, removeOrphans } from "./kept.ts";
import type { KeptBooklet } from "./kept.ts";
import { outcomeOf } from "./outcome.ts";
import type { ProjectOutcome } from "./outcome.ts";
import type { Press } from "./press.ts";
import type { ProgramDigests } from "./program-digest.ts";
import { areUntouched, digestsOf, projectKey, readProjectRecord, readSiteRecord, writeSiteRecord } from "./records.ts";
import type { ProjectRecord } from "./records.ts";

/** What a build has found before it begins. */
export interface Findings {
  readonly folders: readonly ProjectFolder[];
  readonly asked: ReadonlySet<string>;
  readonly program: ProgramDigests;
  readonly kept: readonly KeptBooklet[];
  /** Starting, so that computing need not wait for a browser; null when only pages are built. */
  readonly press: Promise<Press> | null;
}

/** A project that was computed by this build and has pages now. */
export interface FreshProject {
  readonly key: string;
  readonly computed: ComputedProject;
  readonly outcome: ProjectOutcome;
  readonly earlier: ProjectRecord | null;
}

/** What became of all projects. */
export interface MadeProjects {
  readonly outcomes: readonly ProjectOutcome[];
  readonly fresh: readonly FreshProject[];
  /** Those that an earlier build made from the same. */
  readonly unchanged: readonly ProjectRecord[];
  /** Pages, data and drawings written, below the output folder. */
  readonly files: readonly string[];
}

/** Computes and renders what has changed, and hands it to the press. */
export async function makeProjects(options: BuildOptions, findings: Findings): Promise<MadeProjects> {
  const { folders, asked, kept } = findings;
  const claim = openClaims();
  const outcomes: ProjectOutcome[] = [];
  const fresh: FreshProject[] = [];
  const unchanged: ProjectRecord[] = [];
  const files = new Set<string>();
  const list = (): readonly ListedBooklet[] => listBooklets(outcomes, asked, kept);
  let batch: FreshProject[] = [];
  // The first project goes to the press alone, so that it starts at once; later ones in ever larger lots, because each lot costs a start of Eleventy.
  let size = 1;
  for (const folder of folders) {
    const isAsked = asked.has(folder.name);
    const taken = await takeProject(folder, isAsked, options, findings);
    const clashes = claim(taken.outcome);
    const outcome = clashes.length === 0 ? taken.outcome : { ...taken.outcome, books: [], problems: [...taken.outcome.problems, ...clashes] };
    outcomes.push(outcome);
    if (!isAsked || outcome.books.length === 0) continue;
    if (taken.computed === null) {
      unchanged.push(taken.earlier);
      continue;
    }
    batch.push({ ...taken, outcome });
    if (batch.length < size) continue;
    for (const file of (await renderBatch(batch, list(), options, findings)).files) files.add(file);
    fresh.push(...batch);
    batch = [];
    size *= 2;
  }
  const isAll = options.projects.length === 0;
  await removeOrphans(isAll ? outcomes : outcomes.filter(({ name }) => asked.has(name)), isAll ? kept : kept.filter(({ folder }) => asked.has(folder)), options.output);
  for (const file of await finishSite(batch, list(), options, findings)) files.add(file);
  return { outcomes, fresh: [...fresh, ...batch], unchanged, files: [...files] };
}

type TakenProject =
  | { readonly computed: null; readonly outcome: ProjectOutcome; readonly key: string; readonly earlier: ProjectRecord }
  | { readonly computed: ComputedProject; readonly outcome: ProjectOutcome; readonly key: string; readonly earlier: ProjectRecord | null };

/** Whoever was not asked for is wanted for the list of books only: its files do not matter, and no class is planned. */
async function takeProject(folder: ProjectFolder, isAsked: boolean, { output, afresh, progress }: BuildOptions, { program, press }: Findings): Promise<TakenProject> {
  const key = await projectKey(program, folder);
  const earlier = afresh ? null : await readProjectRecord(output, folder.name);
  const isSame = earlier !== null && key !== "" && earlier.key === key;
  if (isSame && (!isAsked || (earlier.browser === ((await press)?.browser ?? null) && (await areUntouched(output, earlier.files))))) return { computed: null, outcome: earlier.outcome, key, earlier };
  if (isAsked) progress.step(`${folder.name}: computing`);
  const [{ computeProject }, { loadLinearSolver }] = await Promise.all([import("./compute.ts"), import("./linear-solver.ts")]);
  const computed = await computeProject(folder, isAsked ? loadLinearSolver : null);
  // Computing takes no breath; the tabs of the press must be served in between.
  await setImmediate();
  return { computed, outcome: outcomeOf(computed), key, earlier };
}

async function renderBatch(batch: readonly FreshProject[], listed: readonly ListedBooklet[], { output, print, progress }: BuildOptions, { press }: Findings): Promise<RenderedPages> {
  const { renderPages } = await import("../5-pages/index.ts");
  progress.step("rendering pages");
  const rendered = await renderPages({ booklets: batch.flatMap(({ computed }) => computed.booklets), listed, output, withPrints: print });
  await (await press)?.print(rendered.jobs, batch.flatMap(({ earlier }) => earlier?.prints ?? []));
  return rendered;
}

/** The last lot, and with it the list of all books, unless both are as they were. */
async function finishSite(batch: readonly FreshProject[], listed: readonly ListedBooklet[], options: BuildOptions, findings: Findings): Promise<readonly string[]> {
  const { output, afresh } = options;
  const key = digestOf([findings.program.whole, JSON.stringify(listed)]);
  const site = afresh ? null : await readSiteRecord(output);
  if (batch.length === 0 && site?.key === key && (await areUntouched(output, site.files))) return [];
  const rendered = await renderBatch(batch, listed, options, findings);
  await writeSiteRecord(output, { key, files: await digestsOf(output, ["index.html", ...rendered.assets]) });
  return rendered.files;
}
