// Figure: where a corner of the hinge cloth is cut off; all four corners are cut alike.
import type { Box } from "../../geometry/box.ts";
import type { DrawingInput } from "../binding.ts";
import { drawCornerCut as drawCorner } from "../bench/corner-cut.ts";
import type { FigureDraft } from "../figure.ts";
import { hingeEdges } from "./hinge-edges.ts";
import type { Extent } from "./hinge-edges.ts";

/** Figure `corner-cut`. */
export function drawCornerCut(input: DrawingInput<"stub-album">): FigureDraft {
  const { geometry } = input.model;
  const edges = hingeEdges(geometry, 1);
  const box = ({ left, right }: Extent): Box => ({ left, right, top: edges.head, bottom: edges.tail });
  return drawCorner(input, {
    what: "hinge cloth", stuff: "cloth", boardWord: "strip", board: "side-strip", covering: "hinge-cloth", geometry,
    boards: [edges.leftStrip, edges.spineStrip, edges.rightStrip].map(box), corners: ["head-left", "head-right", "tail-left", "tail-right"],
  });
}
