// Which steps of a book are done before the class meets, and which by the class.
import type { ClassSettings } from "../../1-definition/types.ts";
import type { DraftStep } from "../binding.ts";
import type { Step } from "../types.ts";

/** The steps of a book, shared out between preparing and the class, each in its order. */
export interface ClassSteps {
  readonly beforehand: readonly Step[];
  readonly inClass: readonly Step[];
}

/** Steps that only cut parts out of sheets are done beforehand where the class wants it so: the cut plans take their place. */
export function shareOutSteps(steps: readonly Step[], drafts: readonly DraftStep[], { cutBeforehand }: ClassSettings): ClassSteps {
  const isBeforehand = ({ id }: Step): boolean => cutBeforehand && drafts.find((draft) => draft.id === id)?.cutsParts !== undefined;
  return { beforehand: steps.filter(isBeforehand), inClass: steps.filter((step) => !isBeforehand(step)) };
}
