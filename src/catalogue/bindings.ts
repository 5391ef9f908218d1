// The bindings Benchleaf can make: one line each. A binding's own files in the phases carry its id as their file name.

export const bindings = {
  "stub-album": { name: "stub album", about: "stubs folded from one strip of card, boards joined by a covered hinge, screw posts" },
} as const satisfies Record<string, { name: string; about: string }>;

export type BindingId = keyof typeof bindings;

export const bindingIds = Object.keys(bindings) as readonly BindingId[];
