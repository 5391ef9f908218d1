// The first steps of most bindings: check the printed templates against a part in hand, cut the parts.
import type { BindingId } from "../../catalogue/bindings.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/**
 * The step that checks the templates and, with the same ruler, a part: `part` is its id. Of a part that is there every size is checked,
 * of one that is still to be cut the thickness of its material.
 */
export function checkPrint({ model, say }: PlanContext<BindingId>, partId: string, when: "after cutting" | "before cutting" = "after cutting"): DraftStep {
  const part = model.parts.find((each) => each.id === partId)!;
  const isThere = part.readyMade || when === "after cutting";
  const first = isThere
    ? `Measure one of the ${part.name}: it must be ${say.sizes(part.height, part.width)} and ${say.thickness(part.thickness)} thick. If yours differ, stop here: the sizes given here do not fit them.`
    : `Measure what the ${part.name} will be cut from: it must be ${say.thickness(part.thickness)} thick. If yours is thicker or thinner, stop here: the sizes given here do not fit it.`;
  return {
    id: "check-print", stage: "Prepare", title: `Check the ${part.name} and the templates`,
    action: [
      first,
      "Without a caliper, measure the thickness of a stack of equal pieces and divide by their number.",
      "Print the templates at 100 %, with every “fit to page” setting off.",
      "Lay a steel ruler on the two check lines of each template sheet: the upper one must measure 100 mm, the lower one 4 in.",
    ],
    parts: isThere ? [partId] : [], sizes: isThere ? [] : [{ label: `thickness of the ${part.name}`, text: say.thickness(part.thickness) }],
    tools: ["ruler", "caliper"], minutes: 5, cautions: [], figure: "scale-check",
    check: `Both check lines agree with the ruler to the width of a pencil line, and the ${part.name} have the printed ${isThere ? "size" : "thickness"}.`,
    mistake: { sign: "A check line is too short or too long.", repair: "The printer scaled the sheet. Print again at 100 %; throw the wrong sheet away before anybody uses it." },
  };
}

/** What is cut in one go. */
export interface CuttingSpec {
  /** Which sizes must come out alike, and what a short part spoils. */
  readonly agree: string;
  readonly spoils: string;
  /** Hands-on minutes where they do not follow from the number of pieces: sheets that are cut in stacks. */
  readonly minutes?: number;
  /** Parts of which many come out of one strip: four of them count as one. */
  readonly inStrips?: readonly string[];
  /** Only these parts, in a step of its own, perhaps after the step that measures for it; all parts in the step `cut-parts` when left out. */
  readonly only?: { readonly id: string; readonly stage: string; readonly title: string; readonly parts: readonly string[]; readonly first: readonly string[]; readonly after?: string };
}

/** The step that cuts every part that is not bought ready-made, or some of them. The step's figure bears its id. */
export function cutParts({ model }: PlanContext<BindingId>, { agree, spoils, minutes, inStrips = [], only }: CuttingSpec): DraftStep {
  const parts = model.parts.filter((part) => !part.readyMade && (!only || only.parts.includes(part.id)));
  const pieces = parts.reduce((sum, part) => sum + (inStrips.includes(part.id) ? Math.ceil(part.count / 4) : part.count), 0);
  const hasGrain = parts.some((part) => part.grain !== "none");
  const id = only?.id ?? "cut-parts";
  return {
    id, stage: only?.stage ?? "Prepare", title: only?.title ?? "Cut the parts",
    action: [
      ...(only?.first ?? []),
      ...(hasGrain ? ["Find the grain of each sheet: bend it gently both ways; it bends more easily along the grain. Draw an arrow along the grain."] : []),
      `Cut ${only ? "these parts" : "every part in the list"} with the arrow along ${only ? "their" : "its"} height (the first number). Write the letter small, in pencil, where it will be glued over or covered; on paper and cloth on the wrong side, at the spine edge.`,
      "Cut a true edge first and measure every size from that edge.",
      "Test each pair: lay one piece on the other, then turn one over; any error shows doubled.",
    ],
    parts: parts.map((part) => part.id),
    tools: ["pencil", "ruler", "triangle", "knife", "mat", "scissors"],
    minutes: minutes ?? 15 + 2 * Math.min(pieces, mostCutSingly),
    cautions: ["knife", "boardCutter", "scissors", "paperEdge"], cutsParts: only?.after === undefined ? {} : { after: only.after },
    figure: id,
    check: `Each pair of equal parts matches edge to edge, and again with one of them turned over. ${agree}`.trim(),
    mistake: { sign: "A part is out of square.", repair: `Cut it again from the true edge; keep the bad piece for a smaller part. ${spoils}`.trim() },
  };
}

/** From here on many equal leaves are cut in stacks, so that the time no longer grows with their number. */
const mostCutSingly = 40;
