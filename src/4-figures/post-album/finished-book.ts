// Figure: the finished album lying on the bench, pictorial; large on the booklet's cover.
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";
import { scaleWords } from "../scale.ts";
import { sectionWords } from "../bench/section-words.ts";
import { viewAlbum } from "./album-view.ts";

/** Size on paper: as wide as this, or as high, whichever is reached first. */
const room = { width: 132, height: 120 } as const;

/** Figure `finished-book`: without labels, because it is the booklet's cover picture. */
export function drawFinishedBook(input: DrawingInput<"post-album">): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { items, factor } = viewAlbum(geometry, { near: "spine", open: 7 }, room);
  const sizes = `${words.size(finished.height)} high along the spine × ${words.size(finished.width)} wide × ${words.size(finished.thickness)} thick`;
  return {
    id: "finished-book",
    title: "The finished post album",
    caption: `The finished album, its front cover a little lifted, in true proportions (isometric view, ${scaleWords(factor)} along the edges). Shut, it is ${sizes}.`,
    alternative: `The finished post album lies on the bench, its spine edge towards the reader. The hinge strip of the front cover is fastened with ${geometry.posts.count} screw posts; beside it the cover bends at the joint, and ${geometry.paper ? "paper covers the rest of the board" : "the same cloth covers the board"}. `
      + `Between the covers lie ${geometry.leaves} leaves${geometry.guardStrips > 0 ? ", guards between them at the spine" : ""}. Shut, the album is ${sizes}.`,
    items,
  };
}
