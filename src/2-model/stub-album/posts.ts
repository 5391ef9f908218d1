// The screw posts: length chosen against the stack, holes placed by name along the side strips.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, compareLengths, isLess, multiplyLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { runningMarks } from "../../units/rounding.ts";
import type { Ledger } from "../ledger.ts";
import type { Hole } from "../types.ts";
import type { StubAlbumGeometry } from "./geometry.ts";

/**
 * Chooses the post and places the holes. Strips and boards are pierced together, so a hole stands at the same place in both:
 * in the board it lies further from the head by half the difference of their heights.
 */
export function placePosts(definition: Definition<"stub-album">, ledger: Ledger): { readonly geometry: StubAlbumGeometry["posts"]; readonly holes: readonly Hole[] } {
  const { posts, lining } = definition.book;
  const origin = (key: string) => (definition.defaulted.has(`book/posts/${key}`) ? "default" : "given");
  ledger.give("posts", posts.count, origin("count"), { meaning: "screw posts in each cover", source: "" });
  ledger.give("post barrel", posts.barrel, origin("barrel"), { meaning: "diameter of a post's barrel", source: "", shownAs: "thickness" });
  ledger.give("hole clearance", posts.clearance, origin("clearance"), { meaning: "how much wider than the barrel a hole is", source: "common practice, no source", shownAs: "thickness" });
  const liningTerms = lining ? " + lining paper thickness + lining adhesive thickness" : "";
  ledger.compute("post stack", `hinge stack + 2 * cloth thickness + 2 * hinge adhesive thickness${liningTerms}`,
    { meaning: "all layers a post goes through: strip, board, two layers of cloth and the adhesive" + (lining ? ", lining" : ""), source: "geometry", shownAs: "thickness", measureYours: true });
  ledger.compute("hole diameter", "post barrel + hole clearance", { meaning: "hole for a post", source: "common practice, no source", shownAs: "thickness" });

  const stack = ledger.length("post stack");
  const length = [...posts.lengths].sort(compareLengths).find((each) => !isLess(each, stack)) ?? null;
  if (length) {
    ledger.choose("post length", length, "the shortest post to be had that is not shorter than the post stack",
      { meaning: "inside length of the posts", source: "common practice, no source" });
  }
  if (posts["end distance"]) {
    ledger.give("post end distance", posts["end distance"], "given", { meaning: "end of the strip to the first hole", source: "" });
  } else {
    ledger.compute("post end distance", "up(strip height / 6)",
      { meaning: "end of the strip to the first hole", source: "Bean & Brodhead 1918, Problem VIII A: one fifth to one sixth of the hinge strip from its end" });
  }
  ledger.compute("post pitch", "(strip height - 2 * post end distance) / (posts - 1)", { meaning: "from hole to hole", source: "geometry" });
  ledger.compute("post across", "nearest(side strip width / 2)",
    { meaning: "spine-side edge of strip and board to the middle of a hole", source: "Bean & Brodhead 1918, Problem VIII A: midway across the strip" });

  const along = runningMarks(Array.from({ length: posts.count }, (_, k) =>
    addLengths(ledger.length("post end distance"), multiplyLength(ledger.length("post pitch"), k))), definition.units.step);
  const geometry = {
    count: posts.count,
    barrel: posts.barrel,
    holeDiameter: ledger.length("hole diameter"),
    stack,
    length,
    endDistance: ledger.length("post end distance"),
    along,
    across: ledger.length("post across"),
  };
  return { geometry, holes: holesOf(geometry, ledger) };
}

function holesOf(posts: StubAlbumGeometry["posts"], ledger: Ledger): readonly Hole[] {
  const inset = multiplyLength(addLengths(ledger.length("board height"), multiplyLength(ledger.length("strip height"), -1)), { n: 1n, d: 2n });
  const place = (side: string, part: string, shift: (along: Length) => Length): readonly Hole[] =>
    posts.along.map((along, k) => ({
      id: `${side}-${holeName(k, posts.count)}`, part, along: shift(along), across: posts.across, diameter: posts.holeDiameter,
    }));
  return ["front", "back"].flatMap((side) => [
    ...place(side, "side-strip", (along) => along),
    ...place(side, "boards", (along) => addLengths(along, inset)),
  ]);
}

/** Holes are named by where they are: head, tail, and between them middle or second, third … from the head. */
function holeName(k: number, count: number): string {
  if (k === 0) return "head";
  if (k === count - 1) return "tail";
  return count === 3 ? "middle" : (["second", "third", "fourth", "fifth", "sixth", "seventh"][k - 1] ?? `number-${k + 1}`);
}
