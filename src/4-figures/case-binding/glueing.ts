// Figures of glueing the text block, seen from the head: fanned leaves, tipped endpapers, the spine in the press.
import { line, polygon, rectangle } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { wavyLine } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import { areaLabel, leaderAnywhere } from "../leaders.ts";
import { movementArrow } from "../movement.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBeside, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"case-binding">;

/** A flat glue brush with its tip at (x, y), slanting up to the right. */
function brush(x: number, y: number): readonly SceneItem[] {
  const slant = (along: number, across: number) => point(x + along * 0.7 + across * 0.7, y - along * 0.7 + across * 0.7);
  const body = (from: number, to: number, half: number): Path => polygon([slant(from, -half), slant(to, -half), slant(to, half), slant(from, half)]);
  return [area(body(0, 5, 1.6), "tape", "edge"), area(body(5, 7, 1.9), "metal", "edge"), area(body(7, 20, 0.9), "face-light", "edge")];
}

/** Two boards with the block between them, spine up at y = 0, cut off below. */
function clamped(input: Input, standsOut: number): readonly SceneItem[] {
  const half = 7;
  const [top, foot] = [standsOut, 34];
  const count = input.model.geometry.sewing ? 7 : 14;
  const cheek = (left: number): readonly SceneItem[] => [area(rectangle(left, top, 7, foot - top), "face-light", "outline"), stroke(wavyLine(point(left, foot), point(left + 7, foot)), "edge")];
  const pitch = (2 * half) / count;
  return [
    area(rectangle(-half, 0, 2 * half, foot), "paper", "none"),
    ...Array.from({ length: count }, (_, index): SceneItem => {
      const x = -half + index * pitch;
      return stroke([
        { kind: "move", to: point(x, foot) }, { kind: "line", to: point(x, 1) },
        { kind: "curve", control1: point(x, -0.6), control2: point(x + pitch, -0.6), to: point(x + pitch, 1) }, { kind: "line", to: point(x + pitch, foot) },
      ], "edge");
    }),
    ...cheek(-half - 7), ...cheek(half),
  ];
}

/** Figure `glue-spine`. */
export const drawGlueSpine: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  if (!geometry.sewing) return null;
  const words = sectionWords(input);
  const glue = words.adhesive("spine");
  return {
    id: "glue-spine",
    title: "Gluing the spine",
    caption: `The text block between two boards in the press, spine up, seen from the head, not to scale. ${glue} is worked between the sections; what lies on top is wiped off.`,
    alternative: `The text block stands between two clamped boards, its spine a little above them. A brush works ${glue} into the furrows between the sections.`,
    items: placeEvery([...clamped(input, 4), area(rectangle(-7, 0.2, 14, 0.6), "adhesive", "none"), ...brush(3, -0.4)], [
      leaderAnywhere({ name: "adhesive", text: `${glue}, between the sections`, target: point(-4.5, 0.5), directions: [150, 160, 140, 170], reach: 10 }),
      leaderAnywhere({ name: "boards", text: "pressing boards, clamped", target: point(10, 16), directions: [0, 10, -10], reach: 10 }),
      leaderAnywhere({ name: "block", text: "sections and endpapers", target: point(-3, 22), directions: [190, 180, 200], reach: 17 }),
    ]),
  };
};

/** Figure `fan-glue`: the leaves bent over to one side and to the other. */
export const drawFanGlue: DrawFigure<"case-binding"> = (input) => {
  if (input.model.geometry.sewing) return null;
  const glue = sectionWords(input).adhesive("spine");
  const fanned = (side: 1 | -1): readonly SceneItem[] => {
    // Each leaf bends round a common centre; leaves of one length reach the less far round, the further out they lie.
    const [centre, foot, free] = [point(side * 20, 20), 20, 22];
    const leaves = Array.from({ length: 11 }, (_, index) => {
      const x = -6 + index * 1.2;
      const radius = Math.abs(centre.x - x);
      const turned = free / radius;
      return { x, radius, tip: point(centre.x - side * radius * Math.cos(turned), foot - radius * Math.sin(turned)) };
    });
    return [
      ...leaves.map(({ x, radius, tip }) => stroke([{ kind: "move", to: point(x, 34) }, { kind: "line", to: point(x, foot) }, { kind: "arc", to: tip, radius, large: false, clockwise: side > 0 }], "edge")),
      area(rectangle(-13, 22, 7, 12), "face-light", "outline"), area(rectangle(6, 22, 7, 12), "face-light", "outline"),
      stroke(line(leaves[0]!.tip, leaves.at(-1)!.tip), "outline"),
      ...movementArrow(point(-side * 14, 6), point(-side * 2, -5), side * 3),
    ];
  };
  const one = placeEvery(fanned(1), [
    leaderAnywhere({ name: "adhesive", text: glue, target: point(12, 0), end: "none", directions: [45, 30, 60], reach: 8 }),
    leaderAnywhere({ name: "boards", text: "pressing boards", target: point(11, 29), directions: [340, 350, 0], reach: 7 }),
  ]);
  const two = placeEvery(fanned(-1), [leaderAnywhere({ name: "other", text: glue, target: point(-12, 0), end: "none", directions: [135, 150, 120], reach: 8 })]);
  return {
    id: "fan-glue",
    title: "Fanning and gluing the leaves",
    caption: `The leaves between pressing boards, spine up, seen from the head, not to scale. Bent to one side and then to the other, every leaf shows a hair’s breadth of its face to the brush; the heavy line is where ${glue} goes.`,
    alternative: `Two views from the head. The block is clamped low between boards and bent over to the right, so that the edges of the leaves fan out; adhesive is brushed over the fan. Then it is bent over to the left and brushed again.`,
    items: viewsBeside([withHeading("one", "1  To one side", one), withHeading("two", "2  To the other", two)], 14),
  };
};

/** Figure `endpapers`: the folded endpaper with its line of adhesive, and tipped on. */
export const drawEndpapers: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const tip = words.size(geometry.endpaperTip);
  const glue = words.adhesive("endpapers");
  const [width, height, line_] = [32, 44, 5];
  const plan = placeEvery([
    area(rectangle(0, 0, width, height), "face-light", "outline"),
    area(rectangle(0, 0, line_, height), "adhesive", "none"),
    area(polygon([point(line_, -4), point(width + 6, -4), point(width + 6, height + 4), point(line_, height + 4)]), "paper", "placement"),
  ], [
    dimension({ name: "tip", from: point(0, height + 4), to: point(line_, height + 4), side: "below", text: tip, offset: 5 }),
    leaderAnywhere({ name: "endpaper", text: [words.part("endpaper"), "folded, fold at the left"], target: point(line_ * 0.5, 4), end: "none", directions: [110, 100, 120], reach: 10 }),
    areaLabel("waste", "waste paper", [point(line_ + (width - line_) / 2, height * 0.5)]),
    leaderAnywhere({ name: "adhesive", text: words.adhesiveLines("endpapers"), target: point(line_ / 2, height * 0.3), directions: [180, 170, 190], reach: 9 }),
  ]);
  const sheet = (y: number, left: number): Path => [
    { kind: "move", to: point(54, y - 1.4) }, { kind: "line", to: point(left + 1.4, y - 1.4) }, { kind: "curve", control1: point(left - 0.5, y - 1.4), control2: point(left - 0.5, y + 1.4), to: point(left + 1.4, y + 1.4) }, { kind: "line", to: point(54, y + 1.4) },
  ];
  const block = Array.from({ length: 5 }, (_, index): SceneItem => area([...sheet(4 + index * 4, 0), { kind: "line", to: point(54, 4 + index * 4 - 1.4) }], "paper", "edge"));
  const edge = placeEvery([
    ...block,
    stroke(sheet(0, 0), "outline"), stroke(sheet(24, 0), "outline"),
    area(rectangle(0.6, 1.5, 7, 1), "adhesive", "none"), area(rectangle(0.6, 21.5, 7, 1), "adhesive", "none"),
    stroke(wavyLine(point(54, -3), point(54, 27)), "edge"),
  ], [
    leaderAnywhere({ name: "front endpaper", text: words.part("endpaper"), target: point(24, -1.4), end: "arrow", directions: [60, 75, 45], reach: 8 }),
    leaderAnywhere({ name: "line", text: ["adhesive,", `${tip} wide`], target: point(5, 2), directions: [160, 150, 170], reach: 10 }),
    leaderAnywhere({ name: "sections", text: geometry.sewing ? "sections" : "leaves", target: point(48, 14), directions: [0, 10, -10], reach: 9 }),
  ]);
  return {
    id: "endpapers",
    title: "Tipping on the endpapers",
    caption: `Left: an endpaper masked with waste paper so that ${tip} along its fold stay free for ${glue}. Right: the text block from the head with an endpaper tipped on at front and back. Not to scale.`,
    alternative: `A folded endpaper lies with its fold at the left; waste paper covers it but for a strip ${tip} wide along the fold, which is brushed with ${glue}. Seen from the head, one endpaper lies on the ${geometry.sewing ? "first section" : "front"} and one under the ${geometry.sewing ? "last" : "back"}, each held along its fold only.`,
    items: viewsBeside([plan, edge], 12),
  };
};
