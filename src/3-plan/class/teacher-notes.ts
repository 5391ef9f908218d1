// What a teacher is asked and wants to answer: for sewn books, how the computed thread compares with the rule of thumb.
import type { Model } from "../../2-model/types.ts";
import type { Length } from "../../units/length.ts";
import { compareLengths, ratioOf, subtractLength } from "../../units/length.ts";
import { printFormula } from "../../units/formula.ts";
import { nearestWhole, multiplyRational, rational } from "../../units/rational.ts";
import type { Wording } from "../wording.ts";

/** Notes on this very book, each a heading and its sentences; none where there is nothing to tell. */
export function listNotes(model: Model, say: Wording): readonly { readonly title: string; readonly text: string }[] {
  const rule = model.values.get("thread by rule of thumb");
  if (!model.thread || !rule) return [];
  const [computed, thumb] = [model.thread.length, rule.quantity.value as Length];
  const isMore = compareLengths(computed, thumb) >= 0;
  const difference = isMore ? subtractLength(computed, thumb) : subtractLength(thumb, computed);
  const share = nearestWhole(multiplyRational(ratioOf(difference, thumb), rational(100)));
  const comparison = share === 0n ? "the same to a hundredth" : `${say.size(difference)} ${isMore ? "more" : "less"}, ${share} %`;
  return [{
    title: "How much thread",
    text: `Computed from its way: ${say.size(computed)} for a book, ends and joins included. The rule of thumb, ${printFormula(rule.formula!)}, gives ${say.about(say.size(thumb))}: the computed length is ${comparison}. ${isMore
      ? "Cut to the computed length; by the rule the thread would have to be joined once more, or be too short to tie."
      : "Cut to the computed length; by the rule some thread would be left over, which does no harm where nobody sews with a length longer than the arm."}`,
  }];
}
