// Prints the mixed sample in a process of its own: `print-samples.ts <output folder> <tabs>`.
import { printPages } from "../../src/6-print/index.ts";
import { sampleJob } from "./sample-folder.ts";

const [, , folder = "", tabs = "1"] = process.argv;
// The same page more than once keeps several tabs busy at the same time, each with counters that they share.
const jobs = Array.from({ length: Number(tabs) }, (_, index) => ({ ...sampleJob(folder, "mixed"), pdf: `${folder}/project/mixed-${index + 1}.pdf` }));
const results = await printPages(jobs, { tabs: Number(tabs), onProgress: () => undefined });
const failures = results.flatMap(({ failure }) => failure ?? []);
if (failures.length > 0) throw new Error(failures.join("\n"));
