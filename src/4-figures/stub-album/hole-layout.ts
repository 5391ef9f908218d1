// The hole layout: a side strip on its board, with every post hole measured from the head and from the spine edge.
import type { Hole } from "../../2-model/types.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { between, point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { printThickness } from "../../units/print-length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { wavyLine } from "../breaks.ts";
import { areaLabel } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scales } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { drawHole, nameColumn } from "../bench/hole-row.ts";

/** Room for the strip and the part of the board that is shown, on paper. */
const room = { width: 60, height: 84 } as const;

/** Figure `hole-layout`: the front cover's strip, spine edge to the left; the back cover is its mirror image. */
export function drawHoleLayout(input: DrawingInput<"stub-album">): FigureDraft {
  const { geometry } = input.model;
  const holes = stripHoles(input);
  const diameter = printThickness(holes[0]!.diameter, input.definition.units);
  const [stripHeight, stripWidth, inset] = [geometry.stripHeight, geometry.sideStripWidth, geometry.stripInset].map(toMillimetres) as [number, number, number];
  // As much of the board as half the strip again beyond it, then broken off.
  const shown = Math.min(toMillimetres(geometry.boardWidth), stripWidth * 1.6);
  const fitting = scales.filter(({ factor }) => factor <= 1 && (stripHeight + 2 * inset) * factor <= room.height && shown * factor <= room.width);
  const { items, scale } = placeAtScale(fitting.length > 0 ? fitting.slice(0, 3) : [scales.at(-1)!], ({ factor }) => {
    const [height, width, boardTop] = [stripHeight * factor, stripWidth * factor, inset * factor];
    const [broken, boardBottom] = [shown * factor, height + boardTop];
    const at = (hole: Hole) => point(toMillimetres(hole.across) * factor, toMillimetres(hole.along) * factor);
    const running = runningDimensions({
      name: "holes from the head", side: "left", edge: 0, datum: 0, low: -20, high: height + 20,
      marks: [{ name: "head 0", at: 0, text: "0" }, ...holes.map((hole) => ({ name: `${hole.id} along`, at: at(hole).y, text: input.number(hole.along) })), { name: "strip end", at: height, text: input.number(geometry.stripHeight) }],
    })!;
    const fixed: SceneItem[] = [
      stroke(line(point(0, -boardTop), point(broken, -boardTop)), "edge"),
      stroke(line(point(0, boardBottom), point(broken, boardBottom)), "edge"),
      stroke(line(point(0, -boardTop), point(0, boardBottom)), "edge"),
      stroke(wavyLine(point(broken, -boardTop), point(broken, boardBottom)), "edge"),
      area(rectangle(0, 0, width, height), "card", "outline"),
      ...holes.flatMap((hole) => drawHole(at(hole), (toMillimetres(hole.diameter) * factor) / 2)),
      stroke(line(point(at(holes[0]!).x, -boardTop - 3), point(at(holes[0]!).x, boardBottom + 3)), "centre"),
      ...running.items,
      ...nameColumn([
        ...holes.map((hole) => ({ name: hole.id, text: `${placeName(hole)} hole, diameter ${diameter}`, target: point(at(hole).x + Math.max((toMillimetres(hole.diameter) * factor) / 2, 0.6), at(hole).y), end: "none" as const })),
        { name: "side strip", text: `side strip${lettered(input, "side-strip")}`, target: point(width * 0.85, between(at(holes[0]!), at(holes[1]!), 0.35).y) },
        { name: "board", text: `board${lettered(input, "boards")}`, target: point((width + broken) / 2, between(at(holes[0]!), at(holes[1]!), 0.65).y) },
      ], broken + 4),
    ];
    const labels: Placeable[] = [
      dimension({ name: "across", from: point(0, -boardTop), to: point(at(holes[0]!).x, -boardTop), side: "above", text: input.number(holes[0]!.across), offset: 6 }),
      dimension({ name: "strip width", from: point(0, boardBottom), to: point(width, boardBottom), side: "below", text: input.number(geometry.sideStripWidth), offset: 7 }),
      areaLabel("spine edge", "spine edge", [at(holes[0]!).x / 2, -running.depth - 4].flatMap((x) => [0.5, 0.4, 0.6, 0.3, 0.7].map((part) => point(x, height * part))), { angle: 90 }),
      areaLabel("head", "head", [3, 7, 11, 15, 19].map((up) => point(broken + 4, -boardTop - up))),
      areaLabel("tail", "tail", [3, 7, 11, 15, 19].map((down) => point(broken + 4, boardBottom + down))),
    ];
    return { fixed, labels };
  });
  return {
    id: "hole-layout",
    title: "Post holes in the side strip and board",
    caption: `The front side strip on its board, ${scale.name}, spine edge to the left; the back cover is the mirror image. Measure from the strip’s head edge (the ring at 0) and from its spine edge. ${input.unitNote}`,
    alternative: `Side strip lying on the board, their spine edges flush, the board standing ${input.number(geometry.stripInset)} above and below the strip. ${holes.map((hole) => `The ${placeName(hole)} hole, diameter ${diameter}, lies ${input.number(hole.along)} from the strip’s head edge and ${input.number(hole.across)} from the spine edge`).join(". ")}.`,
    items,
  };
}

/** The holes of one strip: front and back lie at the same places. */
export function stripHoles(input: DrawingInput<"stub-album">): readonly Hole[] {
  return input.model.holes.filter((hole) => hole.part === "side-strip" && hole.id.startsWith("front-"));
}

/** "head", "tail", "middle": a hole's name without its cover. */
export function placeName(hole: Hole): string {
  return hole.id.replace(/^(front|back)-/, "").replace(/-/g, " ");
}

function lettered(input: DrawingInput<"stub-album">, part: string): string {
  const letter = input.letter(part);
  return letter ? ` (${letter})` : "";
}
