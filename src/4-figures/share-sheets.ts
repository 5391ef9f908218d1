// Which pieces of templates share a sheet: rectangles laid side by side, upright, on as few sheets as a few good orders find.

/** A rectangle in millimetres. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

/** One sheet: which of the rooms it has (upright, across), and where each piece lies in it. */
export interface SharedSheet {
  readonly room: number;
  readonly places: readonly { readonly piece: number; readonly x: number; readonly y: number }[];
}

interface FreeArea extends Extent {
  readonly x: number;
  readonly y: number;
}

/** Pieces keep so far apart. */
const gap = 4;

/** Lays every piece that fits a room; sheets come in the order of their first pieces. Pieces too large for every room are left out. */
export function shareSheets(pieces: readonly Extent[], rooms: readonly Extent[]): readonly SharedSheet[] {
  const all = pieces.map((_, index) => index).filter((index) => rooms.some((room) => fits(pieces[index]!, room)));
  const by = (measure: (piece: Extent) => number): readonly number[] => all.toSorted((a, b) => measure(pieces[b]!) - measure(pieces[a]!) || a - b);
  const orders = [by(({ height }) => height), by(({ width }) => width), by(({ width, height }) => width * height), by(({ width, height }) => Math.max(width, height)), all];
  const plans = orders.map((order) => fillSheets(order, pieces, rooms));
  const best = plans.reduce((least, plan) => (plan.length < least.length ? plan : least));
  return best.toSorted((a, b) => firstOf(a) - firstOf(b));
}

function firstOf({ places }: SharedSheet): number {
  return places.reduce((first, { piece }) => Math.min(first, piece), Infinity);
}

function fits(piece: Extent, room: Extent): boolean {
  return piece.width <= room.width + 1e-9 && piece.height <= room.height + 1e-9;
}

/** One sheet after the other, each in the room that takes the largest share of what is left. */
function fillSheets(order: readonly number[], pieces: readonly Extent[], rooms: readonly Extent[]): readonly SharedSheet[] {
  const sheets: SharedSheet[] = [];
  let left = order;
  while (left.length > 0) {
    const tried = rooms.map((room, index): SharedSheet => ({ room: index, places: fillSheet(left, pieces, room) }));
    const covered = ({ places }: SharedSheet): number => places.reduce((sum, { piece }) => sum + pieces[piece]!.width * pieces[piece]!.height, 0);
    const sheet = tried.reduce((most, each) => (covered(each) > covered(most) ? each : most));
    sheets.push(sheet);
    left = left.filter((index) => !sheet.places.some(({ piece }) => piece === index));
  }
  return sheets;
}

/** Each piece as high up as there is room, and there as far left; free areas overlap, each as large as it can be. */
function fillSheet(order: readonly number[], pieces: readonly Extent[], room: Extent): SharedSheet["places"] {
  // A gap right of and below each piece; the room has one more of each, so that the last piece needs none.
  let free: readonly FreeArea[] = [{ x: 0, y: 0, width: room.width + gap, height: room.height + gap }];
  return order.flatMap((piece) => {
    const size = { width: pieces[piece]!.width + gap, height: pieces[piece]!.height + gap };
    const spot = free.filter((area) => fits(size, area)).toSorted((a, b) => a.y - b.y || a.x - b.x)[0];
    if (spot === undefined) return [];
    const taken = { x: spot.x, y: spot.y, ...size };
    const split = free.flatMap((area) => without(area, taken));
    free = split.filter((area, index) => !split.some((other, at) => at !== index && contains(other, area) && (at < index || !contains(area, other))));
    return [{ piece, x: spot.x, y: spot.y }];
  });
}

/** The largest rectangles of an area outside of what is taken. */
function without(area: FreeArea, taken: FreeArea): readonly FreeArea[] {
  const [right, bottom] = [area.x + area.width, area.y + area.height];
  const [takenRight, takenBottom] = [taken.x + taken.width, taken.y + taken.height];
  if (taken.x >= right || takenRight <= area.x || taken.y >= bottom || takenBottom <= area.y) return [area];
  return [
    { ...area, width: taken.x - area.x },
    { ...area, x: takenRight, width: right - takenRight },
    { ...area, height: taken.y - area.y },
    { ...area, y: takenBottom, height: bottom - takenBottom },
  ].filter(({ width, height }) => width > 0 && height > 0);
}

function contains(outer: FreeArea, inner: FreeArea): boolean {
  return outer.x <= inner.x && outer.y <= inner.y && outer.x + outer.width >= inner.x + inner.width && outer.y + outer.height >= inner.y + inner.height;
}
