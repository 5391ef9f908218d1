// Screw posts, for every binding that has them: length chosen against the layers, extensions, places along the hinge, and what can be wrong.
import { holeSteps } from "../catalogue/posts.ts";
import { addLengths, compareLengths, isLess, mm, multiplyLength, noLength, ratioOf, roundUpToMark, subtractLength } from "../units/length.ts";
import type { Length, Unit } from "../units/length.ts";
import { printLength, printThickness } from "../units/print-length.ts";
import type { LengthStyle } from "../units/print-length.ts";
import { floorRational } from "../units/rational.ts";
import { runningMarks } from "../units/rounding.ts";
import type { Ledger } from "./ledger.ts";
import type { Finding, ValueOrigin } from "./types.ts";

/** A post and what is screwed on to make it longer, longest first; `reach` is all of them together. */
export interface PostChoice {
  readonly post: Length;
  readonly extensions: readonly Length[];
  readonly reach: Length;
}

/** Most extensions on one post: a longer chain bends. Common practice, no source. */
export const mostExtensions = 4;

/** The names under which a book's extensions stand in the ledger, in the order in which they are screwed on. */
export const extensionNames = ["first extension", "second extension", "third extension", "fourth extension"] as const;

/**
 * The shortest post that is not shorter than the layers. Only where they are thicker than the longest post are extensions added:
 * then the shortest sum that is not shorter than the layers, of equal ones that with the fewest pieces, then that with the longest post.
 * Null when even the longest chain is too short.
 */
export function choosePost(stack: Length, lengths: readonly Length[], extensions: readonly Length[]): PostChoice | null {
  const posts = [...lengths].sort(compareLengths);
  const single = posts.find((post) => !isLess(post, stack));
  if (single) return { post: single, extensions: [], reach: single };
  let best: PostChoice | null = null;
  for (const chain of chainsOf([...extensions].sort((a, b) => compareLengths(b, a)), mostExtensions)) {
    const chainLength = chain.reduce((sum, each) => addLengths(sum, each), noLength);
    const post = posts.find((each) => !isLess(addLengths(each, chainLength), stack));
    if (!post) continue;
    const choice = { post, extensions: chain, reach: addLengths(post, chainLength) };
    if (!best || isBetter(choice, best)) best = choice;
  }
  return best;
}

/** Every way to take one to `most` extensions, the same one as often as wished, each way longest first. */
function* chainsOf(extensions: readonly Length[], most: number): Generator<readonly Length[]> {
  for (const [index, extension] of extensions.entries()) {
    yield [extension];
    if (most > 1) for (const rest of chainsOf(extensions.slice(index), most - 1)) yield [extension, ...rest];
  }
}

function isBetter(a: PostChoice, b: PostChoice): boolean {
  const byReach = compareLengths(a.reach, b.reach);
  if (byReach !== 0) return byReach < 0;
  if (a.extensions.length !== b.extensions.length) return a.extensions.length < b.extensions.length;
  return isLess(b.post, a.post);
}

/** What a definition says about posts. */
export interface PostsWanted {
  readonly count: number;
  readonly barrel: Length;
  readonly clearance: Length;
  readonly "end distance": Length | null;
  readonly lengths: readonly Length[];
}

/** Enters count, barrel, play and the diameter of the hole; with a unit, the hole is the next size in which bits and punches are sold in it. */
export function enterPosts(ledger: Ledger, posts: PostsWanted, origin: (key: string) => ValueOrigin, countMeaning: string, soldIn?: Unit): void {
  ledger.give("posts", posts.count, origin("count"), { meaning: countMeaning, source: "" });
  ledger.give("post barrel", posts.barrel, origin("barrel"), { meaning: "diameter of a post's barrel", source: "", shownAs: "thickness" });
  ledger.give("hole clearance", posts.clearance, origin("clearance"), { meaning: "how much wider than the barrel a hole is", source: "common practice, no source", shownAs: "thickness" });
  const note = { source: "common practice, no source", shownAs: "thickness" } as const;
  if (!soldIn) {
    ledger.compute("hole diameter", "post barrel + hole clearance", { ...note, meaning: "hole for a post" });
    return;
  }
  const least = ledger.compute("least hole", "post barrel + hole clearance", { ...note, meaning: "the narrowest hole in which a post has its play" });
  ledger.choose("hole diameter", roundUpToMark(least, holeSteps[soldIn]), `the next size in which drill bits and hollow punches are sold, in steps of ${soldIn === "in" ? "1/64 in" : "0.5 mm"}, from the least hole up`,
    { ...note, meaning: "hole for a post, and the bit or punch that makes it", dependsOn: ["least hole"] });
}

/**
 * Enters how much too long the posts are, and how many washers of a layer in hand fit into that under each cap. None is added beyond what
 * fits, so that the caps always find their thread. Call it after a post was chosen; returns the washers for each post.
 */
export function enterWashers(ledger: Ledger, layer: string): number {
  ledger.compute("post slack", `${ledger.values.has("post reach") ? "post reach" : "post length"} - post stack`,
    { meaning: "how much longer than the layers a post is", source: "geometry", shownAs: "thickness" });
  const [slack, thickness] = [ledger.length("post slack"), ledger.length(layer)];
  const count = isLess(noLength, thickness) ? Number(floorRational(ratioOf(slack, thickness))) : 0;
  ledger.give("washers for each post", count, "computed", { meaning: `as many as fit into the slack, each one ${layer}`, source: "common practice, no source" });
  return count;
}

/** Chooses the post for the value `post stack` and enters it, with its extensions where it needs some; null when none is long enough. */
export function enterPostChoice(ledger: Ledger, lengths: readonly Length[], extensions: readonly Length[]): PostChoice | null {
  const choice = choosePost(ledger.length("post stack"), lengths, extensions);
  if (!choice) return null;
  const shared = { source: "common practice, no source", dependsOn: ["post stack"] };
  if (choice.extensions.length === 0) {
    ledger.choose("post length", choice.post, "the shortest post to be had that is not shorter than the post stack", { ...shared, meaning: "inside length of the posts" });
    return choice;
  }
  const rule = "with the other pieces the shortest sum to be had that is not shorter than the post stack, which is thicker than the longest post";
  ledger.choose("post length", choice.post, rule, { ...shared, meaning: "inside length of the posts without their extensions" });
  choice.extensions.forEach((extension, index) => ledger.choose(extensionNames[index]!, extension, rule, { ...shared, meaning: "extension screwed into each post" }));
  ledger.compute("post reach", ["post length", ...extensionNames.slice(0, choice.extensions.length)].join(" + "), { meaning: "inside length of a post with its extensions", source: "geometry" });
  return choice;
}

/** Along what the posts stand: values of the ledger, and words for the appendix. */
export interface PostLine {
  /** The value that is the length of the row: "strip height". */
  readonly height: string;
  /** The value in whose middle the row stands: "side strip width". */
  readonly width: string;
  readonly endMeaning: string;
  readonly acrossMeaning: string;
}

/** Where the holes are: from the head of the row, each rounded once, and from the spine-side edge. */
export interface PostPlaces {
  readonly endDistance: Length;
  readonly along: readonly Length[];
  readonly across: Length;
}

/** Places the holes evenly between two equal end distances, midway across. */
export function placePostRow(ledger: Ledger, posts: PostsWanted, row: PostLine, step: Length): PostPlaces {
  if (posts["end distance"]) {
    ledger.give("post end distance", posts["end distance"], "given", { meaning: row.endMeaning, source: "" });
  } else {
    ledger.compute("post end distance", `up(${row.height} / 6)`,
      { meaning: row.endMeaning, source: "Bean & Brodhead 1918, Problem VIII A: one fifth to one sixth of the hinge strip from its end" });
  }
  ledger.compute("post pitch", `(${row.height} - 2 * post end distance) / (posts - 1)`, { meaning: "from hole to hole", source: "geometry" });
  ledger.compute("post across", `nearest(${row.width} / 2)`, { meaning: row.acrossMeaning, source: "Bean & Brodhead 1918, Problem VIII A: midway across the strip" });
  const [end, pitch] = [ledger.length("post end distance"), ledger.length("post pitch")];
  const exact = Array.from({ length: posts.count }, (_, k) => addLengths(end, multiplyLength(pitch, k)));
  return { endDistance: end, along: runningMarks(exact, step), across: ledger.length("post across") };
}

/** Holes are named by where they are: head, tail, and between them middle or second, third … from the head. */
export function holeName(k: number, count: number): string {
  if (k === 0) return "head";
  if (k === count - 1) return "tail";
  return count === 3 ? "middle" : (["second", "third", "fourth", "fifth", "sixth", "seventh"][k - 1] ?? `number-${k + 1}`);
}

/** What is looked at for faults of the posts. */
export interface PostEvidence {
  readonly units: LengthStyle;
  readonly lengths: readonly Length[];
  readonly extensions: readonly Length[];
  readonly choice: PostChoice | null;
  readonly stack: Length;
  readonly count: number;
  readonly holeDiameter: Length;
  readonly along: readonly Length[];
  readonly endDistance: Length;
  readonly rowHeight: Length;
  /** What to make thinner when no post is long enough: "thinner boards or strips". */
  readonly thinner: string;
}

/** Posts too short or too long for their layers, and holes that run into each other. */
export function findPostFaults({ units, choice, stack, thinner, ...row }: PostEvidence): readonly Finding[] {
  const size = (length: Length) => printLength(length, units);
  const thickness = (length: Length) => printThickness(length, units);
  const found: Finding[] = [];
  if (!choice) {
    const longestPost = [...row.lengths].sort(compareLengths).at(-1)!;
    const longestExtension = [...row.extensions].sort(compareLengths).at(-1);
    const longestChain = longestExtension ? `, with ${mostExtensions} extensions of ${size(longestExtension)} it is ${size(addLengths(longestPost, multiplyLength(longestExtension, mostExtensions)))}` : "";
    found.push({
      code: "post-too-short", severity: "stop", where: "posts", path: "book/posts/lengths",
      message: `the layers are ${thickness(stack)} thick, the longest post to be had is ${size(longestPost)}${longestChain}`,
      consequence: "the post's cap finds no thread",
      remedy: `get posts of at least ${thickness(stack)}, or take ${thinner}`,
    });
  } else if (isLess(addLengths(stack, mm(1)), choice.reach)) {
    found.push({
      code: "post-too-long", severity: "warn", where: "posts", path: "book/posts/lengths",
      message: `the shortest post that goes through is ${size(choice.reach)}, the layers are ${thickness(stack)}: more than 1 mm longer`,
      consequence: "the cover rattles on its posts",
      remedy: `put washers of ${thickness(subtractLength(choice.reach, stack))} in all under the caps, or get posts between ${thickness(stack)} and ${thickness(addLengths(stack, mm(1)))}`,
    });
  }
  const isCrowded = row.along.some((along, k) => k > 0 && !isLess(addLengths(row.along[k - 1]!, row.holeDiameter), along));
  if (isCrowded) {
    found.push({
      code: "posts-too-close", severity: "stop", where: "posts", path: "book/posts/count",
      message: `${row.count} holes of ${thickness(row.holeDiameter)} do not fit on ${size(row.rowHeight)} with ${size(row.endDistance)} free at each end`,
      consequence: "the holes would run into each other",
      remedy: "take fewer posts or a smaller end distance",
    });
  }
  return found;
}
