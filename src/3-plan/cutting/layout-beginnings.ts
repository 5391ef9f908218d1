// Beginnings of layouts: a sheet in work has a column, in it a row, in it a stack; each further piece goes to one of these.
import type { LayoutStep, Place } from "./layout-steps.ts";
import type { WorkMeter } from "./work-meter.ts";

/** A piece that is still wanted `count` times. */
export interface WantedPiece {
  readonly piece: number;
  readonly width: number;
  readonly height: number;
  readonly count: number;
  readonly mayTurn: boolean;
  /** What one piece is worth, where a search is for the most valuable sheet. */
  readonly value?: number;
}

/** How a search weighs waste against having placed large pieces. */
export type Guide = "waste" | "large-first" | "larger-first" | "largest-first";

/** What a search may do; the same orders give the same layouts. */
export interface SearchOrders {
  readonly width: number;
  readonly height: number;
  /** Beginnings kept at each step. */
  readonly keep: number;
  readonly guide: Guide;
  /** Layouts of more sheets than this are not wanted. */
  readonly mostSheets: number;
  /** Directions the first cuts of a sheet may have. */
  readonly firstCuts: readonly ("x" | "y")[];
  readonly meter: WorkMeter;
}

/** The pieces of one search and the ways in which they may lie. */
export interface SearchGround {
  readonly types: readonly WantedPiece[];
  readonly totalArea: number;
  /** How many of each are left at the beginning in work. */
  readonly left: Uint16Array;
  readonly isForValue: boolean;
  readonly orders: SearchOrders;
  readonly ways: { readonly x: readonly Way[]; readonly y: readonly Way[] };
}

/** A beginning of a layout. The sheet in work has a column, in it a row, in it a stack of pieces; all before them is closed. */
export interface Beginning {
  readonly before: Beginning | null;
  readonly step: LayoutStep | null;
  readonly sheets: number;
  readonly flipped: boolean;
  readonly columnStart: number;
  readonly columnEnd: number;
  readonly rowStart: number;
  readonly rowEnd: number;
  readonly stackStart: number;
  readonly stackEnd: number;
  readonly stackTop: number;
  /** The way in which the last stack of the row began: stacks of a row are in the order of the ways. */
  readonly lastWay: number;
  readonly area: number;
  readonly placed: number;
  readonly squares: number;
  readonly value: number;
}

/** A piece as it lies. */
export interface Way {
  readonly index: number;
  readonly turned: boolean;
  readonly width: number;
  readonly height: number;
}

/** A beginning with one more piece, not yet built. */
export interface Child {
  readonly from: Beginning;
  readonly way: number;
  readonly place: Place;
  readonly flipped: boolean;
  readonly weight: number;
  readonly key: number;
}

/** The children of one step; once enough are known, only those below a weight are added. */
export interface Children {
  list: Child[];
  below: number;
}

/** Prepares a search. */
export function groundFor(wanted: readonly WantedPiece[], orders: SearchOrders, isForValue: boolean): SearchGround {
  const types = wanted.filter((each) => each.count > 0 && (!isForValue || (each.value ?? 0) > 0));
  const totalArea = types.reduce((sum, each) => sum + each.count * each.width * each.height, 0);
  return { types, totalArea, left: new Uint16Array(types.length), isForValue, orders, ways: { x: waysOf(types, orders, false), y: waysOf(types, orders, true) } };
}

/** Nothing laid yet. */
export function startOf(): Beginning {
  return { before: null, step: null, sheets: 0, flipped: false, columnStart: 0, columnEnd: 0, rowStart: 0, rowEnd: 0, stackStart: 0, stackEnd: 0, stackTop: 0, lastWay: 0, area: 0, placed: 0, squares: 0, value: 0 };
}

/** The steps that led to a beginning, in order. */
export function stepsOf(end: Beginning): readonly LayoutStep[] {
  const steps: LayoutStep[] = [];
  for (let each: Beginning | null = end; each?.step; each = each.before) steps.unshift(each.step);
  return steps;
}

/** Ways to lie, highest first; for sheets whose first cuts run the other way the axes change places. */
function waysOf(types: readonly WantedPiece[], { width, height }: SearchOrders, flipped: boolean): readonly Way[] {
  const [across, down] = flipped ? [height, width] : [width, height];
  return types.flatMap((type, index) => {
    const straight = flipped ? { index, turned: false, width: type.height, height: type.width } : { index, turned: false, width: type.width, height: type.height };
    const other = { index, turned: true, width: straight.height, height: straight.width };
    return (type.mayTurn && type.width !== type.height ? [straight, other] : [straight]).filter((way) => way.width <= across && way.height <= down);
  }).sort((a, b) => b.height - a.height || b.width - a.width || a.index - b.index);
}

/** Adds all children of a beginning: the next piece on every place where it fits; a new sheet only where nothing fits. */
export function extend(beginning: Beginning, ground: SearchGround, children: Children): void {
  const { types, ways: allWays, orders } = ground;
  const sheetArea = orders.width * orders.height;
  const add = (flipped: boolean, way: number, place: Place, closed: number, key: number): void => {
    const ways = flipped ? allWays.y : allWays.x;
    const type = types[ways[way]!.index]!;
    const pieceArea = type.width * type.height;
    const area = beginning.area + pieceArea;
    if (!ground.isForValue && closed + ground.totalArea - area > orders.mostSheets * sheetArea) return;
    const placed = beginning.placed + 1;
    const mean = area / placed;
    const weight = ground.isForValue
      ? closed / (beginning.value + type.value!) / (orders.guide === "waste" ? 1 : mean)
      : weightOf(orders.guide, (closed - area) / closed, mean, (beginning.squares + pieceArea * pieceArea) / placed);
    if (weight >= children.below) return;
    children.list.push({ from: beginning, way, place, flipped, weight, key });
    if (children.list.length < 12 * orders.keep + 100) return;
    children.list = best(children.list, orders.keep);
    if (children.list.length === orders.keep) children.below = children.list.at(-1)!.weight;
  };
  const { sheets, flipped, columnStart, columnEnd, rowStart, rowEnd, stackStart, stackEnd, stackTop } = beginning;
  const left = leftAt(beginning, ground);
  const full = (sheets - 1) * sheetArea;
  const [across, down] = flipped ? [orders.height, orders.width] : [orders.width, orders.height];
  let isFitting = false;
  if (sheets > 0) {
    const ways = flipped ? allWays.y : allWays.x;
    orders.meter.spent += ways.length + extraLooks;
    for (let index = 0; index < ways.length; index++) {
      const way = ways[index]!;
      if (left[way.index] === 0) continue;
      const { width, height } = way;
      if (stackTop + height <= rowEnd && width <= stackEnd - stackStart) {
        isFitting = true;
        add(flipped, index, "stack", full + columnStart * down + (columnEnd - columnStart) * rowStart + (stackStart - columnStart) * (rowEnd - rowStart) + (stackEnd - stackStart) * (stackTop + height - rowStart), keyOf(4, index, stackTop));
      }
      if (index >= beginning.lastWay && stackEnd + width <= across && rowStart + height <= rowEnd) {
        isFitting = true;
        add(flipped, index, "row", full + columnStart * down + (Math.max(columnEnd, stackEnd + width) - columnStart) * rowStart + (stackEnd - columnStart) * (rowEnd - rowStart) + width * height, keyOf(3, index, stackEnd));
      }
      if (rowEnd + height <= down && columnStart + width <= across) {
        isFitting = true;
        add(flipped, index, "column", full + columnStart * down + (Math.max(columnEnd, columnStart + width) - columnStart) * rowEnd + width * height, keyOf(2, index, rowEnd));
      }
      if (columnEnd + width <= across) {
        isFitting = true;
        add(flipped, index, "sheet", full + columnEnd * down + width * height, keyOf(1, index, columnEnd));
      }
    }
  }
  if (isFitting || sheets >= orders.mostSheets) return;
  for (const first of orders.firstCuts) {
    const ways = first === "y" ? allWays.y : allWays.x;
    ways.forEach((way, index) => { if (left[way.index]! > 0) add(first === "y", index, "new", sheets * sheetArea + way.width * way.height, keyOf(first === "y" ? 6 : 5, index, 0)); });
  }
}

/** Making a beginning takes as long as so many looks. */
const extraLooks = 40;

/** Counts what is left, going back over the steps: quicker than keeping a list with every beginning. */
function leftAt(beginning: Beginning, { types, left }: SearchGround): Uint16Array {
  for (let type = 0; type < types.length; type++) left[type] = types[type]!.count;
  for (let each: Beginning | null = beginning; each?.step; each = each.before) left[each.step.type]!--;
  return left;
}

function weightOf(guide: Guide, waste: number, mean: number, meanSquare: number): number {
  if (guide === "waste") return waste;
  if (guide === "large-first") return waste / mean;
  return (0.1 + waste) / (guide === "larger-first" ? mean : meanSquare);
}

/** A number by which children of different beginnings can be told apart for breaking ties. */
function keyOf(kind: number, way: number, at: number): number {
  return (kind * 4096 + way) * 65536 + (at % 65536);
}

/** The children with the least weights, in order. */
export function best(children: Child[], keep: number): Child[] {
  children.sort((a, b) => a.weight - b.weight || a.key - b.key);
  // Beginnings that have the same waste from the same pieces hardly differ: one of them is kept.
  const chosen: Child[] = [];
  for (const child of children) {
    if (chosen.length >= keep) break;
    if (chosen.at(-1)?.weight !== child.weight) chosen.push(child);
  }
  return chosen;
}

/** The beginning that a child stands for. */
export function grown({ from, way: index, place, flipped }: Child, { types, ways }: SearchGround): Beginning {
  const { index: type, turned, width, height } = (flipped ? ways.y : ways.x)[index]!;
  const { columnStart, columnEnd, rowStart, rowEnd, stackEnd } = from;
  const isStack = place === "stack";
  const isRow = isStack || place === "row";
  const isColumn = isRow || place === "column";
  const start = isColumn ? columnStart : place === "sheet" ? columnEnd : 0;
  const low = isRow ? rowStart : place === "column" ? rowEnd : 0;
  const left = isStack ? from.stackStart : place === "row" ? stackEnd : start;
  const right = isStack ? stackEnd : left + width;
  const area = types[type]!.width * types[type]!.height;
  return {
    before: from,
    step: { type, turned, place, flipped },
    sheets: place === "new" ? from.sheets + 1 : from.sheets,
    flipped,
    columnStart: start,
    columnEnd: isColumn ? Math.max(columnEnd, right) : right,
    rowStart: low,
    rowEnd: isRow ? rowEnd : low + height,
    stackStart: left,
    stackEnd: right,
    stackTop: isStack ? from.stackTop + height : low + height,
    lastWay: isStack ? from.lastWay : index,
    area: from.area + area,
    placed: from.placed + 1,
    squares: from.squares + area * area,
    value: from.value + (types[type]!.value ?? 0),
  };
}
