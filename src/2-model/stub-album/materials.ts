// Enters what the author gives: sizes of the book section and thicknesses of the materials in hand.
import type { Definition } from "../../1-definition/types.ts";
import type { Length } from "../../units/length.ts";
import { giveAdhesiveLayers, giveThicknesses, originAt } from "../given-values.ts";
import type { Layer } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import { enterOnMark } from "../on-mark.ts";
import type { GoverningSize } from "../on-mark.ts";
import type { ValueOrigin } from "../types.ts";

/** The sizes along which score lines are counted off: stub depth, floor gap, and the margin where it is given. */
export function governingSizes(definition: Definition<"stub-album">): readonly GoverningSize[] {
  const { book } = definition;
  const size = (name: string, written: Length, meaning: string): GoverningSize =>
    ({ name, written, meaning, path: `book/${name}`, origin: originAt(definition, `book/${name}`) });
  return [
    size("stub depth", book["stub depth"], "base score to crest score, flat"),
    size("floor gap", book["floor gap"], "flat floor between two stubs"),
    ...(book.spine || !book.margin ? [] : [size("margin", book.margin, "floor outside the first and the last stub")]),
  ];
}

/** Enters every given value of a stub album; what is computed later finds it by name. */
export function enterMaterials(definition: Definition<"stub-album">, ledger: Ledger): void {
  const { book, materials, adhesives } = definition;
  const origin = (path: string): ValueOrigin => originAt(definition, path);
  const give = (name: string, quantity: Length | number, path: string, meaning: string, source = ""): void =>
    ledger.give(name, quantity, origin(path), { meaning, source });

  give("stubs", book.stubs, "book/stubs", "number of stubs, each a double leaf");
  for (const size of governingSizes(definition)) enterOnMark(ledger, size, definition.units.step);
  give("floor ease", book["floor ease"], "book/floor ease", "how much wider than the folded floor the spine strip is, before rounding", "common practice, no source");
  give("board height", book.boards.height, "book/boards/height", "ready-made board, along the spine");
  give("board width", book.boards.width, "book/boards/width", "ready-made board, across the spine");
  give("height clearance", book["height clearance"], "book/height clearance", "how much shorter than the boards the card and the strips are");
  give("side strip width", book["side strip"], "book/side strip", "the part of the hinge that is glued over a board",
    "Bean & Brodhead 1918, Problem VIII A, asks 3/4 to 1 in for a hinge strip");
  give("turn in", book["turn in"], "book/turn in", "cloth turned over the edges of the hinge",
    "Roberts & Etherington, \"cover turned-in\": 5/8 in in library binding");
  give("square", book.pages.square, "book/pages/square", "how far the boards reach beyond the pages",
    "Bean & Brodhead 1918, Problem VIII A: about 1/8 in");
  give("adhesive clearance", book.pages["adhesive clearance"], "book/pages/adhesive clearance",
    "how far the adhesive keeps away from a stub's crest, so that none oozes out", "common practice, no source");

  const layers: readonly Layer[] = [
    ["card thickness", "card", "caliper of the card"],
    ["strip board thickness", "strip board", "caliper of the hinge's strips"],
    ["cloth thickness", "cloth", "caliper of the hinge cloth"],
    ["page paper thickness", "page paper", "caliper of one page paper"],
    ["lining paper thickness", "lining paper", "caliper of the lining paper"],
  ];
  giveThicknesses(layers.filter(([, role]) => role !== "lining paper" || book.lining), materials, ledger);
  ledger.give("board thickness", book.boards.thickness, origin("book/boards/thickness"), { meaning: "ready-made board", shownAs: "thickness", source: "" });

  const glues: readonly (readonly [name: string, job: string])[] = [
    ["stub adhesive thickness", "stubs"], ["hinge adhesive thickness", "hinge"], ["board adhesive thickness", "boards"],
    ["floor adhesive thickness", "floor"], ["page adhesive thickness", "pages"], ["lining adhesive thickness", "lining"],
  ];
  giveAdhesiveLayers(glues.filter(([, job]) => job !== "lining" || book.lining), adhesives, ledger);
}
