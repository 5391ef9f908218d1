// The keys about what is printed and on what: paper, size of type, ink, and which documents are made.
import { documentIds } from "../catalogue/documents.ts";
import type { DocumentId } from "../catalogue/documents.ts";
import { foldedFrom, paperIds } from "../catalogue/papers.ts";
import type { PaperId } from "../catalogue/papers.ts";
import type { Problem } from "../problems/problem.ts";
import { mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { listWithDefault, mappingWithDefaults } from "./collections.ts";
import { choice, yesOrNo } from "./fields.ts";
import type { FieldContext } from "./leaf.ts";
import { length } from "./length-fields.ts";
import type { PrintSettings } from "./types.ts";

const paperNames = { A4: "a4", Letter: "letter", A5: "a5", "half letter": "half-letter" } as const;

/** `print:` of a definition. */
export function printKeys(context: FieldContext) {
  return mappingWithDefaults({
    paper: listWithDefault(choice<PaperId>({ about: "Paper in the printer.", of: paperIds, also: paperNames }), [context.governing === "mm" ? "a4" : "letter"], {
      about: "Paper of the print-outs. Default: a4, or letter in an inch project.", most: paperIds.length, oneMayStandAlone: true, mayBeEmpty: false,
    }),
    "large print": yesOrNo({ about: "Whether the handout is set in type of 18 pt and more.", default: false }),
    ink: choice({ about: "With grey nothing is printed in colour, and no large area is black.", of: ["colour", "grey"], default: "colour" }),
    thickness: length(context, {
      about: "Thickness of one sheet of the paper in the printer, for the booklet that is folded from it.", least: "0.02", most: "0.5",
      default: { mm: mm("0.1"), in: mm("0.1") }, defaultText: "0.1 mm", example: "0.1 mm",
    }),
  }, { about: "Printing.", example: "{paper: a4}" });
}

/** `documents:` of a definition: a switch for each. */
export function documentKeys() {
  return mappingWithDefaults({
    handout: yesOrNo({ about: "All instructions, to print or to send.", default: true }),
    "bench cards": yesOrNo({ about: "One step on a card, to be read from a metre away.", default: true }),
    templates: yesOrNo({ about: "Templates at full size.", default: true }),
    booklet: yesOrNo({ about: "The handout on sheets to fold and sew, for a4 and letter.", default: false }),
    "class plan": yesOrNo({ about: "The plan for the teacher, where there is a class.", default: true }),
    "kit slips": yesOrNo({ about: "Packing list and slips for the bags, where there is a class.", default: true }),
  }, { about: "Which documents are made.", example: "{booklet: yes}" });
}

interface WrittenPrint {
  readonly print: { readonly paper: readonly PaperId[]; readonly "large print": boolean; readonly ink: "colour" | "grey"; readonly thickness: Length };
  readonly documents: Readonly<Record<string, boolean>>;
}

/** What is printed, from the keys as read. */
export function settlePrint({ print, documents }: WrittenPrint): PrintSettings {
  return {
    papers: [...new Set(print.paper)],
    isLarge: print["large print"],
    ink: print.ink,
    paperThickness: print.thickness,
    documents: new Set(documentIds.filter((id: DocumentId) => documents[id.replaceAll("-", " ")])),
  };
}

/** A booklet is wanted, but no paper is large enough to be folded into it. */
export function bookletProblem({ papers, documents }: PrintSettings): Pick<Problem, "code" | "message" | "hint"> | null {
  if (!documents.has("booklet") || papers.some((paper) => foldedFrom[paper] !== null)) return null;
  return { code: "keys-exclude", message: `a booklet is wanted, but ${papers.join(" and ")} folded in half is too small for it`, hint: "write print: {paper: a4} or {paper: letter}, or take the booklet out" };
}
