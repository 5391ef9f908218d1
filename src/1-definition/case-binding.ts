// The case binding's own part of a definition: text block, sewing, cover, materials, measured values, glueing jobs and steps.
import { caseMaterials } from "../catalogue/case-materials.ts";
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { mapping, mappingWithDefaults } from "./collections.ts";
import { choice, yesOrNo } from "./fields.ts";
import { length, optionalLength } from "./length-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { supportedStations, textBlock, textBlockMaterials, textBlockMeasured } from "./text-block-keys.ts";
import type { SupportedStationKeys, TextBlockKeys } from "./text-block-keys.ts";
import { threadKeys } from "./thread-keys.ts";
import type { ThreadKeys } from "./thread-keys.ts";

declare module "./types.ts" {
  interface BindingBooks {
    readonly "case-binding": CaseBindingBook;
  }
}

/** The `book:` section of a case binding. */
export interface CaseBindingBook {
  readonly "text block": TextBlockKeys;
  /** Sections sewn on tapes, or single leaves glued at the spine. */
  readonly "held by": "sewing on tapes" | "glue";
  readonly sewing: SupportedStationKeys & { readonly "tape on boards": Length };
  readonly thread: ThreadKeys;
  readonly back: "flat" | "rounded";
  /** How far a rounded back rises above its shoulders; null when the model works it out. */
  readonly "back rise": Length | null;
  readonly covering: "full" | "quarter" | "half";
  readonly boards: { readonly thickness: Length };
  readonly square: Length;
  /** From the shoulder of the text block to the board. */
  readonly groove: Length;
  /** From the spine strip to the board in the flat case; null when the model works it out. */
  readonly joint: Length | null;
  /** Whether a flat strip covers the edges of the boards too, or only the text block; a rounded back's strip always covers the arc. */
  readonly "strip covers": "block and boards" | "block";
  readonly "turn in": Length;
  readonly "corner cut": "one and a half boards" | "one board";
  /** Spine cloth on each board of a quarter or half binding; null: a fifth of the board. */
  readonly "cloth on boards": Length | null;
  readonly "side lap": Length;
  /** Along each edge of the board from its corner to the slanting edge of the cloth; null: as much as the spine cloth. */
  readonly "corner reach": Length | null;
  readonly "endpaper tip": Length;
  readonly mull: { readonly "on boards": Length; readonly "short at ends": Length };
  readonly "spine lining": boolean;
  readonly endbands: boolean;
  readonly ribbon: boolean;
}

/** Limits are what can be handled at a bench, common practice, no source. Defaults with a published figure name it. */
function book(context: FieldContext): Field<CaseBindingBook> {
  return mapping({
    "text block": textBlock(context, { least: 2, most: 40 }),
    "held by": choice({ about: "Sections sewn on tapes, or single leaves fanned and glued at the spine.", of: ["sewing on tapes", "glue"], default: "sewing on tapes" }),
    sewing: mappingWithDefaults({
      ...supportedStations(context),
      "tape on boards": length(context, { about: "How far a tape reaches onto each board.", least: "10", most: "80", default: { mm: mm(40), in: inches(3, 2) }, defaultText: "40 mm, or 1 1/2 in", example: "40 mm" }),
    }, { about: "Sewing on tapes.", example: "{tapes: 3}" }),
    thread: threadKeys(context),
    back: choice({ about: "A flat back, or one rounded with the hammer.", of: ["flat", "rounded"], default: "flat" }),
    "back rise": optionalLength(context, { about: "How far a rounded back rises above its shoulders. Left out, a third of a circle.", least: "0.5", most: "60", example: "5 mm" }),
    covering: choice({ about: "Cloth all over, cloth on the spine with paper sides, or that with cloth corners.", of: ["full", "quarter", "half"], default: "full" }),
    boards: mappingWithDefaults({
      thickness: length(context, { about: "Thickness of the boards.", least: "0.5", most: "6", default: { mm: mm(2), in: inches(3, 32) }, defaultText: "2 mm, or 3/32 in", example: "2 mm" }),
    }, { about: "The two boards; their height and width are worked out.", example: "{thickness: 2 mm}" }),
    // Vaughn 1912: 1/8 or 3/16 in; Bean & Brodhead 1918, Problem XIV: about 1/8 in; "medium" is the board's thickness (Language of Bindings).
    square: length(context, { about: "How far the boards reach beyond the pages at head, tail and fore-edge.", least: "0", most: "20", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
    // Bean & Brodhead 1918, Problem XIV: about 1/4 in; their edition of 1914 and Cockerell 1901: about 1/8 in.
    groove: length(context, { about: "From the shoulder of the text block to the board: room for the joint.", least: "0", most: "15", default: { mm: mm(5), in: inches(3, 16) }, defaultText: "5 mm, or 3/16 in", example: "5 mm" }),
    // Adam 1903, ch. VI: one board's thickness (with boards that touch the shoulder); Bean & Brodhead 1918: at least 1/4 in.
    joint: optionalLength(context, { about: "From the spine strip to the board in the flat case. Left out, groove and board thickness together.", least: "1", most: "25", example: "7 mm" }),
    // Adam 1903, ch. VI, and Bean & Brodhead 1918, Problem XIV: exactly the width of the back.
    "strip covers": choice({ about: "What a stiff strip on a flat back is as wide as: text block and both boards, or the text block alone. A rounded back's strip always follows its arc.", of: ["block and boards", "block"], default: "block and boards" }),
    // Roberts & Etherington, "cover turned-in": 5/8 in in library binding, seldom over 1/2 in in edition binding; Vaughn 1912: 3/4 in.
    "turn in": length(context, { about: "Cloth or paper turned over the edges of the boards.", least: "6", most: "60", default: { mm: mm(15), in: inches(5, 8) }, defaultText: "15 mm, or 5/8 in", example: "15 mm" }),
    // Vaughn 1912, "Mitres": about one board thickness.
    "corner cut": choice({ about: "From the corner of a board to the 45° cut.", of: ["one and a half boards", "one board"], default: "one and a half boards" }),
    "cloth on boards": optionalLength(context, { about: "Quarter and half covering: spine cloth on each board. Left out, a fifth of the board's width.", least: "8", most: "200", example: "30 mm" }),
    // Vaughn 1912: 1/8 in.
    "side lap": length(context, { about: "Quarter and half covering: how far the paper lies over the cloth.", least: "1", most: "15", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
    "corner reach": optionalLength(context, { about: "Half covering: from the corner of a board along its edges to the slanting edge of the cloth. Left out, as much as the spine cloth on the board.", least: "8", most: "200", example: "30 mm" }),
    "endpaper tip": length(context, { about: "Width of the line of adhesive by which an endpaper is tipped on.", least: "2", most: "10", default: { mm: mm(3), in: inches(1, 8) }, defaultText: "3 mm, or 1/8 in", example: "3 mm" }),
    mull: mappingWithDefaults({
      // Bean & Brodhead 1918 and Brown 1921: about 1 in; Bailey 1916: at least 1 1/4 in; Vaughn 1912: 1 1/2 in.
      "on boards": length(context, { about: "How far the mull reaches onto each endpaper.", least: "10", most: "80", default: { mm: mm(25), in: inches(1) }, defaultText: "25 mm, or 1 in", example: "25 mm" }),
      // Bailey 1916: 1/2 in.
      "short at ends": length(context, { about: "How far the mull stays from head and tail.", least: "0", most: "40", default: { mm: mm(10), in: inches(1, 2) }, defaultText: "10 mm, or 1/2 in", example: "10 mm" }),
    }, { about: "The open cloth that joins the text block to its case.", example: "{on boards: 25 mm}" }),
    "spine lining": yesOrNo({ about: "Whether the spine is lined with paper over the mull.", default: true }),
    endbands: yesOrNo({ about: "Whether bought endbands are glued on at head and tail.", default: true }),
    ribbon: yesOrNo({ about: "Whether the book gets a ribbon bookmark.", default: false }),
  }, { about: "The sizes of the book.", example: "{text block: {page: {height: 210 mm, width: 148 mm}, sections: 8}}" });
}

/** What a case binding adds to the shared keys of a definition. */
export const bindingDefinition = {
  id: "case-binding",
  book,
  exclusiveKeys: [],
  materials: {
    ...textBlockMaterials,
    tape: { about: "The tape that the sections are sewn on.", usual: caseMaterials.tape, keys: "band" },
    endpaper: { about: "The paper of the endpapers.", usual: caseMaterials.endpaper, keys: "sheet" },
    mull: { about: "The open cloth over the spine.", usual: caseMaterials.mull, keys: "sheet" },
    "spine lining": { about: "The paper that lines the spine.", usual: caseMaterials["spine lining"], keys: "sheet" },
    endband: { about: "The band sold for head and tail of the spine.", usual: caseMaterials.endband, keys: "band" },
    ribbon: { about: "The ribbon of the bookmark.", usual: caseMaterials.ribbon, keys: "band" },
    boards: { about: "The board of the covers; its thickness is given under book.", usual: caseMaterials.boards, keys: "board" },
    "spine strip": { about: "The strip in the spine of the case: board for a flat back, card that bends for a rounded one.", usual: caseMaterials["spine strip"], keys: "sheet" },
    cloth: { about: "The cloth of the case.", usual: caseMaterials.cloth, keys: "sheet" },
    "side paper": { about: "The paper of the sides of a quarter or half binding.", usual: caseMaterials["side paper"], keys: "sheet" },
  },
  thicknessFromBook: (role, sizes) => (role === "boards" ? { thickness: sizes.boards.thickness, path: "book/boards/thickness" } : null),
  measured: {
    ...textBlockMeasured,
    "back thickness": { about: "Width of the glued back from the first endpaper to the last, measured straight across.", least: "1", most: "200", example: "17 mm" },
    "spine arc": { about: "Length of a rounded back from shoulder to shoulder, measured with a strip of paper.", least: "1", most: "250", example: "19 mm" },
  },
  adhesives: {
    endpapers: { about: "Tips on the endpapers.", usual: "pva" },
    spine: { about: "Glues the spine of the text block.", usual: "pva" },
    linings: { about: "Glues mull, endbands, ribbon and lining to the spine.", usual: "pva" },
    case: { about: "Glues boards and strip to the cloth and the turn-ins to the boards.", usual: "pva" },
    sides: { about: "Glues the paper sides of a quarter or half binding.", usual: "pva-and-methyl-cellulose" },
    pastedowns: { about: "Glues the endpapers to the boards.", usual: "pva-and-methyl-cellulose" },
  },
  steps: [
    "check-print", "cut-block", "fold-sections", "pierce-sections", "sew-first-sections", "sew-sections", "fan-glue", "tip-endpapers", "glue-spine", "trim-edges", "round-back",
    "attach-ribbon", "glue-mull", "attach-endbands", "line-spine", "measure-block", "cut-case", "mark-cloth", "glue-boards", "cut-corners", "turn-in",
    "cover-corners", "cover-sides", "case-in", "press-book", "finish",
  ],
} as const satisfies BindingDefinition<"case-binding">;
