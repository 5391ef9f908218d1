// The shopping list of a class as a table for spreadsheets: RFC 4180, in UTF-8, and no cell that a spreadsheet would run as a formula.
import type { OrderLine } from "../3-plan/class/types.ts";
import type { Booklet } from "./types.ts";

/** Where it stands in a booklet’s folder. */
export const buyingFile = "buying.csv";

const columns = ["Material", "Sold as", "Needed", "In hand", "Packs to buy", "In a pack", "Price of a pack", "Price", "Over", "Currency", "Note"] as const;

/** Text of `buying.csv`; null for a book without a class. */
export function buyingCsv({ definition, plan }: Booklet): string | null {
  if (!plan.class || !definition.class) return null;
  const { currency } = definition.class;
  const rows = plan.class.orders.map((line) => cellsOf(line, currency));
  // The mark before the first column tells a spreadsheet that this is UTF-8: without it some read € and × as other signs.
  return `\ufeff${[columns, ...rows].map((row) => row.map(cell).join(",")).join("\r\n")}\r\n`;
}

function cellsOf(line: OrderLine, currency: string): readonly string[] {
  const counted = (count: number): string => (line.isCounted ? String(count) : "");
  const money = (cents: number | null): string => (cents === null ? "" : (cents / 100).toFixed(2));
  return [
    line.name, line.unit, String(line.needed), counted(line.inHand), counted(line.packs), counted(line.packSize),
    money(line.packPrice), money(line.price), counted(line.over), line.price === null ? "" : currency, line.note,
  ];
}

/**
 * One cell. A text that begins with one of `= + - @`, a tab or a line's end would be taken for a formula by spreadsheets; an apostrophe before it
 * keeps it a text. Line ends within a text become blanks.
 */
export function cell(text: string): string {
  const line = text.replace(/[\r\n]+/g, " ");
  const harmless = /^[\s]*[=+\-@\t\uff1d\uff0b\uff0d\uff20]/.test(text) ? `'${line}` : line;
  return /[",]/.test(harmless) || harmless !== harmless.trim() ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
