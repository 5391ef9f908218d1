// The buying list as a table: read back by a reader of RFC 4180 that knows nothing of the writer; no cell is a formula.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buyingCsv, cell } from "../../src/5-pages/buying-csv.ts";
import type { OrderLine } from "../../src/3-plan/class/types.ts";
import type { Booklet } from "../../src/5-pages/types.ts";

/** RFC 4180, section 2, letter by letter: records end in CRLF, fields in commas, quotes are doubled within quotes. */
function readCsv(text: string): readonly (readonly string[])[] {
  const records: string[][] = [[]];
  let field = "";
  let isQuoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const letter = text[at]!;
    if (isQuoted) {
      if (letter !== '"') field += letter;
      else if (text[at + 1] === '"') (field += '"'), (at += 1);
      else isQuoted = false;
    } else if (letter === '"') {
      if (field !== "") throw new Error("a quote within a bare field");
      isQuoted = true;
    } else if (letter === "," || (letter === "\r" && text[at + 1] === "\n")) {
      records.at(-1)!.push(field);
      field = "";
      if (letter === "\r") records.push([]), (at += 1);
    } else if (letter === "\r" || letter === "\n") throw new Error("a bare line end");
    else field += letter;
  }
  if (field !== "" || records.at(-1)!.length > 0) throw new Error("the last record does not end");
  return records.slice(0, -1);
}

const line: OrderLine = { role: "card", name: "grey card", unit: "sheets 500 × 700 mm", needed: 7, inHand: 2, isCounted: true, packs: 1, packSize: 10, packPrice: 1240, price: 1240, over: 5, used: 86_800, note: "" };

function csvOf(...orders: readonly OrderLine[]): string {
  return buyingCsv({ definition: { class: { currency: "€" } }, plan: { class: { orders } } } as unknown as Booklet)!;
}

describe("the buying list as a table", () => {
  it("has a head and a record for each line, each as long as the head", () => {
    const text = csvOf(line, { ...line, name: 'cloth, "sea green"', packPrice: null, price: null });
    expect(text.startsWith("\ufeff")).toBe(true);
    const records = readCsv(text.slice(1));
    expect(records).toEqual([
      ["Material", "Sold as", "Needed", "In hand", "Packs to buy", "In a pack", "Price of a pack", "Price", "Over", "Currency", "Note"],
      ["grey card", "sheets 500 × 700 mm", "7", "2", "1", "10", "12.40", "12.40", "5", "€", ""],
      ['cloth, "sea green"', "sheets 500 × 700 mm", "7", "2", "1", "10", "", "", "5", "", ""],
    ]);
  });

  it("tells only how much is needed of what has no packs", () => {
    expect(readCsv(csvOf({ ...line, isCounted: false, packPrice: null, price: null }).slice(1))[1]).toEqual(["grey card", "sheets 500 × 700 mm", "7", "", "", "", "", "", "", "", ""]);
  });

  it("is none without a class", () => {
    expect(buyingCsv({ definition: { class: null }, plan: { class: null } } as unknown as Booklet)).toBeNull();
  });

  it.each(["=1+1", "+1", "-1", "@sum(A1)", "\t=1", " =1", "\r\n=1", "＝1", '="a"'])("disarms %j", (text) => {
    const [[read]] = readCsv(`${cell(text)}\r\n`) as [[string]];
    expect(read.trimStart().startsWith("'")).toBe(true);
  });

  it("leaves every other text as it is", () => {
    for (const text of ["A4", "2 × 3", "it's", "a=b", "", "5 mm"]) expect(cell(text)).toBe(text);
  });

  it("is read back as it was written, and never begins with what starts a formula", () => {
    fc.assert(fc.property(fc.array(fc.string({ unit: fc.constantFrom(..."=+-@\t\r\n\",' aé€") }), { minLength: 1, maxLength: 6 }), (texts) => {
      const [record] = readCsv(`${texts.map(cell).join(",")}\r\n`);
      expect(record).toHaveLength(texts.length);
      record!.forEach((read, index) => {
        expect(read).not.toMatch(/^\s*[=+\-@\t]/);
        const written = texts[index]!.replace(/[\r\n]+/g, " ");
        expect([written, `'${written}`]).toContain(read);
      });
    }), { numRuns: 300 });
  });
});
