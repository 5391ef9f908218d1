// The wrap cover: height and developed width from the sections, the bends of the cover counted, its folds and its reinforcement.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, divideLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { giveAdhesiveLayers, giveThicknesses, originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { CoverFold, LongStitchGeometry } from "./geometry.ts";

type CoverGeometry = Pick<LongStitchGeometry,
  "square" | "ease" | "coverThickness" | "coverHeight" | "coverWidth" | "frontWidth" | "spineWidth" | "backWidth" | "flap" | "folds" | "strip">;

/**
 * Computes the cover, laid flat.
 *
 * Bends: at each fold the cover, c thick, turns by a right angle about its inner edge. Its middle runs a quarter circle of radius c/2,
 * (π/4)·c, which comes on top of the two inner sizes; the score lies in the middle of it, so that each side of a fold takes (π/8)·c.
 * Front, inside: from the backs of the folds, which lie against the spine or its reinforcement, to the fore-edge and a square beyond.
 * Spine, inside: the sewn sections and the ease. Wall of a flap, inside: what lies at the fore-edge, block and front cover, and the ease.
 * Front and back are rounded up, because pages must not stick out. Spine and wall go to the nearest mark, but are never narrower than what
 * they hold: the ease has room for half a step, and a spine a whole step too wide lets the sections slide. Folds are sums of rounded widths.
 */
export function makeCover(definition: Definition<"long-stitch">, ledger: Ledger): CoverGeometry {
  const { cover } = definition.book;
  giveSizes(definition, ledger);
  ledger.compute("bend", "0.7854 * cover thickness", { meaning: "what the cover's thickness takes at a fold of a right angle", source: "geometry: a quarter circle in the middle of the thickness, 0.7854 is π ÷ 4", shownAs: "thickness" });
  ledger.compute("cover height", "up(page height + 2 * square)", { meaning: "cover, along the spine: a square at head and tail", source: "geometry" });
  const layer = cover.reinforced ? "spine strip thickness + spine strip adhesive thickness + " : "";
  ledger.compute("cover reach", `${layer}block width + square`, { meaning: "inside a shut cover, from the spine to the fore-edge of the front", source: "geometry", shownAs: "thickness" });
  ledger.compute("front width", "up(cover reach + bend / 2)", { meaning: "front cover, from its edge to the fold", source: "geometry" });
  ledger.compute("spine width", "max(nearest(spine thickness + ease + bend), up(spine thickness + bend))",
    { meaning: "between the two folds of the spine, flat", source: "D. W. Jones 1995: the clamped sections and one compressed thread for each; ease and bend: geometry" });
  ledger.compute("back width", cover.flap === "wrap" ? "up(cover reach + bend)" : "up(cover reach + bend / 2)",
    { meaning: cover.flap === "wrap" ? "back cover, from the fold of the spine to the fold at the fore-edge" : "back cover, from the fold to its edge", source: "geometry" });
  const strip = cover.reinforced ? makeStrip(definition, ledger) : null;
  if (cover.flap === "wrap") makeFlap(definition, ledger);
  ledger.compute("cover width", cover.flap === "wrap" ? "front width + spine width + back width + wall width + flap width" : "front width + spine width + back width",
    { meaning: "cover, flat, across the spine", source: "geometry" });
  const at = (name: string): Length => ledger.length(name);
  const folds = foldsOf(at, cover.flap === "wrap");
  return {
    square: at("square"), ease: at("ease"), coverThickness: at("cover thickness"), coverHeight: at("cover height"), coverWidth: at("cover width"),
    frontWidth: at("front width"), spineWidth: at("spine width"), backWidth: at("back width"),
    flap: cover.flap === "wrap" ? { wall: at("wall width"), width: at("flap width") } : null,
    folds, strip,
  };
}

function giveSizes(definition: Definition<"long-stitch">, ledger: Ledger): void {
  const { book, materials, adhesives } = definition;
  ledger.give("square", book.cover.square, originAt(definition, "book/cover/square"), { meaning: "how far the cover reaches beyond the pages at head, tail and fore-edge", source: "Bean & Brodhead 1918, Problem I: 1/8 to 1/4 in" });
  ledger.give("ease", book.cover.ease, originAt(definition, "book/cover/ease"), { meaning: "how much wider the spine is than the sewn sections are thick", source: "common practice, no source: 1 to 2 mm" });
  giveThicknesses([["cover thickness", "cover", "caliper of the cover"]], materials, ledger);
  if (!book.cover.reinforced) return;
  giveThicknesses([["spine strip thickness", "spine strip", "caliper of the reinforcement"]], materials, ledger);
  giveAdhesiveLayers([["spine strip adhesive thickness", "spine strip"]], adhesives, ledger);
}

/** The reinforcement lies between the bends, where the spine is flat when the book is shut. */
function makeStrip(definition: Definition<"long-stitch">, ledger: Ledger): NonNullable<LongStitchGeometry["strip"]> {
  ledger.compute("spine strip width", "down(spine width - bend)", { meaning: "reinforcement, across the spine: clear of both bends", source: "geometry" });
  const width = ledger.length("spine strip width");
  return { width, thickness: definition.materials["spine strip"]!.thickness!, inset: divideLength(subtractLength(ledger.length("spine width"), width), 2) };
}

function makeFlap({ book }: Definition<"long-stitch">, ledger: Ledger): void {
  ledger.compute("wall width", "max(nearest(text block thickness + cover thickness + ease + bend), up(text block thickness + cover thickness + bend))", { meaning: "between the two folds at the fore-edge: pages, front cover and ease", source: "geometry" });
  const given = book.cover["flap width"];
  const meaning = "flap, from its fold to its edge";
  if (given) ledger.give("flap width", given, "given", { meaning, source: "" });
  else ledger.compute("flap width", "nearest(front width / 2)", { meaning, source: "common practice, no source: half of the front cover" });
}

function foldsOf(at: (name: string) => Length, hasFlap: boolean): readonly CoverFold[] {
  const front = at("front width");
  const back = addLengths(front, at("spine width"));
  const spine: readonly CoverFold[] = [{ name: "front spine fold", at: front }, { name: "back spine fold", at: back }];
  if (!hasFlap) return spine;
  const wall = addLengths(back, at("back width"));
  return [...spine, { name: "fore-edge fold", at: wall }, { name: "flap fold", at: addLengths(wall, at("wall width")) }];
}

/** Enters the size of the shut book. A flap lies over the front cover, and its wall stands before the fore-edge. */
export function giveFinished(hasFlap: boolean, ledger: Ledger): void {
  ledger.compute("finished width", hasFlap ? "nearest(cover reach + 2 * cover thickness)" : "nearest(cover reach + cover thickness)", { meaning: "the shut book, spine to fore-edge", source: "geometry" });
  ledger.compute("finished thickness", `nearest(spine thickness + ease + ${hasFlap ? 3 : 2} * cover thickness)`, { meaning: hasFlap ? "the shut book with its flap" : "the shut book at the spine", source: "geometry" });
}
