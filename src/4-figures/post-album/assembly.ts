// Figure: the order in which the album is stacked on its posts, every layer lifted off the one below it.
import { line, transformPath, circle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { cos30, isometric, isometricPlane, spacePoint } from "../../geometry/project.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { drawBalloon, leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxOutline, face, prism } from "../bench/solid.ts";

type Input = DrawingInput<"post-album">;

/** Room for one layer on paper, and how far the layers are lifted off each other. */
const room = { width: 74, height: 46, lift: { cover: 16, leaf: 10 } } as const;

/** One layer of the stack, from the bottom up. */
interface Layer {
  readonly name: string;
  readonly kind: "cover" | "leaf" | "guard";
  readonly text: string | readonly string[];
  readonly z: number;
}

/** Figure `assembly`. */
export function drawAssembly(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const reach = toMillimetres(geometry.coverHeight) + toMillimetres(geometry.leafWidth) + toMillimetres(geometry.square);
  const layers = layersOf(input);
  const { items, scale } = placeAtScale(scalesThatFit(reach * cos30, reach / 2, room.width, room.height).slice(0, 2), (at) => ({ fixed: stackItems(input, layers, at), labels: labelsOf(input, layers, at) }));
  const between = geometry.guardLayers > 0 ? `, between two leaves always ${geometry.guardLayers === 1 ? words.part("guard") : `${geometry.guardLayers} × ${words.part("guard")}`}` : "";
  return {
    id: "assembly",
    title: "The order on the posts",
    caption: `The layers lifted off each other, pictorial view, ${scale.name} along the edges, thicknesses not to scale; only the ends of the stack are drawn. Stack from 1 upwards: back cover on its posts, last leaf${between}, first leaf, front cover, caps.`,
    alternative: `From the bottom up: 1 the back cover, inside up, with the posts standing through its hinge strip; ${layers.slice(1).map((layer, index) => `${index + 2} ${typeof layer.text === "string" ? layer.text : layer.text.join(" ")}`).join("; ")}; then the caps. Centre lines show how the holes of all layers stand over each other.`,
    items,
  };
}

function layersOf(input: Input): readonly Layer[] {
  const { geometry } = input.model;
  const { part } = sectionWords(input);
  const guard = geometry.guardLayers > 0;
  const guards = !guard ? "" : geometry.guardLayers === 1 ? part("guard") : `${geometry.guardLayers} × ${part("guard")}`;
  const more = geometry.leaves - 3;
  const middle: readonly (readonly [string, Layer["kind"], string | readonly string[]])[] = [
    ["last leaf", "leaf", [`${part("leaf")},`, "the last one"]],
    ...(guard ? [["lower guards", "guard", guards] as const] : []),
    ...(geometry.leaves > 2 ? [["next leaf", "leaf", more > 0 ? [`${part("leaf")}, and so on:`, `${more} more${guard ? " with guards" : ""}`] : part("leaf")] as const, ...(guard ? [["upper guards", "guard", guards] as const] : [])] : []),
    ["first leaf", "leaf", [`${part("leaf")},`, "the first one"]],
  ];
  let z = 0;
  let before: Layer["kind"] = "cover";
  const up = (kind: Layer["kind"]): number => {
    z += kind === "cover" || before === "cover" ? room.lift.cover : room.lift.leaf;
    before = kind;
    return z;
  };
  return [
    { name: "back cover", kind: "cover", text: "back cover, inside up", z: 0 },
    ...middle.map(([name, kind, text]): Layer => ({ name, kind, text, z: up(kind) })),
    { name: "front cover", kind: "cover", text: "front cover, outside up", z: up("cover") },
  ];
}

/** x from head to tail, y from the spine edge to the fore-edge, in millimetres of paper. */
function sizes({ model: { geometry } }: Input, { factor }: Scale) {
  const mm = (length: Length): number => toMillimetres(length) * factor;
  return {
    cover: { height: mm(geometry.coverHeight), strip: mm(geometry.hingeWidth), gap: mm(geometry.jointGap), board: mm(geometry.boardWidth) },
    leaf: { height: mm(geometry.leafHeight), width: mm(geometry.leafWidth), hinge: mm(geometry.hingeWidth), scores: geometry.scores.map(mm) },
    shift: mm(geometry.posts.coverShift), across: mm(geometry.posts.across), along: geometry.posts.along.map((each) => mm(each)), radius: Math.max(mm(geometry.posts.holeDiameter) / 2, 0.5),
  };
}

function stackItems(input: Input, layers: readonly Layer[], scale: Scale): readonly SceneItem[] {
  const { leaf, cover, shift, across, along, radius } = sizes(input, scale);
  const top = layers.at(-1)!.z;
  const axis = (x: number, from: number, to: number): SceneItem => stroke(line(isometric(spacePoint(x, across, from)), isometric(spacePoint(x, across, to))), "centre");
  const holes = (z: number): readonly SceneItem[] => along.map((each) => hole(each, across, z, radius));
  const thickness = 1.6;
  return layers.flatMap((layer, index): readonly SceneItem[] => {
    const next = layers[index + 1]?.z ?? top + 12;
    const surface = layer.kind === "cover" ? layer.z + thickness : layer.z + (layer.kind === "guard" ? 0.9 : 0.35);
    const body = layer.kind === "cover"
      ? [
        ...prism(boxOutline(-shift, cover.strip + cover.gap, cover.height, cover.board), layer.z, layer.z + thickness, { top: index === 0 ? "paper" : "face-middle", left: "face-dark", right: "face-deep" }, "outline"),
        face([spacePoint(-shift, cover.strip, surface - 0.7), spacePoint(cover.height - shift, cover.strip, surface - 0.7), spacePoint(cover.height - shift, cover.strip + cover.gap, surface - 0.7), spacePoint(-shift, cover.strip + cover.gap, surface - 0.7)], "face-dark"),
        ...prism(boxOutline(-shift, 0, cover.height, cover.strip), layer.z, layer.z + thickness, { top: "face-middle", left: "face-dark", right: "face-deep" }, "outline"),
      ]
      : layer.kind === "leaf"
        ? [...prism(boxOutline(0, 0, leaf.height, leaf.width), layer.z, layer.z + 0.35, { top: "paper", left: "face-light", right: "face-light" }), ...leaf.scores.map((y) => stroke(line(isometric(spacePoint(0, y, surface)), isometric(spacePoint(leaf.height, y, surface))), "edge"))]
        : [...prism(boxOutline(0, 0, leaf.height, leaf.hinge), layer.z, layer.z + 0.9, { top: "face-light", left: "face-middle", right: "face-dark" })];
    const posts = index === 0 ? along.flatMap((each) => post(each, across, surface, 6, radius)) : [];
    return [...body, ...holes(surface), ...posts, ...along.map((each) => axis(each, surface + (index === 0 ? 6 : 0), next))];
  }).concat(along.flatMap((each) => cap(each, across, top + 12, radius)));
}

function hole(x: number, y: number, z: number, radius: number): SceneItem {
  return area(transformPath(isometricPlane(spacePoint(x, y, z), spacePoint(1, 0, 0), spacePoint(0, 1, 0)), circle(point(0, 0), radius)), "arrow", "none");
}

/** The barrel of a post, standing up out of its hole. */
function post(x: number, y: number, z: number, height: number, radius: number): readonly SceneItem[] {
  const round = boxOutline(x - radius * 0.8, y - radius * 0.8, radius * 1.6, radius * 1.6);
  return prism(round, z, z + height, { top: "face-light", left: "metal", right: "face-deep" });
}

function cap(x: number, y: number, z: number, radius: number): readonly SceneItem[] {
  const disc = (height: number, fill: "metal" | "face-light"): SceneItem =>
    area(transformPath(isometricPlane(spacePoint(x, y, height), spacePoint(1, 0, 0), spacePoint(0, 1, 0)), circle(point(0, 0), radius * 2)), fill, "edge");
  return [disc(z, "metal"), disc(z + 0.9, "face-light")];
}

function labelsOf(input: Input, layers: readonly Layer[], scale: Scale): readonly Placeable[] {
  const { cover, leaf, across, along } = sizes(input, scale);
  const tail = (layer: Layer): Point => {
    const y = layer.kind === "cover" ? cover.strip + cover.gap + cover.board * 0.85 : layer.kind === "leaf" ? leaf.width * 0.85 : leaf.hinge * 0.8;
    return isometric(spacePoint(layer.kind === "guard" ? leaf.height : leaf.height * 0.98, y, layer.z + 0.4));
  };
  const numbers = layers.map((layer, index): Placeable => {
    const corner = isometric(spacePoint(0, 0, layer.z + 0.5));
    return { name: `number ${index + 1}`, candidates: [5, 8, 11, 14].map((out) => drawBalloon(`number ${index + 1}`, String(index + 1), point(corner.x - out, corner.y + 0.5))) };
  });
  const names = layers.map((layer): Placeable => leaderAnywhere({ name: layer.name, text: layer.text, target: tail(layer), directions: layer.kind === "guard" ? [-25, -35, -15, -45] : [0, -10, 10, -20], reach: 8 }));
  return [
    ...numbers, ...names,
    leaderAnywhere({ name: "post", text: "post", target: isometric(spacePoint(along[0]!, across, 6)), directions: [150, 165, 135, 180], reach: 8 }),
    leaderAnywhere({ name: "cap", text: "cap", target: isometric(spacePoint(along[0]!, across, layers.at(-1)!.z + 12.9)), directions: [45, 30, 60, 90], reach: 6 }),
  ];
}
