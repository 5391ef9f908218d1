// Which browser is taken, and what happens when there is none.
import { existsSync } from "node:fs";
import { rm } from "node:fs/promises";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Surroundings } from "../../src/6-print/browser-places.ts";
import { listBrowsers, startBrowser } from "../../src/6-print/browser.ts";
import { printPages } from "../../src/6-print/index.ts";
import { makeSampleFolder, sampleJob } from "./sample-folder.ts";

function surroundings(platform: NodeJS.Platform, environment: Record<string, string>, files: readonly string[] = []): Surroundings {
  return { platform, environment, exists: (file) => files.includes(file) };
}

function origins(around: Surroundings): readonly string[] {
  return listBrowsers(around).map(({ origin }) => origin);
}

describe("the order in which browsers are tried", () => {
  test("a browser named by PUPPETEER_EXECUTABLE_PATH is the only one, even when others are installed", () => {
    const around = surroundings("linux", { PUPPETEER_EXECUTABLE_PATH: "/own/chrome", PATH: "/usr/bin" }, ["/usr/bin/chromium"]);
    expect(origins(around)).toEqual(["environment"]);
  });

  test("an installed browser comes before the shipped one on Linux", async () => {
    const around = surroundings("linux", { PATH: "/usr/local/bin:/usr/bin" }, ["/usr/bin/chromium"]);
    expect(origins(around)).toEqual(["installed", "shipped"]);
    expect(await listBrowsers(around)[0]?.find()).toEqual({ executable: "/usr/bin/chromium", environment: {} });
  });

  test("without an installed browser Linux has the shipped one, other systems puppeteer's", () => {
    expect(origins(surroundings("linux", { PATH: "/usr/bin" }))).toEqual(["shipped"]);
    expect(origins(surroundings("darwin", { HOME: "/Users/x" }))).toEqual(["puppeteer"]);
    expect(origins(surroundings("win32", {}))).toEqual(["puppeteer"]);
  });

  test("browsers are found where Windows and macOS put them", () => {
    const windows = "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe";
    expect(origins(surroundings("win32", { PROGRAMFILES: "C:\\Program Files" }, [windows]))).toEqual(["installed", "puppeteer"]);
    const mac = "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome";
    expect(origins(surroundings("darwin", { HOME: "/Users/x" }, [mac]))).toEqual(["installed", "puppeteer"]);
  });

  test("a folder of PATH that is not absolute is not searched", () => {
    expect(origins(surroundings("linux", { PATH: ".::bin" }, ["./chromium", "chromium", "bin/chromium"]))).toEqual(["shipped"]);
  });
});

describe("without a browser", () => {
  const missing = surroundings("linux", { PUPPETEER_EXECUTABLE_PATH: "/nowhere/chrome" });
  let folder = "";
  beforeAll(async () => {
    folder = await makeSampleFolder("no-browser");
  });
  afterAll(async () => {
    await rm(folder, { recursive: true });
  });

  test("starting says which place was tried and why it did not do", async () => {
    expect(await startBrowser(missing)).toEqual({ missing: expect.stringMatching(/no browser to print with \(PUPPETEER_EXECUTABLE_PATH=\/nowhere\/chrome: .+\)/) });
  });

  test("every PDF is named as missing, in the order of the jobs, and none is written", async () => {
    const jobs = [sampleJob(folder, "mixed"), sampleJob(folder, "unguarded", "template")];
    const seen: string[] = [];
    const results = await printPages(jobs, { tabs: 2, start: () => startBrowser(missing), onProgress: (done, job) => void seen.push(`${done} ${job.pdf}`) });
    expect(results.map(({ job }) => job)).toEqual(jobs);
    for (const { failure, pages } of results) {
      expect(failure).toContain("/nowhere/chrome");
      expect(pages).toBe(0);
    }
    expect(seen).toEqual([`1 ${jobs[0]?.pdf}`, `2 ${jobs[1]?.pdf}`]);
    expect(jobs.some(({ pdf }) => existsSync(pdf))).toBe(false);
  });
});
