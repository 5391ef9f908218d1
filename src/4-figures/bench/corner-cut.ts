// Figure: where a corner of a covering is cut off, from near by, and, in small, which corners are cut alike.
import type { CornerCut } from "../../2-model/types.ts";
import { boxHeight, boxWidth } from "../../geometry/box.ts";
import type { Box } from "../../geometry/box.ts";
import { hatchLines } from "../../geometry/hatch.ts";
import { arc, line, polygon, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { arrowhead } from "../arrows.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { drawLeader, leaderLabel, preferredLeader } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { fittingScale, scalesThatFit } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area, group, label, moveItems, stroke } from "../scene.ts";
import type { PathItem, SceneItem } from "../scene.ts";
import { cornerView, stripsIn, viewEnds } from "./corner-view.ts";
import type { CornerGeometry, CornerView } from "./corner-view.ts";
import { sectionWords } from "./section-words.ts";

/** Side of the near view on paper, and room for the small whole hinge beside it. */
const room = { side: 46, whole: { width: 19, height: 34 } } as const;
/** How much of the cloth is shown: so many turn-ins, and so many times as far as the cut reaches along the edge. */
const shown = { turnIns: 1.6, reaches: 1.1 } as const;

/** Whose corner is cut. */
export interface CornerCutSpec {
  /** What is cut, in the title: "hinge cloth". */
  readonly what: string;
  /** "cloth", "paper". */
  readonly stuff: string;
  /** What lies at the corner, in words and as a part id. */
  readonly boardWord: string;
  readonly board: string;
  readonly covering: string;
  readonly geometry: CornerGeometry;
  /** Where boards or strips lie on the covering, in true millimetres from its head left corner, and which corners are cut. */
  readonly boards: readonly Box[];
  readonly corners: readonly CornerCut["corner"][];
}

/** Figure `corner-cut`. */
export function drawCornerCut(input: DrawingInput, spec: CornerCutSpec): FigureDraft {
  const { geometry, boardWord, stuff, what } = spec;
  const words = sectionWords(input);
  const [turnIn, distance] = [words.size(geometry.turnIn), words.thickness(geometry.cornerDistance)];
  const trueSize = cornerView(geometry, 1, 1);
  const wanted = Math.max(trueSize.turnIn * shown.turnIns, trueSize.cutReach * shown.reaches);
  const covering = input.model.parts.find((part) => part.id === spec.covering)!;
  const size = { width: toMillimetres(covering.width), height: toMillimetres(covering.height) };
  const whole = fittingScale(size.width, size.height, room.whole.width, room.whole.height);
  const inSmall = wholeFits(size, whole) && trueSize.cutReach > 0;
  const { items, scale } = placeAtScale(scalesThatFit(wanted, wanted, room.side, room.side, 5).slice(0, 1), ({ factor }) => {
    const view = cornerView(geometry, factor, room.side);
    return { fixed: [...nearView(view), ...(inSmall ? wholeCovering(spec, size, whole) : [])], labels: labelsOf(input, spec, view) };
  });
  const isCut = trueSize.cutReach > 0;
  const count = { 1: "one", 2: "both", 3: "three", 4: "all four" }[spec.corners.length] ?? "all";
  const others = inSmall ? `Small: ${count} cuts, ${whole.name}.` : `The other ${spec.corners.length === 2 ? "corner is" : "corners are"} cut alike.`;
  const near = `The head left corner from near by, ${scale.name}, wrong side of the ${stuff} up`;
  const reaches = `The corner of the ${what} reaches ${turnIn} beyond the ${words.part(spec.board)} at the head and at the side.`;
  const nothing = `A cut at 45°, ${distance} from the corner of the ${boardWord}, would pass outside the ${stuff}: leave the corners whole.`;
  return {
    id: "corner-cut",
    title: `Cutting a corner of the ${what}`,
    caption: isCut ? `${near}: the heavy line runs at 45°, ${distance} from the corner of the ${boardWord}, measured square to the line. The hatched corner falls away. ${others}` : `${near}. ${nothing}`,
    alternative: isCut
      ? `${reaches} A line at 45° cuts it off; its distance from the ${boardWord}'s corner, square to the line, is ${distance}. The triangle outside the line is scrap. The same cut is made at ${count === "both" ? "both corners beside the hinge strip" : `${count} corners`}.`
      : `${reaches} ${nothing}`,
    items,
  };
}

/** Origin at the cloth's own corner. */
function nearView(view: CornerView): readonly SceneItem[] {
  const { end, cutReach } = view;
  const scrap = polygon([point(0, 0), point(cutReach, 0), point(0, cutReach)]);
  return [
    area(rectangle(0, 0, end, end), "face-light", "none"),
    ...(cutReach === 0 ? [] : [area(scrap, "plate", "none"), ...scrapHatching(scrap)]),
    stroke(polyline([point(0, end), point(0, 0), point(end, 0)]), "outline"),
    ...stripsIn(view),
    ...viewEnds(view, 0, 0),
    ...(cutReach === 0 ? [] : cutLine(view)),
  ];
}

/** Strokes square to the cut, so that they do not look like further cuts. */
function scrapHatching(scrap: ReturnType<typeof polygon>): readonly PathItem[] {
  return hatchLines(scrap, -45, 2.2).map(([from, to]) => stroke(line(from, to), "dimension", "scrap"));
}

/** The cut runs a little past both edges of the cloth; its angle is named at the head edge, its distance squared off at the strip's corner. */
function cutLine({ cutReach, turnIn }: CornerView): readonly SceneItem[] {
  const past = 3;
  const onCut = point(cutReach / 2, cutReach / 2);
  const corner = point(turnIn, turnIn);
  const out = (at: Point, by: number): Point => point(at.x + by, at.y + by);
  const length = Math.hypot(corner.x - onCut.x, corner.y - onCut.y);
  const inside = length >= 5.5;
  const name = "corner distance";
  return [
    stroke(line(point(-past, cutReach + past), point(cutReach + past, -past)), "cut"),
    // Too short for arrowheads between: they point inwards from outside.
    stroke(line(out(onCut, inside ? 0 : -3), out(corner, inside ? 0 : 3)), "dimension", name),
    arrowhead(onCut, inside ? point(-1, -1) : point(1, 1), name, 1.8),
    arrowhead(corner, inside ? point(1, 1) : point(-1, -1), name, 1.8),
    ...(length >= 3 ? [squareMark(onCut)] : []),
  ];
}

/** The sign for a right angle between the cut and its distance. */
function squareMark(onCut: Point): PathItem {
  const side = 1.5 / Math.SQRT2;
  return stroke(polyline([point(onCut.x + side, onCut.y - side), point(onCut.x + 2 * side, onCut.y), point(onCut.x + side, onCut.y + side)]), "dimension", "corner distance");
}

function labelsOf(input: DrawingInput, { geometry, ...spec }: CornerCutSpec, view: CornerView): readonly Placeable[] {
  const words = sectionWords(input);
  const { turnIn, cutReach, end } = view;
  const below = [290, 300, 280, 310, 270, 320] as const;
  const turnInText = words.size(geometry.turnIn);
  return [
    dimension({ name: "turn-in at the side", from: point(0, end), to: point(turnIn, end), side: "below", text: turnInText, offset: 5 }),
    dimension({ name: "turn-in at the head", from: point(end, 0), to: point(end, turnIn), side: "right", text: turnInText, offset: 4 }),
    ...(cutReach === 0 ? [] : cutLabels(view, words.inLines(words.thickness(geometry.cornerDistance)))),
    preferredLeader({ name: "board", text: words.part(spec.board), target: point(Math.min(turnIn + 4, (turnIn + Math.min(view.stripRight, end)) / 2), end - 4), directions: below, reach: 8 }),
    leaderLabel({ name: "covering", text: [words.part(spec.covering), "wrong side"], target: point(end - 5, turnIn * 0.4), directions: [70, 60, 50, 80, 40], reach: turnIn * 0.4 + 4 }),
  ];
}

function cutLabels({ cutReach, turnIn, end }: CornerView, text: readonly string[]): readonly Placeable[] {
  const distance = { name: "corner distance", target: point(turnIn, turnIn), end: "none" } as const;
  // The dimension line runs on past the strip's corner and becomes the pointer.
  const onStrip = (lines: readonly string[]): Placeable => ({ name: distance.name, candidates: [5, 6, 7, 8, 4].map((out) => drawLeader({ ...distance, text: lines }, point(turnIn + out, turnIn + out))) });
  const radius = Math.min(7, cutReach * 0.6);
  // The angle lies between the cloth's head edge, to the left, and the cut, down to the left.
  const onCut = point(cutReach - radius / Math.SQRT2, radius / Math.SQRT2);
  const angle = [stroke(arc(point(cutReach - radius, 0), onCut, radius, false), "dimension", "angle")];
  const named = { name: "angle", text: "45°", target: point(cutReach - radius * 0.92, radius * 0.38), end: "none" } as const;
  return [
    firstOf(onStrip([...text, "square to", "the cut"]), onStrip(text), onStrip(text.flatMap((each) => each.split(/(?<=about)\u00a0/))), leaderLabel({ ...distance, text, directions: [280, 290, 270, 300, 260], reach: end - turnIn + 4 })),
    { name: "angle", candidates: [6, 8, 10, 13].map((up) => [...angle, ...drawLeader(named, point(cutReach - radius * 0.5, -up))]) },
    leaderLabel({ name: "scrap", text: "scrap", target: point(cutReach * 0.22, cutReach * 0.22), directions: [85, 75, 90, 65, 110], reach: cutReach * 0.22 + 5 }),
  ];
}

/** A hinge for very many stubs would be a thread on paper: then the near view stands alone. */
function wholeFits({ width, height }: Size, { factor }: Scale): boolean {
  return width * factor <= room.whole.width && height * factor >= 5;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The whole covering in small with its cuts, under the labels at the right. */
function wholeCovering({ geometry, boards, corners }: CornerCutSpec, size: Size, { factor }: Scale): readonly SceneItem[] {
  const { cutReach } = cornerView(geometry, factor, 1);
  const [width, height] = [size.width * factor, size.height * factor];
  const past = 1;
  const words = corners.length === 4 ? ["all four", "corners"] : ["these", "corners"];
  const items: readonly SceneItem[] = [
    area(rectangle(0, 0, width, height), "face-light", "edge"),
    ...boards.map((box) => area(rectangle(box.left * factor, box.top * factor, boxWidth(box) * factor, boxHeight(box) * factor), "face-middle", "none")),
    ...corners.map((corner) => {
      const [x, right] = corner.endsWith("right") ? [width, -1] : [0, 1];
      const [y, down] = corner.startsWith("tail") ? [height, -1] : [0, 1];
      return stroke(line(point(x - right * past, y + down * (cutReach + past)), point(x + right * (cutReach + past), y - down * past)), "cut");
    }),
    ...words.map((text, index) => label("which corners", text, point(width / 2, height + 5 + index * 3.3), { anchor: "middle" })),
  ];
  return [group("the whole covering", moveItems(items, room.side + 13.5, (room.side - height) / 2 + 4))];
}
