// Runs a named part of the benchmark: `npm run bench -- cutting workshop`, `npm run bench -- timetable <folder of instances>` or `npm run bench -- printing`.
import { benchCutting } from "./cutting.ts";
import { benchPrinting } from "./printing.ts";
import { benchTimetable } from "./timetable.ts";

/** The parts, by the name given on the command line. */
const parts: Readonly<Record<string, (args: readonly string[]) => void | Promise<void>>> = { cutting: benchCutting, printing: benchPrinting, timetable: benchTimetable };

const [name, ...args] = process.argv.slice(2);
const part = name === undefined ? undefined : parts[name];
if (part) {
  await part(args);
} else {
  console.error(`Name a part of the benchmark: ${Object.keys(parts).join(", ")}`);
  process.exitCode = 2;
}
