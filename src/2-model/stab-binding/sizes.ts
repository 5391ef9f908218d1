// The sizes of a stab binding: block, covers, what is left of a page, and the holes of the pattern.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { StabBindingGeometry } from "./geometry.ts";
import { layOutInnerHoles, layOutPattern } from "./lay-out.ts";
import { patterns } from "./patterns.ts";

/** Enters every value and lays the pattern out. */
export function sizeStabBinding(definition: Definition<"stab-binding">, ledger: Ledger): StabBindingGeometry {
  const { book, units, materials } = definition;
  const origin = (path: string): "given" | "default" => originAt(definition, path);
  const give = (name: string, value: Length | number, path: string, meaning: string): void => ledger.give(name, value, origin(path), { meaning, source: "" });
  const isFolded = book.leaf.kind === "folded";
  give("leaves", book.leaves, "book/leaves", "leaves between the covers");
  give("leaf height", book.leaf.height, "book/leaf/height", "height of a leaf, along the spine");
  give("leaf width", book.leaf.width, "book/leaf/width", "width of a leaf, across the spine");
  give("main holes", book.holes.count, "book/holes/count", "holes in the main line");
  give("set back", book.holes["set back"], "book/holes/set back", "from the spine edge to the main line of holes");
  give("opening allowance", book["opening allowance"], "book/opening allowance", "what the page loses because the book does not open flat");
  give("flap", book.cover.flap, "book/cover/flap", "folded in at the cover's fore-edge");
  for (const [role, what] of [["text paper", "a sheet"], ["cover paper", "a cover"], ["thread", "the thread, across"]] as const) {
    const { thickness, thicknessFrom } = materials[role]!;
    ledger.give(`${role} thickness`, thickness!, thicknessFrom === "default" ? "default" : "material", { meaning: `thickness of ${what}`, source: "", shownAs: "thickness" });
  }
  const thin = { source: "geometry", shownAs: "thickness" as const };
  ledger.compute("block thickness", `${isFolded ? "2 * " : ""}leaves * text paper thickness`, { meaning: `all leaves at the spine edge${isFolded ? ": a folded leaf is two sheets thick" : ""}`, ...thin, measureYours: true });
  ledger.compute("book thickness", "block thickness + 2 * cover paper thickness", { meaning: "block and both covers: what every hole goes through", ...thin });
  if (book.holes["corner distance"]) give("corner distance", book.holes["corner distance"], "book/holes/corner distance", "from head and tail to the outer main holes");
  else ledger.compute("corner distance", "nearest(set back)", { meaning: "from head and tail to the outer main holes", source: "common practice, no source: as much as the set-back, so that the corner is square" });
  ledger.compute("usable width", "leaf width - set back - opening allowance", { meaning: "what is left of a page to write on", source: "geometry" });
  ledger.compute("cover width", "leaf width + flap", { meaning: "a cover, flat", source: "geometry" });
  if (isFolded) ledger.compute("sheet width", "2 * leaf width", { meaning: "the sheet of a folded leaf, flat", source: "geometry" });
  ledger.compute("hole diameter", "2 * thread thickness", { meaning: "holes of the sewing", source: "common practice, no source: the thread goes through a hole up to six times, one strand after the other", shownAs: "thickness" });
  const at = (name: string): Length => ledger.length(name);
  const ground = { height: at("leaf height"), setBack: at("set back"), cornerDistance: at("corner distance"), count: book.holes.count, step: units.step };
  const { holes, runs } = layOutPattern(patterns[book.pattern], ground);
  return {
    leaves: book.leaves, isFolded, height: ground.height, width: at("leaf width"), paperThickness: at("text paper thickness"), coverThickness: at("cover paper thickness"),
    blockThickness: at("block thickness"), thickness: at("book thickness"), setBack: ground.setBack, cornerDistance: ground.cornerDistance,
    openingAllowance: at("opening allowance"), usableWidth: at("usable width"), flap: at("flap"), coverWidth: at("cover width"), holeDiameter: at("hole diameter"),
    pattern: book.pattern, holes, innerHoles: book["inner binding"] ? layOutInnerHoles(holes, units.step) : [], runs, startHole: "2",
  };
}

/** The widths of leaf and sheet: a folded leaf is cut twice as wide. */
export function sheetWidth({ width, isFolded }: StabBindingGeometry): Length {
  return isFolded ? addLengths(width, width) : width;
}
