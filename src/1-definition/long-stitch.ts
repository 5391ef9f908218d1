// The long-stitch binding's own part of a definition: text block, sewing, thread, wrap cover, materials, the one glueing job and the steps.
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { mapping, mappingWithDefaults } from "./collections.ts";
import { choice, count, yesOrNo } from "./fields.ts";
import { length, optionalLength } from "./length-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { plainStations, textBlock, textBlockMaterials, textBlockMeasured } from "./text-block-keys.ts";
import type { PlainStationKeys, TextBlockKeys } from "./text-block-keys.ts";
import { threadKeys } from "./thread-keys.ts";
import type { ThreadKeys } from "./thread-keys.ts";

declare module "./types.ts" {
  interface BindingBooks {
    readonly "long-stitch": LongStitchBook;
  }
}

/** The `book:` section of a long-stitch binding. */
export interface LongStitchBook {
  readonly "text block": TextBlockKeys;
  readonly sewing: Omit<PlainStationKeys, "stations"> & {
    /** Stitches outside on the spine for each section; the stations follow from them. */
    readonly "long stitches": number;
    /** Length of the short stitches inside the fold, between and beyond the long ones. */
    readonly "inside stitch": Length;
    /** A hole for each section at every station, or one slit across the spine where long stitches begin and end. */
    readonly openings: "holes" | "slits";
  };
  readonly thread: ThreadKeys;
  readonly cover: {
    readonly square: Length;
    readonly ease: Length;
    readonly reinforced: boolean;
    readonly flap: "none" | "wrap";
    /** From the flap's fold to its edge; null when the model works it out. */
    readonly "flap width": Length | null;
  };
}

/** Limits are what can be handled at a bench, common practice, no source. Defaults with a published figure name it. */
function book(context: FieldContext): Field<LongStitchBook> {
  const { stations: _follow, ...fromEnds } = plainStations(context, { count: { least: 4, most: 14, default: 6 }, fromEnd: { mm: mm(15), in: inches(5, 8), text: "15 mm, or 5/8 in" } });
  return mapping({
    "text block": textBlock(context, { least: 3, most: 40 }),
    sewing: mappingWithDefaults({
      "long stitches": count({ about: "Long stitches outside on the spine, for each section; two stations for each, and one more at either end.", least: 1, most: 6, default: 2, example: 2 }),
      // Common practice, no source.
      "inside stitch": length(context, { about: "Length of each short stitch inside the fold; the long stitches share what is left.", least: "4", most: "60", default: { mm: mm(12), in: inches(1, 2) }, defaultText: "12 mm, or 1/2 in", example: "12 mm" }),
      // End stations 10 to 20 mm in: common practice, no source.
      ...fromEnds,
      openings: choice({ about: "A hole for each section at every station, or, where the long stitches begin and end, one slit across the spine for all sections.", of: ["holes", "slits"], default: "holes" }),
    }, { about: "Where the thread goes through folds and cover.", example: "{long stitches: 2}" }),
    thread: threadKeys(context),
    cover: mappingWithDefaults({
      // Bean & Brodhead 1918, Problem I: the cover overhangs by 1/8 to 1/4 in.
      square: length(context, { about: "How far the cover reaches beyond the pages at head, tail and fore-edge.", least: "0", most: "15", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
      // 1 to 2 mm: common practice, no source.
      ease: length(context, { about: "How much wider the spine is than the sewn sections are thick.", least: "0", most: "6", default: { mm: mm("1.5"), in: inches(1, 16) }, defaultText: "1.5 mm, or 1/16 in", example: "1.5 mm" }),
      reinforced: yesOrNo({ about: "Whether a strip is glued inside the spine, so that the thread does not cut through.", default: true }),
      flap: choice({ about: "No flap, or one that wraps from the back cover round the fore-edge onto the front.", of: ["none", "wrap"], default: "none" }),
      "flap width": optionalLength(context, { about: "How far the flap reaches over the front cover. Left out, it is half of it.", least: "15", most: "400", example: "60 mm" }),
    }, { about: "The soft cover that wraps the sections.", example: "{square: 3 mm}" }),
  }, { about: "The sizes of the book.", example: "{text block: {page: {height: 160 mm, width: 110 mm}, sections: 8}}" });
}

/** What a long-stitch binding adds to the shared keys of a definition. */
export const bindingDefinition = {
  id: "long-stitch",
  book,
  exclusiveKeys: [],
  materials: {
    ...textBlockMaterials,
    cover: { about: "The soft cover: strong paper, thin card or leather.", usual: { name: "strong cover paper, about 360 g/m²", thickness: mm("0.45"), grain: "unknown" }, keys: "sheet" },
    "spine strip": { about: "What reinforces the spine inside.", usual: { name: "thin card, about 280 g/m²", thickness: mm("0.35"), grain: "unknown" }, keys: "sheet" },
  },
  thicknessFromBook: () => null,
  measured: { ...textBlockMeasured },
  adhesives: {
    "spine strip": { about: "Glues the reinforcement to the inside of the spine.", usual: "pva" },
  },
  steps: [
    "cut-folios", "check-print", "fold-sections", "trim-sections", "cut-cover", "score-cover", "fold-cover", "glue-strip",
    "mark-stations", "pierce-sections", "mark-spine", "pierce-spine", "cut-slits", "cut-thread", "sew-first-section", "sew-second-section", "sew-later-sections", "sew-last-section", "finish",
  ],
} as const satisfies BindingDefinition<"long-stitch">;
