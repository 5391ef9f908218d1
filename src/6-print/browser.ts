// Finds a Chromium and starts it so that it prints the same on every computer and reaches nothing.
import puppeteer from "puppeteer";
import type { Browser } from "puppeteer";
import { firstLine } from "./first-line.ts";
import { installedBrowsers, thisComputer } from "./browser-places.ts";
import type { Surroundings } from "./browser-places.ts";
import { unpackShippedBrowser } from "./shipped-browser.ts";

/** Where a browser comes from. */
export type BrowserOrigin = "environment" | "installed" | "shipped" | "puppeteer";

/** A browser that may be there; its path is only looked up (and the shipped one unpacked) when it is its turn. */
export interface BrowserCandidate {
  readonly origin: BrowserOrigin;
  /** As named in messages. */
  readonly name: string;
  find(): Promise<{ readonly executable: string; readonly environment: Readonly<Record<string, string>> }>;
}

/** A running browser, or why there is none: one line for each place that was tried. */
export type StartedBrowser = { readonly browser: Browser; readonly origin: BrowserOrigin; readonly version: string } | { readonly missing: string };

/** Page counters in margin boxes came with Chrome 131 (Chrome's release notes). An older browser would leave out every page number. */
const oldestVersion = 131;

/**
 * The browsers to try, in order: the one that PUPPETEER_EXECUTABLE_PATH names (then no other), an installed Chrome or Chromium,
 * on Linux the one inside @sparticuz/chromium, elsewhere puppeteer's own.
 */
export function listBrowsers(surroundings: Surroundings = thisComputer): readonly BrowserCandidate[] {
  const named = surroundings.environment["PUPPETEER_EXECUTABLE_PATH"];
  const at = (origin: BrowserOrigin, name: string, executable: string): BrowserCandidate => ({
    origin,
    name,
    find: () => Promise.resolve({ executable, environment: {} }),
  });
  if (named) return [at("environment", `PUPPETEER_EXECUTABLE_PATH=${named}`, named)];
  return [
    ...installedBrowsers(surroundings).map((executable) => at("installed", executable, executable)),
    surroundings.platform === "linux"
      ? { origin: "shipped", name: "the browser inside @sparticuz/chromium", find: unpackShippedBrowser }
      : { origin: "puppeteer", name: "puppeteer's browser", find: async () => ({ executable: await puppeteer.executablePath(), environment: {} }) },
  ];
}

/** Starts the first browser that starts. Never throws: what went wrong is in `missing`. */
export async function startBrowser(surroundings: Surroundings = thisComputer): Promise<StartedBrowser> {
  const refusals: string[] = [];
  for (const candidate of listBrowsers(surroundings)) {
    try {
      return { ...(await start(candidate)), origin: candidate.origin };
    } catch (cause) {
      refusals.push(`${candidate.name}: ${whyNot(cause)}`);
    }
  }
  return { missing: `no browser to print with (${refusals.join("; ")})` };
}

/** A browser that stops at once says nothing over the pipe; what it lacks is usually a library of the system. */
function whyNot(cause: unknown): string {
  const words = firstLine(cause);
  return words.includes("Target closed") ? "stops as soon as it is started (a library of the system may be missing)" : words;
}

async function start(candidate: BrowserCandidate): Promise<{ readonly browser: Browser; readonly version: string }> {
  const { executable, environment } = await candidate.find();
  const browser = await puppeteer.launch({
    executablePath: executable,
    headless: true,
    // A pipe instead of a local port: nothing else on the computer can talk to this browser.
    pipe: true,
    args: browserSwitches(),
    env: { ...process.env, ...environment, TZ: "UTC", LANG: "C.UTF-8", LC_ALL: "C.UTF-8", LANGUAGE: "en" },
    defaultViewport: { width: 1000, height: 1000, deviceScaleFactor: 1 },
  });
  const version = await browser.version();
  if (Number(/\/(\d+)\./.exec(version)?.[1]) >= oldestVersion) return { browser, version };
  await browser.close();
  throw new Error(`${version} is too old, ${oldestVersion} or later will do`);
}

function browserSwitches(): string[] {
  // The sandbox cannot be set up by root (containers); everywhere else it stays on.
  const isRoot = process.getuid?.() === 0;
  return [
    ...(isRoot ? ["--no-sandbox"] : []),
    // Names lead nowhere, whatever asks; requests are refused one by one as well.
    "--host-resolver-rules=MAP * ~NOTFOUND",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--font-render-hinting=none",
    "--force-color-profile=srgb",
    "--lang=en-US",
  ];
}
