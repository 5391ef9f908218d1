// The lines that are drawn on a part before another part is laid on it.
import type { Part, PlacementLine } from "../2-model/types.ts";

/** The placement lines of a part in one direction, in the order in which it has them. */
export function placementLines(parts: readonly Part[], partId: string, direction: PlacementLine["direction"]): readonly PlacementLine[] {
  return parts.find((part) => part.id === partId)!.features.filter((feature): feature is PlacementLine => feature.kind === "placement line" && feature.direction === direction);
}
