// Figures of the sewing: pass by pass along the fold, and the knot.
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { point } from "../../geometry/point.ts";
import { areaLabel } from "../leaders.ts";
import { fittingScale } from "../scale.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { wordsForPass } from "../../3-plan/sewing/move-words.ts";
import { drawFold } from "../sewing/fold-view.ts";
import { squareKnot } from "../sewing/square-knot.ts";

/** Figure `sewing`: one small drawing for each pass. */
export function drawSewing(input: DrawingInput<"pamphlet">): FigureDraft {
  const { model } = input;
  const { pageHeight, tiedInside } = model.geometry;
  const path = model.thread!.paths[0]!;
  const scale = fittingScale(toMillimetres(pageHeight), 10, 118, 40);
  const views = path.passes.map(({ n, name }): readonly SceneItem[] => {
    const fold = drawFold({ path, pass: n, height: pageHeight, holes: [...path.places.values()], factor: scale.factor, name: `pass ${n}` });
    const wide = toMillimetres(pageHeight) * scale.factor;
    const view = placeEvery(fold.items, [
      ...fold.labels,
      areaLabel(`inside ${n}`, "inside", [point(-9, -2), point(-9, -3.5)]), areaLabel(`outside ${n}`, "outside", [point(-9, 6.2), point(-9, 7.5)]),
      areaLabel(`head ${n}`, "head", [point(-9, 2)]), areaLabel(`tail ${n}`, "tail", [point(wide + 7, 2)]),
    ]);
    return withHeading(`pass ${n}`, `Pass ${n}: ${name}`, view);
  });
  return {
    id: "sewing",
    title: "Sewing through the fold",
    caption: `The fold seen from its side, head to the left, ${scale.name} along the fold; its thickness is not to scale. The inside of the fold is above, the outside below. Heavy: the thread of this pass, in the direction of the arrows; thin: sewn before.`,
    alternative: `${path.passes.map(({ n, name }) => `Pass ${n}, ${name}: ${wordsForPass(path, n).toLowerCase()}`).join(". ")}. Both ends hang ${tiedInside ? "inside the fold" : "outside"} at the middle hole, one on each side of the long stitch.`,
    items: viewsBelow(views, 6),
  };
}

/** Figure `tie`. */
export function drawTie(input: DrawingInput<"pamphlet">): FigureDraft {
  const { tiedInside } = input.model.geometry;
  return {
    id: "tie",
    title: "The square knot over the long stitch",
    caption: `The knot at the middle hole, ${tiedInside ? "inside the fold" : "on the outside"}, not to scale: the dark end comes from the right and goes over the light end both times.`,
    alternative: "First the right end is crossed over the left, with the long stitch below the crossing. Then the same end, which now lies left, is crossed over the other. Last, both ends are cut.",
    items: squareKnot("long stitch"),
  };
}
