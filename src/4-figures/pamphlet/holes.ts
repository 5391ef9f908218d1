// Figure: the fold with its holes measured from the head, and the awl over the cradle; and the template of the holes.
import { circle, line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { addLengths, mm, toMillimetres } from "../../units/length.ts";
import { draftHoleStrip } from "../bench/hole-strip.ts";
import type { DrawingInput } from "../binding.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel } from "../leaders.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { fittingScale } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { drawPunchingCradle } from "../bench/punching-cradle.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Figure `pierce-holes`. */
export function drawPierceHoles(input: DrawingInput<"pamphlet">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { stations, pageHeight, holeDiameter, square } = geometry;
  const scale = fittingScale(toMillimetres(pageHeight), 10, 120, 40);
  const names = stations.map((_, k) => `${k + 1}`);
  return {
    id: "pierce-holes",
    title: "Piercing the fold",
    caption: `Above: the fold seen from the inside, ${scale.name}, head to the left; measure from the head of the pages (the ring at 0). Below: the awl over the cradle, seen from the head, not to scale. ${input.unitNote}`,
    alternative: `Along the fold lie the holes ${names.map((name, k) => `${name}, ${input.number(stations[k]!)} from the head`).join("; ")}; the pages are ${input.number(pageHeight)} high. Below, section and cover lie half open in a V-shaped cradle, the folded hole template in the fold; the awl goes straight down through template, sheets and cover into the gap of the cradle and halves the angle between the pages. Holes are ${words.thickness(holeDiameter)} wide.`,
    items: viewsBelow([withHeading("layout", square.n > 0n ? "Holes from the head of the pages" : "Holes from the head", layout(input, scale.factor)), withHeading("cradle", "Pierce straight down into the fold", drawPunchingCradle({ section: words.part("text-sheet"), guide: "hole template in the fold", cover: words.part("cover") }))], 7),
  };
}

function layout(input: DrawingInput<"pamphlet">, factor: number): readonly SceneItem[] {
  const { stations, pageHeight } = input.model.geometry;
  const wide = toMillimetres(pageHeight) * factor;
  const xs = stations.map((at) => toMillimetres(at) * factor);
  const half = 11;
  const running = runningDimensions({
    name: "holes", side: "below", edge: half, datum: 0, low: -12, high: wide + 14,
    marks: [{ name: "head 0", at: 0, text: "0" }, ...stations.map((at, k) => ({ name: `hole ${k + 1} along`, at: xs[k]!, text: input.number(at), weight: 600 as const })), { name: "end", at: wide, text: input.number(pageHeight) }],
  })!;
  const fixed = [
    area(rectangle(0, -half, wide, 2 * half), "paper", "edge"),
    stroke(line(point(0, 0), point(wide, 0)), "valley"),
    ...xs.map((x) => area(circle(point(x, 0), 0.8), "plate", "outline")),
    ...running.items,
  ];
  return placeEvery(fixed, [
    ...xs.map((x, k) => areaLabel(`hole name ${k + 1}`, `${k + 1}`, [point(x, -3.6), point(x, 3.6)], { weight: 600 })),
    areaLabel("head", "head", [point(-6, 0), point(-6, -5)]), areaLabel("tail", "tail", [point(wide + 6, 0), point(wide + 6, -5)]),
    areaLabel("fold", "fold", [0.33, 0.4, 0.2, 0.6, 0.7, 0.8, 0.1, 0.9].flatMap((share) => [point(wide * share, -6.5), point(wide * share, 6.5)])),
  ]);
}

/** Template `hole-template`: a strip that is folded and laid into the fold. */
export function draftHoleTemplate(input: DrawingInput<"pamphlet">): TemplateDraft {
  const { stations, pageHeight, holeDiameter } = input.model.geometry;
  const half = mm(20);
  return draftHoleStrip(input, {
    id: "hole-template", title: "Hole template for the fold", what: "A strip to fold", height: pageHeight, width: addLengths(half, half), fold: half,
    holes: stations.map((along, k) => ({ name: `hole ${k + 1}`, along, across: half, diameter: holeDiameter })),
    use: [
      "Cut the template out along its heavy outline; the words beside it fall away.",
      `Measure it: it must be ${input.number(pageHeight)} ${input.definition.units.governing} high, like the pages.`,
      "Fold it along the dashed line, words inside, and lay it into the fold of the innermost sheet, head to head.",
      "Pierce through the middle of every cross.",
    ],
  });
}
