// Where in the file each character of a value stands, through quotes, escapes, folding and the indentation of block texts.

/** How a single value is written in YAML: it decides where its characters stand in the file. */
export type ScalarStyle = "plain" | "single-quoted" | "double-quoted" | "block";

/**
 * The offset of each UTF-16 unit of `value` within `source`, the text from the value's first character (the opening quote, the `|`)
 * to its end, shifted by `start`. A blank that stands for a line break has the offset of that break.
 * Where the two texts cannot be matched, the offset of the last match is repeated: a caret is then near, never outside.
 */
export function scalarOffsets(value: string, source: string, style: ScalarStyle, start: number): readonly number[] {
  const within = style === "block" ? blockOffsets(value, source) : flowOffsets(value, source, style);
  const offsets: number[] = [];
  let last = Math.min(within[0] ?? 0, source.length);
  for (let index = 0; index < value.length; index += 1) {
    last = within[index] ?? last;
    offsets.push(start + last);
  }
  return offsets;
}

/** Plain and quoted texts: a line break with the blanks around it is one blank, k + 1 line breaks are k. */
function flowOffsets(value: string, source: string, style: ScalarStyle): readonly number[] {
  const offsets: number[] = [];
  let at = style === "plain" ? 0 : 1;
  const fold = /[ \t]*(?:\r?\n[ \t]*)+/y;
  while (offsets.length < value.length && at < source.length) {
    fold.lastIndex = at;
    const breaks = fold.exec(source)?.[0];
    if (breaks !== undefined) {
      const places = [...breaks.matchAll(/\r?\n/g)].map((match) => at + match.index);
      offsets.push(...(places.length === 1 ? places : places.slice(1)));
      at += breaks.length;
      continue;
    }
    if (style === "single-quoted" && source.startsWith("''", at)) {
      offsets.push(at);
      at += 2;
      continue;
    }
    if (style === "double-quoted" && source[at] === "\\") {
      const escape = readEscape(source.slice(at, at + 10));
      for (let unit = 0; unit < escape.units; unit += 1) offsets.push(at);
      at += escape.length;
      // A backslash at the end of a line joins the lines without a blank; the next line's indentation is not part of the value.
      if (escape.units === 0) at += /^[ \t]*/.exec(source.slice(at, at + 1000))![0].length;
      continue;
    }
    offsets.push(at);
    at += 1;
  }
  return offsets;
}

/** How long an escape is in the file and how many UTF-16 units it stands for. */
function readEscape(text: string): { readonly length: number; readonly units: number } {
  const lineJoin = /^\\\r?\n/.exec(text);
  if (lineJoin) return { length: lineJoin[0].length, units: 0 };
  const code = /^\\(?:x([0-9a-fA-F]{2})|u([0-9a-fA-F]{4})|U([0-9a-fA-F]{8}))/.exec(text);
  if (!code) return { length: 2, units: 1 };
  return { length: code[0].length, units: Number.parseInt(code[1] ?? code[2] ?? code[3]!, 16) > 0xffff ? 2 : 1 };
}

/** Block texts: the header line is skipped, the common indentation stripped, and breaks matched against the value's blanks and breaks. */
function blockOffsets(value: string, source: string): readonly number[] {
  const offsets: number[] = [];
  const lines = linesWithOffsets(source).slice(1);
  const indent = blockIndent(value, source, lines.map((line) => line.text));
  let breaks: number[] = [];
  for (const line of lines) {
    const content = line.text.slice(indent);
    // A line of blanks counts only where the value has those blanks: beyond the indentation of a kept text.
    if (content.trim() !== "" || (content !== "" && value.startsWith(content, offsets.length + breaks.length))) {
      pushBreaks(value, offsets, breaks);
      breaks = [];
      for (let unit = 0; unit < content.length && offsets.length < value.length; unit += 1) offsets.push(line.at + indent + unit);
    }
    breaks.push(line.at + line.text.length);
  }
  pushBreaks(value, offsets, breaks);
  return offsets;
}

/** One break may have become a blank (folding), several breaks one break less; the value tells. */
function pushBreaks(value: string, offsets: number[], breaks: readonly number[]): void {
  const first = offsets.length;
  let count = 0;
  if (value[first] === " " && breaks.length === 1) count = 1;
  else while (count < breaks.length && value[first + count] === "\n") count += 1;
  offsets.push(...breaks.slice(breaks.length - count));
}

/** The indentation that is not part of the text: that of the first line with text, or less of it where the header states how much (`|2`). */
function blockIndent(value: string, source: string, lines: readonly string[]): number {
  const first = lines.find((line) => line.trim() !== "") ?? "";
  const found = /^ */.exec(first)![0].length;
  if (!/^[|>][+-]?[1-9]/.test(source)) return found;
  const wanted = value.split("\n").find((line) => line.trim() !== "") ?? "";
  for (let indent = 0; indent < found; indent += 1) if (wanted.startsWith(first.slice(indent))) return indent;
  return found;
}

function linesWithOffsets(source: string): readonly { readonly text: string; readonly at: number }[] {
  let at = 0;
  // A last line break ends the last line; it does not begin another.
  return source.replace(/\n$/, "").split("\n").map((raw) => {
    const line = { text: raw.replace(/\r$/, ""), at };
    at += raw.length + 1;
    return line;
  });
}
