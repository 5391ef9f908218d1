// From the bytes of an author's file to its text, or what kind of file it is instead.
import type { Problem, ProblemCode } from "../problems/problem.ts";

/** Largest file that is read: a definition with long prose has a tenth of it, and reading stays within seconds whatever is inside. */
export const largestFileBytes = 256 * 1024;

/** The text of a file; when it is no proper text, the nearest readable form of it and the problems. */
export interface DecodedText {
  readonly text: string;
  readonly problems: readonly Problem[];
}

/** Decodes UTF-8 with or without a byte order mark; the mark is not part of the text, so offsets count from behind it. */
export function decodeText(file: string, bytes: Uint8Array): DecodedText {
  const refuse = (code: ProblemCode, message: string, hint: string): DecodedText =>
    ({ text: "", problems: [{ code, severity: "error", message, hint, place: { file, span: null } }] });
  if (bytes.length > largestFileBytes) {
    return refuse("file-too-large", `this file has ${kibibytes(bytes.length)} KiB, but at most ${kibibytes(largestFileBytes)} KiB are read`,
      "keep pictures and other data in files of their own; put long texts into prose/*.md");
  }
  const encoding = encodingByMark(bytes);
  if (encoding) return refuse("file-not-utf8", `this file is saved as ${encoding}`, "save it as UTF-8, the usual choice of a text editor");
  const zero = bytes.indexOf(0);
  if (zero !== -1) return refuse("file-not-text", `this file holds a zero byte at byte offset ${zero}, so it is not a text file`, "check that it is the file you meant, and save it as plain text in UTF-8");
  const body = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? bytes.subarray(3) : bytes;
  const wrong = firstInvalidByte(body);
  // "ignoreBOM" keeps a second mark as a character instead of dropping it silently.
  const text = new TextDecoder("utf-8", { ignoreBOM: true }).decode(body);
  if (wrong === null) return { text, problems: [] };
  const start = new TextDecoder("utf-8", { ignoreBOM: true }).decode(body.subarray(0, wrong)).length;
  const offset = wrong + bytes.length - body.length;
  const value = `0x${body[wrong]!.toString(16).toUpperCase().padStart(2, "0")}`;
  return {
    text,
    problems: [{
      code: "file-not-utf8", severity: "error", place: { file, span: { start, end: start + 1 } },
      message: `this file is not UTF-8: byte offset ${offset} holds ${value}, which begins no character there`,
      hint: "save the file as UTF-8; if it was written with an older encoding, have the editor convert it",
    }],
  };
}

/** The offset of the first byte that breaks UTF-8 (RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF), or null. */
export function firstInvalidByte(bytes: Uint8Array): number | null {
  let at = 0;
  while (at < bytes.length) {
    const length = sequenceLength(bytes, at);
    if (length === 0) return at;
    at += length;
  }
  return null;
}

function sequenceLength(bytes: Uint8Array, at: number): number {
  const lead = bytes[at]!;
  if (lead < 0x80) return 1;
  const follows = lead >= 0xc2 && lead <= 0xdf ? 1 : lead >= 0xe0 && lead <= 0xef ? 2 : lead >= 0xf0 && lead <= 0xf4 ? 3 : 0;
  if (follows === 0) return 0;
  const lowest = lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
  const highest = lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
  for (let i = 1; i <= follows; i += 1) {
    const byte = bytes[at + i];
    if (byte === undefined || byte < (i === 1 ? lowest : 0x80) || byte > (i === 1 ? highest : 0xbf)) return 0;
  }
  return follows + 1;
}

function encodingByMark(bytes: Uint8Array): string | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "UTF-16 (little end first)";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "UTF-16 (big end first)";
  return null;
}

function kibibytes(bytes: number): number {
  return Math.ceil(bytes / 1024);
}
