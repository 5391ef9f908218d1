// How far two images of a page may differ: edges of letters may be drawn otherwise, nothing may move, come or go.
import pixelmatch from "pixelmatch";
import { PNG } from "pngjs";

/** Pixels whose difference in lightness is below this count as equal; 1 is black for white. */
const threshold = 0.3;
/** Within any square of this many pixels a side ... */
const windowSize = 40;
/** ... so many may differ; a short word or a line has more. */
const allowed = 12;

/** Whether a reader would see the same page. */
export function looksSame(before: PNG, after: PNG): boolean {
  if (before.width !== after.width || before.height !== after.height) return false;
  return pixelmatch(before.data, after.data, null, before.width, before.height, { threshold, windowSize }) <= allowed;
}

/** Before, after, and what differs, side by side. */
export function pairOf(before: PNG, after: PNG): PNG {
  const [width, height] = [Math.max(before.width, after.width), Math.max(before.height, after.height)];
  const pair = new PNG({ width: width * 3, height });
  pair.data.fill(255);
  PNG.bitblt(before, pair, 0, 0, before.width, before.height, 0, 0);
  PNG.bitblt(after, pair, 0, 0, after.width, after.height, width, 0);
  if (before.width === after.width && before.height === after.height) {
    const difference = new PNG({ width, height });
    pixelmatch(before.data, after.data, difference.data, width, height, { threshold });
    PNG.bitblt(difference, pair, 0, 0, width, height, width * 2, 0);
  }
  return pair;
}
