// How the tests are found and how long each may take: printing is slow on a small machine.
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    testTimeout: 120_000,
    hookTimeout: 300_000,
    pool: "forks",
    setupFiles: ["tests/seed.ts"],
    // The report is for scripts/closing-line.ts, which .ci/run calls.
    reporters: ["default", ["json", { outputFile: ".cache/test-report.json" }]],
  },
});
