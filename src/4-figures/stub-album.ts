// The stub album's figures and templates by id; each has its own file in `stub-album/`.
import "../2-model/stub-album.ts";
import type { Part } from "../2-model/types.ts";
import { stepThatCuts } from "../3-plan/stub-album/cutting.ts";
import type { BindingDrawings } from "./binding.ts";
import { draftCornerTemplate } from "./bench/corner-template.ts";
import { drawScaleCheck } from "./bench/scale-check.ts";
import { drawCutParts } from "./bench/cut-parts.ts";
import { drawClothLayout } from "./stub-album/cloth-layout.ts";
import { drawCornerCut } from "./stub-album/corner-cut.ts";
import { drawHoleLayout } from "./stub-album/hole-layout.ts";
import { drawScoreMap, drawScoreMapFromCentre } from "./stub-album/score-map.ts";
import { drawMeasureFloor } from "./stub-album/measure-floor.ts";
import { drawScoring } from "./bench/scoring.ts";
import { drawFoldSequence } from "./stub-album/fold-sequence.ts";
import { drawCloseStubs } from "./stub-album/close-stubs.ts";
import { drawGlueFloor } from "./stub-album/glue-floor.ts";
import { drawPageMounting } from "./stub-album/page-mounting.ts";
import { drawPostSection } from "./stub-album/post-section.ts";
import { drawClosedSpine } from "./stub-album/closed-spine.ts";
import { drawDecorationRoom } from "./stub-album/decoration-room.ts";
import { drawGlueStrips } from "./stub-album/glue-strips.ts";
import { drawTurnIn } from "./bench/turn-in.ts";
import { drawCoveredHinge } from "./stub-album/covered-hinge.ts";
import { drawClosure } from "./stub-album/closure.ts";
import { drawLining } from "./stub-album/lining.ts";
import { drawJoinBoards } from "./stub-album/join-boards.ts";
import { drawPierceHoles } from "./stub-album/pierce-holes.ts";
import { drawBookmark } from "./stub-album/bookmark.ts";
import { drawFinishedBook } from "./stub-album/finished-book.ts";
import { drawNamedParts } from "./stub-album/named-parts.ts";
import { draftHoleTemplate } from "./stub-album/hole-template.ts";
import { draftScoreGuide } from "./stub-album/score-guide.ts";
import { drawStubAlbumParts } from "./stub-album/lifted-parts.ts";

function cutIn(stepId: ReturnType<typeof stepThatCuts>): (part: Part) => boolean {
  return (part) => !part.readyMade && stepThatCuts(part.id) === stepId;
}

export const drawings: BindingDrawings<"stub-album"> = {
  figures: {
    "scale-check": (input) => drawScaleCheck(input, "boards"),
    "cut-card": (input) => drawCutParts(input, { id: "cut-card", title: "The card", parts: cutIn("cut-card"), height: 48 }),
    "cut-parts": (input) => drawCutParts(input, { id: "cut-parts", title: "The other parts", parts: cutIn("cut-parts") }),
    "measure-floor": drawMeasureFloor,
    "cloth-layout": drawClothLayout,
    "corner-cut": drawCornerCut,
    "score-map": drawScoreMap,
    "score-map-from-centre": drawScoreMapFromCentre,
    "hole-layout": drawHoleLayout,
    scoring: (input) => drawScoring(input, { part: "card", what: "card", face: "inside of the book", height: input.model.geometry.stripHeight, count: input.model.scores.length }),
    "fold-sequence": drawFoldSequence,
    "close-stubs": drawCloseStubs,
    "glue-floor": drawGlueFloor,
    "page-mounting": drawPageMounting,
    "post-section": drawPostSection,
    "closed-spine": drawClosedSpine,
    "decoration-room": drawDecorationRoom,
    "glue-strips": drawGlueStrips,
    "turn-in": (input) => drawTurnIn(input, { id: "turn-in", what: "hinge cloth", whole: "hinge", covering: "hinge-cloth", board: "side-strip", stuff: "cloth", geometry: input.model.geometry }),
    "covered-hinge": drawCoveredHinge,
    closure: drawClosure,
    lining: drawLining,
    "join-boards": drawJoinBoards,
    "pierce-holes": drawPierceHoles,
    bookmark: drawBookmark,
    "finished-book": drawFinishedBook,
    "named-parts": drawNamedParts,
    "lifted-parts": drawStubAlbumParts,
  },
  templates: {
    "score-guide": draftScoreGuide,
    "hole-template": draftHoleTemplate,
    "corner-template": (input) => draftCornerTemplate(input, { ...input.model.geometry, what: "hinge cloth", stuff: "cloth", board: "strip", work: "glued-up hinge", corners: "all four corners" }),
  },
};
