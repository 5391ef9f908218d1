// The folded strip seen from its head, edge-on: a zigzag line, front towards the top of the page, valleys at its foot.
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";

/** Where a drawn-open strip runs: point 0 is its left edge, point k is fold k, the last one its right edge. */
export function zigzagPoints(panels: number, across: number, rise: number): readonly Point[] {
  return Array.from({ length: panels + 1 }, (_, index) => point(index * across, index % 2 === 1 ? 0 : -rise));
}

/** Part ids of strips as words: strips with their numbers. */
export function numbersInWords(numbers: readonly number[]): string {
  if (numbers.length === 1) return `strip ${numbers[0]}`;
  const [first, last] = [numbers[0]!, numbers.at(-1)!];
  return numbers.length === 2 ? `strips ${first} and ${last}` : `strips ${first} to ${last}`;
}
