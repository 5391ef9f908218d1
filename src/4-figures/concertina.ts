// The concertina's figures and templates by id; each has its own file in `concertina/`.
import "../2-model/concertina.ts";
import type { BindingDrawings, DrawingInput } from "./binding.ts";
import { draftCornerTemplate } from "./bench/corner-template.ts";
import { drawCoveredBoard } from "./bench/covered-board.ts";
import { drawCutParts } from "./bench/cut-parts.ts";
import { drawScaleCheck } from "./bench/scale-check.ts";
import { drawScoring } from "./bench/scoring.ts";
import { drawTurnIn } from "./bench/turn-in.ts";
import { drawClosedSection } from "./concertina/closed-section.ts";
import { drawClosure } from "./concertina/closure.ts";
import { drawCutStrips } from "./concertina/cut-strips.ts";
import { drawFinishedBook, drawNamedParts } from "./concertina/finished-book.ts";
import { draftFoldGuide } from "./concertina/fold-guide.ts";
import { drawFoldStrip } from "./concertina/fold-strip.ts";
import { drawGlueBack } from "./concertina/glue-back.ts";
import { drawGlueFront } from "./concertina/glue-front.ts";
import { drawHalving } from "./concertina/halving.ts";
import { drawJoinPlan } from "./concertina/join-plan.ts";
import { drawJoinSection } from "./concertina/join-section.ts";
import { drawFoldMap } from "./concertina/strip-map.ts";
import { drawConcertinaParts } from "./concertina/lifted-parts.ts";

type Input = DrawingInput<"concertina">;

/** "paper" or "cloth", as the covering is called in running words. */
function stuffOf({ model }: Input): string {
  return model.geometry.covering === "cloth" ? "cloth" : "paper";
}

export const drawings: BindingDrawings<"concertina"> = {
  figures: {
    "cut-parts": (input) => drawCutParts(input, { id: "cut-parts", title: "What is cut first", parts: (part) => part.material !== "panel paper" }),
    "scale-check": (input) => drawScaleCheck(input, "boards"),
    "cover-layout": (input) => drawCoveredBoard(input, { id: "cover-layout", title: "A board on its covering", covering: "covering", board: "boards", turnIn: input.model.geometry.turnIn, cornerDistance: input.model.geometry.cornerDistance }),
    "turn-in": (input) => {
      const { turnIn, cornerDistance, boardWidth, boardThickness } = input.model.geometry;
      return drawTurnIn(input, {
        id: "turn-in", what: "covering", whole: "cover", covering: "covering", board: "boards", stuff: stuffOf(input),
        geometry: { turnIn, cornerDistance, sideStripWidth: boardWidth, stripThickness: boardThickness, jointGap: null },
      });
    },
    "cut-strips": drawCutStrips,
    "join-plan": drawJoinPlan,
    "fold-map": drawFoldMap,
    scoring: (input) => (input.model.geometry.folding === "scores" ? drawScoring(input, {
      part: input.model.geometry.strips[0]!.part, what: "strip", face: "front", height: input.model.geometry.panelHeight, count: input.model.geometry.panels - 1,
    }) : null),
    "fold-strip": drawFoldStrip,
    halving: drawHalving,
    "join-section": drawJoinSection,
    closure: drawClosure,
    "glue-front": drawGlueFront,
    "glue-back": drawGlueBack,
    "closed-section": drawClosedSection,
    "finished-book": drawFinishedBook,
    "named-parts": drawNamedParts,
    "lifted-parts": drawConcertinaParts,
  },
  templates: {
    "fold-guide": draftFoldGuide,
    "corner-template": (input) => draftCornerTemplate(input, {
      turnIn: input.model.geometry.turnIn, cornerDistance: input.model.geometry.cornerDistance, what: "covering", stuff: stuffOf(input), work: "covered board", board: "board", corners: "all four corners",
    }),
  },
};
