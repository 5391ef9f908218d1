// Where adhesive is laid: whole faces of parts, turn-ins along their edges, and lines. Amounts of a class are added up from these.
import type { Model } from "../../2-model/types.ts";
import type { Length } from "../../units/length.ts";

/** A surface that is covered with adhesive, so many times in one book. */
export interface Spread {
  readonly height: Length;
  readonly width: Length;
  readonly count: number;
}

/** The whole face of every piece of a part; nothing for a part that this book does not have. */
export function facesOf(model: Pick<Model, "parts">, id: string): readonly Spread[] {
  return model.parts.filter((part) => part.id === id).map(({ height, width, count }) => ({ height, width, count }));
}

/** A band as wide as the turn-in along the edges of every piece of a part: all four, or head and tail alone. */
export function turnInsOf(model: Pick<Model, "parts">, id: string, turnIn: Length, edges: "all" | "head and tail" = "all"): readonly Spread[] {
  return model.parts.filter((part) => part.id === id).flatMap(({ height, width, count }) => [
    { height: turnIn, width, count: 2 * count },
    ...(edges === "all" ? [{ height, width: turnIn, count: 2 * count }] : []),
  ]);
}

/** One line or zone, so many times. */
export function zone(height: Length, width: Length, count = 1): readonly Spread[] {
  return [{ height, width, count }];
}
