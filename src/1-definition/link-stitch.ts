// The link stitch's own part of a definition: text block, sewing, boards with or without covering, materials, glueing jobs and steps.
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { usualMaterials } from "../catalogue/materials.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { mapping, mappingWithDefaults } from "./collections.ts";
import { choice, yesOrNo } from "./fields.ts";
import { length } from "./length-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { plainStations, textBlock, textBlockMaterials, textBlockMeasured } from "./text-block-keys.ts";
import type { PlainStationKeys, TextBlockKeys } from "./text-block-keys.ts";
import { threadKeys } from "./thread-keys.ts";
import type { ThreadKeys } from "./thread-keys.ts";

declare module "./types.ts" {
  interface BindingBooks {
    readonly "link-stitch": LinkStitchBook;
  }
}

/** The `book:` section of a link stitch. */
export interface LinkStitchBook {
  readonly "text block": TextBlockKeys;
  readonly sewing: PlainStationKeys & { readonly needle: "one curved" | "two" };
  readonly thread: ThreadKeys;
  readonly boards: {
    readonly thickness: Length;
    readonly square: Length;
    readonly covered: boolean;
    /** Spine edge to the middle of the holes. */
    readonly "hole distance": Length;
    readonly "hole diameter": Length;
  };
  readonly "turn in": Length;
  readonly lining: boolean;
}

/** Limits are what can be handled at a bench, common practice, no source. Defaults with a published figure name it. */
function book(context: FieldContext): Field<LinkStitchBook> {
  return mapping({
    "text block": textBlock(context, { least: 3, most: 60 }),
    sewing: mappingWithDefaults({
      needle: choice({ about: "One curved needle for all stations, or a thread with two needles for each pair of stations, which wants an even number of them.", of: ["one curved", "two"], default: "one curved" }),
      // End stations 10 to 20 mm in: common practice, no source.
      ...plainStations(context, { count: { least: 2, most: 12, default: 5 }, fromEnd: { mm: mm(15), in: inches(5, 8), text: "15 mm, or 5/8 in" } }),
    }, { about: "Needles, and where the thread goes through the folds.", example: "{stations: 5}" }),
    thread: threadKeys(context),
    boards: mappingWithDefaults({
      thickness: length(context, { about: "Thickness of a board, without covering.", least: "1", most: "10", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
      // Bean & Brodhead 1918, Problem VIII A: the cover overhangs by about 1/8 in.
      square: length(context, { about: "How far the boards reach beyond the pages at head, tail and fore-edge.", least: "0", most: "20", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
      covered: yesOrNo({ about: "Whether the boards are covered with paper or cloth before they are pierced.", default: true }),
      // 8 to 10 mm from the spine edge: common practice, no source.
      "hole distance": length(context, { about: "From a board's spine edge to the middle of its holes.", least: "4", most: "30", default: { mm: mm(9), in: inches(3, 8) }, defaultText: "9 mm, or 3/8 in", example: "9 mm" }),
      "hole diameter": length(context, { about: "Diameter of a hole in a board.", least: "1", most: "6", default: { mm: mm(2), in: inches(5, 64) }, defaultText: "2 mm, or 5/64 in", example: "2 mm" }),
    }, { about: "The two boards and the holes by which they are sewn on.", example: "{thickness: 3 mm}" }),
    // Roberts & Etherington, "cover turned-in": 5/8 in in library binding.
    "turn in": length(context, { about: "Covering turned over the edges of a board.", least: "5", most: "60", default: { mm: mm(15), in: inches(5, 8) }, defaultText: "15 mm, or 5/8 in", example: "15 mm" }),
    lining: yesOrNo({ about: "Whether covered boards are lined with paper inside.", default: true }),
  }, { about: "The sizes of the book.", example: "{text block: {page: {height: 160 mm, width: 110 mm}, sections: 8}}" });
}

/** What a link stitch adds to the shared keys of a definition. */
export const bindingDefinition = {
  id: "link-stitch",
  book,
  exclusiveKeys: [],
  materials: {
    ...textBlockMaterials,
    board: { about: "The board of the covers; its thickness is given under book.", usual: { name: "grey board", thickness: null, grain: "unknown" }, keys: "board" },
    covering: { about: "The paper or cloth that covers the boards.", usual: { name: "decorated paper", thickness: mm("0.15"), grain: "unknown" }, keys: "sheet" },
    "lining paper": { about: "The paper that lines the boards.", usual: usualMaterials["lining paper"], keys: "sheet" },
  },
  thicknessFromBook: (role, sizes) => (role === "board" ? { thickness: sizes.boards.thickness, path: "book/boards/thickness" } : null),
  measured: {
    ...textBlockMeasured,
    "cover thickness": { about: "Thickness of one finished board with its covering.", least: "1", most: "15", example: "3.4 mm" },
  },
  adhesives: {
    covering: { about: "Glues the covering to the boards.", usual: "pva" },
    lining: { about: "Glues the lining paper to the boards.", usual: "pva" },
  },
  steps: [
    "cut-parts", "check-print", "cover-boards", "turn-in", "line-boards", "fold-sections", "trim-sections", "mark-stations", "pierce-sections",
    "mark-boards", "pierce-boards", "cut-thread", "sew-first-section", "sew-second-section", "sew-later-sections", "sew-last-section", "finish",
  ],
} as const satisfies BindingDefinition<"link-stitch">;
