// The Eleventy plugin: filters that put text into HTML and CSS, and strict templates.
import type { EleventyConfig } from "@11ty/eleventy";
import nunjucks from "nunjucks";
import { cssString, printedText } from "./printed-text.ts";
import { sentences } from "./step-view.ts";

/** Wires our filters into Eleventy; `.eleventy.js` adds it. */
export function benchleafPages(config: EleventyConfig): void {
  // A name that does not exist must never become an empty place in the instructions.
  config.setNunjucksEnvironmentOptions({ throwOnUndefined: true, trimBlocks: true, lstripBlocks: true });
  config.addFilter("printed", (text: string) => markup(printedText(text)));
  config.addFilter("sentence", (text: string) => sentences(text));
  config.addFilter("ready", (html: string) => markup(html));
  config.addFilter("cssString", (text: string) => markup(cssString(text)));
}

/** Text that Nunjucks shall not escape again. */
function markup(html: string): unknown {
  return new nunjucks.runtime.SafeString(html);
}
