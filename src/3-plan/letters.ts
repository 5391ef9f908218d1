// Letters that count: A to Z, then AA, AB and so on, as cut lists name parts and cut plans what is cut on.

/** The letter of a place counted from 0, in capitals from "A" or in small letters from "a". */
export function letterOf(index: number, first: "A" | "a"): string {
  const last = String.fromCharCode(first.charCodeAt(0) + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1, first) + last;
}
