// The corner template: one corner of the hinge cloth at true size, with the 45° cut at its distance from the strip's corner.
import { line, polygon } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { printThickness } from "../../units/print-length.ts";
import type { DrawingInput } from "../binding.ts";
import { cornerReach } from "../corner-cut.ts";
import { drawLeader } from "../leaders.ts";
import { area, label, stroke } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";

/** How far the piece reaches beyond the strip's corner along both of its edges, in millimetres. */
const reach = 45;

export function draftCornerTemplate(input: DrawingInput<"stub-album">): TemplateDraft {
  const { definition, model } = input;
  const turnIn = toMillimetres(model.geometry.turnIn);
  const distance = toMillimetres(model.geometry.cornerDistance);
  const cut = cornerReach(point(turnIn, turnIn), distance);
  const size = Math.max(turnIn + reach, cut + 30);
  const distanceText = printThickness(model.geometry.cornerDistance, definition.units);
  const onCut = point(cut / 2, cut / 2);
  return {
    id: "corner-template",
    title: "Corner template for the hinge cloth",
    book: `${definition.title}, revision ${definition.revision}`,
    use: [
      "Cut the piece out along its heavy outline, the slanting edge too.",
      "Lay it on a corner of the glued-up hinge, cloth down, so that the two thin lines lie on the strip’s two edges.",
      "Draw along the slanting edge, turn the piece for the next corner, and cut all four corners on these lines.",
    ],
    alternative: `A corner of the hinge cloth at true size: two lines show the strip’s head edge and outer edge, each ${input.number(model.geometry.turnIn)} in from the cloth’s edge; the corner is cut off at 45°, ${distanceText} outside the strip’s corner.`,
    width: size, height: size,
    items: [
      area(polygon([point(cut, 0), point(size, 0), point(size, size), point(0, size), point(0, cut)]), "none", "cut"),
      stroke(line(point(turnIn, turnIn), point(size, turnIn)), "placement"),
      stroke(line(point(turnIn, turnIn), point(turnIn, size)), "placement"),
      stroke(line(point(turnIn, turnIn), onCut), "dimension", "corner distance"),
      ...drawLeader({ name: "corner distance", target: point((turnIn + onCut.x) / 2, (turnIn + onCut.y) / 2), end: "none", text: [distanceText, "from the strip’s", "corner to the cut"] }, point(turnIn + 6, turnIn + 9)),
      label("strip head edge", "strip’s head or tail edge", point(turnIn + 5, turnIn + 3.4)),
      label("strip outer edge", "strip’s outer edge", point(turnIn + 3.4, size - 2), { angle: 90 }),
      label("cloth edge", "edge of the cloth", point(size - 2, 4), { anchor: "end" }),
    ],
    marks: [
      { name: "corner cut", act: "cut", from: [cut, 0], to: [0, cut] },
      { name: "strip head edge", act: "place", from: [turnIn, turnIn], to: [size, turnIn] },
      { name: "strip outer edge", act: "place", from: [turnIn, turnIn], to: [turnIn, size] },
    ],
  };
}
