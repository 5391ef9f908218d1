// The corner template: one corner of a covering at true size, with the 45° cut at its distance from the corner of what is covered.
import { line, polygon } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printThickness } from "../../units/print-length.ts";
import type { DrawingInput } from "../binding.ts";
import { cornerReach } from "../corner-cut.ts";
import { drawLeader } from "../leaders.ts";
import { area, fractionType, label, stroke } from "../scene.ts";
import { measureText } from "../text-metrics.ts";
import type { TemplateDraft } from "../template-draft.ts";

/** How far the piece reaches beyond the corner of what is covered, along both of its edges, in millimetres. */
const reach = 45;

/** Whose corner it is. */
export interface CornerTemplateSpec {
  /** What is cut: "hinge cloth". */
  readonly what: string;
  /** "cloth". */
  readonly stuff: string;
  /** What lies at the corner: "strip", "board". */
  readonly board: string;
  /** The whole thing on which it is laid: "glued-up hinge". */
  readonly work: string;
  /** "all four corners". */
  readonly corners: string;
  readonly turnIn: Length;
  readonly cornerDistance: Length;
}

/** The template `corner-template`. */
export function draftCornerTemplate(input: DrawingInput, spec: CornerTemplateSpec): TemplateDraft {
  const { definition } = input;
  const { board, stuff } = spec;
  const turnIn = toMillimetres(spec.turnIn);
  const distance = toMillimetres(spec.cornerDistance);
  const cut = cornerReach(point(turnIn, turnIn), distance);
  const distanceText = printThickness(spec.cornerDistance, definition.units);
  const words = [...distanceText.split(/ (?=\()/), `from the ${board}’s`, "corner to the cut"];
  // Wide enough for the words inside, whatever the units.
  const size = Math.max(turnIn + reach, cut + 30, turnIn + 6 + 2.6 + Math.max(...words.map((text) => measureText(text, fractionType))) + 3);
  const onCut = point(cut / 2, cut / 2);
  return {
    id: "corner-template",
    title: `Corner template for the ${spec.what}`,
    book: `${definition.title}, revision ${definition.revision}`,
    use: [
      "Cut the piece out along its heavy outline, the slanting edge too.",
      `Lay it on a corner of the ${spec.work}, ${stuff} down, its two edges marked “edge of the ${stuff}” flush with the two edges of the ${stuff}; the dashed lines then lie over the ${board}’s edges.`,
      `Hold it down on the turn-in, where the ${board} does not lift it. Draw along the slanting edge, turn the piece for the next corner, and cut ${spec.corners} on these lines.`,
    ],
    alternative: `A corner of the ${spec.what} at true size: two lines show the ${board}’s head edge and outer edge, each ${input.number(spec.turnIn)} in from the ${stuff}’s edge; the corner is cut off at 45°, ${distanceText} outside the ${board}’s corner.`,
    width: size, height: size,
    items: [
      area(polygon([point(cut, 0), point(size, 0), point(size, size), point(0, size), point(0, cut)]), "none", "cut"),
      stroke(line(point(turnIn, turnIn), point(size, turnIn)), "placement"),
      stroke(line(point(turnIn, turnIn), point(turnIn, size)), "placement"),
      stroke(line(point(turnIn, turnIn), onCut), "dimension", "corner distance"),
      ...drawLeader({ name: "corner distance", target: point((turnIn + onCut.x) / 2, (turnIn + onCut.y) / 2), end: "none", text: words }, point(turnIn + 6, turnIn + 9)),
      label(`${board} head edge`, `${board}’s head or tail edge`, point(turnIn + 5, turnIn + 3.4)),
      label(`${board} outer edge`, `${board}’s outer edge`, point(turnIn + 3.4, size - 2), { angle: 90 }),
      label("edge", `edge of the ${stuff}`, point(size - 2, 4), { anchor: "end" }),
      label("other edge", `edge of the ${stuff}`, point(4, size - 2), { angle: 90 }),
    ],
    marks: [
      { name: "corner cut", act: "cut", from: [cut, 0], to: [0, cut] },
      { name: `${board} head edge`, act: "place", from: [turnIn, turnIn], to: [size, turnIn] },
      { name: `${board} outer edge`, act: "place", from: [turnIn, turnIn], to: [turnIn, size] },
    ],
  };
}
