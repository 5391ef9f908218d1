// Test of the print-out papers against the named sheets.
import { describe, expect, test } from "vitest";
import { paperIds, papers } from "../../src/catalogue/papers.ts";
import { findSheetSize } from "../../src/catalogue/sheet-sizes.ts";

describe("the print-out papers", () => {
  test("are the sheets of the same name", () => {
    for (const id of paperIds) {
      const sheet = findSheetSize(papers[id].name)!;
      expect({ height: papers[id].height, width: papers[id].width }).toEqual({ height: sheet.height, width: sheet.width });
    }
  });
});
