// Cutting content streams into operators.
import { expect, test } from "vitest";
import { readOperations, writeOperations } from "../../src/6-print/pdf/content-stream.ts";
import type { Operation } from "../../src/6-print/pdf/content-stream.ts";

const plain = (operations: readonly Operation[]): readonly Operation[] => operations.map(({ operator, operands }) => ({ operator, operands }));

test("operators keep their operands, strings their brackets and escapes, and comments fall away", () => {
  const stream = "q % saved\n.24 0 0 -.24 0 841.92 cm BT /F4 12 Tf (a \\) (b) c) Tj [<0a 1B> -20 (x)] TJ (it) ' ET/Span<</MCID 0/ActualText <feff>>>BDC f* EMC Q";
  expect(plain(readOperations(stream))).toEqual([
    { operator: "q", operands: [] },
    { operator: "cm", operands: [".24", "0", "0", "-.24", "0", "841.92"] },
    { operator: "BT", operands: [] },
    { operator: "Tf", operands: ["/F4", "12"] },
    { operator: "Tj", operands: ["(a \\) (b) c)"] },
    { operator: "TJ", operands: ["[", "<0a 1B>", "-20", "(x)", "]"] },
    { operator: "'", operands: ["(it)"] },
    { operator: "ET", operands: [] },
    { operator: "BDC", operands: ["/Span", "<<", "/MCID", "0", "/ActualText", "<feff>", ">>"] },
    { operator: "f*", operands: [] },
    { operator: "EMC", operands: [] },
    { operator: "Q", operands: [] },
  ]);
});

test("what is written reads back the same", () => {
  const operations = readOperations("1 0 0 rg 0 0 10 10 re f BT (\\(\\\\) Tj ET");
  expect(plain(readOperations(writeOperations(operations)))).toEqual(plain(operations));
  expect(plain(readOperations(writeOperations(plain(operations))))).toEqual(plain(operations));
});

test("an inline image and a string without end are refused", () => {
  expect(() => readOperations("q BI /W 1 ID x EI Q")).toThrow("inline image");
  expect(() => readOperations("(never closed Tj")).toThrow("does not end");
});
