// Figure: all parts of a book lifted off each other, in the order in which they come to lie, from the outside of the back or spine upwards.
import { line } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { cos30, isometric, spacePoint } from "../../geometry/project.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "./section-words.ts";
import { boxOutline, prism } from "./solid.ts";
import type { FaceTones } from "./solid.ts";

/** What a piece is made of, for its tones. */
export type Stuff = "paper" | "card" | "board" | "cloth";

/** One piece: its place and size in millimetres of the book, x from head to tail, y from the spine towards the fore-edge. */
export interface LiftedPiece {
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly width: number;
  readonly stuff: Stuff;
  /** Its height upwards in millimetres of the book, for what is thick enough to be drawn to scale; thin things are drawn as thick as their stuff. */
  readonly upwards?: number;
  /** Folds along x, at these y. */
  readonly folds?: readonly number[];
  /** Outline in plan as corners of a triangle or the like, where it is no rectangle. */
  readonly outline?: readonly Point[];
}

/** What lies together at one height: pieces of one part, named on the last of them. */
export interface LiftedLayer {
  readonly part: string;
  /** The last of several parts of the cut list that make one piece here. */
  readonly upTo?: string;
  /** Said behind the part's name: "the back one". */
  readonly remark?: string;
  readonly pieces: readonly LiftedPiece[];
  /** Lies on the layer before without being lifted: sheets of one pile. */
  readonly isClose?: boolean;
  /** Stands beside the layer before, nearer to the reader, at the same height. */
  readonly isBeside?: boolean;
}

const tones: Readonly<Record<Stuff, FaceTones>> = {
  paper: { top: "paper", left: "face-light", right: "face-light" },
  card: { top: "face-light", left: "face-middle", right: "face-middle" },
  board: { top: "face-middle", left: "face-dark", right: "face-deep" },
  cloth: { top: "face-dark", left: "face-deep", right: "face-deep" },
};

/** Drawn thickness of thin things, and how far layers are lifted off each other, in millimetres of paper. */
const thickness: Readonly<Record<Stuff, number>> = { paper: 0.4, card: 0.8, board: 1.7, cloth: 0.5 };
const lift = { usual: 5.2, close: 1.6 } as const;
/** Room for one layer on paper. */
const room = { width: 80, height: 48 } as const;

/** Figure `lifted-parts`. `start` says what lies lowest: "the back of the book". */
export function drawLiftedParts(input: DrawingInput, layers: readonly LiftedLayer[], start: string): FigureDraft {
  const words = sectionWords(input);
  const nameOf = ({ part, upTo }: LiftedLayer): string => (upTo === undefined ? words.part(part) : `${words.part(part)} to ${words.part(upTo)}`);
  const all = layers.flatMap(({ pieces }) => pieces);
  const reach = Math.max(...all.map(({ x, height }) => x + height)) - Math.min(...all.map(({ x }) => x)) + Math.max(...all.map(({ y, width }) => y + width)) - Math.min(...all.map(({ y }) => y));
  const { items, scale } = placeAtScale(scalesThatFit(reach * cos30, reach / 2, room.width, room.height).slice(0, 2), (at) => {
    const placed = placeLayers(layers, at);
    return { fixed: placed.flatMap((layer, index) => layerItems(layer, placed[index + 1], at)), labels: placed.map((layer) => labelOf(layer, nameOf(layer), at)) };
  });
  const ids = input.model.parts.map(({ id }) => id);
  const shows = ({ part, upTo }: LiftedLayer, id: string): boolean => ids.indexOf(id) >= ids.indexOf(part) && ids.indexOf(id) <= ids.indexOf(upTo ?? part);
  const left = ids.filter((id) => !layers.some((layer) => shows(layer, id))).map(words.part);
  const named = layers.map((layer) => `${nameOf(layer)}${layer.remark === undefined ? "" : `, ${layer.remark}`}`);
  return {
    id: "lifted-parts",
    title: "How the parts lie on each other",
    caption: `The parts lifted off each other, pictorial view, ${scale.name} along the edges, thin layers and distances not to scale. Lowest is ${start}; each part comes to lie on the one below it, along the centre lines.${left.length === 0 ? "" : ` Not drawn: ${left.join(", ")}.`}`,
    alternative: `From ${start} upwards: ${named.join("; ")}.`,
    items,
  };
}

interface PlacedLayer extends LiftedLayer {
  readonly z: number;
  readonly top: number;
}

function risesBy({ stuff, upwards }: LiftedPiece, { factor }: Scale): number {
  return upwards === undefined ? thickness[stuff] : Math.max(thickness[stuff], upwards * factor);
}

function placeLayers(layers: readonly LiftedLayer[], scale: Scale): readonly PlacedLayer[] {
  let top = -lift.usual;
  let z = 0;
  return layers.map((layer) => {
    if (!layer.isBeside) z = top + (layer.isClose ? lift.close : lift.usual);
    top = z + Math.max(...layer.pieces.map((piece) => risesBy(piece, scale)));
    return { ...layer, z, top };
  });
}

/** Far pieces first, so that near ones cover them. */
function layerItems({ pieces, z, top }: PlacedLayer, next: PlacedLayer | undefined, scale: Scale): readonly SceneItem[] {
  const { factor } = scale;
  const bodies = pieces.toSorted((a, b) => b.y - a.y || a.x - b.x).flatMap((piece): readonly SceneItem[] => {
    const surface = z + risesBy(piece, scale);
    const outline = piece.outline?.map(({ x, y }) => ({ x: x * factor, y: y * factor })) ?? boxOutline(piece.x * factor, piece.y * factor, piece.height * factor, piece.width * factor);
    return [
      ...prism(outline, z, surface, tones[piece.stuff], "outline"),
      ...(piece.folds ?? []).map((y) => stroke(line(isometric(spacePoint(piece.x * factor, y * factor, surface)), isometric(spacePoint((piece.x + piece.height) * factor, y * factor, surface))), "edge")),
    ];
  });
  if (next === undefined) return bodies;
  // The two corners of the next layer that are nearest to the reader.
  const near = Math.min(...next.pieces.map(({ y }) => y)) * factor;
  const [head, tail] = [Math.min(...next.pieces.map(({ x }) => x)) * factor, Math.max(...next.pieces.map(({ x, height }) => x + height)) * factor];
  return [...bodies, ...(next.isClose || next.isBeside ? [] : [head, tail].map((x) => stroke(line(isometric(spacePoint(x, near, top)), isometric(spacePoint(x, near, next.z))), "centre")))];
}

/** The name stands to the right of the piece that reaches furthest there. */
function labelOf({ part, remark, pieces, z }: PlacedLayer, name: string, scale: Scale): Placeable {
  const { factor } = scale;
  const piece = pieces.reduce((far, each) => (each.x + each.height + each.y + each.width > far.x + far.height + far.y + far.width ? each : far));
  const corner = piece.outline?.reduce((far, at) => (at.x + at.y > far.x + far.y ? at : far)) ?? { x: piece.x + piece.height, y: piece.y + piece.width };
  const target = isometric(spacePoint(corner.x * factor, corner.y * factor, piece.upwards === undefined ? z + risesBy(piece, scale) / 2 : z + risesBy(piece, scale)));
  return leaderAnywhere({ name: `${part} ${remark ?? ""}`.trim(), text: remark === undefined ? name : [`${name},`, remark], target, end: "none", directions: [0, 12, -12, 24, -24], reach: 7 });
}
