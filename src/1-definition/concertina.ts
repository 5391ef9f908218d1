// The concertina's own part of a definition: panels, joins, boards, closure, measured values, glueing jobs and steps.
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { usualMaterials } from "../catalogue/materials.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { mapping, mappingWithDefaults } from "./collections.ts";
import { choice, count } from "./fields.ts";
import { length, optionalLength } from "./length-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";

declare module "./types.ts" {
  interface BindingBooks {
    readonly concertina: ConcertinaBook;
  }
}

/** The `book:` section of a concertina. */
export interface ConcertinaBook {
  /** Panels of the folded strip, the two that are glued to the boards among them. */
  readonly panels: number;
  readonly panel: { readonly height: Length; readonly width: Length };
  /** How the folds are found; by default halving where it can be done, else scores. */
  readonly folding: "worked out" | "halving" | "scores";
  readonly join: {
    /** Paper beyond a strip's last fold that is glued behind the next strip. */
    readonly tab: Length;
    /** How far the next strip's edge stays back from the fold; null when the model works it out. */
    readonly "set back": Length | null;
  };
  /** How far the boards reach beyond the folded strip, on all four sides. */
  readonly square: Length;
  readonly covering: "paper" | "cloth";
  readonly "turn in": Length;
  readonly closure: "ribbon" | "band" | "none";
  readonly ribbon: { readonly width: Length; readonly tie: Length };
  readonly band: { readonly height: Length; readonly lap: Length; readonly ease: Length };
}

/** Limits are what can be handled at a bench, common practice, no source. Defaults with a published figure name it. */
function book(context: FieldContext): Field<ConcertinaBook> {
  return mapping({
    panels: count({ about: "Panels of the folded strip, counting the two that are glued to the boards; an even number opens like a book.", least: 2, most: 60, example: 8 }),
    panel: mapping({
      height: length(context, { about: "Height of a panel, along its folds.", least: "30", most: "600", example: "150 mm" }),
      width: length(context, { about: "Width of a panel, from fold to fold.", least: "30", most: "400", example: "105 mm" }),
    }, { about: "One panel of the strip.", example: "{height: 150 mm, width: 105 mm}" }),
    folding: choice({ about: "How the folds are found: by halving, one layer at a time, for 2, 4, 8, 16 … panels in one piece of paper, or by scores at measured places.", of: ["worked out", "halving", "scores"], default: "worked out" }),
    join: mappingWithDefaults({
      tab: length(context, { about: "Paper beyond a strip's last fold that is glued behind the next strip.", least: "3", most: "40", default: { mm: mm(12), in: inches(1, 2) }, defaultText: "12 mm, or 1/2 in", example: "12 mm" }),
      "set back": optionalLength(context, { about: "How far the edge of the next strip stays back from the fold of a join. Left out, it is worked out from the paper.", least: "0", most: "5", example: "0.5 mm" }),
    }, { about: "Where strips of paper are joined.", example: "{tab: 12 mm}" }),
    // Bean & Brodhead 1918, Problem VIII A: the cover overhangs by about 1/8 in.
    square: length(context, { about: "How far the boards reach beyond the folded strip, on all four sides.", least: "1", most: "20", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
    covering: choice({ about: "What the boards are covered with.", of: ["paper", "cloth"], default: "paper" }),
    // Roberts & Etherington, "cover turned-in": 5/8 in in library binding.
    "turn in": length(context, { about: "Covering turned over the edges of a board.", least: "8", most: "60", default: { mm: mm(15), in: inches(5, 8) }, defaultText: "15 mm, or 5/8 in", example: "15 mm" }),
    closure: choice({ about: "A ribbon tied round the book, a band slipped over it, or nothing.", of: ["ribbon", "band", "none"], default: "ribbon" }),
    ribbon: mappingWithDefaults({
      width: length(context, { about: "Width of the ribbon.", least: "3", most: "40", default: { mm: mm(10), in: inches(3, 8) }, defaultText: "10 mm, or 3/8 in", example: "10 mm" }),
      tie: length(context, { about: "Free length of each end, to tie a bow.", least: "50", most: "600", default: { mm: mm(200), in: inches(8) }, defaultText: "200 mm, or 8 in", example: "200 mm" }),
    }, { about: "The ribbon of the closure.", example: "{width: 10 mm}" }),
    band: mappingWithDefaults({
      height: length(context, { about: "Height of the band, along the folds of the book.", least: "15", most: "300", default: { mm: mm(40), in: inches(3, 2) }, defaultText: "40 mm, or 1 1/2 in", example: "40 mm" }),
      lap: length(context, { about: "How far the ends of the band overlap where they are glued.", least: "8", most: "60", default: { mm: mm(20), in: inches(3, 4) }, defaultText: "20 mm, or 3/4 in", example: "20 mm" }),
      ease: length(context, { about: "How much longer than the book's girth the band is, so that it slips.", least: "0", most: "10", default: { mm: mm(2), in: inches(1, 16) }, defaultText: "2 mm, or 1/16 in", example: "2 mm" }),
    }, { about: "The band of the closure.", example: "{height: 40 mm}" }),
  }, { about: "The sizes of the concertina.", example: "{panels: 8, panel: {height: 150 mm, width: 105 mm}}" });
}

/** What a concertina adds to the shared keys of a definition. */
export const bindingDefinition = {
  id: "concertina",
  book,
  exclusiveKeys: [],
  materials: {
    "panel paper": { about: "The paper of the folded strip.", usual: { ...usualMaterials["page paper"], name: "paper for the strip, about 160 g/m²" }, keys: "sheet" },
    boards: { about: "The board of the two covers.", usual: { ...usualMaterials["strip board"], name: "grey board" }, keys: "sheet" },
    "cover paper": { about: "The paper that covers the boards, where they are covered with paper.", usual: { ...usualMaterials["lining paper"], name: "covering paper, about 90 g/m²" }, keys: "sheet" },
    cloth: { about: "The cloth that covers the boards, where they are covered with cloth.", usual: usualMaterials.cloth, keys: "sheet" },
    ribbon: { about: "The ribbon of the closure.", usual: usualMaterials.ribbon, keys: "band" },
  },
  thicknessFromBook: () => null,
  measured: {
    "folded stack": { about: "Thickness of the folded strip at its spine side, joins included, pressed between two fingers.", least: "0.1", most: "200", example: "4.2 mm" },
  },
  adhesives: {
    covering: { about: "Glues the covering to the boards.", usual: "pva" },
    joins: { about: "Joins the strips.", usual: "pva" },
    ends: { about: "Glues the end panels to the boards.", usual: "pva" },
    closure: { about: "Holds the ribbon, or closes the band.", usual: "pva" },
  },
  steps: [
    "cut-parts", "check-print", "glue-boards", "turn-in", "cut-strips", "number-strips", "mark-folds", "score-folds", "fold-strip", "join-strips",
    "attach-ribbon", "glue-front", "glue-back", "make-band", "finish",
  ],
} as const satisfies BindingDefinition<"concertina">;
