// Benchmarks against published instances: `npm run bench -- <part> <folder of instances> [seconds] [every nth instance]`.
import { benchTimetable } from "./timetable.ts";

const parts: Readonly<Record<string, (args: readonly string[]) => void | Promise<void>>> = { timetable: benchTimetable };

const [part, ...args] = process.argv.slice(2);
const run = parts[part ?? ""];
if (run) await run(args);
else {
  console.error(`usage: npm run bench -- ${Object.keys(parts).join("|")} <folder of instances>`);
  process.exitCode = 2;
}
