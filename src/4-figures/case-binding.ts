// The case binding's figures and templates by id; each has its own file in `case-binding/`.
import "../2-model/case-binding.ts";
import { blockPartIds } from "../2-model/case-binding/parts.ts";
import type { BindingDrawings } from "./binding.ts";
import { drawCutParts } from "./bench/cut-parts.ts";
import { drawTurnIn } from "./bench/turn-in.ts";
import { drawScaleCheck } from "./bench/scale-check.ts";
import { drawEndpapers, drawFanGlue, drawGlueSpine } from "./case-binding/glueing.ts";
import { drawPierceSections, drawTrimEdges } from "./case-binding/sections.ts";
import { drawEndbands, drawLining, drawMull, drawRibbon } from "./case-binding/spine-views.ts";
import { drawFoldSections } from "./sewing/section-making.ts";
import { drawCaseIn } from "./case-binding/case-in.ts";
import { drawPressing, drawRoundBack, drawSpineSection } from "./case-binding/spine-section.ts";
import { drawClothLayout } from "./case-binding/cloth-layout.ts";
import { drawGlueBoards } from "./case-binding/glue-boards.ts";
import { drawKettle, drawSewing } from "./case-binding/sewing.ts";
import { drawCoverCorners, drawCoverSides, drawSpineTurnIn } from "./case-binding/covering.ts";
import { drawFinishedBook, drawNamedParts } from "./case-binding/pictorial.ts";
import { draftCaseCorner, draftCaseGuide, draftJointSpacer, draftPiercingGuide, draftRoundingGauge } from "./case-binding/templates.ts";
import { drawFinishedSpine } from "./case-binding/finished-spine.ts";
import { drawCaseParts } from "./case-binding/lifted-parts.ts";

export const drawings: BindingDrawings<"case-binding"> = {
  figures: {
    "scale-check": (input) => drawScaleCheck(input, "boards"),
    "cut-block": (input) => drawCutParts(input, { id: "cut-block", title: "The paper and what goes on the spine", parts: (part) => blockPartIds.includes(part.id) }),
    "cut-case": (input) => drawCutParts(input, { id: "cut-case", title: "The parts of the case", parts: (part) => !blockPartIds.includes(part.id) }),
    "fold-sections": (input) => (input.model.geometry.sewing ? drawFoldSections(input, input.model.geometry.block) : null),
    "pierce-sections": drawPierceSections,
    sewing: drawSewing,
    kettle: drawKettle,
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
    "turn-in": (input) => (input.model.geometry.covering.kind === "full"
      ? drawTurnIn(input, { id: "turn-in", what: "case cloth", whole: "case", covering: "cloth", board: "boards", stuff: "cloth", geometry: { ...input.model.geometry.covering, sideStripWidth: input.model.geometry.boardWidth, stripThickness: input.model.geometry.boardThickness, jointGap: null } })
      : null),
    "spine-turn-in": drawSpineTurnIn,
    "cover-corners": drawCoverCorners,
    "cover-sides": drawCoverSides,
    "case-in": drawCaseIn,
    pressing: drawPressing,
    "finished-spine": drawFinishedSpine,
    "finished-book": drawFinishedBook,
    "named-parts": drawNamedParts,
    "lifted-parts": drawCaseParts,
  },
  templates: {
    "piercing-guide": draftPiercingGuide,
    "case-guide": draftCaseGuide,
    "corner-template": draftCaseCorner,
    "joint-spacer": draftJointSpacer,
    "rounding-gauge": draftRoundingGauge,
  },
};
