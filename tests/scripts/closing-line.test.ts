// The counts that close a check.
import { expect, test } from "vitest";
import { countTests } from "../../scripts/closing-line.ts";
import type { TestReport } from "../../scripts/closing-line.ts";

function report(passed: number, failed: number, brokenFiles = 0): TestReport {
  const tests = [...Array.from({ length: passed }, () => ({ status: "passed" })), ...Array.from({ length: failed }, () => ({ status: "failed" }))];
  const file = { status: failed > 0 ? "failed" : "passed", assertionResults: tests };
  return { numPassedTests: passed, numFailedTests: failed, testResults: [file, ...Array.from({ length: brokenFiles }, () => ({ status: "failed", assertionResults: [] }))] };
}

test("tests are counted as they passed and failed", () => {
  expect(countTests(report(12, 0), 0, 0)).toEqual({ passed: 12, failed: 0 });
  expect(countTests(report(12, 3), 0, 1)).toEqual({ passed: 12, failed: 3 });
});

test("a test file that cannot be loaded counts as a failure", () => {
  expect(countTests(report(12, 0, 2), 0, 1)).toEqual({ passed: 12, failed: 2 });
});

test("a failed build counts as a failure beside those of the tests", () => {
  expect(countTests(report(12, 1), 1, 1)).toEqual({ passed: 12, failed: 2 });
});

test("a test run that ends badly without a failed test, without a report or without any test counts as a failure", () => {
  expect(countTests(report(12, 0), 0, 1)).toEqual({ passed: 12, failed: 1 });
  expect(countTests(null, 0, 2)).toEqual({ passed: 0, failed: 1 });
  expect(countTests(null, 0, 0)).toEqual({ passed: 0, failed: 1 });
  expect(countTests(report(0, 0), 0, 0)).toEqual({ passed: 0, failed: 1 });
});
