// The stub album's own part of a definition: its sizes, materials, measured values, glueing jobs and steps.
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { usualMaterials } from "../catalogue/materials.ts";
import { usualPosts } from "../catalogue/posts.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { listWithDefault, mapping, mappingWithDefaults } from "./collections.ts";
import { choice, count, yesOrNo } from "./fields.ts";
import { length, optionalLength } from "./length-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";

declare module "./types.ts" {
  interface BindingBooks {
    readonly "stub-album": StubAlbumBook;
  }
}

/** The `book:` section of a stub album. */
export interface StubAlbumBook {
  /** How many upright stubs are folded from the card; each is a double leaf. */
  readonly stubs: number;
  /** From a stub's base score to its crest score, flat. */
  readonly "stub depth": Length;
  /** Flat floor between two stubs. */
  readonly "floor gap": Length;
  /** Flat floor beside the first and last stub; null when the spine is given and the margin follows from it. */
  readonly margin: Length | null;
  /** How much wider than the folded floor the spine strip is at least. */
  readonly "floor ease": Length;
  /** Width of the spine strip when it is fixed; null when it follows from the floor. */
  readonly spine: Length | null;
  readonly boards: { readonly height: Length; readonly width: Length; readonly thickness: Length };
  /** How much shorter than the boards the card and the strips are. */
  readonly "height clearance": Length;
  /** Width of the strip that is glued over a board. */
  readonly "side strip": Length;
  /** Null: the model works it out from the thicknesses. */
  readonly "joint gap": Length | null;
  readonly "turn in": Length;
  readonly pages: {
    readonly mounting: "back to back" | "single";
    readonly height: Length | null;
    readonly width: Length | null;
    readonly square: Length;
    readonly "adhesive clearance": Length;
    /** Thickness of what will be mounted in each opening; null when the author does not say. */
    readonly decoration: Length | null;
  };
  readonly posts: {
    readonly count: number;
    readonly barrel: Length;
    readonly clearance: Length;
    readonly "end distance": Length | null;
    /** Posts to be had, as written or as the catalogue has them. */
    readonly lengths: readonly Length[];
  };
  /** Width of the reinforcing tape; null when the model works it out. */
  readonly "hinge tape": Length | null;
  readonly lining: boolean;
  readonly bookmark: boolean;
  readonly closure: "ribbon" | "none";
  /** Free length of ribbon to tie. */
  readonly "ribbon tie": Length;
}

const marginDefault = { mm: mm(10), in: inches(3, 8) };

/** Limits are what can be handled at a bench, common practice, no source. Defaults with a published figure name it. */
function book(context: FieldContext): Field<StubAlbumBook> {
  return mapping({
    stubs: count({ about: "Number of stubs folded from the strip of card; each carries one page, or two back to back.", least: 1, most: 60, example: 8 }),
    "stub depth": length(context, { about: "From a stub's base to its crest, flat.", least: "6", most: "100", default: { mm: mm(20), in: inches(3, 4) }, defaultText: "20 mm, or 3/4 in", example: "20 mm" }),
    "floor gap": length(context, { about: "Flat floor between two stubs: room for what is mounted on the pages.", least: "1", most: "40", default: { mm: mm(5), in: inches(3, 16) }, defaultText: "5 mm, or 3/16 in", example: "5 mm" }),
    margin: optionalLength(context, { about: "Flat floor beside the first and the last stub. Write either margin or spine.", least: "0", most: "100", defaultText: "10 mm, or 3/8 in, when there is no spine either", example: "10 mm" }),
    spine: optionalLength(context, { about: "Width of the spine strip, when it is fixed; the margin then follows. Write either margin or spine.", least: "5", most: "300", example: "60 mm" }),
    "floor ease": length(context, { about: "How much wider than the folded floor the spine strip is at least; folds never come out all alike.", least: "0", most: "10", default: { mm: mm("0.5"), in: inches(1, 32) }, defaultText: "0.5 mm, or 1/32 in", example: "0.5 mm" }),
    boards: mapping({
      height: length(context, { about: "Height of a board, along the spine.", least: "60", most: "600", example: "300 mm" }),
      width: length(context, { about: "Width of a board, across the spine.", least: "60", most: "600", example: "220 mm" }),
      thickness: length(context, { about: "Thickness of a board.", least: "0.5", most: "10", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
    }, { about: "The ready-made boards, two of them.", example: "{height: 300 mm, width: 220 mm}" }),
    "height clearance": length(context, { about: "How much shorter than the boards the card and the strips are.", least: "0", most: "50", default: { mm: mm(6), in: inches(1, 4) }, defaultText: "6 mm, or 1/4 in", example: "6 mm" }),
    // Bean & Brodhead 1918, Problem VIII A: a hinge strip of 3/4 to 1 in.
    "side strip": length(context, { about: "Width of the strip of the hinge that is glued over a board.", least: "10", most: "120", default: { mm: mm(25), in: inches(1) }, defaultText: "25 mm, or 1 in", example: "25 mm" }),
    "joint gap": optionalLength(context, { about: "Cloth between a side strip and the spine strip. Left out, it is worked out so that the boards open flat.", least: "1", most: "40", example: "7 mm" }),
    // Roberts & Etherington, "cover turned-in": 5/8 in in library binding.
    "turn in": length(context, { about: "Cloth turned over the edges of the hinge.", least: "5", most: "60", default: { mm: mm(15), in: inches(5, 8) }, defaultText: "15 mm, or 5/8 in", example: "15 mm" }),
    pages: mappingWithDefaults({
      mounting: choice({ about: "Two papers back to back on each stub, or a single one.", of: ["back to back", "single"], default: "back to back" }),
      height: optionalLength(context, { about: "Height of a page, along the spine. Left out, it is worked out from the boards.", least: "20", most: "600", example: "290 mm" }),
      width: optionalLength(context, { about: "Width of a page, across the spine. Left out, it is worked out from the boards.", least: "20", most: "600", example: "215 mm" }),
      // Bean & Brodhead 1918, Problem VIII A: the cover overhangs by about 1/8 in.
      square: length(context, { about: "How far the boards reach beyond the pages.", least: "0", most: "20", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
      "adhesive clearance": length(context, { about: "How far the adhesive keeps away from a stub's crest.", least: "0", most: "5", default: { mm: mm("1.5"), in: inches(1, 16) }, defaultText: "1.5 mm, or 1/16 in", example: "1.5 mm" }),
      decoration: optionalLength(context, { about: "Thickness of what will be mounted in each opening, when it is known.", least: "0", most: "40", example: "1.5 mm" }),
    }, { about: "The pages mounted on the stubs.", example: "{mounting: single}" }),
    posts: mappingWithDefaults({
      count: count({ about: "Screw posts on each side.", least: 2, most: 8, default: 2, example: 2 }),
      barrel: length(context, { about: "Diameter of a post's barrel.", least: "2", most: "12", default: { mm: usualPosts.mm.barrel, in: usualPosts.in.barrel }, defaultText: "5 mm, or 3/16 in", example: "5 mm" }),
      clearance: length(context, { about: "How much wider than the barrel its hole is.", least: "0", most: "2", default: { mm: usualPosts.mm.clearance, in: usualPosts.in.clearance }, defaultText: "0.5 mm", example: "0.5 mm" }),
      "end distance": optionalLength(context, { about: "From the head or tail of the board to the first post. Left out, it is worked out.", least: "5", most: "300", example: "45 mm" }),
      lengths: listWithDefault(
        length(context, { about: "Length of a post between its heads.", least: "1", most: "100", example: "6 mm" }),
        usualPosts[context.governing].lengths,
        { about: "Lengths of the posts you can get. Default: 3, 4, 5, 6, 8, 10, 12, 15, 20, 25 mm, or 1/8, 3/16, 1/4, 5/16, 3/8, 1/2, 5/8, 3/4, 1 in.", most: 40, oneMayStandAlone: true, mayBeEmpty: false },
      ),
    }, { about: "The screw posts that hold the boards.", example: "{count: 2}" }),
    "hinge tape": optionalLength(context, { about: "Width of the tape that reinforces each joint. Left out, it is worked out.", least: "5", most: "120", example: "25 mm" }),
    lining: yesOrNo({ about: "Whether the boards are lined with paper inside.", default: true }),
    bookmark: yesOrNo({ about: "Whether the album gets a ribbon bookmark.", default: true }),
    closure: choice({ about: "Two ribbons to tie the album shut, or nothing.", of: ["ribbon", "none"], default: "ribbon" }),
    "ribbon tie": length(context, { about: "Free length of each ribbon, to tie a bow.", least: "50", most: "600", default: { mm: mm(200), in: inches(8) }, defaultText: "200 mm, or 8 in", example: "200 mm" }),
  }, {
    about: "The sizes of the album.", example: "{stubs: 8, boards: {height: 300 mm, width: 220 mm}}",
    settle: (sizes) => (sizes.margin === null && sizes.spine === null ? { ...sizes, margin: marginDefault[context.governing] } : sizes),
  });
}

/** What a stub album adds to the shared keys of a definition. */
export const bindingDefinition = {
  id: "stub-album",
  book,
  exclusiveKeys: [["margin", "spine"]],
  materials: {
    card: { about: "The heavy card that is folded into stubs.", usual: usualMaterials.card, keys: "sheet" },
    "strip board": { about: "The board for the strips of the hinge.", usual: usualMaterials["strip board"], keys: "sheet" },
    boards: { about: "The ready-made boards; their thickness is given under book.", usual: usualMaterials.boards, keys: "board" },
    cloth: { about: "The cloth that covers the hinge.", usual: usualMaterials.cloth, keys: "sheet" },
    "page paper": { about: "The paper of the pages.", usual: usualMaterials["page paper"], keys: "sheet" },
    "lining paper": { about: "The paper that lines the boards.", usual: usualMaterials["lining paper"], keys: "sheet" },
    "hinge tape": { about: "The tape that reinforces the joints.", usual: usualMaterials["hinge tape"], keys: "band" },
    ribbon: { about: "The ribbon of closure and bookmark.", usual: usualMaterials.ribbon, keys: "band" },
    posts: { about: "The screw posts.", usual: usualMaterials.posts, keys: "hardware" },
  },
  thicknessFromBook: (role, sizes) => (role === "boards" ? { thickness: sizes.boards.thickness, path: "book/boards/thickness" } : null),
  measured: {
    "folded floor": { about: "Width of the card's floor once it is folded and the stubs are closed.", least: "1", most: "600", example: "61 mm" },
    "post stack": { about: "Thickness of all that a post goes through.", least: "1", most: "100", example: "6 mm" },
    "closed stub": { about: "Thickness of one closed stub.", least: "0.1", most: "20", example: "0.9 mm" },
  },
  adhesives: {
    stubs: { about: "Closes each stub.", usual: "double-sided-tape" },
    hinge: { about: "Glues the strips to the cloth.", usual: "pva" },
    joints: { about: "Reinforces the joints.", usual: "self-adhesive-tape" },
    boards: { about: "Glues the side strips to the boards.", usual: "pva" },
    lining: { about: "Glues the lining paper to the boards.", usual: "pva" },
    floor: { about: "Glues the card's floor to the hinge.", usual: "pva" },
    pages: { about: "Mounts the pages on the stubs.", usual: "double-sided-tape" },
    closure: { about: "Holds the ribbons of the closure.", usual: "pva" },
  },
  steps: [
    "check-print", "cut-card", "mark-scores", "score-card", "fold-card", "close-stubs", "cut-parts", "cut-hinge", "mark-cloth", "glue-strips", "cut-corners", "turn-in", "attach-closure",
    "line-boards", "tape-joints", "join-boards", "mark-holes", "pierce-holes", "fasten-posts", "attach-bookmark", "glue-floor", "mount-pages", "finish",
  ],
} as const satisfies BindingDefinition<"stub-album">;
