// Tests of the usual screw posts: their order and the play of their holes.
import { describe, expect, test } from "vitest";
import { usualPosts } from "../../src/catalogue/posts.ts";
import { inches, isLess, isOnMark, mm } from "../../src/units/length.ts";

describe("the usual posts", () => {
  test("are listed from the shortest to the longest, each in sizes of its own system", () => {
    for (const [unit, mark] of [["mm", mm(1)], ["in", inches(1, 16)]] as const) {
      const { lengths, extensions, barrel } = usualPosts[unit];
      for (const list of [lengths, extensions]) expect(list.slice(1).every((length, index) => isLess(list[index]!, length))).toBe(true);
      expect([...lengths, ...extensions, barrel].every((length) => isOnMark(length, mark))).toBe(true);
    }
  });

  test("fit their holes with half a millimetre to spare", () => {
    expect([usualPosts.mm.clearance, usualPosts.in.clearance]).toEqual([mm("0.5"), mm("0.5")]);
  });
});
