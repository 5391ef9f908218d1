// The posts of one book, with the extensions that are screwed into them: one count for the booklet, the order and the kit.
import { extensionNames } from "../2-model/posts.ts";
import type { Model } from "../2-model/types.ts";
import { sameLength } from "../units/length.ts";
import type { Length } from "../units/length.ts";

/** The posts of one book. */
export interface PostsOfBook {
  readonly count: number;
  readonly barrel: Length;
  readonly length: Length;
  /** Extensions by their length, each with how many the whole book takes. */
  readonly extensions: readonly { readonly length: Length; readonly count: number }[];
}

/** The posts of a book; null for a binding without posts. */
export function postsOf({ values, holes }: Model): PostsOfBook | null {
  const lengthOf = (name: string): Length | null => (values.get(name)?.quantity.value as Length | undefined) ?? null;
  const [length, barrel] = [lengthOf("post length"), lengthOf("post barrel")];
  const count = new Set(holes.map((hole) => hole.id)).size;
  if (!length || !barrel || count === 0) return null;
  const chain = extensionNames.map(lengthOf).filter((each) => each !== null);
  const sizes = chain.filter((each, index) => chain.findIndex((other) => sameLength(each, other)) === index);
  return { count, barrel, length, extensions: sizes.map((size) => ({ length: size, count: count * chain.filter((each) => sameLength(each, size)).length })) };
}
