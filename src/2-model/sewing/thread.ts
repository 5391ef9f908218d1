// How much thread a book takes: what is sewn, the ends, and the lengths that are cut for one needle after the other.
import { addLengths, isLess, multiplyLength, noLength, roundUpToMark } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { Ledger } from "../ledger.ts";
import type { Move, MoveKind, Needleful, Spot, Thread, ThreadPath } from "./types.ts";

/** How thread is cut and joined. */
export interface ThreadHandling {
  /** The longest thread that is comfortable on a needle. */
  readonly needleful: Length;
  /** What is left over at each join, on either thread: to tie or to hide. */
  readonly joinEnd: Length;
  /** What stays in the needle when its thread is sewn up. */
  readonly waste: Length;
  /** Needlefuls are cut to multiples of this. */
  readonly cutTo: Length;
  /** Where a thread may end after a move and the next one begin, or null; an inside side when left out. */
  readonly joinAfter?: (move: Move, next: Move | undefined) => Spot | null;
}

/** A join is made inside the fold, where it neither shows nor rubs. */
function insideTheFold(move: Move): Spot | null {
  return move.to.side === "inside" && (move.kind === "hole" || move.kind === "run") ? move.to : null;
}

/** A join is made between the leaves, in a hole that the thread is about to go through. */
export function betweenTheLeaves(_: Move, next: Move | undefined): Spot | null {
  return next?.kind === "hole" ? { place: next.from.place, side: "within" } : null;
}

/** All thread of a book from the ways it takes. */
export function threadOf(paths: readonly ThreadPath[], handling: ThreadHandling): Thread {
  const moves = paths.flatMap((path) => path.moves);
  const byKind = new Map<MoveKind, Length>();
  for (const { kind, length } of moves) byKind.set(kind, addLengths(byKind.get(kind) ?? noLength, length));
  const sewn = addLengths(...moves.map(({ length }) => length));
  const needlefuls = paths.flatMap((path, index) => splitPath(path, index + 1, handling)).map((each, index) => ({ ...each, n: index + 1 }));
  return {
    paths, sewn, byKind, needlefuls,
    net: addLengths(sewn, ...paths.flatMap(({ start, end }) => [start.length, end.length])),
    length: addLengths(...needlefuls.map(({ length }) => length)),
  };
}

/**
 * Cuts a path into needlefuls, each as long as it may be: as few as can be, because a longer first piece never makes the rest longer.
 * Where no join can be made within a needleful, it goes on to the next place where one can.
 */
function splitPath(path: ThreadPath, number: number, handling: ThreadHandling): readonly Omit<Needleful, "n">[] {
  const { moves } = path;
  const join = handling.joinAfter ?? insideTheFold;
  const found: Omit<Needleful, "n">[] = [];
  let first = 0;
  while (first < moves.length) {
    const startEnd = first === 0 ? path.start.length : handling.joinEnd;
    let sewn = noLength;
    let best: Omit<Needleful, "n"> | null = null;
    for (let last = first; last < moves.length; last += 1) {
      sewn = addLengths(sewn, moves[last]!.length);
      const isLast = last === moves.length - 1;
      const at = isLast ? null : join(moves[last]!, moves[last + 1]);
      if (!isLast && at === null) continue;
      const asCut = roundUpToMark(addLengths(startEnd, sewn, isLast ? path.end.length : handling.joinEnd, handling.waste), handling.cutTo);
      const fits = !isLess(handling.needleful, asCut);
      if (best && !fits) break;
      best = { path: number, first: first + 1, last: last + 1, joinAt: at, length: asCut };
      if (!fits) break;
    }
    found.push(best!);
    first = best!.last;
  }
  return found;
}

/** A piece of thread as it is cut. */
export interface CutThread {
  readonly length: Length;
  /** One, or two for a piece with a needle at each end. */
  readonly needles: 1 | 2;
}

/** The pieces to cut, in the order in which they are sewn: the needlefuls, where two begin as one thread the two together. */
export function piecesToCut({ needlefuls, twoNeedles }: Thread): readonly CutThread[] {
  if (!twoNeedles) return needlefuls.map(({ length }) => ({ length, needles: 1 }));
  return needlefuls.flatMap(({ path, first, length }): readonly CutThread[] => {
    if (first > 1) return [{ length, needles: 1 }];
    const half = path % 2 === 1 ? needlefuls.find((each) => each.path === path + 1 && each.first === 1) : undefined;
    return half ? [{ length: addLengths(length, half.length), needles: 2 }] : [];
  });
}

/** Enters what is known of the thread into the ledger: `sewn thread` from the moves, and what follows from it by formulas. */
export function enterThread(ledger: Ledger, thread: Thread): void {
  const threads = thread.paths.length;
  ledger.choose("sewn thread", thread.sewn, `the sum of ${thread.paths.reduce((sum, { moves }) => sum + moves.length, 0)} moves of the needle, each with the thickness it goes through or around`,
    { meaning: "taut thread in the finished sewing", source: "geometry: the way of the thread" });
  ledger.choose("thread ends", addLengths(...thread.paths.flatMap(({ start, end }) => [start.length, end.length])), `two ends for each of ${threads} ${threads === 1 ? "thread" : "threads"}`,
    { meaning: "thread left at the start and at the end", source: "geometry" });
  ledger.compute("net thread", "sewn thread + thread ends", { meaning: "what the sewing alone takes", source: "geometry" });
  ledger.choose("thread length", thread.length, `${thread.needlefuls.length === 1 ? "one length" : `${thread.needlefuls.length} lengths`} as cut: net thread, the ends at joins and what stays in the needle, each length rounded up`,
    { meaning: "thread to have at hand", source: "geometry" });
}

/** Half of a fold's or a block's thickness is gone through to an end hidden between the leaves. */
export function halfThrough(thickness: Length): Length {
  return multiplyLength(thickness, { n: 1n, d: 2n });
}
