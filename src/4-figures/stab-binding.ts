// The stab binding's figures and template by id; each has its own file in `stab-binding/`.
import "../2-model/stab-binding.ts";
import type { BindingDrawings } from "./binding.ts";
import { drawCutParts } from "./bench/cut-parts.ts";
import { drawScaleCheck } from "./bench/scale-check.ts";
import { drawCoverLayout, drawFoldLeaves, drawStackLeaves } from "./stab-binding/block.ts";
import { drawFinishedBook, drawNamedParts } from "./stab-binding/finished-book.ts";
import { draftHoleTemplate, drawHoleLayout, drawInnerHoles } from "./stab-binding/hole-layout.ts";
import { drawHideEnd, drawSection } from "./stab-binding/section.ts";
import { drawInnerBinding, drawWay } from "./stab-binding/sewing.ts";
import { drawStabParts } from "./stab-binding/lifted-parts.ts";

export const drawings: BindingDrawings<"stab-binding"> = {
  figures: {
    "cut-parts": drawCutParts,
    "scale-check": (input) => drawScaleCheck(input, "leaf"),
    "fold-leaves": drawFoldLeaves,
    "stack-leaves": drawStackLeaves,
    "inner-holes": drawInnerHoles,
    "inner-binding": drawInnerBinding,
    "cover-layout": drawCoverLayout,
    "hole-layout": drawHoleLayout,
    "sewing-1": (input) => drawWay(input, 1),
    "sewing-2": (input) => drawWay(input, 2),
    "sewing-3": (input) => drawWay(input, 3),
    "sewing-4": (input) => drawWay(input, 4),
    "sewing-5": (input) => drawWay(input, 5),
    "sewing-6": (input) => drawWay(input, 6),
    "sewing-7": (input) => drawWay(input, 7),
    "sewing-8": (input) => drawWay(input, 8),
    "sewing-9": (input) => drawWay(input, 9),
    "sewing-10": (input) => drawWay(input, 10),
    "hide-end": drawHideEnd,
    section: drawSection,
    "finished-book": drawFinishedBook,
    "named-parts": drawNamedParts,
    "lifted-parts": drawStabParts,
  },
  templates: { "hole-template": draftHoleTemplate },
};
