// A drafted template becomes the untiled drawing and its sheets for both papers.
import { paperIds } from "../catalogue/papers.ts";
import { writeSvg } from "./svg.ts";
import { layOutSheets } from "./template-sheets.ts";
import type { TemplateDraft } from "./template-draft.ts";
import type { Template, TemplateSheet } from "./types.ts";

/** White rim of the untiled drawing in millimetres. */
const rim = 2;

/** Writes a template whole and as sheets for every paper of the catalogue. */
export function finishTemplate(draft: TemplateDraft): Template {
  const drawing = writeSvg(draft.items, {
    id: `template-${draft.id}`, title: draft.title, description: draft.alternative, pen: "small",
    box: { left: -rim, top: -rim, right: draft.width + rim, bottom: draft.height + rim },
  });
  const sheets = Object.fromEntries(paperIds.map((paper) => [paper, layOutSheets(draft, paper)])) as Record<"a4" | "letter", readonly TemplateSheet[]>;
  return { id: draft.id, title: draft.title, use: draft.use, width: draft.width, height: draft.height, svg: drawing.svg, marks: draft.marks, sheets };
}
