// Figures and template of the holes: every hole measured from the head and from the spine edge, at true proportions.
import type { StabHole } from "../../2-model/stab-binding/geometry.ts";
import { circle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { addLengths, mm, toMillimetres } from "../../units/length.ts";
import { draftHoleStrip } from "../bench/hole-strip.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, drawLeader } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area, smallestType } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";
import { sectionWords } from "../bench/section-words.ts";
import { edgeStrip } from "../sewing/edge-strip.ts";

/** Room along the spine on paper. */
const room = 126;

/** Figure `hole-layout`: the holes of the pattern on the front cover. */
export function drawHoleLayout(input: DrawingInput<"stab-binding">): FigureDraft {
  const { holes } = input.model.geometry;
  return layOut(input, holes, "hole-layout", "Holes of the pattern", "The front cover");
}

/** Figure `inner-holes`: the holes of the inner binding on the leaves. */
export function drawInnerHoles(input: DrawingInput<"stab-binding">): FigureDraft | null {
  const { innerHoles } = input.model.geometry;
  return innerHoles.length === 0 ? null : layOut(input, innerHoles, "inner-holes", "Holes of the inner binding", "The leaves");
}

function layOut(input: DrawingInput<"stab-binding">, holes: readonly StabHole[], id: string, title: string, what: string): FigureDraft {
  const { height, setBack, holeDiameter } = input.model.geometry;
  const words = sectionWords(input);
  const tries: readonly Scale[] = scales.filter(({ factor }) => factor <= 1 && toMillimetres(height) * factor <= room).slice(0, 3);
  const { items, scale } = placeAtScale(tries, ({ factor }) => {
    const [wide, deep] = [toMillimetres(height) * factor, Math.max(toMillimetres(setBack) * factor * 2.2, 12)];
    const at = (hole: StabHole): Point => point(toMillimetres(hole.along) * factor, deep - toMillimetres(hole.across) * factor);
    const inOrder = [...holes].sort((a, b) => toMillimetres(a.along) - toMillimetres(b.along));
    const running = runningDimensions({
      name: "along", side: "below", edge: deep, datum: 0, low: -16, high: wide + 22,
      marks: [{ name: "head 0", at: 0, text: "0" }, ...inOrder.map((hole) => ({ name: `${hole.id} along`, at: at(hole).x, text: input.number(hole.along), ...(hole.kind === "main" ? { weight: 600 as const } : {}) })), { name: "end", at: wide, text: input.number(height) }],
    })!;
    const fixed = [
      ...edgeStrip(wide, deep),
      ...holes.map((hole) => area(circle(at(hole), Math.max((toMillimetres(holeDiameter) * factor) / 2, 0.6)), "plate", "edge")),
      ...running.items,
    ];
    const rows = [...new Map(inOrder.map((hole) => [input.number(hole.across), hole])).entries()];
    return {
      fixed,
      labels: [
        ...rows.map(([text, hole], index) => dimension({ name: `across ${text}`, from: point(0, at(hole).y), to: point(0, deep), side: "left", text, offset: 6 + index * 5 })),
        ...holes.map((hole) => holeName(hole, at(hole))),
        areaLabel("head", "head", [point(-6, -2), point(-6, -6), point(4, -4)]), areaLabel("tail", "tail", [point(wide + 6, deep / 2), point(wide + 6, 0)]),
        areaLabel("spine edge", "spine edge", [0, 4, 8, 12, 16].map((down) => point(wide + 13, deep + down))),
      ],
    };
  });
  return {
    id, title,
    caption: `${what}, ${scale.name}, spine edge below, head to the left. Measure from the head (the ring at 0) and from the spine edge; holes are ${words.thickness(holeDiameter)} wide. ${input.unitNote}`,
    alternative: `${what} with ${holes.length} holes. ${holes.map((hole) => `Hole ${hole.id}: ${input.number(hole.along)} from the head, ${input.number(hole.across)} from the spine edge`).join("; ")}.`,
    items,
  };
}

function holeName(hole: StabHole, target: Point): Placeable {
  const name = `hole ${hole.id}`;
  const weight = hole.kind === "main" ? { weight: 600 as const } : {};
  const near = areaLabel(name, hole.id, [point(target.x, target.y - 2.8), point(target.x, target.y - 3.6), point(target.x - 2.4, target.y - 1), point(target.x + 2.4, target.y - 1), point(target.x, target.y + 2.8)], { size: smallestType, ...weight });
  return firstOf(near, { name, candidates: [6, 9, 12, 15, 18, 22].flatMap((up) => [0.3, -0.3, 3, -3, 6, -6].map((by) => drawLeader({ name, text: hole.id, target, end: "none", size: smallestType }, point(target.x + by, target.y - up)))) });
}

/** Template `hole-template`: all holes, those of the inner binding as w, x, y, z. */
export function draftHoleTemplate(input: DrawingInput<"stab-binding">): TemplateDraft {
  const { holes, innerHoles, height, setBack, holeDiameter } = input.model.geometry;
  const { governing } = input.definition.units;
  return draftHoleStrip(input, {
    id: "hole-template", title: "Hole template for the spine edge", what: "A strip along the spine edge", height, width: addLengths(setBack, mm(16)), fold: null,
    holes: [...holes, ...innerHoles].map(({ id, along, across }) => ({ name: `hole ${id}`, along, across, diameter: holeDiameter })),
    use: [
      "Cut the template out along its heavy outline; the words beside it fall away.",
      `Measure it: it must be ${input.number(height)} ${governing} high, like the leaves.`,
      `${innerHoles.length > 0 ? "First lay it on the leaves and pierce only w, x, y and z, the holes of the inner binding. Then lay it on the front cover and pierce all others." : "Lay it on the front cover and pierce all holes."}`,
      "The head of the template lies at the head, its spine edge on the spine edge.",
    ],
  });
}
