// The preview: Eleventy's server on this computer, rebuilding at each change of content or templates; pages only, no PDFs.
import type { ExitStatus } from "./build.ts";
import { computeProject } from "./build/compute.ts";
import type { ComputedProject } from "./build/compute.ts";
import { readContent } from "./build/content.ts";
import { listBooklets } from "./build/kept.ts";
import { loadLinearSolver } from "./build/linear-solver.ts";
import { outcomeOf } from "./build/outcome.ts";
import { countOf } from "./build/progress.ts";
import type { Progress } from "./build/progress.ts";
import { reportProblems } from "./build/report.ts";
import { assetFolder, copyAssets } from "./5-pages/assets.ts";
import { makeDocuments } from "./5-pages/documents.ts";
import { openSite } from "./5-pages/site.ts";
import type { SiteData } from "./5-pages/site.ts";
import { copyPictures, writeResults } from "./5-pages/write-results.ts";

/** What to show and where. */
export interface PreviewOptions {
  readonly content: string;
  readonly port: number;
  readonly progress: Progress;
}

/** Apart from `dist/`, whose pages belong to their PDFs. */
const previewFolder = ".cache/preview";

/** Serves until the process is ended. A project with problems keeps the pages it had; the problems are shown in the terminal. */
export async function preview({ content, port, progress }: PreviewOptions): Promise<ExitStatus> {
  const shown = new Map<string, ComputedProject>();
  let data: SiteData = { howTos: [], handouts: [], benchCards: [], templateSheets: [], booklets: [], classPlans: [], kitSlips: [], kitLabels: [], listed: [] };
  const recompute = async (): Promise<void> => {
    const computed = await Promise.all((await readContent(content)).map((project) => computeProject(project, loadLinearSolver)));
    const outcomes = computed.map(outcomeOf);
    for (const result of computed) if (result.booklets.length > 0) shown.set(result.project.name, result);
    const current = computed.flatMap((result) => shown.get(result.project.name)?.booklets ?? []);
    const kept = current.map(({ definition, folder }) => ({ project: definition.project, folder, title: definition.title, summary: definition.summary }));
    data = { ...makeDocuments(current, { withPrints: false }), listed: listBooklets(outcomes, new Set(computed.map((result) => result.project.name)), kept) };
    await copyAssets(previewFolder);
    await writeResults(current, previewFolder);
    await copyPictures(current, previewFolder);
    reportProblems(outcomes, kept, progress);
    progress.say(`${countOf(current.length, "book")} shown at http://localhost:${port}/`);
  };
  const site = openSite({
    output: previewFolder,
    runMode: "serve",
    data: () => data,
    configure: (config) => {
      config.on("eleventy.before", recompute);
      // Eleventy cannot read the imports of TypeScript; a change of the sources needs a new start.
      config.setWatchJavaScriptDependencies(false);
      config.addWatchTarget(content);
      config.addWatchTarget(assetFolder);
      config.setServerOptions({ port, showAllHosts: false });
    },
  });
  await site.init();
  await site.watch();
  await site.serve(port);
  return await new Promise<ExitStatus>(() => undefined);
}
