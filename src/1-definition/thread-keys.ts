// The keys about thread that every sewn binding has under `book`: ends, needlefuls, joins.
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { mappingWithDefaults } from "./collections.ts";
import { length } from "./length-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";

/** How the author handles thread. */
export interface ThreadKeys {
  /** Left hanging at the start and at the end of each thread, to tie or to hide. */
  readonly tail: Length;
  /** The longest thread that is comfortable on a needle. */
  readonly needleful: Length;
  /** What each thread leaves over at a join. */
  readonly "join end": Length;
  /** What stays in the needle of each length. */
  readonly waste: Length;
}

/** The `thread:` key; defaults are common practice, no source. */
export function threadKeys(context: FieldContext): Field<ThreadKeys> {
  return mappingWithDefaults({
    tail: length(context, { about: "Thread left at the start and at the end, to tie or to hide.", least: "20", most: "500", default: { mm: mm(100), in: inches(4) }, defaultText: "100 mm, or 4 in", example: "100 mm" }),
    needleful: length(context, { about: "The longest thread that is comfortable on a needle; a longer one is joined.", least: "300", most: "10000", default: { mm: mm(1500), in: inches(60) }, defaultText: "1500 mm, or 60 in", example: "1500 mm" }),
    "join end": length(context, { about: "What each of the two threads leaves over at a join.", least: "20", most: "300", default: { mm: mm(60), in: inches("2.5") }, defaultText: "60 mm, or 2 1/2 in", example: "60 mm" }),
    waste: length(context, { about: "What stays in the needle when a length is sewn up.", least: "0", most: "500", default: { mm: mm(100), in: inches(4) }, defaultText: "100 mm, or 4 in", example: "100 mm" }),
  }, { about: "The thread: its ends, and the longest on a needle.", example: "{tail: 100 mm}" });
}

/** Needlefuls are cut to whole centimetres or half inches. */
export const threadCutTo = { mm: mm(10), in: inches(1, 2) } as const;
