// What a page in a browser says about itself, in the same shape as the tags of its print-out: written against the HTML alone.
import type { Page } from "puppeteer";

/** A page as a list: `<H2>`, text, `</H2>`, `<Figure alternative>`; elements that only group are left out. */
export interface PageTags {
  readonly tokens: readonly string[];
  readonly headings: readonly string[];
  readonly paragraphs: readonly string[];
  readonly title: string;
  readonly language: string;
}

/** Reads the page as it is shown for print. Spaces are of no account: lines break elsewhere on paper. */
export async function readPageTags(page: Page): Promise<PageTags> {
  // Some compilers name every function by a helper of theirs, which the page does not have.
  return (await page.evaluate(`(() => { const __name = (named) => named; return (${walk.toString()})(); })()`)) as PageTags;
}

/** Runs in the page. */
function walk(): PageTags {
  const tokens: string[] = [];
  const headings: string[] = [];
  const paragraphs: string[] = [];
  const bare = (text: string): string => text.replace(/[\s\u00ad]+/g, "");
  const isShown = (element: Element): boolean => {
    const style = getComputedStyle(element);
    // What is there for readers of the web page alone leaves no ink.
    return style.display !== "none" && style.visibility === "visible" && style.clipPath !== "inset(50%)" && element.getAttribute("aria-hidden") !== "true";
  };
  const alternativeOf = (drawing: Element): string =>
    drawing.getAttribute("alt") ?? drawing.getAttribute("aria-label")
    ?? (drawing.getAttribute("aria-labelledby") ?? "").split(/\s+/).map((id) => document.getElementById(id)?.textContent ?? "").join(" ");
  /** The number or letter that the browser puts before an item. */
  const markerOf = (item: Element): string => {
    const style = getComputedStyle(item).listStyleType;
    if (style === "none" || getComputedStyle(item).display !== "list-item") return "";
    const siblings = [...item.parentElement!.children];
    const n = Number(item.getAttribute("value")) || siblings.indexOf(item) + 1;
    if (style === "decimal") return `${n}.`;
    if (style === "lower-alpha") return n <= 26 ? `${String.fromCharCode(96 + n)}.` : `${String.fromCharCode(96 + Math.floor((n - 1) / 26), 97 + ((n - 1) % 26))}.`;
    return { disc: "•", circle: "◦", square: "▪" }[style] ?? style;
  };
  const around = (role: string, inner: () => void): void => {
    tokens.push(`<${role}>`);
    inner();
    tokens.push(`</${role}>`);
  };
  const kids = (node: Element): void => node.childNodes.forEach(visit);
  function visit(node: Node): void {
    if (node instanceof Text) {
      if (bare(node.data) !== "") tokens.push(bare(node.data));
      return;
    }
    if (!(node instanceof Element) || !isShown(node)) return;
    const name = node.localName;
    const inner = (): void => kids(node);
    if (name === "svg" || name === "img") tokens.push(`<Figure ${alternativeOf(node).replace(/\s+/g, " ").trim()}>`);
    else if (/^h[1-6]$/.test(name)) {
      headings.push((node.textContent ?? "").replace(/\s+/g, " ").trim());
      around(name.toUpperCase(), inner);
    } else if (name === "ul" || name === "ol" || name === "dl") around("L", inner);
    else if (name === "li") {
      around("LI", () => {
        const marker = markerOf(node);
        if (marker !== "") around("Lbl", () => tokens.push(marker));
        around("LBody", inner);
      });
    } else if (name === "div" && node.parentElement?.localName === "dl") around("LI", inner);
    else if (name === "dt") around("Lbl", inner);
    else if (name === "dd") around("LBody", inner);
    else if (name === "table") around("Table", inner);
    else if (name === "tr") around("TR", inner);
    else if (name === "th") around(`TH ${{ col: "Column", row: "Row" }[node.getAttribute("scope") ?? ""] ?? "without"}`, inner);
    else if (name === "td") around("TD", inner);
    else if (name === "caption" || name === "figcaption") around("Caption", inner);
    else if (name === "a" && node.hasAttribute("href")) around("Link", inner);
    else {
      if (name === "p" && node.querySelector("svg") === null) paragraphs.push(bare(node.textContent ?? ""));
      inner();
    }
  }
  visit(document.body);
  return { tokens, headings, paragraphs, title: document.title, language: document.documentElement.lang };
}
