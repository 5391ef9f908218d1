// Figure: the cover laid flat, inside up, with its fold measured from the left edge and the place of the pages.
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { multiplyLength, toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, gridCentres } from "../leaders.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Figure `cover-layout`. */
export function drawCoverLayout(input: DrawingInput<"pamphlet">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { coverHeight, coverWidth, coverFold, square, textWidth } = geometry;
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(coverWidth), toMillimetres(coverHeight), 105, 62), ({ factor }) => {
    const paper = (length: Parameters<typeof toMillimetres>[0]): number => toMillimetres(length) * factor;
    const [wide, high, fold, edge, pages] = [paper(coverWidth), paper(coverHeight), paper(coverFold), paper(square), paper(textWidth)];
    const running = runningDimensions({
      name: "across", side: "below", edge: high, datum: 0, low: -10, high: wide + 14,
      marks: [{ name: "left edge 0", at: 0, text: "0" }, { name: "fold", at: fold, text: input.number(coverFold), weight: 600 }, { name: "right edge", at: wide, text: input.number(coverWidth) }],
    })!;
    const fixed = [
      area(rectangle(0, 0, wide, high), "paper", "outline"),
      ...(edge > 0 ? [stroke(rectangle(fold - pages, edge, 2 * pages, high - 2 * edge), "placement")] : []),
      stroke(line(point(fold, 0), point(fold, high)), "valley"),
      ...running.items,
    ];
    const half = { left: 2, top: 2, right: fold - 2, bottom: high - 2 };
    return {
      fixed,
      labels: [
        dimension({ name: "height", from: point(wide, 0), to: point(wide, high), side: "right", text: input.number(coverHeight), offset: 6 }),
        areaLabel("inside", "inside of the cover", [...gridCentres(half), point(wide / 2, -4)]),
        grainArrow("grain", "height", [...gridCentres({ left: fold + 2, top: 2, right: wide - 2, bottom: high - 2 }), point(wide + 22, high / 2)], Math.min(16, high * 0.5)),
        areaLabel("head", "head", [point(-6, 2), point(-6, -2), point(wide + 6, -3)]),
        areaLabel("tail", "tail", [point(-6, high - 2), point(-6, high - 5), point(-7, high + 4)]),
      ],
    };
  });
  return {
    id: "cover-layout",
    title: "The cover, laid flat",
    caption: `The cover inside up, ${scale.name}. Measure from the left edge (the ring at 0); score and fold along the dashed line.${square.n > 0n ? ` The long-dashed frame shows where the pages will lie, ${words.size(square)} inside head and tail.` : ""} ${input.unitNote}`,
    alternative: `The cover, ${input.number(coverHeight)} high and ${input.number(coverWidth)} wide, with a valley fold ${input.number(coverFold)} from its left edge.${square.n > 0n ? ` The pages will lie ${input.number(square)} inside head and tail, together ${input.number(multiplyLength(textWidth, 2))} wide.` : ""} Grain along the fold.`,
    items,
  };
}
