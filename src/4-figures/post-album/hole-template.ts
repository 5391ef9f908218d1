// The hole template: a strip as high as a cover that serves covers, leaves and guards, with a cross at every post hole.
import { subtractLength, toMillimetres } from "../../units/length.ts";
import { draftHoleStrip } from "../bench/hole-strip.ts";
import type { DrawingInput } from "../binding.ts";
import type { TemplateDraft } from "../template-draft.ts";
import { stripHoles } from "./hole-layout.ts";

/** Template `hole-template`: as high as a cover; thin lines show where the leaves begin and end. */
export function draftHoleTemplate(input: DrawingInput<"post-album">): TemplateDraft {
  const { definition, model } = input;
  const { geometry } = model;
  const { coverHeight, posts } = geometry;
  // Lines nearer than this to the strip's ends would run into its outline.
  const hasLeafLines = toMillimetres(posts.coverShift) > 0.4;
  return draftHoleStrip(input, {
    id: "hole-template",
    title: "Hole template for covers, leaves and guards",
    what: "A hinge strip",
    height: coverHeight, width: geometry.hingeWidth, fold: null, headOf: " of cover",
    holes: stripHoles(input).map((hole) => ({ ...hole, name: `${hole.id.replace(/-/g, " ")} hole` })),
    ...(hasLeafLines ? {
      edges: {
        words: "thin lines: head and tail of leaf and guard",
        at: [{ name: "leaf head", along: posts.coverShift }, { name: "leaf tail", along: subtractLength(coverHeight, posts.coverShift) }],
      },
    } : {}),
    use: [
      "Cut the template out along its heavy outline; the words beside it fall away.",
      `Measure it: it must be ${input.number(coverHeight)} × ${input.number(geometry.hingeWidth)} ${definition.units.governing}, like a hinge strip.`,
      `On a cover: lay its head and tail on head and tail of the hinge strip, spine edge to spine edge. On leaves and guards: ${hasLeafLines ? "lay the two thin lines on their head and tail" : "lay it head to head"}, spine edge to spine edge. Tape it down.`,
      "Prick through the middle of every cross with an awl, over a cutting mat.",
      "For the back cover turn the template over, so that its spine edge lies on the spine edge again, head to head; the pricked holes show the places.",
    ],
  });
}
