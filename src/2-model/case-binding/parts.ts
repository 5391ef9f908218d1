// The parts of a case binding as they are cut, with what is marked on them, and the holes of its sewing.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, divideLength, mm, multiplyLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { folioPart } from "../text-block/block.ts";
import { leafPart } from "../text-block/leaves.ts";
import type { Feature, Hole, Part } from "../types.ts";
import type { CaseBindingGeometry } from "./geometry.ts";

const cut = { grain: "height", readyMade: false, note: "", features: [] } as const;

/** Every part in the order of the cut list: first the text block's, then the case's. */
export function listParts(geometry: CaseBindingGeometry, definition: Definition<"case-binding">): readonly Part[] {
  return [...blockParts(geometry, definition), ...caseParts(geometry, definition)];
}

/** Ids of the parts that are cut before the text block is measured. */
export const blockPartIds: readonly string[] = ["folio", "leaf", "endpaper", "tape", "mull", "spine-lining", "endband", "ribbon"];

function thicknessIn(definition: Definition<"case-binding">): (role: string) => Length {
  return (role) => definition.materials[role]!.thickness!;
}

function blockParts(geometry: CaseBindingGeometry, definition: Definition<"case-binding">): readonly Part[] {
  const { block, sewing, mull, lining, endband, ribbon } = geometry;
  const thickness = thicknessIn(definition);
  const band = { ...cut, grain: "none" } as const;
  return [
    sewing ? folioPart(block) : leafPart(block),
    { ...cut, id: "endpaper", name: "endpaper", material: "endpaper", count: 2, height: geometry.endpaperHeight, width: geometry.endpaperWidth, thickness: geometry.endpaperThickness, note: "folded once across the width" },
    ...(sewing ? [{ ...band, id: "tape", name: "tape", material: "tape", count: sewing.tapes.length, height: sewing.tapeLength, width: sewing.tapeWidth, thickness: thickness("tape"), note: "cut to length" }] : []),
    { ...cut, id: "mull", name: "mull", material: "mull", count: 1, height: mull.height, width: mull.width, thickness: mull.thickness },
    ...(lining ? [{ ...cut, id: "spine-lining", name: "spine lining", material: "spine lining", count: 1, height: lining.height, width: lining.width, thickness: lining.thickness }] : []),
    ...(endband ? [{ ...band, id: "endband", name: "endband", material: "endband", count: 2, height: endband, width: endbandWidth, thickness: thickness("endband"), note: "cut to length" }] : []),
    ...(ribbon ? [{ ...band, id: "ribbon", name: "ribbon", material: "ribbon", count: 1, height: ribbon.length, width: ribbon.width, thickness: thickness("ribbon"), note: "cut to length" }] : []),
  ];
}

/** Endbands are sold with a flange of about this height to glue: common practice, no source. */
const endbandWidth: Length = mm(12);

function caseParts(geometry: CaseBindingGeometry, definition: Definition<"case-binding">): readonly Part[] {
  const { covering, boardHeight, boardWidth, boardThickness } = geometry;
  const thickness = thicknessIn(definition);
  const parts: Part[] = [
    { ...cut, id: "boards", name: "boards", material: "boards", count: 2, height: boardHeight, width: boardWidth, thickness: boardThickness, features: clothEdge(geometry) },
    { ...cut, id: "spine-strip", name: "spine strip", material: "spine strip", count: 1, height: boardHeight, width: geometry.stripWidth, thickness: geometry.stripThickness, note: geometry.round ? "must bend round the back" : "" },
    {
      ...cut, id: "cloth", name: covering.kind === "full" ? "case cloth" : "spine cloth", material: "cloth", count: 1, height: covering.clothHeight, width: covering.clothWidth, thickness: geometry.clothThickness,
      note: covering.kind === "full" ? "corners are cut after the boards are glued" : "", features: clothFeatures(geometry),
    },
  ];
  if (covering.corners) {
    parts.push({ ...cut, id: "corner-square", name: "corner square", material: "cloth", count: 2, height: covering.corners.square, width: covering.corners.square, thickness: geometry.clothThickness, note: "cut from corner to corner: two cloth corners each" });
  }
  if (covering.sides) {
    parts.push({
      ...cut, id: "side-paper", name: "side paper", material: "side paper", count: 2, height: covering.sides.height, width: covering.sides.width, thickness: thickness("side paper"),
      note: covering.corners ? "fore-edge corners cut off at 45°" : "",
    });
  }
  return parts;
}

/** Where the spine cloth ends on a board, which is drawn with its spine edge at the left. */
function clothEdge({ covering }: CaseBindingGeometry): readonly Feature[] {
  return covering.clothOnBoards ? [{ kind: "placement line", direction: "vertical", name: "edge of the spine cloth", at: covering.clothOnBoards }] : [];
}

/** The upright lines on the cloth, each a running dimension from its left edge, and the two level ones from its head edge. */
function clothFeatures({ covering, boardHeight, boardWidth, joint, stripWidth }: CaseBindingGeometry): readonly Feature[] {
  const outer = covering.clothOnBoards;
  const steps: readonly (readonly [name: string, width: Length])[] = [
    ...(outer ? [] : [["left board, fore-edge", covering.turnIn] as const]),
    ["left board, spine edge", outer ?? boardWidth], ["spine strip, left edge", joint], ["spine strip, right edge", stripWidth], ["right board, spine edge", joint],
    ...(outer ? [] : [["right board, fore-edge", boardWidth] as const]),
  ];
  let at: Length | null = null;
  const upright = steps.map(([name, width]): Feature => ({ kind: "placement line", direction: "vertical", name, at: (at = at ? addLengths(at, width) : width) }));
  return [
    ...upright,
    { kind: "placement line", direction: "horizontal", name: "boards, head edge", at: covering.turnIn },
    { kind: "placement line", direction: "horizontal", name: "boards, tail edge", at: addLengths(covering.turnIn, boardHeight) },
    ...(outer ? [] : (["head-left", "head-right", "tail-left", "tail-right"] as const).map((corner): Feature => ({ kind: "corner cut", corner, distance: covering.cornerDistance }))),
  ];
}

/** Id of a station among the holes of a folio. */
export function stationId({ name }: { readonly name: string }): string {
  return name.replaceAll(" ", "-");
}

/** The holes in the fold of every folio, named as their stations. An awl's hole is about twice as wide as the thread. */
export function listHoles({ block, sewing, headTrim }: CaseBindingGeometry): readonly Hole[] {
  return (sewing?.stations ?? []).map((station) => ({
    id: stationId(station), part: "folio", along: addLengths(station.at, headTrim), across: divideLength(block.folioWidth, 2), diameter: multiplyLength(block.threadThickness, 2),
  }));
}
