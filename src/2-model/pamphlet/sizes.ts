// The sizes of a pamphlet: section, creep, trimmed width, cover, holes; each a formula in the ledger.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, divideLength, multiplyLength, roundToMark, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { runningMarks } from "../../units/rounding.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { PamphletGeometry } from "./geometry.ts";

const geometrySource = "geometry";

/**
 * Creep: the sheets lie around each other in half circles about one centre. The middle of the sheet with i sheets inside it has the
 * radius (i + 1/2) · t, and its half circle takes π · (i + 1/2) · t of its width, half of that from each leaf. From the innermost to the
 * outermost sheet the radius grows by (n − 1) · t, so the leaves differ by π/2 · (n − 1) · t. A fold that is pressed sharp goes around
 * its inner sheets in two corners and takes only (n − 1) · t: published corrections lie between the two (1 to 1.4 times).
 *
 * Cover: its middle has the radius n · t + c/2 about the same centre; from that centre its fore-edge lies a square beyond the pages',
 * which lie the text width less n · t from it. Both halves and the half circle: 2 · (text width − n·t + square) + π · (n·t + c/2).
 */
export function sizePamphlet(definition: Definition<"pamphlet">, ledger: Ledger): PamphletGeometry {
  const { book, units, materials } = definition;
  const origin = (path: string): "given" | "default" => originAt(definition, path);
  const give = (name: string, value: Length | number, path: string, meaning: string): void => ledger.give(name, value, origin(path), { meaning, source: "" });
  give("sheets", book.sheets, "book/sheets", "folded sheets");
  give("page height", book.page.height, "book/page/height", "height of a page, along the fold");
  give("page width", book.page.width, "book/page/width", "half of a sheet");
  give("square", book.cover.square, "book/cover/square", "how far the cover reaches beyond the pages");
  for (const [role, what] of [["text paper", "a sheet"], ["cover paper", "the cover"], ["thread", "the thread, across"]] as const) {
    const { thickness, thicknessFrom } = materials[role]!;
    ledger.give(`${role} thickness`, thickness!, thicknessFrom === "default" ? "default" : "material", { meaning: `thickness of ${what}`, source: "", shownAs: "thickness" });
  }
  const thin = { source: geometrySource, shownAs: "thickness" as const };
  ledger.compute("section thickness", "2 * sheets * text paper thickness", { meaning: "the folded sheets without the cover: two leaves each", ...thin, measureYours: true });
  ledger.compute("half section", "section thickness / 2", { meaning: "every sheet once, as at the fold", ...thin });
  ledger.compute("creep", "1.5708 * (half section - half section / sheets)", { meaning: "how far the innermost leaf stands out beyond the outermost, at most", source: "geometry: half circles around the fold, π ÷ 2 for each sheet inside the outermost", shownAs: "thickness" });
  ledger.compute("least creep", "half section - half section / sheets", { meaning: "the same, pressed sharp", source: "stored pre-press page: (sheets − 1) × thickness", shownAs: "thickness" });
  if (book.trim) {
    ledger.compute("text width", "down(page width - creep)", { meaning: "width of the pages after trimming, from the back of the fold", source: geometrySource });
  } else {
    ledger.compute("text width", "page width + half section - 0.7854 * half section / sheets", { meaning: "from the back of the fold to the innermost leaf's fore-edge", ...thin });
  }
  ledger.compute("cover wrap", "1.1416 * half section + 1.5708 * cover paper thickness", { meaning: "what the cover needs to go around the fold, beyond the two widths", source: "geometry: π × (half section + cover ÷ 2) less 2 × half section", shownAs: "thickness" });
  ledger.compute("cover fold", "up(text width + square + cover wrap / 2)", { meaning: "from the cover's fore-edge to its fold", source: geometrySource });
  ledger.compute("cover width", "2 * cover fold", { meaning: "cover, flat", source: geometrySource });
  ledger.compute("cover height", "page height + 2 * square", { meaning: "cover, along the fold", source: geometrySource });
  if (book.holes["end distance"]) give("end distance", book.holes["end distance"], "book/holes/end distance", "from head and tail of a page to the outer holes");
  else {
    ledger.compute("end distance", "max(13 mm, min(38 mm, nearest(page height / 7)))", { meaning: "from head and tail of a page to the outer holes", source: "Bean & Brodhead 1918, Problem I: 1/2 to 1 1/2 in from each end; a seventh of the height is common practice, no source" });
  }
  ledger.compute("hole diameter", "2 * thread thickness", { meaning: "holes in the fold", source: "common practice, no source: the needle's eye is twice as thick as its thread", shownAs: "thickness" });
  ledger.compute("fold thickness", "half section + cover paper thickness", { meaning: "what the needle goes through at the fold", ...thin });
  ledger.compute("finished width", "text width + square + cover paper thickness", { meaning: "from the back of the cover's fold to its fore-edge", source: geometrySource });
  ledger.compute("finished thickness", "section thickness + 2 * cover paper thickness", { meaning: "pages and cover, not pressed", ...thin });
  const at = (name: string): Length => ledger.length(name);
  return {
    sheets: book.sheets, pageHeight: at("page height"), pageWidth: at("page width"), isTrimmed: book.trim, textWidth: at("text width"),
    paperThickness: at("text paper thickness"), coverThickness: at("cover paper thickness"), creep: at("creep"), leastCreep: at("least creep"), sectionThickness: at("section thickness"),
    square: at("square"), coverHeight: at("cover height"), coverWidth: at("cover width"), coverFold: at("cover fold"),
    stations: stationsOf(at("page height"), at("end distance"), Number(book.holes.count), units.step), endDistance: at("end distance"), holeDiameter: at("hole diameter"),
    foldThickness: at("fold thickness"), tiedInside: book.tie === "inside",
  };
}

/** Holes from the head, evenly between the outer ones, each rounded once; the last one as far from the tail as the first from the head. */
function stationsOf(height: Length, end: Length, count: number, step: Length): readonly Length[] {
  const span = subtractLength(height, multiplyLength(end, 2));
  const exact = Array.from({ length: count }, (_, k) => addLengths(end, multiplyLength(divideLength(span, count - 1), k)));
  const marks = runningMarks(exact, step);
  return marks.map((mark, k) => (k === 0 ? end : k === count - 1 ? subtractLength(height, end) : k === (count - 1) / 2 ? roundToMark(divideLength(height, 2), step) : mark));
}
