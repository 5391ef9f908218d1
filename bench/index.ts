// Runs the named parts of the benchmark against published instances: `npm run bench -- cutting` or `npm run bench -- cutting workshop bwmv/10`.
import { benchCutting } from "./cutting.ts";

/** The parts, by the name given on the command line. */
const parts: Readonly<Record<string, (sets: readonly string[]) => Promise<void>>> = { cutting: benchCutting };

const [name, ...sets] = process.argv.slice(2);
const part = name === undefined ? undefined : parts[name];
if (part) {
  await part(sets);
} else {
  console.error(`Name a part of the benchmark: ${Object.keys(parts).join(", ")}`);
  process.exitCode = 1;
}
