// The Eleventy plugin: filters that put text into HTML and CSS, the fonts, and strict templates.
import type { EleventyConfig } from "@11ty/eleventy";
import nunjucks from "nunjucks";
import { fontFiles } from "../catalogue/font-files.ts";
import { cssString, printedText } from "./printed-text.ts";
import { sentences } from "./step-view.ts";

/** Wires our filters and assets into Eleventy; `.eleventy.js` adds it. */
export function benchleafPages(config: EleventyConfig): void {
  // A name that does not exist must never become an empty place in the instructions.
  config.setNunjucksEnvironmentOptions({ throwOnUndefined: true, trimBlocks: true, lstripBlocks: true });
  config.addFilter("printed", (text: string) => markup(printedText(text)));
  config.addFilter("sentence", (text: string) => sentences(text));
  config.addFilter("ready", (html: string) => markup(html));
  config.addFilter("cssString", (text: string) => markup(cssString(text)));
  config.addPassthroughCopy({ "templates/assets": "assets" });
  for (const font of fontFiles) config.addPassthroughCopy({ [`node_modules/${font.package}`]: font.dist });
}

/** Text that Nunjucks shall not escape again. */
function markup(html: string): unknown {
  return new nunjucks.runtime.SafeString(html);
}
