// Figures of the sections: piercing their stations, trimming the sewn block.
import { circle, line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { addLengths, toMillimetres } from "../../units/length.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import { areaLabel, drawBalloon, leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow } from "../views.ts";
import { drawPunchingCradle } from "../bench/punching-cradle.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"case-binding">;

/** Figure `pierce-sections`: the stations along the fold, and a section in the punching cradle. */
export const drawPierceSections: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  if (!geometry.sewing) return null;
  const words = sectionWords(input);
  const { stations } = geometry.sewing;
  const positions = stations.map((station, index) => `${index + 1} ${station.name} ${words.size(addLengths(station.at, geometry.headTrim))}`);
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(geometry.block.folioHeight), 1, 140, Infinity), ({ factor }) => foldLine(input, factor));
  return {
    id: "pierce-sections",
    title: "Stations along the fold",
    caption: `Above: the fold of a section from inside, head at the left, ${scale.name}; every station is measured from the head (the ring at 0). Below: a section open in the punching cradle with the guide in its fold, seen from the head, not to scale. ${input.unitNote}`,
    alternative: `Stations from the head: ${positions.join("; ")}. A section lies open in a V-shaped cradle, the folded guide in its fold; the awl goes straight down through guide and fold into the gap of the cradle.`,
    items: viewsBelow([items, drawPunchingCradle({ section: "section, open in its middle", guide: "piercing guide" })], 8),
  };
};

function foldLine(input: Input, factor: number): { readonly fixed: readonly SceneItem[]; readonly labels: readonly Placeable[] } {
  const { geometry } = input.model;
  const { stations, tapes } = geometry.sewing!;
  const length = toMillimetres(geometry.block.folioHeight) * factor;
  const x = (at: Parameters<typeof toMillimetres>[0]): number => toMillimetres(addLengths(at, geometry.headTrim)) * factor;
  const half = 7;
  const below = runningDimensions({
    name: "from the head", side: "below", edge: half, datum: 0, low: -6, high: length + 12,
    marks: [{ name: "head", at: 0, text: "0" }, ...stations.map((station, index) => ({ name: `size ${index + 1}`, at: x(station.at), text: input.number(addLengths(station.at, geometry.headTrim)) })), { name: "tail", at: length, text: input.number(geometry.block.folioHeight) }],
  })!;
  return {
    fixed: [
      area(rectangle(0, -half, length, 2 * half), "face-light", "outline"), stroke(line(point(0, 0), point(length, 0)), "valley"),
      ...tapes.flatMap(({ headSide, tailSide }) => [headSide, tailSide].map((at) => stroke(line(point(x(at), -half), point(x(at), half)), "placement"))),
      ...stations.map((station) => area(circle(point(x(station.at), 0), 0.8), "plate", "outline")),
      ...below.items,
    ],
    labels: [
      ...stations.map((station, index): Placeable => ({
        name: `station ${index + 1}`, candidates: [0, 1, 2].flatMap((level) => [0, -2.4, 2.4, -4, 4].map((aside) => drawBalloon(`station ${index + 1}`, String(index + 1), point(x(station.at) + aside, -half - 4.4 - level * 5.4)))),
      })),
      ...tapes.map(({ name, headSide, tailSide }, index) => leaderAnywhere({ name, text: index === 0 ? "place of a tape" : "tape", target: point((x(headSide) + x(tailSide)) / 2, -half + 2), end: "none", directions: [90, 80, 100, 70, 110], reach: 15 })).slice(0, 1),
      leaderAnywhere({ name: "head words", text: "head", target: point(0, -half * 0.6), end: "none", directions: [160, 150, 180, 170], reach: 4 }),
      leaderAnywhere({ name: "tail words", text: "tail", target: point(length, -half * 0.6), end: "none", directions: [20, 30, 0, 10], reach: 4 }),
    ],
  };
}

/** Figure `trim-edges`: the untrimmed block from its front, with the lines of the cuts. */
export const drawTrimEdges: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  const { block } = geometry;
  if (block.trim === "none") return null;
  const words = sectionWords(input);
  const width = toMillimetres(block.folioWidth) / (geometry.sewing ? 2 : 1);
  const height = toMillimetres(block.folioHeight);
  const all = block.trim === "three edges";
  const { items, scale } = placeAtScale(scalesThatFit(width, height, 60, 66), ({ factor }) => {
    const [w, h] = [width * factor, height * factor];
    const cut = toMillimetres(block.pageWidth) * factor;
    const head = toMillimetres(geometry.headTrim) * factor;
    return {
      fixed: [
        area(rectangle(0, 0, w, h), "face-light", "outline"),
        stroke(line(point(cut, -3), point(cut, h + 3)), "cut"),
        ...(all ? [head, h - head].map((y) => stroke(line(point(-3, y), point(w + 3, y)), "cut")) : []),
      ],
      labels: [
        dimension({ name: "page width", from: point(0, h), to: point(cut, h), side: "below", text: words.size(block.pageWidth), offset: 8 }),
        ...(all ? [
          dimension({ name: "page height", from: point(0, head), to: point(0, h - head), side: "left", text: words.size(block.pageHeight), offset: 8 }),
          leaderAnywhere({ name: "head trim", text: [`cut off at the head:`, words.size(geometry.headTrim)], target: point(w * 0.4, head / 2), end: "arrow", directions: [80, 60, 100, 45], reach: 8 }),
        ] : []),
        areaLabel("spine", "spine", [point(2.8, h / 2), point(-3, h / 2), point(-3, h * 0.3)], { angle: 90 }),
        leaderAnywhere({ name: "fore-edge", text: "fore-edge falls away", target: point((cut + w) / 2, h * 0.35), end: "arrow", directions: [10, 0, 20, -10], reach: 8 }),
      ],
    };
  });
  return {
    id: "trim-edges",
    title: "Trimming the text block",
    caption: `The front of the text block, ${scale.name}; heavy lines are the cuts. Measure the page from the spine${all ? " and from the head’s cut" : ""}: height × width ${words.size(block.pageHeight)} × ${words.size(block.pageWidth)}.`,
    alternative: `The text block from its front, spine at the left. A cut runs ${words.size(block.pageWidth)} from the spine along the fore-edge.${all ? ` Two more cuts run across: ${words.size(geometry.headTrim)} below the head and ${words.size(block.pageHeight)} further down, near the tail.` : ""}`,
    items,
  };
};
