// The corner template: one corner of a covering at true size, with the 45° cut at its distance from the board's or strip's corner.
import { line, polygon } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printThickness } from "../../units/print-length.ts";
import type { DrawingInput } from "../binding.ts";
import { cornerReach } from "../corner-cut.ts";
import { drawLeader } from "../leaders.ts";
import { area, label, stroke } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";

/** How far the piece reaches beyond the strip's corner along both of its edges, in millimetres. */
const reach = 45;

/** Whose corner it is. */
export interface CornerTemplateSpec {
  readonly turnIn: Length;
  readonly cornerDistance: Length;
  /** "hinge cloth": what is cut. */
  readonly covering: string;
  /** "cloth": the same in one word. */
  readonly stuff: string;
  /** "glued-up hinge": what the template is laid on. */
  readonly whole: string;
  /** "strip": what is covered. */
  readonly board: string;
}

/** Template `corner-template`. */
export function draftCornerTemplate({ definition, number, unitNote }: DrawingInput, spec: CornerTemplateSpec): TemplateDraft {
  const { covering, stuff, whole, board } = spec;
  const turnIn = toMillimetres(spec.turnIn);
  const distance = toMillimetres(spec.cornerDistance);
  const cut = cornerReach(point(turnIn, turnIn), distance);
  const size = Math.max(turnIn + reach, cut + 30);
  const distanceText = printThickness(spec.cornerDistance, definition.units);
  const onCut = point(cut / 2, cut / 2);
  return {
    id: "corner-template",
    title: `Corner template for the ${covering}`,
    book: `${definition.title}, revision ${definition.revision}`,
    use: [
      "Cut the piece out along its heavy outline, the slanting edge too.",
      `Lay it on a corner of the ${whole}, ${stuff} down, so that the two thin lines lie on the ${board}’s two edges.`,
      "Draw along the slanting edge, turn the piece for the next corner, and cut all four corners on these lines.",
    ],
    alternative: `A corner of the ${covering} at true size: two lines show the ${board}’s head edge and outer edge, each ${number(spec.turnIn)} in from the ${stuff}’s edge; the corner is cut off at 45°, ${distanceText} outside the ${board}’s corner. ${unitNote}`,
    width: size, height: size,
    items: [
      area(polygon([point(cut, 0), point(size, 0), point(size, size), point(0, size), point(0, cut)]), "none", "cut"),
      stroke(line(point(turnIn, turnIn), point(size, turnIn)), "placement"),
      stroke(line(point(turnIn, turnIn), point(turnIn, size)), "placement"),
      stroke(line(point(turnIn, turnIn), onCut), "dimension", "corner distance"),
      ...drawLeader({ name: "corner distance", target: point((turnIn + onCut.x) / 2, (turnIn + onCut.y) / 2), end: "none", text: [distanceText, `from the ${board}’s`, "corner to the cut"] }, point(turnIn + 6, turnIn + 9)),
      label("strip head edge", `${board}’s head or tail edge`, point(turnIn + 5, turnIn + 3.4)),
      label("strip outer edge", `${board}’s outer edge`, point(turnIn + 3.4, size - 2), { angle: 90 }),
      label("cloth edge", `edge of the ${stuff}`, point(size - 2, 4), { anchor: "end" }),
    ],
    marks: [
      { name: "corner cut", act: "cut", from: [cut, 0], to: [0, cut] },
      { name: "strip head edge", act: "place", from: [turnIn, turnIn], to: [size, turnIn] },
      { name: "strip outer edge", act: "place", from: [turnIn, turnIn], to: [turnIn, size] },
    ],
  };
}
