// Steps of covering boards or strips that several bindings share: cutting the corners.
import type { BindingId } from "../../catalogue/bindings.ts";
import type { Length } from "../../units/length.ts";
import { compareRational, multiplyRational, rational } from "../../units/rational.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** Whose corners are cut. */
export interface CornerStep {
  readonly stage: string;
  /** What is cut, in the title and the actions: "cloth". */
  readonly stuff: string;
  /** What lies at the corner: "strip", "board". */
  readonly board: string;
  readonly covering: string;
  readonly turnIn: Length;
  /** From the corner of what is covered to the 45° cut, square to it. */
  readonly distance: Length;
  /** How many corners in all: "all four corners". */
  readonly corners: string;
}

/** Whether a cut at this distance meets the covering at all: its corner lies √2 turn-ins away. Compared squared, so that it stays exact. */
export function cutMeetsCovering({ turnIn, distance }: Pick<CornerStep, "turnIn" | "distance">): boolean {
  return compareRational(multiplyRational(distance, distance), multiplyRational(rational(2), multiplyRational(turnIn, turnIn))) < 0;
}

/** The step that cuts the corners of a covering at 45°; thick boards with a short turn-in keep them whole. */
export function cutCorners({ say }: PlanContext<BindingId>, spec: CornerStep): DraftStep {
  const { board, stuff, distance, corners } = spec;
  const isCut = cutMeetsCovering(spec);
  return {
    id: "cut-corners", stage: spec.stage, title: `Cut the corners of the ${stuff}`,
    action: isCut ? [
      `At each corner draw a line at 45°, ${say.thickness(distance)} away from the ${board}’s corner (corner template).`,
      "Cut along the line with scissors.",
    ] : [`The ${board}s are so thick that the cut would pass outside the ${stuff}: leave ${corners} whole and fold them in with the edges.`],
    parts: [spec.covering],
    sizes: [{ label: `${board}’s corner to the cut`, text: say.thickness(distance) }],
    tools: ["pencil", "triangle", "scissors"], minutes: 4, cautions: ["scissors"], figure: "corner-cut",
    check: isCut ? `Between ${board} and cut there is ${stuff} one and a half times as wide as the ${board} is thick, at ${corners}.` : `The ${stuff} is whole at ${corners}.`,
    mistake: { sign: "A corner is cut too close.", repair: `Glue a scrap of the ${stuff} over the corner before turning in; it will hardly show.` },
  };
}
