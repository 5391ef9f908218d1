// Our site in Eleventy: templates in, pages out, with the booklets as data that may change between two rebuilds.
import Eleventy from "@11ty/eleventy";
import type { EleventyConfig } from "@11ty/eleventy";
import type { Documents } from "./documents.ts";
import type { ListedBooklet } from "./types.ts";

/** All data that the templates see. */
export interface SiteData extends Documents {
  readonly listed: readonly ListedBooklet[];
}

/** How the site is opened. */
export interface SiteOptions {
  /** Relative to the working folder, or absolute. */
  readonly output: string;
  readonly runMode?: "build" | "serve";
  /** Asked at every rebuild. */
  readonly data: () => SiteData;
  readonly configure?: (config: EleventyConfig) => void;
}

/** Needs the package's folder as working folder: Eleventy looks for templates and its configuration there. */
export function openSite({ output, runMode = "build", data, configure }: SiteOptions): Eleventy {
  const site = new Eleventy("templates", output, {
    configPath: ".eleventy.js",
    quietMode: true,
    runMode,
    config: (config) => {
      for (const name of ["howTos", "handouts", "benchCards", "templateSheets", "booklets", "classPlans", "kitSlips", "kitLabels", "listed"] as const) config.addGlobalData(name, () => data()[name]);
      // Eleventy would name slow filters on the terminal; ours are not slow, there are many of them.
      config.benchmarkManager.get("Configuration").setMinimumThresholdMs(Number.MAX_SAFE_INTEGER);
      configure?.(config);
    },
  });
  site.disableLogger();
  return site;
}
