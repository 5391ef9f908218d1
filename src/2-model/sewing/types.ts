// The way of a sewing thread, one model for every sewn binding: places, moves between them, and the runs that a pattern wants.
import type { Length } from "../../units/length.ts";

/**
 * Where the thread is beside a place. Folds and covers have an inside and an outside, a block of leaves has a front and a back;
 * `within` is between the leaves, where an end is hidden.
 */
export type Side = "inside" | "outside" | "front" | "back" | "within";

/** An edge that thread can be laid around. */
export type Edge = "spine" | "head" | "tail" | "board";

/** A place that the thread comes to: a hole of a part, an edge or a tape. */
export interface Place {
  /** Unique in its path: `section-2/3`, `front-board/1`, `7`. */
  readonly id: string;
  /** As steps, figures and templates name it: `3`. */
  readonly name: string;
  readonly kind: "hole" | "edge" | "tape";
  /** The part that it belongs to, and the hole's id there: together one entry of the model's holes. */
  readonly part: string;
  readonly hole: string | null;
  /** From the head, as on the part. */
  readonly along: Length;
  /** From the spine edge towards the fore-edge. Nothing for holes in a fold. */
  readonly across: Length;
  /** From the front of the book towards its back: the middle of a section, the front face of a block. */
  readonly depth: Length;
}

/** A place and the side of it on which the thread is. */
export interface Spot {
  readonly place: string;
  readonly side: Side;
}

interface MoveBase {
  /** Counted from 1 in its path. */
  readonly n: number;
  readonly from: Spot;
  readonly to: Spot;
  /** The pass that it belongs to, counted from 1: one section, or one way along the spine. One small drawing each. */
  readonly pass: number;
  /** The wanted run that it covers; null for what no pattern asks for, such as going through a hole. */
  readonly run: string | null;
  /** Of the thread's middle line, with the thickness of what it goes through or around. */
  readonly length: Length;
}

/**
 * One move of the needle.
 * `hole`: through the hole it is at, to the other side. `run`: along one side to another place. `tape`: the same, over a tape or past it.
 * `edge`: around an edge. `link`: under the earlier move `under` and back. `kettle`: under the earlier move `under` and up to the next section.
 * `knot`: tied where it is; with the tail at the start when `under` is null.
 */
export type Move =
  | (MoveBase & { readonly kind: "hole" | "run" })
  | (MoveBase & { readonly kind: "tape"; readonly tape: string })
  | (MoveBase & { readonly kind: "edge"; readonly edge: Edge })
  | (MoveBase & { readonly kind: "link" | "kettle" | "knot"; readonly under: number | null });

/** What a move does. */
export type MoveKind = Move["kind"];

/** An end of the thread: where it hangs, and how much of it. */
export interface Tail {
  readonly at: Spot;
  readonly length: Length;
}

/** A stretch of thread that a pattern wants to see or needs, so many times. */
export interface Run {
  /** `front 2-3`, `spine 2`. */
  readonly id: string;
  readonly times: number;
}

/** One pass of the needle: a section, or one way along the spine. */
export interface Pass {
  readonly n: number;
  /** "section 3", "pass 2, back towards the head". */
  readonly name: string;
}

/** The way of one thread from end to end. */
export interface ThreadPath {
  readonly places: ReadonlyMap<string, Place>;
  readonly passes: readonly Pass[];
  readonly start: Tail;
  readonly moves: readonly Move[];
  readonly end: Tail;
  /** What the moves must cover, neither more nor less. */
  readonly wanted: readonly Run[];
}

/** One length of thread as it is cut and threaded: moves `first` to `last` of a path, and the ends to tie or hide. */
export interface Needleful {
  readonly n: number;
  readonly path: number;
  readonly first: number;
  readonly last: number;
  /** Where its end is joined to the next needleful; null for the last one of a path. */
  readonly joinAt: Spot | null;
  /** Sewn length, both ends and what is left in the needle: as cut. */
  readonly length: Length;
}

/** All thread of one book. */
export interface Thread {
  /** Each sewn with a thread of its own, in order. */
  readonly paths: readonly ThreadPath[];
  /** Of all moves. */
  readonly sewn: Length;
  /** Of all moves by kind: kettle climbs and knots are among them. */
  readonly byKind: ReadonlyMap<MoveKind, Length>;
  /** Sewn length and the two ends of each path: what the path alone needs. */
  readonly net: Length;
  readonly needlefuls: readonly Needleful[];
  /** All needlefuls as cut: what to have at hand. */
  readonly length: Length;
  /** Whether the paths come in twos that are the halves of one thread with a needle at each end: their first lengths are cut in one piece. */
  readonly twoNeedles?: boolean;
}
