// Spreading labels: order, gaps and limits are kept and nothing moves more than it must.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spreadPositions } from "../../src/geometry/spread.ts";

describe("spreading positions", () => {
  it("leaves positions alone that are far enough apart", () => expect(spreadPositions([0, 5, 10], 3)).toEqual([0, 5, 10]));
  it("spreads a crowded pair evenly to both sides", () => expect(spreadPositions([10, 10], 4)).toEqual([8, 12]));
  it("keeps within its limits", () => expect(spreadPositions([0, 0, 0], 2, 0, 10)).toEqual([0, 2, 4]));
  it("says so when the positions cannot fit", () => expect(spreadPositions([0, 1, 2], 5, 0, 9)).toBeNull());
  it("of nothing is nothing", () => expect(spreadPositions([], 3, 0, 1)).toEqual([]));

  it("keeps order and gap for any crowd, inside the limits", () => {
    const wishes = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 30 }).map((list) => [...list].sort((a, b) => a - b));
    fc.assert(fc.property(wishes, (wished) => {
      const places = spreadPositions(wished, 3, -10, 110);
      expect(places).not.toBeNull();
      places!.forEach((at, index) => {
        expect(at).toBeGreaterThanOrEqual(-10 - 1e-9);
        expect(at).toBeLessThanOrEqual(110 + 1e-9);
        if (index > 0) expect(at - places![index - 1]!).toBeGreaterThanOrEqual(3 - 1e-9);
      });
    }));
  });

  it("moves no more in sum of squares than any spread found by trying", () => {
    const [a, b, c] = [1, 2, 2.5];
    const cost = (places: readonly number[]): number => (places[0]! - a) ** 2 + (places[1]! - b) ** 2 + (places[2]! - c) ** 2;
    let best = Infinity;
    for (let first = -3; first <= 3; first += 0.05) {
      for (let second = first + 1.5; second <= 6; second += 0.05) {
        for (let third = second + 1.5; third <= 8; third += 0.05) best = Math.min(best, cost([first, second, third]));
      }
    }
    expect(cost(spreadPositions([a, b, c], 1.5)!)).toBeLessThanOrEqual(best + 1e-9);
  });
});
