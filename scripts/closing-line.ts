// Prints the line that closes a check, `N passed, N failed`, from the test runner's report.
// Called with the report's file and the exit statuses of the build and of the tests.
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

/** The part of the test runner's JSON report that is counted. */
export interface TestReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly { readonly status: string; readonly assertionResults: readonly { readonly status: string }[] }[];
}

export interface Counts {
  readonly passed: number;
  readonly failed: number;
}

/**
 * Counts tests. What fails without being a test counts as one failure each: the build, a test file that cannot be loaded, and a test run that ends badly
 * although no test failed, or before there was a report (`null`).
 */
export function countTests(report: TestReport | null, buildStatus: number, testStatus: number): Counts {
  const passed = report?.numPassedTests ?? 0;
  const brokenFiles = (report?.testResults ?? []).filter(({ status, assertionResults }) => status === "failed" && assertionResults.every((test) => test.status !== "failed"));
  const failedTests = (report?.numFailedTests ?? 0) + brokenFiles.length;
  const failedRun = (testStatus !== 0 || report === null || passed === 0) && failedTests === 0 ? 1 : 0;
  return { passed, failed: failedTests + failedRun + (buildStatus === 0 ? 0 : 1) };
}

function readReport(file: string): TestReport | null {
  try {
    return JSON.parse(readFileSync(file, "utf8")) as TestReport;
  } catch {
    return null;
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const [, , file = "", buildStatus = "1", testStatus = "1"] = process.argv;
  const report = readReport(file);
  if (Number(buildStatus) !== 0) console.log("The build failed.");
  if (report === null) console.log("There is no test report: the tests did not run to their end.");
  const { passed, failed } = countTests(report, Number(buildStatus), Number(testStatus));
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 ? 0 : 1;
}
