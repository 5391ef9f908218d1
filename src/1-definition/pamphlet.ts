// The pamphlet's own part of a definition: one section of folded sheets, its cover, its holes and its thread.
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { usualMaterials } from "../catalogue/materials.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { mapping, mappingWithDefaults } from "./collections.ts";
import { choice, count, yesOrNo } from "./fields.ts";
import { length, optionalLength } from "./length-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { threadKeys } from "./thread-keys.ts";
import type { ThreadKeys } from "./thread-keys.ts";

declare module "./types.ts" {
  interface BindingBooks {
    readonly pamphlet: PamphletBook;
  }
}

/** The `book:` section of a pamphlet. */
export interface PamphletBook {
  /** Folded sheets; each makes four pages. */
  readonly sheets: number;
  /** One page: half of a sheet, before the fore-edge is trimmed. */
  readonly page: { readonly height: Length; readonly width: Length };
  /** Whether the fore-edge is trimmed after folding. */
  readonly trim: boolean;
  readonly cover: {
    /** How far the cover reaches beyond the pages at head, tail and fore-edge. */
    readonly square: Length;
  };
  readonly holes: {
    readonly count: "3" | "5";
    /** From head and tail of a page to the outer holes; null when the model works it out. */
    readonly "end distance": Length | null;
  };
  /** Where the two ends of the thread are tied. */
  readonly tie: "inside" | "outside";
  readonly thread: ThreadKeys;
}

/** Limits are what can be handled at a bench, common practice, no source. Defaults with a published figure name it. */
function book(context: FieldContext): Field<PamphletBook> {
  return mapping({
    sheets: count({ about: "Number of sheets, folded once and laid into each other; each makes four pages.", least: 1, most: 20, example: 6 }),
    page: mapping({
      height: length(context, { about: "Height of a page, along the fold.", least: "60", most: "450", example: "210 mm" }),
      width: length(context, { about: "Width of a page, across the fold: half of a sheet.", least: "40", most: "450", example: "148 mm" }),
    }, { about: "One page, before the fore-edge is trimmed.", example: "{height: 210 mm, width: 148 mm}" }),
    trim: yesOrNo({ about: "Whether the fore-edge is trimmed level after folding.", default: true }),
    cover: mappingWithDefaults({
      // Bean & Brodhead 1918, Problem I: the cover overhangs by 1/8 to 1/4 in.
      square: length(context, { about: "How far the cover reaches beyond the pages at head, tail and fore-edge; 0 for a cover that is trimmed with the pages.", least: "0", most: "15", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
    }, { about: "The soft cover.", example: "{square: 3 mm}" }),
    holes: mappingWithDefaults({
      count: choice({ about: "Holes in the fold.", of: ["3", "5"], default: "3" }),
      "end distance": optionalLength(context, { about: "From head and tail of a page to the outer holes. Left out, it is worked out.", least: "5", most: "150", example: "30 mm" }),
    }, { about: "The holes in the fold.", example: "{count: 5}" }),
    tie: choice({ about: "Whether the thread is tied inside the fold or on the outside of the cover.", of: ["inside", "outside"], default: "inside" }),
    thread: threadKeys(context),
  }, { about: "The sizes of the pamphlet.", example: "{sheets: 6, page: {height: 210 mm, width: 148 mm}}" });
}

/** What a pamphlet adds to the shared keys of a definition. */
export const bindingDefinition = {
  id: "pamphlet",
  book,
  exclusiveKeys: [],
  materials: {
    "text paper": { about: "The paper of the pages.", usual: usualMaterials["text paper"], keys: "sheet" },
    "cover paper": { about: "The paper of the cover.", usual: usualMaterials["cover paper"], keys: "sheet" },
    thread: { about: "The sewing thread; its thickness is its diameter.", usual: usualMaterials.thread, keys: "band" },
  },
  thicknessFromBook: () => null,
  measured: {
    "section thickness": { about: "Thickness of the folded section without its cover, pressed.", least: "0.1", most: "30", example: "1.5 mm" },
  },
  adhesives: {},
  steps: ["cut-parts", "check-print", "fold-sheets", "trim-fore-edge", "fold-cover", "pierce-holes", "sew", "tie", "trim-together", "finish"],
} as const satisfies BindingDefinition<"pamphlet">;
