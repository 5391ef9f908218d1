// The author's Markdown to HTML: no raw HTML, no remote pictures, headings that fit under the page's own.
import MarkdownIt from "markdown-it";
import { escapeHtml, printedText } from "./printed-text.ts";

/** What a piece of prose may refer to and where its headings belong. */
export interface ProseSetting {
  /** Level of the highest heading in the piece. */
  readonly topHeading: number;
  /** Pictures of the project that may be shown, relative paths. */
  readonly pictures: ReadonlySet<string>;
}

interface ProseEnvironment extends ProseSetting {
  /** Levels of the author's open headings, outermost first. */
  readonly open: number[];
}

/** The web, mail, a place on the page, or a path below the page without a scheme. */
const safeLink = /^(?:https?:|mailto:|#|(?:\.\/)?[a-z0-9%][^:\\]*$)/i;

const markdown = makeMarkdown();

/** The piece as HTML blocks. A picture that is not the project's own becomes its description. */
export function renderProse(text: string, setting: ProseSetting): string {
  const environment: ProseEnvironment = { ...setting, open: [] };
  return markdown.render(text, environment).trim();
}

/** Relative paths of the pictures that a piece of prose shows. */
export function picturesInProse(text: string): readonly string[] {
  const inline = markdown.parse(text, { topHeading: 3, pictures: new Set(), open: [] }).flatMap((token) => token.children ?? []);
  return inline.filter((token) => token.type === "image").map((token) => pictureFile(token.attrGet("src") ?? ""));
}

function makeMarkdown(): MarkdownIt {
  const made = new MarkdownIt("default", { html: false, linkify: false, typographer: false });
  made.validateLink = (url) => safeLink.test(url) && !pictureFile(url).split("/").includes("..");
  made.renderer.rules["text"] = (tokens, index) => printedText(tokens[index]!.content);
  made.renderer.rules["link_open"] = (tokens, index, options, _environment, self) => {
    tokens[index]!.attrSet("rel", "noreferrer");
    return self.renderToken(tokens, index, options);
  };
  made.renderer.rules["image"] = (tokens, index, options, environment: ProseEnvironment, self) => {
    const token = tokens[index]!;
    const file = pictureFile(token.attrGet("src") ?? "");
    const words = self.renderInlineAsText(token.children ?? [], options, environment);
    return environment.pictures.has(file) ? `<img src="${escapeHtml(encodeURI(file))}" alt="${escapeHtml(words)}">` : printedText(words);
  };
  // The author's levels are kept in order but none is skipped, so that the page's outline stays whole.
  made.core.ruler.push("fit headings", (state) => {
    const { open, topHeading } = state.env as ProseEnvironment;
    for (const token of state.tokens) {
      if (token.type === "heading_open") {
        const level = Number(token.tag.slice(1));
        while (open.length > 0 && open[open.length - 1]! >= level) open.pop();
        open.push(level);
      }
      if (token.type === "heading_open" || token.type === "heading_close") token.tag = `h${Math.min(6, topHeading + open.length - 1)}`;
    }
  });
  return made;
}

function pictureFile(source: string): string {
  try {
    return decodeURI(source).replace(/^\.\//, "");
  } catch {
    return source;
  }
}
