// The post album's figures and templates by id; each has its own file in `post-album/`.
import "../2-model/post-album.ts";
import type { BindingDrawings } from "./binding.ts";
import { drawCornerCut } from "./bench/corner-cut.ts";
import { draftCornerTemplate } from "./bench/corner-template.ts";
import { drawCutParts } from "./bench/cut-parts.ts";
import { drawScaleCheck } from "./bench/scale-check.ts";
import { drawTurnIn } from "./bench/turn-in.ts";
import { drawAssembly } from "./post-album/assembly.ts";
import { cornerTemplate, cornerCut, turnIn } from "./post-album/corners.ts";
import { drawCoverInside } from "./post-album/cover-inside.ts";
import { drawCoverLayout } from "./post-album/cover-layout.ts";
import { drawCoverSides } from "./post-album/cover-sides.ts";
import { drawFinishedBook } from "./post-album/finished-book.ts";
import { drawFlexingLeaf } from "./post-album/flexing-leaf.ts";
import { drawGlueBoards } from "./post-album/glue-boards.ts";
import { drawHingeSection } from "./post-album/hinge-section.ts";
import { drawHoleLayout } from "./post-album/hole-layout.ts";
import { draftHoleTemplate } from "./post-album/hole-template.ts";
import { drawLeafLayout } from "./post-album/leaf-layout.ts";
import { drawNamedParts } from "./post-album/named-parts.ts";
import { drawOpenCover } from "./post-album/open-cover.ts";
import { drawPierceLeaves } from "./post-album/pierce-leaves.ts";
import { drawPostSection } from "./post-album/post-section.ts";
import { drawRoomBetweenLeaves } from "./post-album/room-between-leaves.ts";
import { drawPostAlbumParts } from "./post-album/lifted-parts.ts";

export const drawings: BindingDrawings<"post-album"> = {
  figures: {
    "cut-parts": drawCutParts,
    "scale-check": (input) => drawScaleCheck(input, "boards"),
    "cover-layout": drawCoverLayout,
    "glue-boards": drawGlueBoards,
    "corner-cut": (input) => drawCornerCut(input, cornerCut(input)),
    "turn-in": (input) => drawTurnIn(input, turnIn(input)),
    "cover-sides": drawCoverSides,
    "leaf-layout": drawLeafLayout,
    "flexing-leaf": drawFlexingLeaf,
    "pierce-leaves": drawPierceLeaves,
    "hinge-section": drawHingeSection,
    "cover-inside": drawCoverInside,
    "hole-layout": drawHoleLayout,
    assembly: drawAssembly,
    "post-section": drawPostSection,
    "open-cover": drawOpenCover,
    "room-between-leaves": drawRoomBetweenLeaves,
    "finished-book": drawFinishedBook,
    "named-parts": drawNamedParts,
    "lifted-parts": drawPostAlbumParts,
  },
  templates: {
    "hole-template": draftHoleTemplate,
    "corner-template": (input) => draftCornerTemplate(input, cornerTemplate(input)),
  },
};
