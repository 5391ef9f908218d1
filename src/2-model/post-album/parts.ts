// The parts of a post album as they are cut.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { CornerCut, Feature, Part } from "../types.ts";
import type { PostAlbumGeometry } from "./geometry.ts";

/** Every part in the order of the cut list; cover paper, lining and guards only where the book has them. */
export function listParts(geometry: PostAlbumGeometry, definition: Definition<"post-album">): readonly Part[] {
  const thicknessOf = (role: string): Length => definition.materials[role]!.thickness!;
  const cut = { grain: "height", readyMade: false, note: "", features: [], count: 2 } as const;
  const board = { ...cut, material: "board", height: geometry.coverHeight, thickness: geometry.boardThickness };
  const cloth = { ...cut, material: "cloth", height: geometry.clothHeight, width: geometry.clothWidth, thickness: geometry.clothThickness };
  const { paper, lining } = geometry;
  const parts: Part[] = [
    { ...board, id: "boards", name: "boards", width: geometry.boardWidth, note: "one for each cover" },
    { ...board, id: "hinge-strip", name: "hinge strip", width: geometry.hingeWidth, note: "one for each cover" },
    paper
      ? { ...cloth, id: "hinge-cloth", name: "hinge cloth", note: "corners are cut after the boards are glued", features: clothFeatures(geometry) }
      : { ...cloth, id: "cover-cloth", name: "cover cloth", note: "corners are cut after the boards are glued", features: clothFeatures(geometry) },
    ...(paper ? [{ ...cut, id: "cover-paper", name: "cover paper", material: "cover paper", height: paper.height, width: paper.width, thickness: paper.thickness, note: "one over each board, over the edge of the cloth", features: paperFeatures(geometry) }] : []),
    { ...cut, id: "hinge-lining", name: "hinge lining", material: "cloth", ...geometry.hingeLining, thickness: geometry.clothThickness, note: "one inside each hinge" },
    ...(lining ? [{ ...cut, id: "lining-paper", name: "lining paper", material: "lining paper", ...lining, thickness: thicknessOf("lining paper"), note: "one inside each board" }] : []),
    { ...cut, id: "leaf", name: "leaf", material: "leaf card", count: geometry.leaves, height: geometry.leafHeight, width: geometry.leafWidth, thickness: geometry.leafThickness, note: "scored and pierced" },
  ];
  if (geometry.guardStrips > 0) {
    parts.push({
      ...cut, id: "guard", name: "guard", material: "guard card", count: geometry.guardStrips, height: geometry.leafHeight, width: geometry.hingeWidth, thickness: geometry.guardCardThickness,
      note: `${geometry.guardLayers} between every two leaves`,
    });
  }
  return parts;
}

/** Upright lines on the cloth, wrong side up, the hinge strip to the left: where the strip and the board will lie. */
function uprightLines(geometry: PostAlbumGeometry): readonly (readonly [name: string, at: Length])[] {
  const { turnIn, hingeWidth, jointGap, boardWidth, paper } = geometry;
  const stripInner = addLengths(turnIn, hingeWidth);
  const boardInner = addLengths(stripInner, jointGap);
  return [
    ["hinge strip, outer edge", turnIn], ["hinge strip, inner edge", stripInner], ["board, inner edge", boardInner],
    ...(paper ? [] : [["board, fore-edge", addLengths(boardInner, boardWidth)] as const]),
  ];
}

function levelLines({ turnIn, coverHeight }: PostAlbumGeometry): readonly Feature[] {
  const level = { kind: "placement line", direction: "horizontal" } as const;
  return [{ ...level, name: "head edge of the cover", at: turnIn }, { ...level, name: "tail edge of the cover", at: addLengths(turnIn, coverHeight) }];
}

function corners(geometry: PostAlbumGeometry, sides: readonly ("left" | "right")[]): readonly CornerCut[] {
  return (["head", "tail"] as const).flatMap((end) => sides.map((side) => ({ kind: "corner cut", corner: `${end}-${side}`, distance: geometry.cornerDistance }) as const));
}

function clothFeatures(geometry: PostAlbumGeometry): readonly Feature[] {
  return [
    ...uprightLines(geometry).map(([name, at]) => ({ kind: "placement line", direction: "vertical", name, at }) as const),
    ...levelLines(geometry), ...corners(geometry, geometry.paper ? ["left"] : ["left", "right"]),
  ];
}

/** The cover paper, wrong side up, its fore-edge to the left: its corners are cut at the board's fore-edge. */
function paperFeatures(geometry: PostAlbumGeometry): readonly Feature[] {
  return [{ kind: "placement line", direction: "vertical", name: "board, fore-edge", at: geometry.turnIn }, ...levelLines(geometry), ...corners(geometry, ["left"])];
}
