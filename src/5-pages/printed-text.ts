// Plain text to HTML: escapes it and puts a class around fractions, so that the font can set them as one glyph.

const escapes: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

/** Text made safe for HTML content and for attribute values in quotes. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => escapes[sign]!);
}

/** A size in the other unit behind the governing one: "(247.5 mm)", "(about 1⁄8 in)", "(300 × 220 mm)". */
const sizeBehind = / \((?:about\u00a0)?[\d.\u2044\u00a0×− ]+\u00a0(mm|in)\)/g;

/**
 * Escaped text with curved apostrophes and quotation marks, in which each fraction ("3⁄4", with U+2044) carries the class `frac`, together with
 * the blank behind its whole number; a number stays with its unit or its sign of times; and each size in brackets a class of its unit, so that a reader may hide the unit that does not govern.
 */
export function printedText(text: string): string {
  // Height and width stay together: a size broken over two lines is misread as one number.
  const joined = text
    .replace(/ ×\u00a0|(?<=\d) × /g, "\u00a0×\u00a0")
    .replace(/(?<=\d) (?=(?:mm|cm|m|in|g|kg|min|h|%)(?![\p{L}\p{N}]))/gu, "\u00a0")
    .replace(/(?<=\p{L})'/gu, "’")
    .replace(/(?<![\p{L}\p{N}])"([^"]+)"(?![\p{L}\p{N}])/gu, "“$1”");
  return escapeHtml(joined)
    .replace(sizeBehind, (size, unit: string) => ` <span class="behind-${unit}">${size.trimStart()}</span>`)
    .replace(/(?:(?<=\d)\u00a0)?\d+\u2044\d+/g, (fraction) => `<span class="frac">${fraction}</span>`);
}

/** The text as the inside of a CSS string in double quotes, safe inside a `<style>` element too. */
export function cssString(text: string): string {
  return text.replace(/[^\p{L}\p{N} .,:;·×–()-]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `);
}

/** JSON that may stand inside a `<script>` element. */
export function scriptJson(data: unknown): string {
  return JSON.stringify(data).replace(/[<>&\u2028\u2029]/g, (sign) => `\\u${sign.codePointAt(0)!.toString(16).padStart(4, "0")}`);
}
