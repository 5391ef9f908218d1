// The stub album's figures and templates by id; each has its own file in `stub-album/`.
import "../2-model/stub-album.ts";
import type { BindingDrawings } from "./binding.ts";
import { draftCornerTemplate } from "./bench/corner-template.ts";
import { drawScaleCheck } from "./bench/scale-check.ts";
import { drawCutParts } from "./bench/cut-parts.ts";
import { drawClothLayout } from "./stub-album/cloth-layout.ts";
import { drawCornerCut } from "./stub-album/corner-cut.ts";
import { drawHoleLayout } from "./stub-album/hole-layout.ts";
import { drawScoreMap, drawScoreMapFromCentre } from "./stub-album/score-map.ts";
import { drawScoring } from "./stub-album/scoring.ts";
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

export const drawings: BindingDrawings<"stub-album"> = {
  figures: {
    "scale-check": (input) => drawScaleCheck(input, "boards"),
    "cut-parts": drawCutParts,
    "cloth-layout": drawClothLayout,
    "corner-cut": drawCornerCut,
    "score-map": drawScoreMap,
    "score-map-from-centre": drawScoreMapFromCentre,
    "hole-layout": drawHoleLayout,
    scoring: drawScoring,
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
  },
  templates: {
    "score-guide": draftScoreGuide,
    "hole-template": draftHoleTemplate,
    "corner-template": (input) => draftCornerTemplate(input, { ...input.model.geometry, covering: "hinge cloth", stuff: "cloth", whole: "glued-up hinge", board: "strip" }),
  },
};
