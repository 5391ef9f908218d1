// The text block of a case binding with everything on it: sewing or glue, endpapers, rounding, linings, endbands, ribbon.
import type { Definition } from "../../1-definition/types.ts";
import { inches, mm, noLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { giveAdhesiveLayers, giveThicknesses, originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { ValueOrigin } from "../types.ts";
import { layOutTextBlock } from "../text-block/block.ts";
import { layOutLeaves } from "../text-block/leaves.ts";
import { placeTapes } from "../text-block/stations.ts";
import type { CaseBindingGeometry } from "./geometry.ts";

/** The part of the geometry that is the text block's. */
export type BlockGeometry = Pick<CaseBindingGeometry,
  "block" | "headTrim" | "sewing" | "endpaperThickness" | "endpaperHeight" | "endpaperWidth" | "endpaperTip" | "backThickness" | "round" | "backWidth"
  | "mull" | "lining" | "endband" | "ribbon">;

type Given = Definition<"case-binding">;

/** Where a value of the book section comes from. */
export function originIn(definition: Given): (path: string) => ValueOrigin {
  return (path) => originAt(definition, `book/${path}`);
}

/**
 * Computes the text block up to its lined spine.
 *
 * Back: each endpaper is a folio tipped on at its fold, so two of its leaves and a line of adhesive lie on either side of the sections.
 * Rounding bends the back into an arc over its thickness T as chord. With the rise h, Pythagoras in the half chord gives
 * R² = (T/2)² + (R − h)², so R = (T²/4 + h²) / (2h), and the arc is R times its angle, 2·R·asin(T / 2R), as long as h is at most T/2.
 */
export function layOutBlock(definition: Given, ledger: Ledger): BlockGeometry {
  const { book, materials, adhesives } = definition;
  const isSewn = book["held by"] === "sewing on tapes";
  const block = isSewn ? layOutTextBlock(definition, book["text block"], ledger) : layOutLeaves(definition, book["text block"], ledger);
  giveThicknesses([
    ["endpaper thickness", "endpaper", "caliper of an endpaper"], ["mull thickness", "mull", "caliper of the mull"],
    ...(book["spine lining"] ? [["spine lining thickness", "spine lining", "caliper of the spine lining"] as const] : []),
  ], materials, ledger);
  giveAdhesiveLayers([["endpaper adhesive thickness", "endpapers"], ["lining adhesive thickness", "linings"]], adhesives, ledger);
  ledger.give("endpaper tip", book["endpaper tip"], originIn(definition)("endpaper tip"), { meaning: "width of the line of adhesive along the fold of an endpaper", source: "common practice, no source" });
  ledger.compute("endpaper height", isSewn ? "folio height" : "leaf height", { meaning: "an endpaper as cut, along the spine", source: "geometry" });
  ledger.compute("endpaper width", isSewn ? "folio width" : "2 * leaf width", { meaning: "an endpaper as cut, across the spine: two leaves", source: "geometry" });
  ledger.compute("back thickness", "spine thickness + 4 * endpaper thickness + 2 * endpaper adhesive thickness",
    { meaning: "straight across the back: text block, two endpapers of two leaves each and their adhesive", source: "geometry", shownAs: "thickness", measureYours: true });
  const round = book.back === "rounded" ? roundBack(definition, ledger) : null;
  ledger.compute("back width", round ? "spine arc" : "back thickness", { meaning: "along the surface of the back", source: "geometry", shownAs: "thickness" });
  return {
    block,
    headTrim: block.trim === "three edges" ? ledger.length("trim allowance") : noLength,
    sewing: isSewn ? sewOnTapes(definition, ledger) : null,
    endpaperThickness: ledger.length("endpaper thickness"), endpaperHeight: ledger.length("endpaper height"), endpaperWidth: ledger.length("endpaper width"),
    endpaperTip: ledger.length("endpaper tip"),
    backThickness: ledger.length("back thickness"), round, backWidth: ledger.length("back width"),
    ...layOutLinings(definition, ledger),
  };
}

function roundBack({ book }: Given, ledger: Ledger): NonNullable<BlockGeometry["round"]> {
  if (book["back rise"]) ledger.give("back rise", book["back rise"], "given", { meaning: "how far the rounded back rises above its shoulders", source: "" });
  else {
    ledger.compute("back rise", "0.2887 * back thickness",
      { meaning: "how far the rounded back rises above its shoulders", source: "a third of a circle, from memory; geometry: tan 30° ÷ 2 of the chord", shownAs: "thickness" });
  }
  ledger.compute("back radius", "(back thickness * back thickness / 4 + back rise * back rise) / (2 * back rise)", { meaning: "radius of the rounded back", source: "geometry", shownAs: "thickness" });
  ledger.compute("spine arc", "2 * back radius * arcsine(back thickness / (2 * back radius))",
    { meaning: "rounded back from shoulder to shoulder, along its surface", source: "geometry", shownAs: "thickness", measureYours: true });
  return { rise: ledger.length("back rise"), radius: ledger.length("back radius"), arc: ledger.length("spine arc") };
}

function sewOnTapes(definition: Given, ledger: Ledger): NonNullable<BlockGeometry["sewing"]> {
  const { sewing } = definition.book;
  const placed = placeTapes(definition, sewing, "book/sewing", ledger);
  ledger.give("tape on boards", sewing["tape on boards"], originIn(definition)("sewing/tape on boards"),
    { meaning: "how far a tape reaches onto each board", source: "common practice, no source; Bailey 1916 asks at least 1 1/4 in" });
  ledger.compute("tape length", "up(back width + 2 * tape on boards)", { meaning: "one tape, across the spine onto both boards", source: "Adam 1903, ch. II: thickness of the book and a slip on each side" });
  return { ...placed, tapeWidth: ledger.length("tape width"), tapeLength: ledger.length("tape length"), tapeOnBoards: ledger.length("tape on boards") };
}

function layOutLinings(definition: Given, ledger: Ledger): Pick<BlockGeometry, "mull" | "lining" | "endband" | "ribbon"> {
  const { book, units } = definition;
  const origin = originIn(definition);
  ledger.give("mull on boards", book.mull["on boards"], origin("mull/on boards"), { meaning: "mull on each endpaper", source: "Bean & Brodhead 1918, Problem XIV, and Brown 1921: about 1 in" });
  ledger.give("mull short", book.mull["short at ends"], origin("mull/short at ends"), { meaning: "how far the mull stays from head and tail", source: "Bailey 1916: 1/2 in" });
  ledger.compute("mull height", "down(page height - 2 * mull short)", { meaning: "mull, along the spine", source: "geometry" });
  ledger.compute("mull width", "up(back width + 2 * mull on boards)", { meaning: "mull, across the spine", source: "geometry" });
  if (book["spine lining"]) {
    ledger.compute("spine lining height", "down(page height)", { meaning: "paper lining of the spine, along the spine", source: "geometry" });
    ledger.compute("spine lining width", "down(back width)", { meaning: "paper lining of the spine, across it", source: "geometry" });
  }
  if (book.endbands) ledger.compute("endband length", "down(back width)", { meaning: "one of two endbands, across the back", source: "geometry" });
  if (book.ribbon) {
    const width: Length = units.governing === "in" ? inches(1, 4) : mm(6);
    ledger.give("ribbon width", width, "default", { meaning: "width of the ribbon", source: "common practice, no source" });
    ledger.compute("ribbon length", "up(root(page height * page height + page width * page width) + 50 mm)", { meaning: "page diagonal and a tail", source: "common practice, no source" });
  }
  return {
    mull: {
      height: ledger.length("mull height"), width: ledger.length("mull width"), onBoards: ledger.length("mull on boards"), short: ledger.length("mull short"),
      thickness: ledger.length("mull thickness"),
    },
    lining: book["spine lining"]
      ? { height: ledger.length("spine lining height"), width: ledger.length("spine lining width"), thickness: ledger.length("spine lining thickness") }
      : null,
    endband: book.endbands ? ledger.length("endband length") : null,
    ribbon: book.ribbon ? { length: ledger.length("ribbon length"), width: ledger.length("ribbon width") } : null,
  };
}
