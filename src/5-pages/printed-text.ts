// Plain text to HTML: escapes it and puts a class around fractions, so that the font can set them as one glyph.

const escapes: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

/** Text made safe for HTML content and for attribute values in quotes. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => escapes[sign]!);
}

/** A size in the other unit behind the governing one: "(247.5 mm)", "(about 1⁄8 in)", "(300 × 220 mm)". */
const sizeBehind = / \((?:about\u00a0)?[\d.\u2044\u00a0×− ]+\u00a0(mm|in)\)/g;

/**
 * Escaped text with curved apostrophes, in which each fraction ("3⁄4", with U+2044) carries the class `frac`,
 * and each size in brackets a class of its unit, so that a reader may hide the unit that does not govern.
 */
export function printedText(text: string): string {
  // Height and width stay together: a size broken over two lines is misread as one number.
  const joined = text.replaceAll(" ×\u00a0", "\u00a0×\u00a0").replace(/(?<=\p{L})'/gu, "’");
  return escapeHtml(joined)
    .replace(sizeBehind, (size, unit: string) => ` <span class="behind-${unit}">${size.trimStart()}</span>`)
    .replace(/\d+\u2044\d+/g, (fraction) => `<span class="frac">${fraction}</span>`);
}

/** The text as the inside of a CSS string in double quotes, safe inside a `<style>` element too. */
export function cssString(text: string): string {
  return text.replace(/[^\p{L}\p{N} .,:;·×–()-]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `);
}

/** JSON that may stand inside a `<script>` element. */
export function scriptJson(data: unknown): string {
  return JSON.stringify(data).replace(/[<>&\u2028\u2029]/g, (sign) => `\\u${sign.codePointAt(0)!.toString(16).padStart(4, "0")}`);
}
