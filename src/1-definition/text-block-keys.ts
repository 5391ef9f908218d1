// The keys by which bindings sewn from sections describe their text block and its stations, shared so that they mean the same everywhere.
import { usualMaterials } from "../catalogue/materials.ts";
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import type { MaterialRole } from "./binding-definition.ts";
import { mapping } from "./collections.ts";
import { choice, count, optionalCount } from "./fields.ts";
import { published } from "./field-json.ts";
import { length, optionalLength } from "./length-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";

/** A text block as its author wants it: the `text block:` mapping of a `book:` section. */
export interface TextBlockKeys {
  /** One page as it is when the book is finished, trimmed if it is trimmed. */
  readonly page: { readonly height: Length; readonly width: Length };
  readonly sections: number;
  /** Folded sheets in each section; each is two leaves. */
  readonly "folded sheets": number;
  readonly trim: "none" | "fore-edge" | "three edges";
  /** What is cut off each edge that is trimmed. */
  readonly "trim allowance": Length;
  /** What each section's thread adds to the spine, in percent of the thread's diameter. */
  readonly "swell percent": number;
}

/** Which edges may be trimmed after sewing. */
export const trimChoices = ["none", "fore-edge", "three edges"] as const;

/** Limits are what can be handled at a bench, common practice, no source. */
function keysOfBlock(context: FieldContext) {
  return {
    page: mapping({
      height: length(context, { about: "Height of a finished page, along the spine.", least: "40", most: "500", example: "210 mm" }),
      width: length(context, { about: "Width of a finished page, across the spine.", least: "30", most: "400", example: "148 mm" }),
    }, { about: "One page of the finished book.", example: "{height: 210 mm, width: 148 mm}" }),
    "folded sheets": count({ about: "Sheets folded once and nested into each section; each is two leaves.", least: 1, most: 16, default: 4, example: 4 }),
    trim: choice({ about: "Which edges are trimmed after sewing.", of: trimChoices, default: "none" }),
    "trim allowance": length(context, { about: "What is cut off each edge that is trimmed.", least: "1", most: "20", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
    // From 0.5 (a thread pressed flat into its fold) to 1 (not at all); D. W. Jones 1995 finds 1 mm loose, about 1/2 mm compressed.
    "swell percent": count({ about: "What each section's thread adds to the spine, in percent of its diameter: 50 well pressed, 100 not at all.", least: 50, most: 100, default: 75, example: 75 }),
  };
}

const about = { about: "The pages: their size, and how they are folded into sections.", example: "{page: {height: 210 mm, width: 148 mm}, sections: 8}" };

/** The `text block:` of a binding with several sections. */
export function textBlock(context: FieldContext, limits: { readonly least: number; readonly most: number }): Field<TextBlockKeys> {
  const { page, ...rest } = keysOfBlock(context);
  const sections = count({ about: "Sections of the book.", ...limits, example: 8 });
  return mapping({ page, sections, ...rest }, about);
}

/** The `text block:` of a binding with one section only: the same keys without the number of sections. */
export function singleSection(context: FieldContext): Field<TextBlockKeys> {
  const written = mapping(keysOfBlock(context), { ...about, example: "{page: {height: 210 mm, width: 148 mm}}" });
  return published(written.transform((keys) => ({ ...keys, sections: 1 })) as Field<TextBlockKeys>, (derived) => derived);
}

/** Where a section is pierced for sewing on tapes, cords or bands. */
export interface SupportedStationKeys {
  readonly "kettle from head": Length;
  readonly "kettle from tail": Length;
  /** Null when the height of the page decides. */
  readonly tapes: number | null;
  readonly "tape width": Length;
  /** From a kettle station to the middle of the tape beside it; null when all are spaced evenly. */
  readonly "outer tape from kettle": Length | null;
}

/** Tapes of a book: two for the smallest; more than seven leave no room for a needle. Common practice, no source. */
export const tapeLimits = { least: 2, most: 7 } as const;

/** The keys of sewing on tapes. */
export function supportedStations(context: FieldContext): { readonly [K in keyof SupportedStationKeys]: Field<SupportedStationKeys[K]> } {
  return {
    // Adam 1903, ch. II: 1 cm from the head, twice that from the tail. Bean & Brodhead 1918: 1/2 in from each end; Cockerell 1901: 1/4 in.
    "kettle from head": length(context, { about: "From the head of the page to the kettle station.", least: "4", most: "60", default: { mm: mm(10), in: inches(3, 8) }, defaultText: "10 mm, or 3/8 in", example: "10 mm" }),
    "kettle from tail": length(context, { about: "From the tail of the page to the kettle station.", least: "4", most: "60", default: { mm: mm(20), in: inches(3, 4) }, defaultText: "20 mm, or 3/4 in", example: "20 mm" }),
    tapes: optionalCount({ about: "Tapes that the sections are sewn on. Left out, three for a page of 8 in, four for 12 in, and so on.", ...tapeLimits, example: 3 }),
    "tape width": length(context, { about: "Width of a tape.", least: "4", most: "40", default: { mm: mm(12), in: inches(1, 2) }, defaultText: "12 mm, or 1/2 in", example: "12 mm" }),
    "outer tape from kettle": optionalLength(context, { about: "From a kettle station to the middle of the tape beside it. Left out, all tapes are spaced evenly.", least: "4", most: "200", example: "20 mm" }),
  };
}

/** Where a section is pierced when nothing but thread holds it. */
export interface PlainStationKeys {
  readonly stations: number;
  readonly "station from head": Length;
  readonly "station from tail": Length;
}

/** The keys of sewing without supports; the number of stations and how far they stay from the ends are the binding's own. */
export function plainStations(context: FieldContext, usual: {
  readonly count: { readonly least: number; readonly most: number; readonly default: number };
  readonly fromEnd: { readonly mm: Length; readonly in: Length; readonly text: string };
}): { readonly [K in keyof PlainStationKeys]: Field<PlainStationKeys[K]> } {
  const fromEnd = (end: string) => length(context, {
    about: `From the ${end} of the page to the first station.`, least: "4", most: "120", default: { mm: usual.fromEnd.mm, in: usual.fromEnd.in }, defaultText: usual.fromEnd.text, example: "15 mm",
  });
  return {
    stations: count({ about: "Holes in the fold of each section.", ...usual.count, example: usual.count.default }),
    "station from head": fromEnd("head"),
    "station from tail": fromEnd("tail"),
  };
}

/** The materials of a text block, to be spread among those of its binding. */
export const textBlockMaterials = {
  "text paper": { about: "The paper of the pages.", usual: usualMaterials["text paper"], keys: "sheet" },
  thread: { about: "The sewing thread; its thickness is its diameter, not flattened.", usual: usualMaterials.thread, keys: "band" },
} as const satisfies Readonly<Record<string, MaterialRole>>;

/** What can be measured off a text block, to be spread among what its binding lets measure. */
export const textBlockMeasured = {
  "text block thickness": { about: "Thickness of all sections, pressed, at the fore-edge.", least: "0.2", most: "200", example: "12.5 mm" },
  "spine thickness": { about: "Thickness of the sewn and pressed text block at the spine, thread included.", least: "0.2", most: "200", example: "15 mm" },
} as const;
