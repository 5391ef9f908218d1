// Eleventy's configuration: folders and our plugin, nothing else. The output folder comes from src/5-pages.
import { benchleafPages } from "./src/5-pages/eleventy-plugin.ts";

export default function configure(config) {
  config.addPlugin(benchleafPages);
  return { dir: { input: "templates", includes: "includes" }, templateFormats: ["njk"] };
}
