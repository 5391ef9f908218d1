// Times the whole build of many projects beside the browser alone printing the same pages, then a build in which nothing changed, and one with a single change.
import { spawn } from "node:child_process";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { startBrowser } from "../src/6-print/browser.ts";

const root = path.resolve(import.meta.dirname, "..");
const tabs = 4;

/** `bench -- printing [projects]`: 40 projects unless told otherwise, made from the demos in other sizes. */
export async function benchPrinting([count = "40"]: readonly string[]): Promise<void> {
  const folder = await mkdtemp(path.join(os.tmpdir(), "benchleaf-bench-"));
  const [content, output] = [path.join(folder, "content"), path.join(folder, "dist")];
  try {
    await makeProjects(content, Number(count));
    const whole = await timeOf(() => runBuild(content, output));
    console.log(`${count} projects, built: ${seconds(whole)}`);
    const pages = await printedPages(output);
    const plain = await timeOf(() => printPlain(pages));
    console.log(`${pages.length} pages, printed by the browser alone in ${tabs} tabs: ${seconds(plain)}; ratio ${(whole / plain).toFixed(2)}`);
    const again = await timeOf(() => runBuild(content, output));
    console.log(`built again: ${seconds(again)}, ${((again / whole) * 100).toFixed(1)} % of the first`);
    const [first = ""] = (await readdir(content)).sort();
    const definition = path.join(content, first, "project.yaml");
    await writeFile(definition, (await readFile(definition, "utf8")).replace(/^summary: .*$/m, "summary: Changed for the benchmark."));
    console.log(`one definition changed: ${seconds(await timeOf(() => runBuild(content, output)))}`);
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** Copies of the demos, one after the other, the first height of each a millimetre less, or a sixteenth of an inch more, for each round: a book grown further may not come out of its sheets. */
async function makeProjects(content: string, count: number): Promise<void> {
  const demos = (await readdir(path.join(root, "content"))).sort();
  for (let made = 0; made < count; made += 1) {
    const [demo, round] = [demos[made % demos.length]!, Math.floor(made / demos.length)];
    const target = path.join(content, `${demo}-${round}`);
    await mkdir(content, { recursive: true });
    await cp(path.join(root, "content", demo), target, { recursive: true });
    const file = path.join(target, "project.yaml");
    const text = await readFile(file, "utf8");
    await writeFile(file, text.replace(/height: (\d+)(?: \d+\/\d+)? (mm|in)/, (_, size: string, unit: string) => (unit === "mm" ? `height: ${Number(size) - round} mm` : `height: ${size} ${1 + round}/16 in`)));
  }
}

async function runBuild(content: string, output: string): Promise<void> {
  const given = ["--import", "tsx", "src/cli.ts", "build", "--content", content, "--output", output, "--tabs", String(tabs)];
  const status = await new Promise((resolve) => void spawn(process.execPath, given, { cwd: root, stdio: ["ignore", "ignore", "ignore"] }).on("exit", resolve));
  if (status !== 0) throw new Error(`the build ended with status ${String(status)}`);
}

/** The pages that have a PDF beside them. */
async function printedPages(output: string): Promise<readonly string[]> {
  const files = (await readdir(output, { recursive: true })).filter((file) => file.endsWith(".pdf"));
  return files.sort().map((file) => path.join(output, file.replace(/\.pdf$/, ".html")));
}

/** The least that gives these PDFs: each tab opens one page after the other, prints it with its tags, and the bytes are written. */
async function printPlain(pages: readonly string[]): Promise<void> {
  const started = await startBrowser();
  if ("missing" in started) throw new Error(started.missing);
  const waiting = pages.values();
  const work = async (): Promise<void> => {
    const tab = await started.browser.newPage();
    for (const page of waiting) {
      await tab.goto(pathToFileURL(page).href, { waitUntil: "load" });
      const pdf = await tab.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true, timeout: 600_000 });
      await writeFile(page.replace(/\.html$/, ".plain.pdf"), pdf);
    }
  };
  await Promise.all(Array.from({ length: tabs }, work));
  await started.browser.close();
  for (const page of pages) await rm(page.replace(/\.html$/, ".plain.pdf"));
}

async function timeOf(work: () => Promise<void>): Promise<number> {
  const begin = performance.now();
  await work();
  return performance.now() - begin;
}

function seconds(milliseconds: number): string {
  return `${(milliseconds / 1000).toFixed(1)} s`;
}
