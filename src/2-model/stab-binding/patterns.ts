// The four traditional patterns as data: what each adds to the line of main holes, and which runs of thread are seen.
import type { StabPattern } from "../../1-definition/stab-binding.ts";
import type { Edge } from "../sewing/types.ts";

/**
 * Holes that a pattern adds. Every pattern has its line of main holes, a wrap around the spine at each and around head and tail at the outer
 * ones. An added hole is joined to main holes by lines on both faces, and wraps around edges of its own.
 */
export interface AddedHoles {
  /**
   * `corner`: one between each outer main hole and its corner, joined to that main hole. `gap`: one in each gap, joined to the main holes on
   * both sides. `beside`: one on each side of every main hole, joined to it.
   */
  readonly where: "corner" | "gap" | "beside";
  /** From the spine edge, as a share of the set-back of the main holes. */
  readonly across: Share;
  /** Of a corner hole: its distance from the end, as a share of the corner distance. Of one beside: its distance from the main hole, as a share of the gap. */
  readonly along: Share;
  /** `end` is the head for the first hole and the tail for the last. */
  readonly wraps: readonly (Extract<Edge, "spine"> | "end")[];
}

/** A fraction, as numerator and denominator. */
export type Share = readonly [n: number, d: number];

/** A pattern with its name in English and what it looks like. */
export interface Pattern {
  readonly english: string;
  readonly look: string;
  readonly added: readonly AddedHoles[];
}

const corner: AddedHoles = { where: "corner", across: [1, 2], along: [1, 2], wraps: ["spine", "end"] };

/** The patterns by their traditional names. Shares are common practice, no source: they are drawn so that lines meet at clear angles. */
export const patterns: Readonly<Record<StabPattern, Pattern>> = {
  "yotsume toji": { english: "four hole", look: "a line along the spine and a wrap at each hole", added: [] },
  kangxi: { english: "noble", look: "the same with a hole more in each corner, tied in a slanting line", added: [corner] },
  "asa-no-ha toji": {
    english: "hemp leaf", look: "slanting lines from each hole to smaller ones between them, like the ribs of a hemp leaf",
    added: [corner, { where: "gap", across: [1, 2], along: [1, 2], wraps: ["spine"] }],
  },
  "kikko toji": {
    english: "tortoise shell", look: "each hole with two smaller ones beside it, like the plates of a tortoise shell",
    added: [{ where: "beside", across: [1, 2], along: [1, 4], wraps: ["spine"] }],
  },
};
