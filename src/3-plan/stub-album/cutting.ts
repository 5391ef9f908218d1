// Stage 3 of the stub album: the parts that depend on nothing, then the floor is measured, and what depends on it is cut.
import { cutParts } from "../bench/preparation.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** The step in which a part is cut: the card first, what must fit the folded floor after that is measured, the rest between. */
export function stepThatCuts(partId: string): "cut-card" | "cut-parts" | "cut-hinge" {
  if (partId === "card") return "cut-card";
  return partId === "spine-strip" || partId === "hinge-cloth" ? "cut-hinge" : "cut-parts";
}

const stage = "The other parts";

/** Every part but the card and what must fit the folded floor; wet stubs set meanwhile. */
export function cutOtherParts(context: PlanContext<"stub-album">): DraftStep {
  const others = context.model.parts.map((part) => part.id).filter((id) => stepThatCuts(id) === "cut-parts");
  return cutParts(context, {
    agree: "Side strips and card have the same height.", spoils: "A strip that is short by more than a pencil line shows in the finished hinge.",
    only: { id: "cut-parts", stage, title: "Cut the other parts", parts: others, first: ["Leave spine strip and hinge cloth for the next step: they are cut to the folded floor."] },
  });
}

/** Measures the floor that was really folded and cuts spine strip and cloth to it. */
export function cutHinge({ model, say }: PlanContext<"stub-album">): DraftStep {
  const { geometry } = model;
  const strip = say.size(geometry.spineStripWidth);
  const wider = geometry.spineIsGiven
    ? `If it is wider, trim both margins of the floor, half the excess from each, until it is no wider than ${strip}.`
    : "If it is wider, add what it is too wide, rounded up to a full mark of the ruler, to the widths of spine strip and hinge cloth. On the cloth the last three upright lines then move right by as much.";
  return {
    id: "cut-hinge", stage, title: "Measure the floor, cut spine strip and cloth",
    action: [
      `Press the stubs together upright and measure the floor from edge to edge, at the head and at the tail. The width planned is ${say.onRuler(geometry.foldedFloor)}.`,
      `Write the larger measure in its box at the end of the handout. If it is no wider than ${strip}, cut spine strip and cloth as listed.`,
      wider,
      "Cut both with the grain along the height. Write the letter on the strip and on the wrong side of the cloth.",
    ],
    parts: ["spine-strip", "hinge-cloth"], cutsMeasured: ["spine-strip", "hinge-cloth"],
    sizes: [
      { label: "folded floor as planned", text: say.thickness(geometry.foldedFloor) },
      { label: "it must be no wider than", text: strip },
    ],
    tools: ["ruler", "pencil", "triangle", "knife", "mat", "scissors"], minutes: 12,
    needs: [{ step: "close-stubs", until: "set", what: "closed stubs" }],
    cautions: ["knife", "boardCutter", "scissors", "paperEdge"], figure: "measure-floor",
    check: "Laid on the spine strip, the floor reaches neither over its left nor over its right edge. Strip and card have the same height.",
    mistake: { sign: "The floor is wider than the strip that was cut.", repair: "Trim both margins of the floor, half the excess from each. If that is more than a margin can give, cut a wider strip, and cloth wider by as much." },
  };
}
