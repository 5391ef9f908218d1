// The pamphlet's figures and template by id; each has its own file in `pamphlet/`.
import "../2-model/pamphlet.ts";
import type { BindingDrawings } from "./binding.ts";
import { drawCutParts } from "./bench/cut-parts.ts";
import { drawScaleCheck } from "./bench/scale-check.ts";
import { drawCoverLayout } from "./pamphlet/cover-layout.ts";
import { drawFinishedBook, drawNamedParts } from "./pamphlet/open-book.ts";
import { drawPierceHoles, draftHoleTemplate } from "./pamphlet/holes.ts";
import { drawFoldSheets, drawSection, drawTrim } from "./pamphlet/section.ts";
import { drawSewing, drawTie } from "./pamphlet/sewing.ts";
import { drawPamphletParts } from "./pamphlet/lifted-parts.ts";

export const drawings: BindingDrawings<"pamphlet"> = {
  figures: {
    "cut-parts": drawCutParts,
    "scale-check": (input) => drawScaleCheck(input, "text-sheet"),
    "fold-sheets": drawFoldSheets,
    "trim-fore-edge": drawTrim,
    "cover-layout": drawCoverLayout,
    "pierce-holes": drawPierceHoles,
    sewing: drawSewing,
    tie: drawTie,
    section: drawSection,
    "finished-book": drawFinishedBook,
    "named-parts": drawNamedParts,
    "lifted-parts": drawPamphletParts,
  },
  templates: { "hole-template": draftHoleTemplate },
};
