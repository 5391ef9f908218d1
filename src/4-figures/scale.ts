// Picks an honest scale for a figure: one that can be said in two numbers, the largest that fits the space on paper.

/** A drawing scale. `factor` is millimetres of paper for one millimetre of book. */
export interface Scale {
  /** "1:2.5". */
  readonly name: string;
  readonly factor: number;
}

/** Width of a figure across the whole column, in millimetres. */
export const fullColumn = 170;
/** Tallest figure that still leaves room for its caption on either paper. */
export const tallestFigure = 215;

/** The scales used, from large to small. */
export const scales: readonly Scale[] = [
  ["20:1", 20], ["10:1", 10], ["5:1", 5], ["4:1", 4], ["2:1", 2], ["1.5:1", 1.5], ["1:1", 1], ["1:1.5", 1 / 1.5], ["1:2", 1 / 2], ["1:2.5", 1 / 2.5], ["1:3", 1 / 3], ["1:4", 1 / 4], ["1:5", 1 / 5],
  ["1:6", 1 / 6], ["1:8", 1 / 8], ["1:10", 1 / 10], ["1:12", 1 / 12], ["1:15", 1 / 15], ["1:20", 1 / 20], ["1:25", 1 / 25], ["1:50", 1 / 50], ["1:75", 1 / 75], ["1:100", 1 / 100], ["1:150", 1 / 150], ["1:200", 1 / 200], ["1:250", 1 / 250],
].map(([name, factor]) => ({ name: name as string, factor: factor as number }));

/**
 * The largest scale, not above `largest`, at which `width × height` (millimetres of the book) fits `roomWidth × roomHeight` on paper.
 * The smallest scale when none fits.
 */
export function fittingScale(width: number, height: number, roomWidth: number, roomHeight: number, largest = 1): Scale {
  const fits = scales.find(({ factor }) => factor <= largest && width * factor <= roomWidth && height * factor <= roomHeight);
  return fits ?? scales.at(-1)!;
}

/**
 * For `placeAtScale`: the largest scale at which `width × height` fits `roomWidth × roomHeight`, then the next two larger ones,
 * should labels find no place.
 */
export function scalesThatFit(width: number, height: number, roomWidth: number, roomHeight: number, largest = 1): readonly Scale[] {
  const wished = scales.indexOf(fittingScale(width, height, roomWidth, roomHeight, largest));
  return [0, 1, 2].flatMap((step) => scales[wished - step] ?? []);
}

/** "about 1:2.6": for drawings that fill their room, so that the scale is no round number. */
export function scaleWords(factor: number): string {
  return factor > 1 ? `about ${factor.toFixed(1)}:1` : `about 1:${(1 / factor).toFixed(1)}`;
}
