// Figure: both covers of the post album taken apart, its leaves and guards between them, lifted off each other.
import { toMillimetres } from "../../units/length.ts";
import { drawLiftedParts } from "../bench/lifted-parts.ts";
import type { LiftedLayer, LiftedPiece } from "../bench/lifted-parts.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";

/** Figure `lifted-parts`. y = 0 is the spine edge of the covers, x = 0 their head. */
export function drawPostAlbumParts(input: DrawingInput<"post-album">): FigureDraft {
  const { geometry, parts } = input.model;
  const mm = toMillimetres;
  const [high, hinge, gap, wide, turnIn] = [geometry.coverHeight, geometry.hingeWidth, geometry.jointGap, geometry.boardWidth, geometry.turnIn].map(mm) as [number, number, number, number, number];
  const layer = (part: string, remark: string, piece: LiftedPiece): readonly LiftedLayer[] => (parts.some(({ id }) => id === part) ? [{ part, remark, pieces: [piece] }] : []);
  const { paper, lining, hingeLining, posts } = geometry;
  const cover = (side: string): readonly LiftedLayer[] => [
    ...(paper ? layer("cover-paper", side, { x: (high - mm(paper.height)) / 2, y: mm(geometry.clothWidth) - turnIn - mm(paper.lap), height: mm(paper.height), width: mm(paper.width), stuff: "paper" }) : []),
    ...layer(paper ? "hinge-cloth" : "cover-cloth", side, { x: (high - mm(geometry.clothHeight)) / 2, y: -turnIn, height: mm(geometry.clothHeight), width: mm(geometry.clothWidth), stuff: "cloth" }),
    ...layer("hinge-strip", side, { x: 0, y: 0, height: high, width: hinge, stuff: "board" }),
    ...layer("boards", side, { x: 0, y: hinge + gap, height: high, width: wide, stuff: "board" }),
    ...layer("hinge-lining", side, { x: (high - mm(hingeLining.height)) / 2, y: mm(geometry.inset), height: mm(hingeLining.height), width: mm(hingeLining.width), stuff: "cloth" }),
    ...(lining ? layer("lining-paper", side, { x: (high - mm(lining.height)) / 2, y: hinge + gap + wide - mm(geometry.inset) - mm(lining.width), height: mm(lining.height), width: mm(lining.width), stuff: "paper" }) : []),
  ];
  const head = mm(posts.coverShift);
  return drawLiftedParts(input, [
    ...cover("back"),
    ...layer("leaf", `one of ${geometry.leaves}`, { x: head, y: 0, height: mm(geometry.leafHeight), width: mm(geometry.leafWidth), stuff: "card", folds: geometry.scores.map(mm) }),
    ...layer("guard", "between two leaves", { x: head, y: 0, height: mm(geometry.leafHeight), width: hinge, stuff: "card" }),
    ...cover("front").toReversed(),
  ], "the back of the album");
}
