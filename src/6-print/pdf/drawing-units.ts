// Groups the operators of a page into what is painted (a text, a path, a picture) and what only changes the state.
import { numbersOf } from "./content-stream.ts";
import type { Operation } from "./content-stream.ts";

/** A box in points from the page's lower left corner. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** One thing painted, with the operators that paint it. */
export interface PaintedUnit {
  readonly kind: "text" | "path" | "object";
  readonly operations: readonly Operation[];
  /** The mark it lies in; null outside of any. */
  readonly mark: string | null;
  /** What the clips in force let through; null when there is none: so are margin boxes painted. */
  readonly clip: Box | null;
  /** Where a path lies or a text begins; null for an object. */
  readonly box: Box | null;
  /** Name of the graphics state last set. */
  readonly state: string;
  /** Points for one unit of the drawing, along its x. */
  readonly scale: number;
}

/** Operators that paint nothing: transformations, colours, clips. Marked content is not among them: it is written anew. */
export interface StateUnit {
  readonly kind: "state";
  readonly operations: readonly Operation[];
}

/** What belongs together in a page's content: something painted, or changes of state. */
export type Unit = PaintedUnit | StateUnit;

type Matrix = readonly [number, number, number, number, number, number];
interface Level {
  readonly matrix: Matrix;
  readonly clip: Box | null;
  readonly state: string;
}

const pathOperators = new Set(["m", "l", "c", "v", "y", "h", "re"]);
const textShowing = new Set(["Tj", "TJ", "'", '"']);
const pathEnds = new Set(["S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "n"]);

/** Groups a page's operators in painting order. */
export function groupUnits(operations: readonly Operation[]): readonly Unit[] {
  const units: Unit[] = [];
  const levels: Level[] = [];
  const marks: (string | null)[] = [];
  let level: Level = { matrix: [1, 0, 0, 1, 0, 0], clip: null, state: "" };
  let open: { kind: "text" | "path"; operations: Operation[]; box: Box | null } | null = null;
  let clips = false;
  const markNow = (): string | null => marks.findLast((mark) => mark !== null) ?? null;
  const paint = (kind: PaintedUnit["kind"], painted: readonly Operation[], box: Box | null): void => {
    units.push({ kind, operations: painted, mark: markNow(), clip: level.clip, box, state: level.state, scale: Math.hypot(level.matrix[0], level.matrix[1]) });
  };

  for (const operation of operations) {
    const { operator } = operation;
    if (open?.kind === "text") {
      open.operations.push(operation);
      if (operator === "Tm") open.box = extend(open.box, level.matrix, numbersOf(operation).slice(4));
      if (operator !== "ET") continue;
      // A heading that moved to the next page leaves a text without letters behind.
      if (open.operations.some((each) => textShowing.has(each.operator))) paint("text", open.operations, open.box);
      open = null;
    } else if (pathOperators.has(operator)) {
      open ??= { kind: "path", operations: [], box: null };
      open.operations.push(operation);
      open.box = extend(open.box, level.matrix, coordinatesOf(operation));
    } else if (open !== null && (operator === "W" || operator === "W*")) {
      open.operations.push(operation);
      clips = true;
    } else if (open !== null && pathEnds.has(operator)) {
      open.operations.push(operation);
      const { box } = open;
      if (operator === "n") units.push({ kind: "state", operations: open.operations });
      else paint("path", open.operations, box);
      if (clips) level = { ...level, clip: level.clip === null ? box : box === null ? level.clip : intersection(level.clip, box) };
      open = null;
      clips = false;
    } else if (operator === "BT") {
      open = { kind: "text", operations: [operation], box: null };
    } else if (operator === "BDC" || operator === "BMC") {
      marks.push(markOf(operation));
    } else if (operator === "EMC") {
      marks.pop();
    } else if (operator === "Do" || operator === "sh") {
      paint("object", [operation], null);
    } else {
      if (operator === "q") levels.push(level);
      else if (operator === "Q") level = levels.pop() ?? level;
      else if (operator === "cm") level = { ...level, matrix: multiply(numbersOf(operation) as unknown as Matrix, level.matrix) };
      else if (operator === "gs") level = { ...level, state: operation.operands[0]!.slice(1) };
      units.push({ kind: "state", operations: [operation] });
    }
  }
  return units;
}

/** Whether the one box lies in the other; a CSS pixel (0.75 pt) is allowed, because the browser rounds boxes to whole pixels. */
export function liesIn(inner: Box, outer: Box, slack = 0.76): boolean {
  return inner.left >= outer.left - slack && inner.right <= outer.right + slack && inner.low >= outer.low - slack && inner.high <= outer.high + slack;
}

function markOf({ operands }: Operation): string | null {
  const at = operands.indexOf("/MCID");
  return at < 0 ? null : (operands[at + 1] ?? null);
}

/** x and y of each point in turn. */
function coordinatesOf(operation: Operation): readonly number[] {
  const numbers = numbersOf(operation);
  if (operation.operator !== "re") return numbers;
  const [x, y, width, height] = numbers as unknown as [number, number, number, number];
  return [x, y, x + width, y, x + width, y + height, x, y + height];
}

/** The box grown to hold these points too; a page has tens of thousands, so none is kept. */
function extend(box: Box | null, matrix: Matrix, coordinates: readonly number[]): Box | null {
  let [left, right, low, high] = box === null ? [Infinity, -Infinity, Infinity, -Infinity] : [box.left, box.right, box.low, box.high];
  for (let i = 0; i + 1 < coordinates.length; i += 2) {
    const [x, y] = apply(matrix, coordinates[i]!, coordinates[i + 1]!);
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return left <= right ? { left, right, low, high } : box;
}

function intersection(a: Box, b: Box): Box {
  return { left: Math.max(a.left, b.left), right: Math.min(a.right, b.right), low: Math.max(a.low, b.low), high: Math.min(a.high, b.high) };
}

function apply([a, b, c, d, e, f]: Matrix, x: number, y: number): [number, number] {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** First `m`, then `n`. */
function multiply(m: Matrix, n: Matrix): Matrix {
  const [a, b] = apply([n[0], n[1], n[2], n[3], 0, 0], m[0], m[1]);
  const [c, d] = apply([n[0], n[1], n[2], n[3], 0, 0], m[2], m[3]);
  const [e, f] = apply(n, m[4], m[5]);
  return [a, b, c, d, e, f];
}
