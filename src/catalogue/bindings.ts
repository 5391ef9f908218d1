// The bindings Benchleaf can make: one line each. A binding's own files in the phases carry its id as their file name.

/** Name and one-line description of each binding, by id. */
export const bindings = {
  "stub-album": { name: "stub album", about: "stubs folded from one strip of card, boards joined by a covered hinge, screw posts" },
  pamphlet: { name: "pamphlet", about: "one section of folded sheets, sewn through the fold into a soft cover" },
  "stab-binding": { name: "stab binding", about: "single or folded leaves, sewn through the side in one of four traditional patterns" },
  "link-stitch": { name: "link stitch", about: "folded sections linked to each other and to two boards by the sewing thread, spine left open" },
  "long-stitch": { name: "long-stitch binding", about: "folded sections sewn through the spine of a soft cover that wraps them, long stitches in sight" },
  "case-binding": { name: "case binding", about: "sections sewn on tapes or leaves glued, lined spine, hard case in full, quarter or half cloth" },
  "post-album": { name: "post album", about: "single leaves side-bound with screw posts, guards between them, covers with a hinge strip" },
  concertina: { name: "concertina", about: "a strip of paper folded zigzag between two covered boards" },
} as const satisfies Record<string, { name: string; about: string }>;

/** Id of a binding: also the name of its files. */
export type BindingId = keyof typeof bindings;

/** The ids in the order in which bindings are offered. */
export const bindingIds = Object.keys(bindings) as readonly BindingId[];
