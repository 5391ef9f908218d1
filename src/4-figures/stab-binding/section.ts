// Figures in section: the finished book across its spine, and the two ends hidden between the leaves.
import { circle, line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { subtractLength, toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { raggedEnd } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Width of the book on paper. */
const bookWidth = 104;

/** Figure `section`. */
export function drawSection(input: DrawingInput<"stab-binding">): FigureDraft {
  const { model } = input;
  const { width, setBack, openingAllowance, usableWidth, thickness, blockThickness, coverThickness, flap, leaves } = model.geometry;
  const words = sectionWords(input);
  const factor = bookWidth / toMillimetres(width);
  const trueThick = toMillimetres(thickness) * factor;
  const thick = Math.min(26, Math.max(9, trueThick));
  const [hole, page, tuck] = [toMillimetres(setBack) * factor, toMillimetres(setBack) * factor + toMillimetres(openingAllowance) * factor, bookWidth - toMillimetres(flap) * factor];
  const lines = Math.min(6, leaves - 1);
  const cover = (y: number, inwards: number): readonly SceneItem[] => [
    stroke(polyline([point(0, y), point(bookWidth + 0.4, y), ...(flap.n > 0n ? [point(bookWidth + 0.4, y + inwards * 1.3), point(tuck, y + inwards * 1.3)] : [])]), "outline"),
  ];
  const fixed: SceneItem[] = [
    area(rectangle(0, 1.4, bookWidth, thick - 2.8), "paper", "edge"),
    ...Array.from({ length: lines }, (_, k) => stroke(line(point(0, 1.4 + ((thick - 2.8) * (k + 1)) / (lines + 1)), point(bookWidth, 1.4 + ((thick - 2.8) * (k + 1)) / (lines + 1))), "edge")),
    ...cover(0, 1), ...cover(thick, -1),
    stroke(polyline([point(hole, thick + 0.7), point(hole, -0.7), point(-0.7, -0.7), point(-0.7, thick + 0.7), point(hole, thick + 0.7)]), "thread"),
  ];
  const items = placeEvery(fixed, [
    dimension({ name: "set-back", from: point(0, -0.7), to: point(hole, -0.7), side: "above", text: words.size(setBack), offset: 6, outside: "before" }),
    dimension({ name: "usable", from: point(page, 0), to: point(bookWidth, 0), side: "above", text: `to write on ${words.size(usableWidth)}`, offset: 6 }),
    dimension({ name: "width", from: point(0, thick), to: point(bookWidth, thick), side: "below", text: words.size(width), offset: 9 }),
    dimension({ name: "thickness", from: point(bookWidth, 0), to: point(bookWidth, thick), side: "right", text: words.thickness(thickness), offset: 7 }),
    leaderAnywhere({ name: "thread", text: "thread", target: point(-0.7, thick * 0.5), end: "none", directions: [180, 160, 200], reach: 5 }),
    leaderAnywhere({ name: "cover", text: words.part("cover"), target: point(bookWidth * 0.55, thick), end: "arrow", directions: [250, 290, 260], reach: 14 }),
    leaderAnywhere({ name: "leaves", text: words.part("leaf"), target: point(bookWidth * 0.35, thick * 0.6), directions: [260, 280, 250], reach: thick * 0.4 + 16 }),
    ...(flap.n > 0n ? [leaderAnywhere({ name: "flap", text: "flap", target: point((tuck + bookWidth) / 2, thick - 1.3), directions: [290, 280, 270], reach: 14 })] : []),
  ]);
  const isTrue = Math.abs(thick - trueThick) < 0.01;
  return {
    id: "section", title: "Section through the finished book",
    caption: `The book seen from its head, cut through a main hole${isTrue ? "" : ", thickness not to scale"}. Leaves ${words.thickness(blockThickness)}, covers ${words.thickness(coverThickness)} each.`,
    alternative: `Across the spine: the thread goes through covers and leaves ${words.size(setBack)} from the spine edge and around it. ${words.size(subtractLength(width, usableWidth))} beside the spine cannot be used; ${words.size(usableWidth)} of a page remain. The book is ${words.size(width)} wide and ${words.thickness(thickness)} thick.`,
    items,
  };
}

/** Figure `hide-end`: section through the starting hole. */
export function drawHideEnd(input: DrawingInput<"stab-binding">): FigureDraft {
  const { startHole } = input.model.geometry;
  const [thick, hole, shown] = [30, 22, 62];
  const middle = thick / 2;
  const leaves = [0.12, 0.25, 0.38, 0.62, 0.75, 0.88].map((share) => thick * share);
  const fixed: SceneItem[] = [
    area(rectangle(0, 0, shown, middle - 1.2), "paper", "edge"), area(rectangle(0, middle + 1.2, shown, middle - 1.2), "paper", "edge"),
    ...leaves.map((y) => stroke(line(point(0, y), point(shown, y)), "edge")),
    stroke(line(point(0, 0), point(shown, 0)), "outline"), stroke(line(point(0, thick), point(shown, thick)), "outline"),
    ...raggedEnd(shown, -0.6, thick + 0.6, 1),
    stroke(polyline([point(8, -1), point(hole, -1), point(hole, middle - 0.4), point(hole + 9, middle - 0.4)]), "thread"),
    stroke(polyline([point(8, thick + 1), point(hole, thick + 1), point(hole, middle + 0.4), point(hole + 9, middle + 0.4)]), "thread"),
    area(circle(point(hole + 2.6, middle), 1.9), "arrow", "none"),
  ];
  const items = placeEvery(fixed, [
    leaderAnywhere({ name: "knot", text: "square knot, pushed into the hole", target: point(hole + 2.6, middle + 1.6), end: "arrow", directions: [300, 290, 310], reach: thick * 0.75 }),
    leaderAnywhere({ name: "ends", text: "ends between the leaves", target: point(hole + 8.5, middle - 0.6), end: "arrow", directions: [60, 50, 70], reach: thick * 0.8 }),
    leaderAnywhere({ name: "hole", text: `hole ${startHole}`, target: point(hole, 2), end: "arrow", directions: [110, 100, 120], reach: 9 }),
    leaderAnywhere({ name: "spine", text: "spine edge", target: point(0, middle + 6), end: "arrow", directions: [180, 200, 160], reach: 5 }),
  ]);
  return {
    id: "hide-end", title: "Hiding the ends",
    caption: `Section through hole ${startHole}, not to scale: both ends come out between the same two leaves in the middle of the book.`,
    alternative: `The first end comes from the front and the last end from the back through hole ${startHole} to between the same two leaves. They are tied there close to the hole; the knot is pushed into the hole and the ends lie between the leaves.`,
    items,
  };
}
