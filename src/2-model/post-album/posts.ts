// The posts through leaves, guards and covers: length, extensions where needed, holes by name in every part.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, compareLengths, divideLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import { enterPostChoice, enterPosts, holeName, placePostRow } from "../posts.ts";
import type { Hole } from "../types.ts";
import type { PostAlbumGeometry } from "./geometry.ts";

type PostGeometry = Pick<PostAlbumGeometry, "posts" | "coverAtHinge" | "turnInAtPost">;

/**
 * Places the holes and chooses the posts. A hole bears one name in all parts it goes through: `head` is the hole next to the head in leaf,
 * guard and hinge strip. In the hinge strip it lies further from the head by half the difference of the heights.
 */
export function placePosts(definition: Definition<"post-album">, ledger: Ledger): { readonly geometry: PostGeometry; readonly holes: readonly Hole[] } {
  const { posts } = definition.book;
  enterPosts(ledger, posts, (key) => originAt(definition, `book/posts/${key}`), "screw posts through the book");
  const places = placePostRow(ledger, posts, {
    height: "leaf height", width: "hinge width", endMeaning: "head of the leaf to the first hole, and tail to the last", acrossMeaning: "spine edge of leaf, guard and hinge strip to the middle of a hole",
  }, definition.units.step);

  // The turn-in goes over the edge first; what is left of it lies on the inside and may reach the post.
  const turnedIn = subtractLength(ledger.length("turn in"), ledger.length("board thickness"));
  const turnInAtPost = compareLengths(turnedIn, subtractLength(places.across, divideLength(ledger.length("hole diameter"), 2))) > 0;
  const turnIn = turnInAtPost ? " + cover adhesive thickness + cloth thickness" : "";
  ledger.compute("cover at hinge", `cloth thickness + cover adhesive thickness + board thickness${turnIn} + hinge adhesive thickness + cloth thickness`,
    { meaning: `one cover at the posts: cloth, hinge strip${turnInAtPost ? ", turn-in" : ""}, hinge lining and the adhesive`, source: "geometry", shownAs: "thickness", measureYours: true });
  ledger.compute("post stack", "leaf stack + 2 * cover at hinge", { meaning: "all layers a post goes through: leaves, guards and both covers", source: "geometry", shownAs: "thickness", measureYours: true });
  const choice = enterPostChoice(ledger, posts.lengths, posts.extensions);

  ledger.compute("finished height", "nearest(cover height + 2 * (cover adhesive thickness + cloth thickness))", { meaning: "the shut book, along the spine", source: "geometry" });
  ledger.compute("finished width", "nearest(hinge width + joint gap + board width + 2 * (cover adhesive thickness + cloth thickness))", { meaning: "the shut book, spine to fore-edge", source: "geometry" });
  ledger.compute("finished thickness", "nearest(max(post stack, post stack + wedge))", { meaning: "the shut book when it is full, post heads left out", source: "geometry" });
  const geometry: PostGeometry = {
    coverAtHinge: ledger.length("cover at hinge"), turnInAtPost,
    posts: {
      ...places, count: posts.count, barrel: posts.barrel, head: posts.head, holeDiameter: ledger.length("hole diameter"), stack: ledger.length("post stack"), choice,
      coverShift: divideLength(subtractLength(ledger.length("cover height"), ledger.length("leaf height")), 2),
    },
  };
  return { geometry, holes: holesOf(geometry.posts, ledger.number("guard strips").n > 0n) };
}

function holesOf(posts: PostAlbumGeometry["posts"], hasGuards: boolean): readonly Hole[] {
  const place = (part: string, shift: (along: Length) => Length): readonly Hole[] =>
    posts.along.map((along, k) => ({ id: holeName(k, posts.count), part, along: shift(along), across: posts.across, diameter: posts.holeDiameter }));
  return [
    ...place("hinge-strip", (along) => addLengths(along, posts.coverShift)),
    ...place("leaf", (along) => along),
    ...(hasGuards ? place("guard", (along) => along) : []),
  ];
}
