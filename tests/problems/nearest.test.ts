// Suggestions for mistyped words.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editDistance, nearestOf } from "../../src/problems/nearest.ts";

describe("edit distance", () => {
  it("counts insertions, deletions, changes and swaps of neighbours as one each", () => {
    expect(editDistance("margin", "margins")).toBe(1);
    expect(editDistance("margin", "magin")).toBe(1);
    expect(editDistance("margin", "mergin")).toBe(1);
    expect(editDistance("margin", "magrin")).toBe(1);
    expect(editDistance("", "spine")).toBe(5);
    expect(editDistance("spine", "stubs")).toBe(4);
  });

  it("is the same both ways, zero only for equal words, and never more than the longer word", () => {
    fc.assert(fc.property(fc.string({ maxLength: 12 }), fc.string({ maxLength: 12 }), (a, b) => {
      const distance = editDistance(a, b);
      expect(distance).toBe(editDistance(b, a));
      expect(distance === 0).toBe(a === b);
      expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
    }));
  });
});

describe("the nearest known word", () => {
  const known = ["stubs", "stub depth", "floor gap", "margin", "spine"];

  it("is found through a slip, other capitals, hyphens and underscores", () => {
    expect(nearestOf("Stubs", known)).toBe("stubs");
    expect(nearestOf("stub-depth", known)).toBe("stub depth");
    expect(nearestOf("flor_gap", known)).toBe("floor gap");
    expect(nearestOf("maring", known)).toBe("margin");
  });

  it("is not suggested when nothing is close", () => {
    expect(nearestOf("colour", known)).toBeNull();
    expect(nearestOf("", known)).toBeNull();
    expect(nearestOf("x", ["y"])).toBeNull();
    expect(nearestOf("s".repeat(5000), known)).toBeNull();
  });

  it("is the closest when several are close", () => {
    expect(nearestOf("stub", ["stubs", "stub depth"])).toBe("stubs");
  });
});
