// The hole template: the side strip at true size with a cross at every post hole.
import { draftHoleStrip } from "../bench/hole-strip.ts";
import type { DrawingInput } from "../binding.ts";
import type { TemplateDraft } from "../template-draft.ts";
import { placeName, stripHoles } from "./hole-layout.ts";

/** Template `hole-template`. */
export function draftHoleTemplate(input: DrawingInput<"stub-album">): TemplateDraft {
  const { definition, model } = input;
  const { geometry } = model;
  return draftHoleStrip(input, {
    id: "hole-template",
    title: "Hole template for side strip and board",
    what: "The side strip",
    height: geometry.stripHeight, width: geometry.sideStripWidth, fold: null,
    holes: stripHoles(input).map((hole) => ({ ...hole, name: `${placeName(hole)} hole` })),
    use: [
      "Cut the template out along its heavy outline; the words beside it fall away. Then turn it over and write “head”, “tail” and “spine edge” on its back where they are on its front.",
      `Measure it: it must be ${input.number(geometry.stripHeight)} × ${input.number(geometry.sideStripWidth)} ${definition.units.governing}, like the side strip.`,
      "Lay it on the covered side strip of the front cover, words up, spine edge to the spine edge, head to head, and tape it down.",
      "Prick through the middle of every cross with an awl, lightly, just through the cloth.",
      "For the back cover turn the template over, its words up that you wrote, spine edge to the spine edge, head to head; the pricked holes show the places.",
    ],
  });
}
