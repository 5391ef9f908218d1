// Figure: a leaf with its score lines and holes, measured from the spine edge and the head, and where guard and hinge strip lie on it.
import type { Hole } from "../../2-model/types.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, gridCentres, leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { brokenAxis } from "../bench/broken-axis.ts";
import type { BrokenAxis } from "../bench/broken-axis.ts";
import { drawHole } from "../bench/hole-row.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"post-album">;

/** Room for the leaf on paper; a wide leaf is broken, because nothing is marked on its page. */
const room = { height: 96, whole: 104, broken: 88 } as const;

/** Figure `leaf-layout`. */
export function drawLeafLayout(input: Input): FigureDraft {
  const { geometry, scores } = input.model;
  const words = sectionWords(input);
  const fitting = scales.filter(({ factor }) => factor <= 1 && toMillimetres(geometry.leafHeight) * factor <= room.height && markedWidth(input) * factor <= room.broken * 0.6);
  const { items, scale } = placeAtScale(fitting.length > 0 ? fitting.slice(0, 3) : [scales.at(-1)!], (at) => {
    const map = mapLeaf(input, at);
    return { fixed: leafItems(input, map), labels: labelsOf(input, map) };
  });
  const broken = mapLeaf(input, scale).across.breakAt === null ? "" : ", part of its width left out";
  const guard = geometry.guardStrips > 0 ? "guard and hinge strip lie" : "the hinge strip lies";
  return {
    id: "leaf-layout",
    title: "Scores and holes of a leaf",
    caption: `A leaf, front up, ${scale.name}${broken}. Measure scores and holes from the spine edge and from the head (the rings at 0). On the tinted part ${guard}; the leaf bends at its ${scores.length === 1 ? "score" : "scores"}, beside it. ${input.unitNote}`,
    alternative: `A leaf, ${words.size(geometry.leafHeight)} high × ${words.size(geometry.leafWidth)} wide, front up, spine edge to the left. ${scores.map((score) => `The ${score.name} lies ${words.size(score.at)} from the spine edge`).join("; ")}. `
      + `${leafHoles(input).map((hole) => `The ${hole.id.replace(/-/g, " ")} hole lies ${words.size(hole.along)} from the head and ${words.size(hole.across)} from the spine edge`).join("; ")}. From the spine edge to ${words.size(geometry.hingeWidth)} ${guard} on it. The page that turns is ${words.size(geometry.pageWidth)} wide.`,
    items,
  };
}

/** The holes of a leaf, from head to tail. */
export function leafHoles(input: Input): readonly Hole[] {
  return input.model.holes.filter((hole) => hole.part === "leaf");
}

/** Everything that is marked lies nearer to the spine than this, in true millimetres. */
function markedWidth({ model }: Input): number {
  return Math.max(toMillimetres(model.scores.at(-1)!.at), toMillimetres(model.geometry.hingeWidth)) + 4;
}

interface LeafMap {
  readonly factor: number;
  readonly height: number;
  readonly across: BrokenAxis;
}

function mapLeaf(input: Input, { factor }: Scale): LeafMap {
  const trueSize = toMillimetres(input.model.geometry.leafWidth);
  const size = trueSize * factor <= room.whole ? trueSize * factor : room.broken;
  const marked = markedWidth(input) * factor;
  return { factor, height: toMillimetres(input.model.geometry.leafHeight) * factor, across: brokenAxis({ trueSize, size, factor, breakAt: marked + (size - marked) * 0.55 }) };
}

function leafItems(input: Input, { factor, height, across }: LeafMap): readonly SceneItem[] {
  const { geometry, scores } = input.model;
  const holes = leafHoles(input);
  const hinge = across.place(toMillimetres(geometry.hingeWidth));
  const at = (hole: Hole) => point(across.place(toMillimetres(hole.across)), toMillimetres(hole.along) * factor);
  const above = runningDimensions({
    name: "from the spine edge", side: "above", edge: 0, datum: 0, low: -8, high: across.size + 14,
    marks: [
      { name: "spine edge", at: 0, text: "0" }, { name: "holes across", at: at(holes[0]!).x, text: input.number(holes[0]!.across) },
      ...scores.map((score) => ({ name: score.name, at: across.place(toMillimetres(score.at)), text: input.number(score.at) })),
      { name: "fore-edge", at: across.size, text: input.number(geometry.leafWidth) },
    ].sort((a, b) => a.at - b.at),
  })!;
  const beside = runningDimensions({
    name: "from the head", side: "left", edge: 0, datum: 0, low: -14, high: height + 14,
    marks: [{ name: "head edge", at: 0, text: "0" }, ...holes.map((hole) => ({ name: `${hole.id} along`, at: at(hole).y, text: input.number(hole.along) })), { name: "tail edge", at: height, text: input.number(geometry.leafHeight) }],
  })!;
  return [
    area(rectangle(0, 0, across.size, height), "paper", "none"), area(rectangle(0, 0, hinge, height), "card", "none"),
    stroke(rectangle(0, 0, across.size, height), "outline"),
    stroke(line(point(hinge, 0), point(hinge, height)), "placement"),
    ...scores.map((score) => stroke(line(point(across.place(toMillimetres(score.at)), 0), point(across.place(toMillimetres(score.at)), height)), "valley")),
    ...holes.flatMap((hole) => drawHole(at(hole), (toMillimetres(hole.diameter) * factor) / 2)),
    ...above.items, ...beside.items,
    ...(across.breakAt === null ? [] : breakAcross(across.breakAt, -1, height + 1)),
  ];
}

function labelsOf(input: Input, { height, across }: LeafMap): readonly Placeable[] {
  const { geometry, scores } = input.model;
  const words = sectionWords(input);
  const hinge = across.place(toMillimetres(geometry.hingeWidth));
  const last = across.place(toMillimetres(scores.at(-1)!.at));
  const page = { left: last, top: 0, right: across.size, bottom: height };
  const onPage = gridCentres({ ...page, left: last + 2, right: across.size - 2 }, 7, 9);
  return [
    dimension({ name: "page width", from: point(last, height), to: point(across.size, height), side: "below", text: words.size(geometry.pageWidth), offset: 12 }),
    dimension({ name: "hinge", from: point(0, height), to: point(hinge, height), side: "below", text: input.number(geometry.hingeWidth), offset: 5, outside: "before" }),
    firstOf(areaLabel("leaf", `${words.part("leaf")}, front up`, onPage), leaderAnywhere({ name: "leaf", text: [`${words.part("leaf")},`, "front up"], target: point(across.size - 1.5, height * 0.3), directions: [0, 15, -15], reach: 6 })),
    leaderAnywhere({ name: "score", text: scores.length === 1 ? "score" : `${scores.length} scores`, target: point(last, height * 0.62), end: "arrow", directions: [20, 30, -20, -30, 45], reach: 10 }),
    leaderAnywhere({
      name: "guard", text: geometry.guardStrips > 0 ? [`${words.part("guard")} and`, "hinge strip lie here"] : ["hinge strip", "lies here"],
      target: point(hinge * 0.82, height * 0.85), directions: [-35, -45, -25, 25, 35, 250, 260], reach: (last - hinge * 0.82) + 7,
    }),
    leaderAnywhere({ name: "hole", text: ["holes", words.thickness(geometry.posts.holeDiameter)], target: point(across.place(toMillimetres(geometry.posts.across)), toMillimetres(geometry.posts.along[0]!) * (height / toMillimetres(geometry.leafHeight))), end: "none", directions: [15, 25, -15, -25, 35], reach: last + 3 }),
    areaLabel("fore-edge", "fore-edge", [0.5, 0.4, 0.6, 0.3, 0.7].map((share) => point(across.size + 3, height * share)), { angle: 90 }),
    grainArrow("grain", "height", [...gridCentres({ ...page, left: last + 8 }, 7, 9), ...[10, 14, 18].map((out) => point(across.size + out, height / 2))]),
  ];
}
