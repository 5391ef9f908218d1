// Figures of the block before it is sewn: folding a leaf, stacking, the flat cover with its flap.
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { isometric, spacePoint } from "../../geometry/project.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale, placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, gridCentres, leaderAnywhere } from "../leaders.ts";
import { pushArrow } from "../movement.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { boxOutline, prism } from "../bench/solid.ts";
import { sectionWords } from "../bench/section-words.ts";
import { foldOneSheet } from "../sewing/fold-sheet.ts";

/** Figure `fold-leaves`. */
export function drawFoldLeaves(input: DrawingInput<"stab-binding">): FigureDraft | null {
  const { isFolded, height, width } = input.model.geometry;
  if (!isFolded) return null;
  const words = sectionWords(input);
  return {
    id: "fold-leaves", title: "Folding a leaf",
    caption: "Fold right edge to left edge, not to scale. The fold becomes the fore-edge, the open edges the spine edge.",
    alternative: `A sheet ${words.size(height)} high with its fold line in the middle, ${words.size(width)} from each edge; an arrow carries the right edge over to the left edge. Grain along the fold.`,
    items: foldOneSheet(height, width),
  };
}

/** Figure `stack-leaves`: the block on the table, clamped at its fore-edge. */
export function drawStackLeaves(input: DrawingInput<"stab-binding">): FigureDraft {
  const { height, width, blockThickness } = input.model.geometry;
  const words = sectionWords(input);
  const factor = Math.min(64 / toMillimetres(height), 52 / toMillimetres(width));
  const [long, wide] = [toMillimetres(height) * factor, toMillimetres(width) * factor];
  const thick = Math.min(14, Math.max(2.4, toMillimetres(blockThickness) * factor));
  const clamp = (x: number): readonly SceneItem[] => [
    ...prism(boxOutline(x, wide - 9, 7, 11), thick, thick + 1.4, { top: "face-dark", left: "face-deep", right: "face-deep" }),
  ];
  const layers = Array.from({ length: 3 }, (_, k) => (thick * (k + 1)) / 4);
  const fixed: SceneItem[] = [
    ...prism(boxOutline(0, 0, long, wide), 0, thick, { top: "paper", left: "face-light", right: "face-middle" }, "outline"),
    ...layers.map((z) => stroke(line(isometric(spacePoint(0, 0, z)), isometric(spacePoint(long, 0, z))), "edge")),
    ...clamp(long * 0.15), ...clamp(long * 0.75),
    pushArrow(isometric(spacePoint(long * 0.5, -3, thick / 2)), { x: 0.87, y: -0.5 }, 9),
    pushArrow(isometric(spacePoint(-3, wide * 0.5, thick / 2)), { x: 0.87, y: 0.5 }, 9),
  ];
  const items = placeEvery(fixed, [
    leaderAnywhere({ name: "spine", text: "spine edge", target: isometric(spacePoint(long * 0.78, 0, thick / 2)), directions: [260, 250, 270], reach: 8 }),
    leaderAnywhere({ name: "head", text: "head", target: isometric(spacePoint(0, wide * 0.25, thick)), end: "arrow", directions: [150, 170, 130], reach: 8 }),
    leaderAnywhere({ name: "clamp", text: ["clamp with", "scrap of board"], target: isometric(spacePoint(long * 0.75 + 4, wide - 3, thick + 1.4)), directions: [40, 20, 60], reach: 9 }),
    leaderAnywhere({ name: "leaves", text: words.part("leaf"), target: isometric(spacePoint(long * 0.5, wide * 0.45, thick)), directions: [80, 90, 70, 100], reach: 26 }),
  ]);
  return {
    id: "stack-leaves", title: "Stacking the leaves",
    caption: `The leaves, pictorial view, not to scale: knock head and spine edge level (hollow arrows), clamp at the fore-edge. Stack ${words.thickness(blockThickness)} thick.`,
    alternative: "The stack of leaves lies flat, its spine edge nearest. Hollow arrows push against the spine edge and against the head. Two clamps with scraps of board hold it at the fore-edge, away from the holes.",
    items,
  };
}

/** Figure `cover-layout`: a cover laid flat, inside up, its flap still open. */
export function drawCoverLayout(input: DrawingInput<"stab-binding">): FigureDraft {
  const { height, width, coverWidth, flap } = input.model.geometry;
  const hasFlap = flap.n > 0n;
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(coverWidth), toMillimetres(height), 96, 66), ({ factor }) => {
    const [wide, high, fold] = [toMillimetres(coverWidth) * factor, toMillimetres(height) * factor, toMillimetres(width) * factor];
    const running = runningDimensions({
      name: "across", side: "below", edge: high, datum: 0, low: -10, high: wide + 16,
      marks: [{ name: "spine 0", at: 0, text: "0" }, ...(hasFlap ? [{ name: "fold", at: fold, text: input.number(width), weight: 600 as const }] : []), { name: "end", at: wide, text: input.number(coverWidth) }],
    })!;
    return {
      fixed: [area(rectangle(0, 0, wide, high), "paper", "outline"), ...(hasFlap ? [stroke(line(point(fold, 0), point(fold, high)), "valley")] : []), ...running.items],
      labels: [
        dimension({ name: "height", from: point(wide, 0), to: point(wide, high), side: "right", text: input.number(height), offset: 6 }),
        areaLabel("spine edge", "spine edge", [point(3, high / 2), point(-3, high / 2)], { angle: 90 }),
        ...(hasFlap ? [areaLabel("flap", "flap", [...gridCentres({ left: fold, top: 0, right: wide, bottom: high }, 3, 9), point((fold + wide) / 2, -3)], { angle: wide - fold < 9 ? 90 : 0 })] : []),
        areaLabel("inside", "inside", [...gridCentres({ left: 6, top: 2, right: fold - 2, bottom: high - 2 }), point(fold / 2, -3)]),
        grainArrow("grain", "height", [...gridCentres({ left: 6, top: 2, right: fold - 2, bottom: high - 2 }), point(wide + 22, high / 2)], Math.min(16, high * 0.5)),
        areaLabel("head", "head", [point(wide / 2, -3), point(wide / 2, -6)]),
      ],
    };
  });
  return {
    id: "cover-layout", title: "A cover, laid flat",
    caption: `One of the two covers, inside up, ${scale.name}. ${hasFlap ? "Measure from the spine edge (the ring at 0); score and fold the flap in along the dashed line. " : ""}${input.unitNote}`,
    alternative: `A cover ${input.number(height)} high and ${input.number(coverWidth)} wide.${hasFlap ? ` A valley fold ${input.number(width)} from the spine edge divides off the flap, ${input.number(flap)} wide.` : ""} Grain along the height.`,
    items,
  };
}
