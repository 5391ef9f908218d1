// The screw posts: length chosen against the stack, holes placed by name along the side strips.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, multiplyLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import { enterPostChoice, enterPosts, enterWashers, holeName, placePostRow } from "../posts.ts";
import type { Hole } from "../types.ts";
import type { StubAlbumGeometry } from "./geometry.ts";

/**
 * Chooses the post and places the holes. Strips and boards are pierced together, so a hole stands at the same place in both:
 * in the board it lies further from the head by half the difference of their heights.
 */
export function placePosts(definition: Definition<"stub-album">, ledger: Ledger): { readonly geometry: StubAlbumGeometry["posts"]; readonly holes: readonly Hole[] } {
  const { posts, lining } = definition.book;
  enterPosts(ledger, posts, (key) => originAt(definition, `book/posts/${key}`), "screw posts in each cover", definition.units.governing);
  const liningTerms = lining ? " + lining paper thickness + lining adhesive thickness" : "";
  ledger.compute("post stack", `hinge stack + 2 * cloth thickness + 2 * hinge adhesive thickness${liningTerms}`,
    { meaning: "all layers a post goes through: strip, board, two layers of cloth and the adhesive" + (lining ? ", lining" : ""), source: "geometry", shownAs: "thickness", measureYours: true });
  const choice = enterPostChoice(ledger, posts.lengths, []);
  const washers = choice ? enterWashers(ledger, "card thickness") : 0;
  const places = placePostRow(ledger, posts, {
    height: "strip height", width: "side strip width", endMeaning: "end of the strip to the first hole", acrossMeaning: "spine-side edge of strip and board to the middle of a hole",
  }, definition.units.step);
  const geometry = {
    count: posts.count, barrel: posts.barrel, holeDiameter: ledger.length("hole diameter"), stack: ledger.length("post stack"), length: choice?.post ?? null,
    slack: choice ? ledger.length("post slack") : null, washers, ...places,
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
