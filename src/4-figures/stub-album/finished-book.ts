// Figure: the finished book standing a little open, pictorial; large on the booklet's cover.
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";
import { scaleWords } from "../scale.ts";
import { drawOpenBook } from "./open-book.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Size on paper: as wide as this, or as high, whichever is reached first. */
const room = { width: 122, height: 150 } as const;

/** Figure `finished-book`: without labels, because it is the booklet's cover picture. */
export function drawFinishedBook(input: DrawingInput<"stub-album">): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { items, factor } = drawOpenBook(geometry, room);
  const sizes = `${words.size(finished.height)} high along the spine × ${words.size(finished.width)} wide × ${words.size(finished.thickness)} thick`;
  return {
    id: "finished-book",
    title: "The finished stub album",
    caption: `The finished book standing a little open, in true proportions (isometric view, ${scaleWords(factor)} along the edges). Shut, it is ${sizes}.`,
    alternative: `The finished stub album stands a little open, seen from the front cover and the fore-edge. Along the spine edge of the front board lies the cloth-covered side strip with ${geometry.posts.count} screw posts; between the boards ${geometry.stubs} ${geometry.stubs === 1 ? "page stands on its stub" : "pages fan out, each on its stub"}.`
      + `${geometry.closureLength ? " A ribbon to tie hangs from the middle of each board’s fore-edge." : ""}${geometry.bookmarkLength ? " The end of a bookmark shows at the tail." : ""} Shut, the book is ${sizes}.`,
    items,
  };
}
