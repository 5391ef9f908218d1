// The long-stitch binding's figures and templates by id; each has its own file in `long-stitch/`.
import "../2-model/long-stitch.ts";
import type { BindingDrawings } from "./binding.ts";
import { drawCutParts } from "./bench/cut-parts.ts";
import { drawScaleCheck } from "./bench/scale-check.ts";
import { drawFoldCover, drawSpineSection } from "./long-stitch/book-section.ts";
import { drawCoverLayout, drawSpineStrip } from "./long-stitch/cover-layout.ts";
import { drawFinishedBook, drawNamedParts } from "./long-stitch/finished-book.ts";
import { drawCutSlits, drawPierceSpine } from "./long-stitch/pierce-spine.ts";
import { drawFirstSection, drawLastSection, drawLaterSections, drawSecondSection } from "./long-stitch/sewing-steps.ts";
import { draftSpineTemplate, drawSpineLayout } from "./long-stitch/spine-layout.ts";
import { drawFoldSections, drawPierceSections, drawTrimSections } from "./sewing/section-making.ts";
import { draftStationTemplate, drawStationLayout } from "./sewing/stations.ts";
import { drawThreadLengths } from "./sewing/thread-lengths.ts";
import { drawLongStitchParts } from "./long-stitch/lifted-parts.ts";

export const drawings: BindingDrawings<"long-stitch"> = {
  figures: {
    "cut-folios": (input) => drawCutParts(input, { id: "cut-folios", title: "The folios", parts: ({ id }) => id === "folio", height: 60 }),
    "scale-check": (input) => drawScaleCheck(input, "folio"),
    "fold-sections": (input) => drawFoldSections(input, input.model.geometry.text),
    "trim-sections": (input) => drawTrimSections(input, input.model.geometry.text),
    "cut-cover": (input) => drawCutParts(input, { id: "cut-cover", title: "The parts of the cover", parts: ({ id }) => id !== "folio", height: 64 }),
    "cover-layout": drawCoverLayout,
    "fold-cover": drawFoldCover,
    "spine-strip": drawSpineStrip,
    "station-layout": (input) => drawStationLayout(input, input.model.geometry),
    "pierce-sections": (input) => drawPierceSections(input.model.geometry.stations.length),
    "spine-layout": drawSpineLayout,
    "pierce-spine": drawPierceSpine,
    "cut-slits": drawCutSlits,
    "thread-lengths": (input) => drawThreadLengths(input, "sections and two more times the page height"),
    "sew-first-section": drawFirstSection,
    "sew-second-section": drawSecondSection,
    "sew-later-sections": drawLaterSections,
    "sew-last-section": drawLastSection,
    "spine-section": drawSpineSection,
    "finished-book": drawFinishedBook,
    "named-parts": drawNamedParts,
    "lifted-parts": drawLongStitchParts,
  },
  templates: {
    "station-template": (input) => draftStationTemplate(input, input.model.geometry),
    "spine-template": draftSpineTemplate,
  },
};
