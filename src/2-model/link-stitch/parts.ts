// The parts of a link stitch as they are bought and cut.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths } from "../../units/length.ts";
import { folioPart } from "../text-block/block.ts";
import type { Feature, Part } from "../types.ts";
import type { LinkStitchGeometry } from "./geometry.ts";

/** Every part in the order of the cut list; covering and lining only where the boards have them. */
export function listParts(geometry: LinkStitchGeometry, definition: Definition<"link-stitch">): readonly Part[] {
  const cut = { grain: "height", readyMade: false, note: "", features: [] } as const;
  const parts: Part[] = [
    folioPart(geometry.text),
    { ...cut, id: "boards", name: "boards", material: "board", count: 2, height: geometry.boardHeight, width: geometry.boardWidth, thickness: geometry.boardThickness, note: "front and back" },
  ];
  if (geometry.covering) {
    const { height, width, thickness } = geometry.covering;
    parts.push({ ...cut, id: "covering", name: "covering", material: "covering", count: 2, height, width, thickness, note: "one for each board; corners are cut after glueing", features: coveringFeatures(geometry) });
  }
  if (geometry.lining) {
    const { height, width } = geometry.lining;
    parts.push({ ...cut, id: "lining-paper", name: "lining paper", material: "lining paper", count: 2, height, width, thickness: definition.materials["lining paper"]!.thickness!, note: "one inside each board" });
  }
  return parts;
}

function coveringFeatures({ turnIn, boardHeight, boardWidth, cornerDistance }: LinkStitchGeometry): readonly Feature[] {
  const line = { kind: "placement line" } as const;
  return [
    { ...line, direction: "vertical", name: "board, left edge", at: turnIn },
    { ...line, direction: "vertical", name: "board, right edge", at: addLengths(turnIn, boardWidth) },
    { ...line, direction: "horizontal", name: "board, head edge", at: turnIn },
    { ...line, direction: "horizontal", name: "board, tail edge", at: addLengths(turnIn, boardHeight) },
    ...(["head-left", "head-right", "tail-left", "tail-right"] as const).map((corner) => ({ kind: "corner cut", corner, distance: cornerDistance }) as const),
  ];
}
