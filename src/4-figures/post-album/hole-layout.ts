// Figure: the hinge strip of a cover with every post hole measured from the head and from the spine edge.
import type { Hole } from "../../2-model/types.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { between, point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { wavyLine } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scales } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { drawHole, nameColumn } from "../bench/hole-row.ts";
import { sectionWords } from "../bench/section-words.ts";
import { coveringId } from "./cover-plan.ts";

type Input = DrawingInput<"post-album">;

/** Room for hinge strip, joint and the part of the board that is shown, on paper. */
const room = { width: 56, height: 105 } as const;

/** Figure `hole-layout`: the front cover, outside up, spine edge to the left; the back cover is its mirror image. */
export function drawHoleLayout(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const holes = stripHoles(input);
  const diameter = words.thickness(geometry.posts.holeDiameter);
  const [coverHeight, hingeWidth, jointGap] = [geometry.coverHeight, geometry.hingeWidth, geometry.jointGap].map(toMillimetres) as [number, number, number];
  const shown = hingeWidth + jointGap + Math.min(toMillimetres(geometry.boardWidth), hingeWidth * 0.8);
  const fitting = scales.filter(({ factor }) => factor <= 1 && coverHeight * factor <= room.height && shown * factor <= room.width);
  const { items, scale } = placeAtScale(fitting.length > 0 ? fitting.slice(0, 3) : [scales.at(-1)!], ({ factor }) => {
    const [height, strip, joint, end] = [coverHeight, hingeWidth, hingeWidth + jointGap, shown].map((each) => each * factor) as [number, number, number, number];
    const at = (hole: Hole) => point(toMillimetres(hole.across) * factor, toMillimetres(hole.along) * factor);
    const running = runningDimensions({
      name: "holes from the head", side: "left", edge: 0, datum: 0, low: -20, high: height + 20,
      marks: [{ name: "head 0", at: 0, text: "0" }, ...holes.map((hole) => ({ name: `${hole.id} along`, at: at(hole).y, text: input.number(hole.along) })), { name: "cover end", at: height, text: input.number(geometry.coverHeight) }],
    })!;
    const fixed: SceneItem[] = [
      area(rectangle(0, 0, end, height), "face-middle", "none"), area(rectangle(strip, 0, joint - strip, height), "face-dark", "none"),
      stroke(line(point(0, 0), point(end, 0)), "outline"), stroke(line(point(0, height), point(end, height)), "outline"), stroke(line(point(0, 0), point(0, height)), "outline"),
      stroke(line(point(strip, 0), point(strip, height)), "edge"), stroke(line(point(joint, 0), point(joint, height)), "edge"),
      stroke(wavyLine(point(end, 0), point(end, height)), "edge"),
      ...holes.flatMap((hole) => drawHole(at(hole), (toMillimetres(hole.diameter) * factor) / 2)),
      stroke(line(point(at(holes[0]!).x, -3), point(at(holes[0]!).x, height + 3)), "centre"),
      ...running.items,
      ...nameColumn([
        ...holes.map((hole) => ({ name: hole.id, text: `${hole.id.replace(/-/g, " ")} hole, diameter ${diameter}`, target: point(at(hole).x + Math.max((toMillimetres(hole.diameter) * factor) / 2, 0.6), at(hole).y), end: "none" as const })),
        { name: "hinge strip", text: `${words.part("hinge-strip")} under ${words.part(coveringId(geometry))}`, target: point(strip * 0.9, between(at(holes[0]!), at(holes[1]!), 0.25).y) },
        { name: "joint", text: "joint", target: point((strip + joint) / 2, between(at(holes[0]!), at(holes[1]!), 0.5).y) },
        { name: "board", text: words.part("boards"), target: point((joint + end) / 2, between(at(holes[0]!), at(holes[1]!), 0.75).y) },
      ], end + 4),
    ];
    const labels: Placeable[] = [
      dimension({ name: "across", from: point(0, 0), to: point(at(holes[0]!).x, 0), side: "above", text: input.number(holes[0]!.across), offset: 6 }),
      dimension({ name: "hinge width", from: point(0, height), to: point(strip, height), side: "below", text: input.number(geometry.hingeWidth), offset: 7 }),
      areaLabel("spine edge", "spine edge", [at(holes[0]!).x / 2, -running.depth - 4].flatMap((x) => [0.5, 0.4, 0.6, 0.3, 0.7].map((part) => point(x, height * part))), { angle: 90 }),
      areaLabel("head", "head", [3, 7, 11, 15, 19].map((up) => point(end + 4, -up))),
      areaLabel("tail", "tail", [3, 7, 11, 15, 19].map((down) => point(end + 4, height + down))),
    ];
    return { fixed, labels };
  });
  return {
    id: "hole-layout",
    title: "Post holes in the hinge strip of a cover",
    caption: `The front cover, outside up, ${scale.name}, spine edge to the left; the back cover is the mirror image. Measure from the head of the cover (the ring at 0) and from its spine edge. ${input.unitNote}`,
    alternative: `The hinge side of a cover, outside up. ${holes.map((hole) => `The ${hole.id.replace(/-/g, " ")} hole, diameter ${diameter}, lies ${input.number(hole.along)} from the head of the cover and ${input.number(hole.across)} from the spine edge`).join(". ")}. Beside the hinge strip, ${input.number(geometry.hingeWidth)} wide, lie the joint and the board.`,
    items,
  };
}

/** The holes of a hinge strip, from head to tail. */
export function stripHoles(input: Input): readonly Hole[] {
  return input.model.holes.filter((hole) => hole.part === "hinge-strip");
}
