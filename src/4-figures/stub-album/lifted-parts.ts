// Figure: hinge, boards, folded card and a page of the stub album, laid open with the inside up and lifted off each other.
import { toMillimetres } from "../../units/length.ts";
import { drawLiftedParts } from "../bench/lifted-parts.ts";
import type { LiftedPiece } from "../bench/lifted-parts.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";

/** Stubs that are drawn; more would only blacken the card. */
const mostStubs = 7;

/** Figure `lifted-parts`. y runs across the spine, 0 at the middle of it; x = 0 is the head of the strips. */
export function drawStubAlbumParts(input: DrawingInput<"stub-album">): FigureDraft {
  const { geometry } = input.model;
  const mm = toMillimetres;
  const [strip, spine, side, gap, inset] = [geometry.stripHeight, geometry.spineStripWidth, geometry.sideStripWidth, geometry.jointGap, geometry.stripInset].map(mm) as [number, number, number, number, number];
  const start = spine / 2 + gap;
  const bothSides = (x: number, y: number, height: number, width: number, stuff: LiftedPiece["stuff"]): readonly LiftedPiece[] => [-y - width, y].map((at) => ({ x, y: at, height, width, stuff }));
  const [floor, depth] = [mm(geometry.foldedFloor), mm(geometry.closedStubDepth)];
  const stubs = geometry.stubCentres.length <= mostStubs ? geometry.stubCentres : geometry.stubCentres.filter((_, index) => index % Math.ceil(geometry.stubCentres.length / mostStubs) === 0);
  const { pages, lining } = geometry;
  return drawLiftedParts(input, [
    { part: "hinge-cloth", remark: "inside up", pieces: [{ x: (strip - mm(geometry.clothHeight)) / 2, y: -mm(geometry.clothWidth) / 2, height: mm(geometry.clothHeight), width: mm(geometry.clothWidth), stuff: "cloth" }] },
    { part: "side-strip", pieces: bothSides(0, start, strip, side, "board") },
    { part: "spine-strip", pieces: [{ x: 0, y: -spine / 2, height: strip, width: spine, stuff: "board" }] },
    { part: "hinge-tape", pieces: bothSides(0, spine / 2 + gap / 2 - mm(geometry.hingeTapeWidth) / 2, strip, mm(geometry.hingeTapeWidth), "paper") },
    { part: "boards", remark: "on the side strips", pieces: bothSides(-inset, start, mm(geometry.boardHeight), mm(geometry.boardWidth), "board") },
    ...(lining ? [{ part: "lining-paper", pieces: bothSides(-inset + (mm(geometry.boardHeight) - mm(lining.height)) / 2, start + mm(lining.inset), mm(lining.height), mm(lining.width), "paper") }] : []),
    { part: "card", remark: "folded", pieces: [
      { x: 0, y: -floor / 2, height: strip, width: floor, stuff: "card" },
      ...stubs.map((at): LiftedPiece => ({ x: 0, y: mm(at) - floor / 2 - mm(geometry.cardThickness), height: strip, width: 2 * mm(geometry.cardThickness), stuff: "card", upwards: depth })),
    ] },
    { part: "page-paper", remark: `one of ${pages.papers}, on its stub`, pieces: [{ x: (strip - mm(pages.height)) / 2, y: -0.15, height: mm(pages.height), width: 0.3, stuff: "paper", upwards: mm(pages.width) }] },
  ], "the outside of the hinge");
}
