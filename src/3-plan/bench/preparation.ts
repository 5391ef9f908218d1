// The first steps of most bindings: check the printed templates against a part in hand, cut the parts.
import type { BindingId } from "../../catalogue/bindings.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** The step that checks the templates and, with the same ruler, a part that was bought or cut: `part` is its id. */
export function checkPrint({ model, say }: PlanContext<BindingId>, partId: string): DraftStep {
  const part = model.parts.find((each) => each.id === partId)!;
  return {
    id: "check-print", stage: "Prepare", title: `Check the ${part.name} and the templates`,
    action: [
      `Measure one of the ${part.name}: it must be ${say.sizes(part.height, part.width)} and ${say.thickness(part.thickness)} thick. If yours differ, stop here: the sizes in this booklet do not fit them.`,
      "Print the templates at 100 %, with every “fit to page” setting off.",
      "Lay a steel ruler on the two check lines of each template sheet: the upper one must measure 100 mm, the lower one 4 in.",
    ],
    parts: [partId], tools: ["ruler"], minutes: 5, cautions: [], figure: "scale-check",
    check: `Both check lines agree with the ruler to the width of a pencil line, and the ${part.name} have the printed size.`,
    mistake: { sign: "A check line is too short or too long.", repair: "The printer scaled the sheet. Print again at 100 %; throw the wrong sheet away before anybody uses it." },
  };
}

/** The step that cuts every part that is not bought ready-made; `agree` says which sizes must come out alike, `spoils` what a short part spoils; `minutes` where sheets are cut in stacks. */
export function cutParts({ model }: PlanContext<BindingId>, { agree, spoils, minutes }: { readonly agree: string; readonly spoils: string; readonly minutes?: number }): DraftStep {
  const parts = model.parts.filter((part) => !part.readyMade);
  const pieces = parts.reduce((sum, part) => sum + part.count, 0);
  return {
    id: "cut-parts", stage: "Prepare", title: "Cut the parts",
    action: [
      "Find the grain of each sheet: bend it gently both ways; it bends more easily along the grain. Draw an arrow along the grain.",
      "Cut every part in the list with the arrow along its height (the first number). Write its letter on it in pencil.",
      "Cut a true edge first and measure every size from that edge.",
      "Test each pair: lay one piece on the other, then turn one over; any error shows doubled.",
    ],
    parts: parts.map((part) => part.id),
    tools: ["pencil", "ruler", "triangle", "knife", "mat", "scissors"],
    minutes: minutes ?? 15 + 2 * pieces,
    cautions: ["knife", "boardCutter", "scissors", "paperEdge"],
    figure: "cut-parts",
    check: `Each pair of equal parts matches edge to edge, and again with one of them turned over. ${agree}`.trim(),
    mistake: { sign: "A part is out of square.", repair: `Cut it again from the true edge; keep the bad piece for a smaller part. ${spoils}`.trim() },
  };
}
