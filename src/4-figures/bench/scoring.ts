// Figure `scoring`: the bone folder drawn along the ruler, which face is up, and the groove in section.
import { line, polygon, polyline, rectangle, transformPath } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { isometric, isometricPlane, spacePoint } from "../../geometry/project.ts";
import type { SpacePoint } from "../../geometry/project.ts";
import { arrowhead } from "../arrows.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { raggedEnd } from "../breaks.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { preferredLeader } from "../leaders.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { sectionWords } from "./section-words.ts";

/** What is scored, and which of its faces lies up. */
export interface ScoringSpec {
  /** Part id, and its name in running words: "card". */
  readonly part: string;
  readonly what: string;
  /** The face that is scored: "inside of the book", "front". */
  readonly face: string;
  readonly height: Length;
  readonly count: number;
}

/** The bone folder drawn along the ruler, and the groove in section. */
export function drawScoring(input: DrawingInput, spec: ScoringSpec): FigureDraft {
  const words = sectionWords(input);
  const height = words.size(spec.height);
  const { count, face, what } = spec;
  const all = count === 1 ? "The score is" : `All ${count} scores are`;
  return {
    id: "scoring",
    title: `Scoring the ${what}`,
    caption: `Scoring, not to scale. The ${face} is up. Set the ruler on the two marks of a score, hold it down, and draw the bone folder along it over the whole height, ${height}. `
      + `Press a groove, do not cut. ${all} made on this face.`,
    alternative: `Two drawings. First: the ${what} lies on a cutting mat, the ${face} up. A steel ruler lies on the two marks of one score, at the head and at the tail edge; a bone folder is drawn along the ruler over the full height of ${height}. `
      + `Scores already made show as lines, the next ones as marks at both edges; there ${count === 1 ? "is one score" : `are ${count} scores`}. Second, a section across the score: the tip of the bone folder, close against the ruler, has pressed a round groove into the upper face, and a slight ridge into the mat below; the ${what} is not cut.`,
    items: viewsBelow([drawBench(input, spec), withHeading("groove", "Across the score, much enlarged", drawGroove(input, spec))]),
  };
}

const mat = { left: -4, right: 37, near: -4, far: 27, thickness: 1.6 };
const card = { right: 33, far: 23, top: 0.7 };
const ruler = { left: 13, right: 21, near: -2.5, far: 25.5, top: 1.7 };
const scored = [4, 9] as const;
const marked = [27] as const;
/** Where the tool has come to, from the far edge towards the reader. */
const toolAt = 10;

/** The bench, isometric: x across the card, y along the score away from the reader. */
function drawBench(input: DrawingInput, spec: ScoringSpec): readonly SceneItem[] {
  const words = sectionWords(input);
  const at = (x: number, y: number, z: number) => isometric(spacePoint(x, y, z));
  const onCard = (x: number, y: number) => at(x, y, card.top);
  const groove = ruler.right + 0.6;
  const fixed: SceneItem[] = [
    ...slab(mat.left, mat.right, mat.near, mat.far, -mat.thickness, 0, "plate"),
    ...slab(0, card.right, 0, card.far, 0, card.top, "card"),
    ...scored.map((x) => stroke(line(onCard(x, 0), onCard(x, card.far)), "edge")),
    ...marked.flatMap((x) => [[0, 3], [card.far - 3, card.far]].map(([from, to]) => stroke(line(onCard(x, from!), onCard(x, to!)), "edge"))),
    stroke(line(onCard(groove, toolAt), onCard(groove, card.far)), "outline"),
    stroke(line(onCard(groove, 0), onCard(groove, 3)), "edge"),
    ...slab(ruler.left, ruler.right, ruler.near, ruler.far, card.top, ruler.top, "metal"),
    area(transformPath(isometricPlane(spacePoint(groove, toolAt, card.top), spacePoint(0, -0.45, 0.893), spacePoint(0, 0.893, 0.45)), folderPath), "plate", "outline"),
    stroke(polyline([onCard(groove + 2.6, 14), onCard(groove + 2.6, 4)]), "edge"),
    arrowhead(onCard(groove + 2.6, 3), point(-Math.sqrt(3) / 2, 0.5), "", 2.6),
  ];
  const toolTop = at(groove, toolAt - 9, card.top + 17);
  return placeEvery(fixed, [
    preferredLeader({ name: "folder", text: "bone folder", target: toolTop, directions: [120, 135, 150, 90], reach: 7 }),
    preferredLeader({ name: "ruler", text: "steel ruler", target: at(17, 24, ruler.top), directions: [110, 90, 135, 70], reach: 8 }),
    preferredLeader({ name: "score", text: "score", target: onCard(groove, 20), end: "arrow", directions: [70, 60, 80, 45], reach: 9 }),
    preferredLeader({ name: "mark", text: ["marks of the", "next score"], target: onCard(marked[0], 1), end: "arrow", directions: [290, 300, 280, 315], reach: 10 }),
    preferredLeader({ name: "card", text: [`${words.part(spec.part)}:`, `${spec.face} up`], target: onCard(6.5, 4), directions: [260, 250, 240, 225], reach: 13 }),
    preferredLeader({ name: "mat", text: "cutting mat", target: at(36, 20, 0), directions: [300, 315, 290], reach: 5 }),
  ], { bounds: benchBounds });
}

/** Half a column wide; the bench itself reaches from −7 to 56. */
const benchBounds = { left: -17, right: 65, top: -100, bottom: 100 };

/** A flat box seen from above: top, left front and right front. */
function slab(left: number, right: number, near: number, far: number, bottom: number, top: number, fill: "plate" | "card" | "metal"): readonly SceneItem[] {
  const face = (corners: readonly SpacePoint[]): SceneItem => area(polygon(corners.map(isometric)), fill, "edge");
  const at = spacePoint;
  return [
    face([at(left, near, top), at(right, near, top), at(right, far, top), at(left, far, top)]),
    face([at(left, near, top), at(right, near, top), at(right, near, bottom), at(left, near, bottom)]),
    face([at(right, near, top), at(right, far, top), at(right, far, bottom), at(right, near, bottom)]),
  ];
}

/** A bone folder: its tip at 0, u along its length, v across. */
const folderPath: Path = [
  { kind: "move", to: point(0, 0) },
  { kind: "curve", control1: point(2, 2.2), control2: point(5, 2.3), to: point(9, 2.3) },
  { kind: "line", to: point(21, 2.3) },
  { kind: "curve", control1: point(24, 2.3), control2: point(24, -2.3), to: point(21, -2.3) },
  { kind: "line", to: point(9, -2.3) },
  { kind: "curve", control1: point(5, -2.3), control2: point(2, -2.2), to: point(0, 0) },
  { kind: "close" },
];

/** Across the score: mat, card with its groove, ruler and the tool's tip. The upper face of the card lies at y = 0. */
function drawGroove(input: DrawingInput, spec: ScoringSpec): readonly SceneItem[] {
  const words = sectionWords(input);
  const thick = 3.6;
  const half = 2.2;
  const end = 24;
  const cardPath: Path = [
    { kind: "move", to: point(-end - 1, 0) },
    { kind: "line", to: point(-half, 0) },
    { kind: "curve", control1: point(-half * 0.6, 2.4), control2: point(half * 0.6, 2.4), to: point(half, 0) },
    { kind: "line", to: point(end + 1, 0) },
    { kind: "line", to: point(end + 1, thick) },
    { kind: "line", to: point(half, thick) },
    { kind: "curve", control1: point(half * 0.5, thick + 1), control2: point(-half * 0.5, thick + 1), to: point(-half, thick) },
    { kind: "line", to: point(-end - 1, thick) },
    { kind: "close" },
  ];
  const tip: Path = [
    { kind: "move", to: point(3.2, -11) },
    { kind: "line", to: point(1.7, -2) },
    { kind: "curve", control1: point(1.2, 2.2), control2: point(-1.2, 2.2), to: point(-1.7, -2) },
    { kind: "line", to: point(-1.7, -11) },
    { kind: "close" },
  ];
  const fixed: SceneItem[] = [
    area(rectangle(-end - 1, thick, 2 * end + 2, 4), "plate", "edge"),
    area(cardPath, "card", "outline"),
    ...raggedEnd(-end, -0.6, thick + 4.6, -1), ...raggedEnd(end, -0.6, thick + 4.6, 1),
    area(rectangle(-19, -5, 17, 5), "metal", "edge"),
    area(tip, "plate", "outline"),
    area(rectangle(-2, -11.6, 5.6, 1.2), "plate", "none"),
  ];
  return placeEvery(fixed, [
    preferredLeader({ name: "section ruler", text: "steel ruler", target: point(-12, -2.5), directions: [110, 90, 125], reach: 7 }),
    preferredLeader({ name: "section folder", text: "bone folder", target: point(0.8, -7), directions: [45, 30, 60], reach: 7 }),
    preferredLeader({ name: "section groove", text: `groove, ${spec.face}`, target: point(2, 0.3), end: "arrow", directions: [30, 20, 45], reach: 6 }),
    preferredLeader({ name: "section card", text: words.part(spec.part), target: point(-15, thick / 2), directions: [250, 240, 260], reach: 9 }),
    preferredLeader({ name: "section mat", text: "cutting mat", target: point(12, thick + 2.2), directions: [290, 300, 280], reach: 6 }),
  ]);
}
