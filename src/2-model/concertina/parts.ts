// The parts of a concertina as they are bought and cut.
import type { Definition } from "../../1-definition/types.ts";
import type { Ledger } from "../ledger.ts";
import type { Feature, Part } from "../types.ts";
import type { ConcertinaGeometry } from "./geometry.ts";
import { nameOf, onePerKind } from "./strip.ts";

/** Every part in the order of the cut list; ribbon or band only where the book has one. */
export function listParts(geometry: ConcertinaGeometry, definition: Definition<"concertina">, ledger: Ledger): readonly Part[] {
  const cut = { grain: "height", readyMade: false, note: "", features: [] } as const;
  const { closure } = geometry;
  const parts: Part[] = [
    { ...cut, id: "boards", name: "boards", material: "boards", count: 2, height: geometry.boardHeight, width: geometry.boardWidth, thickness: geometry.boardThickness, note: "front and back, exactly alike" },
    { ...cut, id: "covering", name: "covering", material: geometry.covering, count: 2, height: geometry.coverHeight, width: geometry.coverWidth, thickness: geometry.coverThickness, note: "one for each board; its corners are cut after the board is glued", features: coverFeatures(geometry) },
    ...onePerKind(geometry.strips).map((strip): Part => ({
      ...cut, id: strip.part, name: nameOf(strip), material: "panel paper", count: geometry.strips.filter((each) => each.part === strip.part).length,
      height: geometry.panelHeight, width: ledger.length(`${nameOf(strip)} width`), thickness: geometry.paperThickness,
      note: `${strip.panels} ${strip.panels === 1 ? "panel" : "panels"}${strip.hasTab ? " and a tab" : ""}; grain along the folds`,
    })),
  ];
  if (closure?.kind === "ribbon") parts.push({ ...cut, id: "closure-ribbon", name: "closure ribbon", material: "ribbon", count: 1, height: closure.length, width: closure.width, thickness: definition.materials["ribbon"]!.thickness!, grain: "none", note: "ribbon, cut to length" });
  if (closure?.kind === "band") parts.push({ ...cut, id: "band", name: "band", material: geometry.covering, count: 1, height: closure.height, width: closure.length, thickness: geometry.coverThickness, note: "goes round the shut book; grain along its height" });
  return parts;
}

function coverFeatures({ turnIn, cornerDistance }: ConcertinaGeometry): readonly Feature[] {
  return [
    { kind: "placement line", direction: "vertical", name: "board, left edge", at: turnIn },
    { kind: "placement line", direction: "horizontal", name: "board, head edge", at: turnIn },
    ...(["head-left", "head-right", "tail-left", "tail-right"] as const).map((corner) => ({ kind: "corner cut", corner, distance: cornerDistance }) as const),
  ];
}
