// The comparison of page images sees what a reader would see, and no more.
import { PNG } from "pngjs";
import { expect, test } from "vitest";
import { looksSame, pairOf } from "./compare.ts";
import { packed } from "./page-images.ts";

/** White paper with a grey or black box. */
function sheet({ x = 50, y = 50, across = 60, down = 3, grey = 0, height = 200 } = {}): PNG {
  const image = new PNG({ width: 150, height });
  image.data.fill(255);
  for (let row = y; row < y + down; row += 1) for (let column = x; column < x + across; column += 1) image.data.fill(grey, (row * 150 + column) * 4, (row * 150 + column) * 4 + 3);
  return image;
}

test("the same image, and one whose edges are a little lighter, look the same", () => {
  expect(looksSame(sheet(), sheet())).toBe(true);
  expect(looksSame(sheet(), sheet({ grey: 51 }))).toBe(true);
});

test("a line that moves, goes, grows or turns pale, and a page of another size, do not", () => {
  for (const other of [{ y: 54 }, { across: 0 }, { across: 75 }, { grey: 200 }, { height: 201 }]) expect(looksSame(sheet(), sheet(other)), JSON.stringify(other)).toBe(false);
});

test("the pair shows before, after and the difference, each in its place", () => {
  const pair = pairOf(sheet(), sheet({ y: 120 }));
  const isBlack = (x: number, y: number): boolean => pair.data[(y * pair.width + x) * 4] === 0;
  expect([pair.width, pair.height]).toEqual([450, 200]);
  expect([isBlack(60, 51), isBlack(60, 121), isBlack(210, 51), isBlack(210, 121)]).toEqual([true, false, false, true]);
});

test("an image keeps its greys in a file", () => {
  const image = sheet({ grey: 51 });
  expect(PNG.sync.read(packed(image)).data.equals(image.data)).toBe(true);
});
