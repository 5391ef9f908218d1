// Runs the random tests with a new seed, to look for books that the suite's own seed never draws: npm run sweep [seed].
import { spawnSync } from "node:child_process";

const seed = process.argv[2] ?? String(Math.floor(Math.random() * 2 ** 31));
console.log(`seed ${seed} (to repeat: npm run sweep ${seed})`);
const tests = ["tests/properties", "tests/4-figures", "tests/units", "tests/geometry", "tests/1-definition"];
const { status } = spawnSync("npx", ["vitest", "run", ...tests], { stdio: "inherit", env: { ...process.env, BENCHLEAF_SEED: seed } });
process.exit(status ?? 1);
