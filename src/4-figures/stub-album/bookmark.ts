// Figure: the bookmark glued to the spine strip at the head, and how it lies on a page of the finished book.
import { bandAlong } from "../../geometry/band.ts";
import { line, polygon, polyline, rectangle } from "../../geometry/path.ts";
import { along, distance, point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { wavyLine } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { fittingScale } from "../scale.ts";
import { area, headingType, label, moveItems, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { hingeTapes } from "./covered-hinge.ts";
import { hingeEdges, middleOf } from "./hinge-edges.ts";
import type { HingeEdges } from "./hinge-edges.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room on paper for the hinge's head end and for the page beside it. */
const room = { hinge: 34, shown: 40, pageWidth: 28, pageHeight: 46 } as const;
/** Free ribbon drawn beyond the head, and the step from one view to the other. */
const free = 12;
const pageView = { left: 46, top: -4 } as const;

/** Figure `bookmark`; none for a book without one. */
export function drawBookmark(input: DrawingInput<"stub-album">): FigureDraft | null {
  const { geometry } = input.model;
  if (!geometry.bookmarkLength) return null;
  const words = sectionWords(input);
  const hingeScale = fittingScale(toMillimetres(geometry.clothWidth), 0, room.hinge, 1);
  const pageScale = fittingScale(toMillimetres(geometry.pages.width), toMillimetres(geometry.pages.height), room.pageWidth, room.pageHeight);
  const { items } = placeAtScale([hingeScale], ({ factor }) => {
    const head = headEnd(input, factor);
    const page = pageWithRibbon(input, pageScale.factor);
    return { fixed: [...head.fixed, ...page.fixed], labels: [...head.labels, ...page.labels] };
  });
  const [length, glued] = [words.size(geometry.bookmarkLength), words.size(geometry.turnIn)];
  return {
    id: "bookmark",
    title: "The bookmark",
    caption: `Left, the head end of the hinge between its boards, inside up, ${hingeScale.name}: ${glued} of the ribbon is glued to the spine strip at the head, its free end (drawn shortened) hangs out at the head until the floor is glued down over the glued end. Right, a page of the finished book, ${pageScale.name}: the ribbon comes over the head, lies cornerwise over the page and hangs out at the tail.`,
    alternative: `Inside of the hinge at the head. The bookmark, ${length} long and ${words.size(geometry.ribbonWidth)} wide, lies on the middle of the spine strip; ${glued} of it from the head edge down are glued, the rest hangs out beyond the head. `
      + `Beside it a page, ${words.size(geometry.pages.height)} high × ${words.size(geometry.pages.width)} wide: the ribbon runs from the page’s head at the spine to its tail at the fore-edge and hangs out beyond it.`,
    items,
  };
}

interface View {
  readonly fixed: readonly SceneItem[];
  readonly labels: readonly Placeable[];
}

/** The head end of the hinge between its two boards, inside up: the strips' head is at y = 0, below the view is broken off. */
function headEnd(input: DrawingInput<"stub-album">, factor: number): View {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const edges = hingeEdges(geometry, factor);
  const shown = Math.min(edges.tail - edges.head, room.shown);
  const shift = (x: number): number => x - edges.leftStrip.left;
  const [right, middle] = [shift(edges.rightStrip.right), shift(middleOf(edges.spineStrip))];
  const inset = toMillimetres(geometry.stripInset) * factor;
  const ribbon = toMillimetres(geometry.ribbonWidth) * factor;
  const glued = Math.min(toMillimetres(geometry.turnIn) * factor, shown);
  return {
    fixed: [
      label("gluing", "Gluing it on", point(0, -free - 6), { size: headingType, weight: 600 }),
      ...spineBetween(edges, shown, toMillimetres(geometry.hingeTapeWidth) * factor),
      ...boardEnd(0, shift(edges.leftStrip.right), inset, shown), ...boardEnd(right, shift(edges.rightStrip.left), inset, shown),
      stroke(wavyLine(point(0, shown), point(right, shown)), "edge"),
      area(rectangle(middle - ribbon / 2, -free, ribbon, free + glued), "face-deep", "outline"),
      ...cutOff(middle, -free, ribbon),
    ],
    labels: [
      dimension({ name: "glued length", from: point(middle - ribbon / 2, 0), to: point(middle - ribbon / 2, glued), side: "left", text: words.size(geometry.turnIn), offset: middle - ribbon / 2 + 4 }),
      leaderAnywhere({ name: "bookmark", text: [words.part("bookmark"), `${words.size(geometry.bookmarkLength!)} long`], target: point(middle, -free * 0.5), directions: [15, 0, 25, -10, 160], reach: 6 }),
      leaderAnywhere({ name: "spine strip", text: words.part("spine-strip"), target: point(middle, glued + (shown - glued) * 0.7), directions: [270, 285, 255, 300, 240], reach: shown * 0.3 + 4 }),
      leaderAnywhere({ name: "boards", text: words.part("boards"), target: point(shift(edges.leftStrip.right) * 0.5, glued + (shown - glued) * 0.5), directions: [268, 260, 252, 245, 235, 225], reach: shown * 0.5 + 3 }),
    ],
  };
}

/** Spine strip with the turned-in cloth at its head, and the tapes over the joints. */
function spineBetween(edges: HingeEdges, shown: number, tapeWidth: number): readonly SceneItem[] {
  const shift = (x: number): number => x - edges.leftStrip.left;
  const [from, to] = [shift(edges.leftStrip.right), shift(edges.rightStrip.left)];
  const { left, right } = edges.spineStrip;
  return [
    area(rectangle(from, 0, to - from, shown), "face-light", "none"),
    area(rectangle(shift(left), 0, right - left, shown), "face-middle", "edge"),
    area(rectangle(from, 0, to - from, Math.min(edges.turnedIn, shown)), "cloth", "edge"),
    ...hingeTapes(edges, tapeWidth).map((tape) => area(rectangle(shift(tape.left), 0, tape.right - tape.left, shown), "plate", "edge")),
    stroke(line(point(from, 0), point(to, 0)), "outline"),
  ];
}

/** A board from where it is broken off to its spine edge; its head stands above the strips' head. */
function boardEnd(broken: number, spineEdge: number, inset: number, shown: number): readonly SceneItem[] {
  return [
    area(polygon([point(broken, -inset), point(spineEdge, -inset), point(spineEdge, shown), point(broken, shown)]), "face-light", "none"),
    stroke(polyline([point(broken, -inset), point(spineEdge, -inset), point(spineEdge, shown)]), "outline"),
    stroke(wavyLine(point(broken, -inset), point(broken, shown)), "edge"),
  ];
}

/** Two slanting strokes across a ribbon that goes on upwards. */
function cutOff(x: number, y: number, ribbon: number): readonly SceneItem[] {
  const stroked = (at: number): SceneItem => stroke(line(point(x - ribbon / 2 - 1.2, at + 0.8), point(x + ribbon / 2 + 1.2, at - 0.8)), "edge");
  return [area(bandAlong([point(x - ribbon / 2 - 1.5, y + 2.2), point(x + ribbon / 2 + 1.5, y + 0.6)], 1.2), "plate", "none"), stroked(y + 0.8), stroked(y + 2)];
}

/** A page with the ribbon from the head at its spine to beyond the tail at its fore-edge, all lengths to scale. */
function pageWithRibbon(input: DrawingInput<"stub-album">, factor: number): View {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const paper = (length: Parameters<typeof toMillimetres>[0]): number => toMillimetres(length) * factor;
  const [width, height] = [paper(geometry.pages.width), paper(geometry.pages.height)];
  const ribbon = Math.max(paper(geometry.ribbonWidth), 0.8);
  const [spineHead, foreTail] = [point(0, 0), point(width, height)];
  const outside = Math.max(0, paper(geometry.bookmarkLength!) - paper(geometry.turnIn) - distance(spineHead, foreTail));
  const end = along(spineHead, foreTail, distance(spineHead, foreTail) + outside);
  const { left, top } = pageView;
  const at = (x: number, y: number) => point(left + x, top + y);
  return {
    fixed: moveItems([
      label("in use", "In the book", point(0, -free - 6 - pageView.top), { size: headingType, weight: 600 }),
      area(rectangle(0, 0, width, height), "paper", "outline"),
      area(bandAlong([spineHead, end], ribbon), "face-deep", "edge"),
    ], left, top),
    labels: [
      leaderAnywhere({ name: "page paper", text: words.part("page-paper"), target: at(width * 0.3, height * 0.75), directions: [270, 255, 285, 240, 300], reach: height * 0.25 + 4 }),
      leaderAnywhere({ name: "spine side", text: "spine", target: at(0, height * 0.55), end: "arrow", directions: [180, 170, 190, 160], reach: 4 }),
    ],
  };
}
