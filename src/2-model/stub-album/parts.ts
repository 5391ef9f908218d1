// The parts of a stub album as they are bought and cut.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { Feature, Part } from "../types.ts";
import type { StubAlbumGeometry } from "./geometry.ts";

/** Every part in the order of the cut list; lining, bookmark and closure only where the book has them. */
export function listParts(geometry: StubAlbumGeometry, definition: Definition<"stub-album">): readonly Part[] {
  const thicknessOf = (role: string): Length => definition.materials[role]!.thickness!;
  const cut = { grain: "height", readyMade: false, note: "", features: [] } as const;
  const parts: Part[] = [
    { ...cut, id: "boards", name: "boards", material: "boards", count: 2, height: geometry.boardHeight, width: geometry.boardWidth, thickness: geometry.boardThickness, readyMade: true, note: "bought ready-made; check the size before anything is cut" },
    { ...cut, id: "card", name: "card", material: "card", count: 1, height: geometry.stripHeight, width: geometry.cardWidth, thickness: geometry.cardThickness, note: "scored and folded into the stubs" },
    { ...cut, id: "spine-strip", name: "spine strip", material: "strip board", count: 1, height: geometry.stripHeight, width: geometry.spineStripWidth, thickness: geometry.stripThickness, note: "cut after the folded floor is measured" },
    { ...cut, id: "side-strip", name: "side strip", material: "strip board", count: 2, height: geometry.stripHeight, width: geometry.sideStripWidth, thickness: geometry.stripThickness },
    { ...cut, id: "hinge-cloth", name: "hinge cloth", material: "cloth", count: 1, height: geometry.clothHeight, width: geometry.clothWidth, thickness: geometry.clothThickness, note: "cut after the folded floor is measured; corners are cut after the strips are glued", features: clothFeatures(geometry) },
    { ...cut, id: "hinge-tape", name: "hinge tape", material: "hinge tape", count: 2, height: geometry.stripHeight, width: geometry.hingeTapeWidth, thickness: thicknessOf("hinge tape"), grain: "none", note: "one over each joint, inside" },
    { ...cut, id: "page-paper", name: "page paper", material: "page paper", count: geometry.pages.papers, height: geometry.pages.height, width: geometry.pages.width, thickness: geometry.pages.paperThickness, note: geometry.pages.backToBack ? "two for each stub, back to back" : "one for each stub" },
  ];
  if (geometry.lining) {
    parts.push({ ...cut, id: "lining-paper", name: "lining paper", material: "lining paper", count: 2, height: geometry.lining.height, width: geometry.lining.width, thickness: thicknessOf("lining paper"), note: "one inside each board" });
  }
  const ribbon = { ...cut, material: "ribbon", width: geometry.ribbonWidth, thickness: thicknessOf("ribbon"), grain: "none" } as const;
  if (geometry.bookmarkLength) parts.push({ ...ribbon, id: "bookmark", name: "bookmark", count: 1, height: geometry.bookmarkLength, note: "ribbon, cut to length" });
  if (geometry.closureLength) parts.push({ ...ribbon, id: "closure-ribbon", name: "closure ribbon", count: 2, height: geometry.closureLength, note: "ribbon, cut to length" });
  return parts;
}

function clothLines(geometry: StubAlbumGeometry): readonly { readonly name: string; readonly at: Length }[] {
  const { turnIn, sideStripWidth, jointGap, spineStripWidth } = geometry;
  const steps: readonly (readonly [name: string, width: Length])[] = [
    ["left side strip, outer edge", turnIn], ["left side strip, inner edge", sideStripWidth], ["spine strip, left edge", jointGap],
    ["spine strip, right edge", spineStripWidth], ["right side strip, inner edge", jointGap], ["right side strip, outer edge", sideStripWidth],
  ];
  let at: Length | null = null;
  return steps.map(([name, width]) => ({ name, at: (at = at ? addLengths(at, width) : width) }));
}

function clothFeatures(geometry: StubAlbumGeometry): readonly Feature[] {
  return [
    ...clothLines(geometry).map((line) => ({ kind: "placement line", direction: "vertical", ...line }) as const),
    { kind: "placement line", direction: "horizontal", name: "strips, head edge", at: geometry.turnIn },
    { kind: "placement line", direction: "horizontal", name: "strips, tail edge", at: addLengths(geometry.turnIn, geometry.stripHeight) },
    ...(["head-left", "head-right", "tail-left", "tail-right"] as const).map((corner) => ({ kind: "corner cut", corner, distance: geometry.cornerDistance }) as const),
  ];
}
