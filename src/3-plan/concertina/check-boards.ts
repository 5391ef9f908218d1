// The check of the printed templates, and with the same ruler of the boards that were just cut.
import { checkPrint } from "../bench/preparation.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** Boards are cut, not bought: one that is off is cut again. */
export function checkBoards(context: PlanContext<"concertina">): DraftStep {
  const { model, say } = context;
  const boards = model.parts.find((part) => part.id === "boards")!;
  const shared = checkPrint(context, "boards");
  return {
    ...shared,
    action: [
      `Measure a board: it must be ${say.sizes(boards.height, boards.width)} and ${say.about(say.thickness(boards.thickness))} thick. If one is off, cut it anew as in the step before.`,
      ...shared.action.slice(1),
    ],
  };
}
