// What a stab binding's figures and steps need besides parts, scores, holes and thread.
import type { StabPattern } from "../../1-definition/stab-binding.ts";
import { mm } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { PatternRun } from "../sewing/trail.ts";

/** Books thicker than this are drilled more easily than pierced: the shaft of an awl is conical. Common practice, no source. */
export const drilledFrom = mm(12);

/** A hole of the pattern or of the inner binding: from the head and from the spine edge. */
export interface StabHole {
  /** As steps and templates name it: main holes by numbers, added ones by letters, those of the inner binding by the last letters. */
  readonly id: string;
  readonly kind: "main" | "added" | "inner";
  readonly along: Length;
  readonly across: Length;
}

/** A stab binding as geometry. */
export interface StabBindingGeometry {
  readonly leaves: number;
  readonly isFolded: boolean;
  readonly height: Length;
  readonly width: Length;
  /** One sheet of paper; a folded leaf is two thick. */
  readonly paperThickness: Length;
  readonly coverThickness: Length;
  /** All leaves without covers, and with both. */
  readonly blockThickness: Length;
  readonly thickness: Length;
  readonly setBack: Length;
  readonly cornerDistance: Length;
  readonly openingAllowance: Length;
  /** What is left of a page to write on. */
  readonly usableWidth: Length;
  readonly flap: Length;
  readonly coverWidth: Length;
  readonly holeDiameter: Length;
  readonly pattern: StabPattern;
  /** In the order of their distance from the head. */
  readonly holes: readonly StabHole[];
  /** Two pairs; empty without an inner binding. */
  readonly innerHoles: readonly StabHole[];
  readonly runs: readonly PatternRun[];
  /** The main hole at which the sewing starts and ends. */
  readonly startHole: string;
}
