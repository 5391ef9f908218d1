// The post album's own part of a definition: its sizes, materials, measured values, glueing jobs and steps.
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { usualMaterials } from "../catalogue/materials.ts";
import { usualPosts } from "../catalogue/posts.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { listWithDefault, mapping, mappingWithDefaults } from "./collections.ts";
import { choice, count, optionalCount, yesOrNo } from "./fields.ts";
import { length, optionalLength } from "./length-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";

declare module "./types.ts" {
  interface BindingBooks {
    readonly "post-album": PostAlbumBook;
  }
}

/** The `book:` section of a post album. */
export interface PostAlbumBook {
  /** Single leaves. */
  readonly leaves: number;
  readonly leaf: { readonly height: Length; readonly width: Length };
  /** Thickness of what will be mounted between two leaves, both pages of the opening together. */
  readonly inserts: Length;
  /** Strips of guard card between two leaves; null: as many as come nearest to the inserts. */
  readonly "guard layers": number | null;
  /** Width of hinge strip and guards. */
  readonly hinge: Length;
  /** Null: the model works it out from the thicknesses. */
  readonly "joint gap": Length | null;
  readonly square: Length;
  /** One piece of cloth over the whole cover, or cloth over the hinge and paper over the rest. */
  readonly covering: "cloth" | "cloth and paper";
  readonly "turn in": Length;
  /** How far the cloth of the hinge reaches onto the board, outside (with paper) and inside. */
  readonly "cloth lap": Length;
  readonly lining: boolean;
  readonly scores: {
    readonly count: number;
    /** From the leaf's spine edge; null: over the middle of the joint gap. */
    readonly first: Length | null;
    readonly spacing: Length;
  };
  readonly posts: {
    readonly count: number;
    readonly barrel: Length;
    readonly clearance: Length;
    readonly head: Length;
    readonly "end distance": Length | null;
    /** Posts and extensions to be had, as written or as the catalogue has them. */
    readonly lengths: readonly Length[];
    readonly extensions: readonly Length[];
  };
}

/** Limits are what can be handled at a bench, common practice, no source. Defaults with a published figure name it. */
function book(context: FieldContext): Field<PostAlbumBook> {
  const posts = usualPosts[context.governing];
  return mapping({
    leaves: count({ about: "Number of single leaves.", least: 2, most: 100, example: 12 }),
    leaf: mapping({
      height: length(context, { about: "Height of a leaf, along the spine.", least: "60", most: "600", example: "210 mm" }),
      width: length(context, { about: "Width of a leaf, across the spine, with the part that is held by the posts.", least: "60", most: "600", example: "280 mm" }),
    }, { about: "The leaves.", example: "{height: 210 mm, width: 280 mm}" }),
    inserts: length(context, { about: "Thickness of what will be mounted between two leaves, both pages of the opening together.", least: "0", most: "20", default: { mm: mm(1), in: inches(1, 32) }, defaultText: "1 mm, or 1/32 in", example: "1 mm" }),
    "guard layers": optionalCount({ about: "Strips of guard card between two leaves. Left out, as many as come nearest to the inserts.", least: 0, most: 20, example: 2 }),
    // Bean & Brodhead 1918, Problem VIII A: a hinge strip of 3/4 to 1 in. Vaughn 1912: 3/4 to 1 1/2 in is reasonable, 1/4 to 2 in is possible.
    hinge: length(context, { about: "Width of the hinge strip of the covers and of the guards.", least: "10", most: "80", default: { mm: mm(25), in: inches(1) }, defaultText: "25 mm, or 1 in", example: "25 mm" }),
    "joint gap": optionalLength(context, { about: "Between hinge strip and board, where the cover bends. Left out, it is worked out so that the cover folds right back.", least: "1", most: "40", example: "5 mm" }),
    // Bean & Brodhead 1918, Problem VIII A: the cover overhangs the leaf by about 1/8 in.
    square: length(context, { about: "How far the covers reach beyond the leaves at head, tail and fore-edge.", least: "0", most: "20", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
    covering: choice({ about: "One piece of cloth over the whole cover, or cloth over the hinge and paper over the rest.", of: ["cloth", "cloth and paper"], default: "cloth" }),
    // Roberts & Etherington, "cover turned-in": 5/8 in in library binding.
    "turn in": length(context, { about: "Cloth or paper turned over the edges of the covers.", least: "5", most: "60", default: { mm: mm(15), in: inches(5, 8) }, defaultText: "15 mm, or 5/8 in", example: "15 mm" }),
    // Bean & Brodhead 1918, Problem VIII A: the cloth laps 1/2 in onto the large piece of board.
    "cloth lap": length(context, { about: "How far the cloth of the hinge reaches onto the board, inside and, under the paper, outside.", least: "5", most: "100", default: { mm: mm(12), in: inches(1, 2) }, defaultText: "12 mm, or 1/2 in", example: "12 mm" }),
    lining: yesOrNo({ about: "Whether the boards are lined with paper inside.", default: true }),
    scores: mappingWithDefaults({
      count: count({ about: "Score lines on each leaf, where it bends; two or three for heavy card.", least: 1, most: 3, default: 1, example: 1 }),
      first: optionalLength(context, { about: "From the leaf's spine edge to the first score. Left out, it lies over the middle of the joint gap.", least: "5", most: "200", example: "28 mm" }),
      spacing: length(context, { about: "From one score to the next.", least: "1", most: "20", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
    }, { about: "The score lines on the leaves.", example: "{count: 2}" }),
    posts: mappingWithDefaults({
      count: count({ about: "Screw posts through the book.", least: 2, most: 8, default: 2, example: 2 }),
      barrel: length(context, { about: "Diameter of a post's barrel.", least: "2", most: "12", default: { mm: usualPosts.mm.barrel, in: usualPosts.in.barrel }, defaultText: "5 mm, or 3/16 in", example: "5 mm" }),
      clearance: length(context, { about: "How much wider than the barrel its hole is.", least: "0", most: "2", default: { mm: usualPosts.mm.clearance, in: usualPosts.in.clearance }, defaultText: "0.5 mm", example: "0.5 mm" }),
      head: length(context, { about: "Thickness of a post's head: the cover folds back over it.", least: "0", most: "5", default: { mm: usualPosts.mm.head, in: usualPosts.in.head }, defaultText: "1 mm, or 1/32 in", example: "1 mm" }),
      "end distance": optionalLength(context, { about: "From the head or tail of the leaf to the first post. Left out, it is worked out.", least: "5", most: "300", example: "35 mm" }),
      lengths: listWithDefault(
        length(context, { about: "Length of a post between its heads.", least: "1", most: "100", example: "20 mm" }), posts.lengths,
        { about: "Lengths of the posts you can get. Default: 3, 4, 5, 6, 8, 10, 12, 15, 20, 25 mm, or 1/8, 3/16, 1/4, 5/16, 3/8, 1/2, 5/8, 3/4, 1 in.", most: 40, oneMayStandAlone: true, mayBeEmpty: false },
      ),
      extensions: listWithDefault(
        length(context, { about: "Length by which an extension makes a post longer.", least: "1", most: "100", example: "10 mm" }), posts.extensions,
        { about: "Extensions you can get, which screw into a post when the book is thicker than the longest one. Default: 5, 10, 15, 20, 25, 50 mm, or 1/4, 1/2, 3/4, 1, 2 in.", most: 10, oneMayStandAlone: true, mayBeEmpty: true },
      ),
    }, { about: "The screw posts that hold the book.", example: "{count: 2}" }),
  }, { about: "The sizes of the album.", example: "{leaves: 12, leaf: {height: 210 mm, width: 280 mm}}" });
}

/** Materials that no other binding has, when the author does not say; common practice, no source. */
const ownMaterials = {
  board: { name: "grey board", thickness: mm("2.5"), grain: "unknown" },
  "cover paper": { name: "cover paper, about 120 g/m²", thickness: mm("0.15"), grain: "unknown" },
  "leaf card": { name: "album card, about 270 g/m²", thickness: mm("0.35"), grain: "unknown" },
  "guard card": { name: "card for guards", thickness: mm("0.5"), grain: "unknown" },
} as const;

/** What a post album adds to the shared keys of a definition. */
export const bindingDefinition = {
  id: "post-album",
  book,
  exclusiveKeys: [],
  materials: {
    board: { about: "The board of the covers and of their hinge strips.", usual: ownMaterials.board, keys: "sheet" },
    cloth: { about: "The cloth of the covers and of their hinges.", usual: usualMaterials.cloth, keys: "sheet" },
    "cover paper": { about: "The paper over the boards, when the covering is cloth and paper.", usual: ownMaterials["cover paper"], keys: "sheet" },
    "lining paper": { about: "The paper that lines the boards.", usual: usualMaterials["lining paper"], keys: "sheet" },
    "leaf card": { about: "The card or heavy paper of the leaves.", usual: ownMaterials["leaf card"], keys: "sheet" },
    "guard card": { about: "The card of the guards between the leaves.", usual: ownMaterials["guard card"], keys: "sheet" },
    posts: { about: "The screw posts and their extensions.", usual: usualMaterials.posts, keys: "extended hardware" },
  },
  thicknessFromBook: () => null,
  measured: {
    "leaf stack": { about: "Thickness of all leaves and guards, pressed together at the hinge.", least: "0.5", most: "300", example: "16 mm" },
    "cover at hinge": { about: "Thickness of one finished cover at the hinge strip.", least: "0.5", most: "20", example: "3.6 mm" },
    "post stack": { about: "Thickness of all that a post goes through: both covers, leaves and guards.", least: "1", most: "300", example: "23 mm" },
  },
  adhesives: {
    cover: { about: "Glues the boards to their covering, and the turn-ins.", usual: "pva" },
    hinge: { about: "Glues the hinge lining into the joint.", usual: "pva" },
    lining: { about: "Glues the lining paper to the boards.", usual: "pva" },
  },
  steps: [
    "cut-parts", "check-print", "mark-cloth", "glue-boards", "cut-corners", "turn-in", "cover-sides", "mark-scores", "score-leaves", "pierce-leaves",
    "line-hinge", "line-boards", "pierce-covers", "stack-leaves", "fasten-posts", "break-in", "finish",
  ],
} as const satisfies BindingDefinition<"post-album">;
