// The case binding's figures and templates by id; each has its own file in `case-binding/`.
import "../2-model/case-binding.ts";
import type { BindingDrawings } from "./binding.ts";
import { drawScaleCheck } from "./bench/scale-check.ts";
import { drawEndpapers, drawFanGlue, drawGlueSpine } from "./case-binding/glueing.ts";
import { drawFoldSections, drawPierceSections, drawTrimEdges } from "./case-binding/sections.ts";
import { drawEndbands, drawLining, drawMull, drawRibbon } from "./case-binding/spine-views.ts";
import { drawCaseIn } from "./case-binding/case-in.ts";
import { drawPressing, drawRoundBack, drawSpineSection } from "./case-binding/spine-section.ts";
import { drawClothLayout } from "./case-binding/cloth-layout.ts";
import { drawGlueBoards } from "./case-binding/glue-boards.ts";
import { drawSewing } from "./case-binding/sewing.ts";
import { drawFinishedSpine } from "./case-binding/finished-spine.ts";

export const drawings: BindingDrawings<"case-binding"> = {
  figures: {
    "scale-check": (input) => drawScaleCheck(input, "boards"),
    "fold-sections": drawFoldSections,
    "pierce-sections": drawPierceSections,
    sewing: drawSewing,
    "fan-glue": drawFanGlue,
    endpapers: drawEndpapers,
    "glue-spine": drawGlueSpine,
    "trim-edges": drawTrimEdges,
    ribbon: drawRibbon,
    "spine-lining": drawMull,
    endbands: drawEndbands,
    lining: drawLining,
    "cloth-layout": drawClothLayout,
    "glue-boards": drawGlueBoards,
    "round-back": drawRoundBack,
    "spine-section": drawSpineSection,
    "case-in": drawCaseIn,
    pressing: drawPressing,
    "finished-spine": drawFinishedSpine,
  },
  templates: {},
};
