// The link stitch's figures and templates by id; each has its own file in `link-stitch/`.
import "../2-model/link-stitch.ts";
import type { BindingDrawings } from "./binding.ts";
import { draftCornerTemplate } from "./bench/corner-template.ts";
import { drawCoveredBoard } from "./bench/covered-board.ts";
import { drawCutParts } from "./bench/cut-parts.ts";
import { drawLinedBoard } from "./bench/lined-board.ts";
import { drawScaleCheck } from "./bench/scale-check.ts";
import { drawTurnIn } from "./bench/turn-in.ts";
import { draftBoardTemplate, drawBoardHoles } from "./link-stitch/board-holes.ts";
import { drawFinishedBook, drawNamedParts } from "./link-stitch/finished-book.ts";
import { drawPierceBoards } from "./link-stitch/pierce-boards.ts";
import { drawFoldSections, drawPierceSections, drawTrimSections } from "./sewing/section-making.ts";
import { drawFirstSection, drawLastSection, drawLaterSections, drawSecondSection } from "./link-stitch/sewing-steps.ts";
import { drawSpineSection } from "./link-stitch/spine-section.ts";
import { draftStationTemplate, drawStationLayout } from "./sewing/stations.ts";
import { drawThreadLengths } from "./sewing/thread-lengths.ts";
import { drawLinkStitchParts } from "./link-stitch/lifted-parts.ts";

export const drawings: BindingDrawings<"link-stitch"> = {
  figures: {
    "scale-check": (input) => drawScaleCheck(input, "boards"),
    "cut-parts": drawCutParts,
    "covering-layout": (input) => {
      const { covered, turnIn, cornerDistance } = input.model.geometry;
      return covered ? drawCoveredBoard(input, { id: "covering-layout", title: "The board on its covering", covering: "covering", board: "boards", turnIn, cornerDistance }) : null;
    },
    "turn-in": (input) => {
      const { covered, turnIn, cornerDistance, boardWidth, boardThickness } = input.model.geometry;
      const geometry = { turnIn, cornerDistance, sideStripWidth: boardWidth, stripThickness: boardThickness, jointGap: null };
      return covered ? drawTurnIn(input, { id: "turn-in", what: "covering", whole: "board", covering: "covering", board: "boards", stuff: "covering", geometry }) : null;
    },
    lining: (input) => {
      const { lining } = input.model.geometry;
      return lining ? drawLinedBoard(input, { id: "lining", title: "Lining the inside of a board", lining: "lining-paper", board: "boards", inset: lining.inset }) : null;
    },
    "fold-sections": (input) => drawFoldSections(input, input.model.geometry.text),
    "trim-sections": (input) => drawTrimSections(input, input.model.geometry.text),
    "station-layout": (input) => drawStationLayout(input, input.model.geometry),
    "pierce-sections": (input) => drawPierceSections(input.model.geometry.stations.length),
    "board-holes": drawBoardHoles,
    "pierce-boards": drawPierceBoards,
    "thread-lengths": (input) => drawThreadLengths(input, "sections and two covers and one more times the page height"),
    "sew-first-section": drawFirstSection,
    "sew-second-section": drawSecondSection,
    "sew-later-sections": drawLaterSections,
    "sew-last-section": drawLastSection,
    "spine-section": drawSpineSection,
    "finished-book": drawFinishedBook,
    "named-parts": drawNamedParts,
    "lifted-parts": drawLinkStitchParts,
  },
  templates: {
    "station-template": (input) => draftStationTemplate(input, input.model.geometry),
    "board-template": draftBoardTemplate,
    "corner-template": (input) => {
      const { covered, turnIn, cornerDistance } = input.model.geometry;
      return covered ? draftCornerTemplate(input, { turnIn, cornerDistance, what: "covering", stuff: "covering", board: "board", work: "board with its covering", corners: "all four corners" }) : null;
    },
  },
};
