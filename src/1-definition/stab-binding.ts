// The stab binding's own part of a definition: leaves, covers, the pattern with its holes, and its thread.
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
    readonly "stab-binding": StabBindingBook;
  }
}

/** The traditional patterns. */
export type StabPattern = "yotsume toji" | "kangxi" | "asa-no-ha toji" | "kikko toji";

/** The `book:` section of a stab binding. */
export interface StabBindingBook {
  /** Leaves between the covers; a folded leaf counts once. */
  readonly leaves: number;
  readonly leaf: { readonly height: Length; readonly width: Length; readonly kind: "single" | "folded" };
  readonly pattern: StabPattern;
  readonly holes: {
    /** Main holes; the patterns add their own. */
    readonly count: number;
    readonly "set back": Length;
    /** From head and tail to the outer main holes; null when the model works it out. */
    readonly "corner distance": Length | null;
  };
  /** What a page loses beside the holes because a side-sewn book does not open flat. */
  readonly "opening allowance": Length;
  readonly cover: {
    /** Folded in at the fore-edge; 0 for a cover that is cut level with the leaves. */
    readonly flap: Length;
  };
  readonly "inner binding": boolean;
  readonly thread: ThreadKeys;
}

/** Limits are what can be handled at a bench, common practice, no source. Defaults with a published figure name it. */
function book(context: FieldContext): Field<StabBindingBook> {
  return mapping({
    leaves: count({ about: "Number of leaves between the covers; a leaf folded at the fore-edge counts once.", least: 2, most: 300, example: 40 }),
    leaf: mapping({
      height: length(context, { about: "Height of a leaf, along the spine.", least: "80", most: "450", example: "240 mm" }),
      width: length(context, { about: "Width of a leaf, across the spine.", least: "60", most: "450", example: "170 mm" }),
      kind: choice({ about: "Single leaves, or leaves folded at the fore-edge with their open edges at the spine.", of: ["single", "folded"], default: "single" }),
    }, { about: "One leaf.", example: "{height: 240 mm, width: 170 mm}" }),
    pattern: choice({
      about: "The pattern of the sewing: yotsume toji (four hole), kangxi (noble), asa-no-ha toji (hemp leaf) or kikko toji (tortoise shell).",
      of: ["yotsume toji", "kangxi", "asa-no-ha toji", "kikko toji"],
      also: { "four hole": "yotsume toji", noble: "kangxi", "hemp leaf": "asa-no-ha toji", "tortoise shell": "kikko toji" },
      default: "yotsume toji",
    }),
    holes: mappingWithDefaults({
      count: count({ about: "Main holes, in one line; the patterns add holes of their own.", least: 3, most: 8, default: 4, example: 4 }),
      // About 10 mm: from memory; 10 to 15 mm is common practice, no source.
      "set back": length(context, { about: "From the spine edge to the line of the main holes.", least: "5", most: "40", default: { mm: mm(12), in: inches(1, 2) }, defaultText: "12 mm, or 1/2 in", example: "12 mm" }),
      "corner distance": optionalLength(context, { about: "From head and tail to the outer main holes. Left out, it is as much as the set-back.", least: "5", most: "100", example: "15 mm" }),
    }, { about: "The main holes.", example: "{count: 4, set back: 12 mm}" }),
    "opening allowance": length(context, { about: "What a page loses beside the line of holes because the book does not open flat.", least: "0", most: "40", default: { mm: mm(6), in: inches(1, 4) }, defaultText: "6 mm, or 1/4 in", example: "6 mm" }),
    cover: mappingWithDefaults({
      flap: length(context, { about: "Width that is folded in at the cover's fore-edge; 0 for a cover cut level with the leaves.", least: "0", most: "200", default: { mm: mm(30), in: inches("1.25") }, defaultText: "30 mm, or 1 1/4 in", example: "30 mm" }),
    }, { about: "The two soft covers.", example: "{flap: 30 mm}" }),
    "inner binding": yesOrNo({ about: "Whether the leaves are tied together under the covers before they are sewn.", default: true }),
    thread: threadKeys(context),
  }, { about: "The sizes of the book.", example: "{leaves: 40, leaf: {height: 240 mm, width: 170 mm}}" });
}

/** What a stab binding adds to the shared keys of a definition. */
export const bindingDefinition = {
  id: "stab-binding",
  book,
  exclusiveKeys: [],
  materials: {
    "text paper": { about: "The paper of the leaves.", usual: usualMaterials["text paper"], keys: "sheet" },
    "cover paper": { about: "The paper of the covers.", usual: usualMaterials["cover paper"], keys: "sheet" },
    thread: { about: "The sewing thread; its thickness is its diameter.", usual: usualMaterials.thread, keys: "band" },
  },
  thicknessFromBook: () => null,
  measured: {
    "block thickness": { about: "Thickness of all leaves at the spine edge, clamped, without the covers.", least: "0.2", most: "120", example: "6 mm" },
  },
  adhesives: {},
  steps: [
    "cut-parts", "check-print", "fold-leaves", "stack-leaves", "pierce-inner", "bind-inner", "fold-covers", "pierce-holes",
    "sew-1", "sew-2", "sew-3", "sew-4", "sew-5", "sew-6", "sew-7", "sew-8", "sew-9", "sew-10", "hide-end", "finish",
  ],
} as const satisfies BindingDefinition<"stab-binding">;
