// What materials look like when filled: told apart by tone and hatching, never by colour.

/**
 * A filled area: the material it shows. `plate` is plain white behind a label; `arrow` the black of arrowheads and dots.
 * The `face` tones are for surfaces seen whole, in plan and pictorial views, where hatching would say "cut through".
 */
export type FillKind =
  | "none" | "paper" | "card" | "board" | "strip" | "cloth" | "adhesive" | "tape" | "metal" | "solid" | "plate" | "arrow"
  | "face-light" | "face-middle" | "face-dark" | "face-deep";

/** How a fill looks in print, without colour. */
export interface FillLook {
  readonly tone: string;
  /** Hatching drawn as real lines over the tone: angle and spacing in millimetres; several sets cross. */
  readonly hatching: readonly { readonly angleDegrees: number; readonly spacing: number }[];
  readonly meaning: string;
}

/** Tones are at least 10 % apart, so that a poor printer still keeps them apart; hatching does the rest. */
export const fillLooks: Readonly<Record<Exclude<FillKind, "none">, FillLook>> = {
  paper: { tone: "#fff", hatching: [], meaning: "paper" },
  card: { tone: "#e4e4e4", hatching: [], meaning: "card" },
  board: { tone: "#fff", hatching: [{ angleDegrees: 45, spacing: 2 }], meaning: "board" },
  strip: { tone: "#fff", hatching: [{ angleDegrees: -45, spacing: 1.4 }], meaning: "strip of board" },
  cloth: { tone: "#d0d0d0", hatching: [{ angleDegrees: 0, spacing: 1 }, { angleDegrees: 90, spacing: 1 }], meaning: "cloth" },
  adhesive: { tone: "#555", hatching: [], meaning: "adhesive" },
  tape: { tone: "#fff", hatching: [{ angleDegrees: 90, spacing: 0.8 }], meaning: "tape" },
  metal: { tone: "#999", hatching: [], meaning: "metal" },
  // Black, as a cut layer too thin for hatching is drawn; the scene keeps it apart from arrowheads.
  solid: { tone: "#222", hatching: [], meaning: "card, cut through" },
  plate: { tone: "#fff", hatching: [], meaning: "" },
  arrow: { tone: "#000", hatching: [], meaning: "" },
  "face-light": { tone: "#f1f1f1", hatching: [], meaning: "" },
  "face-middle": { tone: "#d6d6d6", hatching: [], meaning: "" },
  "face-dark": { tone: "#b0b0b0", hatching: [], meaning: "" },
  "face-deep": { tone: "#6b6b6b", hatching: [], meaning: "" },
};

/** Width and grey of hatching strokes: thinner than any line that means something. */
export const hatchStroke = { width: 0.13, colour: "#555" } as const;
