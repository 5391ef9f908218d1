// Figure `closure`: the ribbon across the inside of the back board, or the band flat and round the book.
import { bandAlong } from "../../geometry/band.ts";
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { BandClosure, RibbonClosure } from "../../2-model/concertina/geometry.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale, placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, drawGrainArrow, gridCentres, leaderAnywhere, preferredLeader } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { fittingScale, scalesThatFit } from "../scale.ts";
import { area, smallestType, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"concertina">;

/** Figure `closure`; none for a book without one. */
export function drawClosure(input: Input): FigureDraft | null {
  const { closure } = input.model.geometry;
  if (closure === null) return null;
  return closure.kind === "ribbon" ? drawRibbon(input, closure) : drawBand(input, closure);
}

/** Room for the board on paper, and how much of a free end is shown beyond it. */
const ribbonRoom = { width: 44, height: 56, end: 16 } as const;

function drawRibbon(input: Input, ribbon: RibbonClosure): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const [long, short] = [words.size(ribbon.longEnd), words.size(ribbon.shortEnd)];
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(geometry.boardWidth), toMillimetres(geometry.boardHeight), ribbonRoom.width, ribbonRoom.height), ({ factor }) => {
    const [width, height, high] = [geometry.boardWidth, geometry.boardHeight, ribbon.width].map((length) => toMillimetres(length) * factor) as [number, number, number];
    const middle = height / 2;
    const [left, right] = [-ribbonRoom.end, width + ribbonRoom.end];
    const foot = middle + high / 2;
    return {
      fixed: [
        area(rectangle(0, 0, width, height), "face-middle", "outline"),
        area(bandAlong([point(left, middle), point(right, middle)], high), "face-deep", "edge"),
        ...breakAcross(-ribbonRoom.end * 0.6, middle - high / 2 - 0.8, foot + 0.8), ...breakAcross(width + ribbonRoom.end * 0.6, middle - high / 2 - 0.8, foot + 0.8),
      ],
      labels: [
        dimension({ name: "long end", from: point(left, foot), to: point(0, foot), side: "below", text: long, offset: 6, outside: "before" }),
        dimension({ name: "short end", from: point(width, foot), to: point(right, foot), side: "below", text: short, offset: 6 }),
        ...(middle < halfRoom ? [leaderAnywhere({ name: "half the height", text: "half the height", target: point(width, middle - high / 2), end: "arrow" as const, directions: [60, 50, 40, 70, 30], reach: 8 })] : [
          dimension({ name: "half the height", from: point(width, 0), to: point(width, middle), side: "right" as const, text: "equal", offset: 22 }),
          dimension({ name: "half the height below", from: point(width, middle), to: point(width, height), side: "right" as const, text: "equal", offset: 22 }),
        ]),
        areaLabel("head", "head", [3, 6, 9].flatMap((up) => [0.5, 0.3, 0.7].map((share) => point(width * share, -up)))),
        edgeName("spine edge", (out, share) => point(-out, height * share), point(0, height * 0.15), [150, 160, 140, 170, 130]),
        edgeName("fore-edge", (out, share) => point(width + out, height * share), point(width, height * 0.85), [330, 320, 340, 310, 350]),
        firstOf(
          areaLabel("board", `${words.part("boards")}: back, inside`, gridCentres({ left: 0, right: width, top: 0, bottom: middle - high / 2 }, 3, 5)),
          leaderAnywhere({ name: "board", text: `${words.part("boards")}: back, inside`, target: point(width * 0.5, Math.max(0.4, (middle - high / 2) * 0.5)), directions: [60, 70, 45, 80, 90, 30], reach: 8 }),
        ),
        leaderAnywhere({ name: "closure ribbon", text: [words.part("closure-ribbon"), `${words.size(ribbon.length)} long`], target: point(width * 0.3, middle), directions: [285, 275, 295, 265, 305], reach: height / 2 + 6 }),
      ],
    };
  });
  return {
    id: "closure",
    title: "The ribbon across the back board",
    caption: `The back board from inside, ${scale.name}. The ribbon is glued across the board at half its height; its free ends are drawn shortened. Shut, the long end goes over the spine side and the front and is tied to the short end at the fore-edge.`,
    alternative: `The back board, inside up, its spine edge at the left. The closure ribbon, ${words.size(ribbon.length)} long and ${words.size(ribbon.width)} wide, lies across it at half its height. ${long} hang out beyond the spine edge, ${short} beyond the fore-edge.`,
    items,
  };
}

/** Half a board on paper that is high enough for its own dimension. */
const halfRoom = 12;

/** The name of an upright edge: beside it where there is room, else with a pointer. */
function edgeName(name: string, beside: (out: number, share: number) => Point, target: Point, directions: readonly number[]): Placeable {
  const centres = [3, 6, 10, 14].flatMap((out) => [0.2, 0.15, 0.8, 0.85, 0.1, 0.9].map((share) => beside(out, share)));
  return firstOf(areaLabel(name, name, centres, { angle: 90 }), leaderAnywhere({ name, text: name, target, end: "arrow", directions, reach: 6 }));
}

const bandRoom = { width: 132, height: 26 } as const;

function drawBand(input: Input, band: BandClosure): FigureDraft {
  const words = sectionWords(input);
  const scale = fittingScale(toMillimetres(band.length), toMillimetres(band.height), bandRoom.width, bandRoom.height);
  return {
    id: "closure",
    title: "The band",
    caption: `Above: the band flat, wrong side up, ${scale.name}; every fold is measured from the left end (the ring at 0). Below: the band round the shut book, seen from the head, not to scale. ${input.unitNote}`,
    alternative: `${words.part("band")}, ${words.size(band.height)} high and ${words.size(band.length)} long, grain along its height. Folds from its left end: ${band.folds.map((at, index) => `${index + 1} at ${words.size(at)}`).join("; ")}; beyond the last lies the lap of ${words.size(band.lap)}. `
      + "Bent round the shut book it covers the front, the fore-edge, the back and the spine side, and its lap is glued under its beginning.",
    items: viewsBelow([withHeading("flat", words.part("band"), drawFlatBand(input, band, scale.factor)), withHeading("round", "Round the shut book", drawRing(input))], 6),
  };

  function drawFlatBand(given: Input, flat: BandClosure, factor: number): readonly SceneItem[] {
    const [width, height] = [toMillimetres(flat.length) * factor, Math.max(5, toMillimetres(flat.height) * factor)];
    const at = flat.folds.map((fold) => toMillimetres(fold) * factor);
    const running = runningDimensions({
      name: "band folds", side: "above", edge: 0, datum: 0, size: smallestType, low: -12, high: width + 16,
      marks: [{ name: "left end", at: 0, text: "0" }, ...flat.folds.map((fold, index) => ({ name: `band fold ${index + 1}`, at: at[index]!, text: given.number(fold) })), { name: "right end", at: width, text: given.number(flat.length) }],
    })!;
    const lap = at.at(-1)!;
    return placeEvery([
      area(rectangle(lap, 0, width - lap, height), "face-middle", "none"),
      area(rectangle(0, 0, width, height), "none", "outline"),
      ...at.map((x) => stroke(line(point(x, 0), point(x, height)), "valley")),
      ...running.items,
    ], [
      dimension({ name: "band height", from: point(0, 0), to: point(0, height), side: "left", text: given.number(flat.height), offset: 6 }),
      firstOf(areaLabel("lap", "lap", [point((lap + width) / 2, height / 2)], { size: smallestType }), areaLabel("lap", "lap", [point((lap + width) / 2, height / 2)], { size: smallestType, angle: 90 }), leaderAnywhere({ name: "lap", text: "lap", target: point((lap + width) / 2, height * 0.6), directions: [320, 330, 310, 340], reach: 6 })),
      ...([["front", 0, at[0]!], ["back", at[1]!, at[2]!]] as const).map(([name, left, right]) => firstOf(
        areaLabel(name, name, [0.5, 0.35, 0.65].map((share) => point(left + (right - left) * share, height / 2))),
        leaderAnywhere({ name, text: name, target: point((left + right) / 2, height * 0.6), directions: [280, 270, 260, 290], reach: height * 0.4 + 4 }),
      )),
      { name: "grain", candidates: [12, 16, 20].map((out) => drawGrainArrow("grain", "height", point(width + out, height / 2), 12)) },
    ]);
  }
}

/** The shut book from its head with the band round it, its lap at one corner. */
function drawRing(input: Input): readonly SceneItem[] {
  const [width, thick, off] = [52, 13, 1.1];
  return placeEvery([
    area(rectangle(0, 0, width, 3), "board", "outline"), area(rectangle(0, thick - 3, width, 3), "board", "outline"),
    ...Array.from({ length: 6 }, (_, index) => stroke(line(point(3, 3.8 + index * 1.1), point(width - 3, 3.8 + index * 1.1)), "edge")),
    stroke(polyline([point(14, -off - 1), point(-off, -off - 1), point(-off, -off), point(-off, thick + off), point(width + off, thick + off), point(width + off, -off), point(-off + 1, -off)]), "outline"),
  ], [
    preferredLeader({ name: "ring lap", text: "lap, glued", target: point(10, -off - 1), end: "arrow", directions: [110, 100, 120, 90], reach: 6 }),
    preferredLeader({ name: "ring band", text: sectionWords(input).part("band"), target: point(width + off, thick * 0.6), end: "arrow", directions: [350, 0, 340, 10], reach: 6 }),
  ]);
}
