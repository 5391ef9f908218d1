// Bag labels, printed and read back: every outline lies where the grid says, within 0.05 mm, and the page is exactly the paper.
import { execFile } from "node:child_process";
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, it } from "vitest";
import { drawnLines, pageSizes, pageTexts } from "./measure-pdf.ts";
import type { DrawnLine } from "./measure-pdf.ts";

const tolerance = 0.05;
const root = path.resolve(import.meta.dirname, "../..");
let folder = "";

const definition = (labels: string): string =>
  `benchleaf: 1\nbinding: pamphlet\ntitle: Tide tables\nsummary: S\nauthor: {name: A}\nunits: mm\nbook: {sheets: 4, page: {height: 200 mm, width: 140 mm}}\nclass:\n  participants: 13\n  sessions: 2 h\n  labels: ${labels}\n`;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "bag-labels-"));
  const projects = { metric: "{columns: 3, rows: 4, width: 58.3 mm, height: 61.7 mm, left: 8.2 mm, top: 11.4 mm, column gap: 4.1 mm, row gap: 3.3 mm, first: 5}", inches: "letter 2x5" };
  for (const [name, labels] of Object.entries(projects)) {
    await mkdir(path.join(folder, "content", name), { recursive: true });
    await writeFile(path.join(folder, "content", name, "project.yaml"), definition(labels));
  }
  await promisify(execFile)(process.execPath, ["--import", "tsx", path.join(root, "src/cli.ts"), "build", "--content", path.join(folder, "content"), "--output", path.join(folder, "dist")], { cwd: root });
});

afterAll(() => rm(folder, { recursive: true, force: true }));

interface Grid { readonly columns: number; readonly rows: number; readonly width: number; readonly height: number; readonly left: number; readonly top: number; readonly across: number; readonly down: number; readonly first: number }

const near = (a: number, b: number): boolean => Math.abs(a - b) <= tolerance;

function hasLine(lines: readonly DrawnLine[], page: number, [x1, y1, x2, y2]: readonly [number, number, number, number]): boolean {
  return lines.some((line) => line.page === page && ((near(line.x1, x1) && near(line.y1, y1) && near(line.x2, x2) && near(line.y2, y2)) || (near(line.x1, x2) && near(line.y1, y2) && near(line.x2, x1) && near(line.y2, y1))));
}

// The sizes are typed in here once more, in millimetres; 15 bags: thirteen participants, the teacher, a spare set.
it.each<readonly [string, readonly [number, number], Grid]>([
  ["metric", [210, 297], { columns: 3, rows: 4, width: 58.3, height: 61.7, left: 8.2, top: 11.4, across: 4.1, down: 3.3, first: 5 }],
  ["inches", [215.9, 279.4], { columns: 2, rows: 5, width: 95.25, height: 50.8, left: 12.7, top: 12.7, across: 0, down: 0, first: 1 }],
])("%s", async (name, paper, { columns, rows, width, height, left, top, across, down, first }) => {
  const bytes = new Uint8Array(await readFile(path.join(folder, "dist", name, "kit-labels.pdf")));
  const lines = await drawnLines(bytes);
  const sizes = await pageSizes(bytes);
  expect(sizes).toHaveLength(Math.ceil((15 + first - 1) / (columns * rows)));
  for (const size of sizes) expect(size.map((side, index) => near(side, paper[index]!))).toEqual([true, true]);
  for (let label = first - 1; label < first - 1 + 15; label += 1) {
    const page = Math.floor(label / (columns * rows)) + 1;
    const at = label % (columns * rows);
    const x = left + (at % columns) * (width + across);
    const y = top + Math.floor(at / columns) * (height + down);
    for (const side of [[x, y, x + width, y], [x, y + height, x + width, y + height], [x, y, x, y + height], [x + width, y, x + width, y + height]] as const) expect(hasLine(lines, page, side), `label ${label + 1}: ${side.join(" ")}`).toBe(true);
  }
  // Labels that are used up already stay empty.
  expect(hasLine(lines, 1, [left, top, left + width, top])).toBe(first === 1);
  const text = (await pageTexts(bytes)).join(" ");
  for (const words of ["kit 1 of 13", "kit 13 of 13", "teacher’s kit", "spare kit"]) expect(text).toContain(words);
});
