// Soft hyphens for a page that is printed: the browser that ships with us has no dictionary, so `hyphens: auto` alone does nothing.
import { createRequire } from "node:module";
import type { Page } from "puppeteer";

/** Letters of the shortest word that is divided, and how many of them stay before and go after the hyphen at least. */
export const hyphenLimits = { word: 7, before: 3, after: 3 } as const;

const softHyphen = "\u00ad";
/** A word that may be divided: no name of several capitals, no part of a word with a hyphen. */
const plainWord = "(?<![\\w-])[A-Za-z][a-z]+(?![\\w-])";

/** The word with a soft hyphen at each place where it may be divided: Liang's patterns for British English, within our limits. */
export function divideWord(word: string): string {
  const parts = hyphenateSync(word, { minWordLength: hyphenLimits.word }).split(softHyphen);
  let before = 0;
  return parts.map((part) => {
    before += part.length;
    const mayEnd = before >= hyphenLimits.before && word.length - before >= hyphenLimits.after;
    return mayEnd ? part + softHyphen : part;
  }).join("");
}

/** Puts soft hyphens into all text whose style says `hyphens: auto`. Those at which no line ends are taken out of the PDF again. */
export async function hyphenatePage(page: Page): Promise<void> {
  const divided = (await page.evaluate(longWords, plainWord, hyphenLimits.word)).map((word): [string, string] => [word, divideWord(word)]);
  await page.evaluate(putHyphens, plainWord, divided.filter(([word, parts]) => word !== parts));
}

// The two below run in the page and use nothing from outside their own bodies.

function longWords(plain: string, least: number): string[] {
  const words = new Set<string>();
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
    if (text.parentElement === null || getComputedStyle(text.parentElement).hyphens !== "auto") continue;
    for (const [word] of (text.nodeValue ?? "").matchAll(new RegExp(plain, "g"))) if (word.length >= least) words.add(word);
  }
  return [...words];
}

function putHyphens(plain: string, divided: readonly (readonly [word: string, parts: string])[]): void {
  const partsOf = new Map(divided);
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
    if (text.parentElement === null || getComputedStyle(text.parentElement).hyphens !== "auto") continue;
    const whole = text.nodeValue ?? "";
    const parted = whole.replace(new RegExp(plain, "g"), (word) => partsOf.get(word) ?? word);
    if (parted !== whole) text.nodeValue = parted;
  }
  // A browser with a dictionary of its own must not divide further words.
  const style = document.createElement("style");
  style.textContent = "* { hyphens: manual !important; }";
  document.head.append(style);
}

interface HyphenPackage {
  hyphenateSync(text: string, options: { readonly minWordLength: number }): string;
}

/** The package has no types, and is written for `require`. */
const { hyphenateSync } = createRequire(import.meta.url)("hyphen/en-gb") as HyphenPackage;
