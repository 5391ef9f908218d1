// The second half of a pamphlet's steps: sew, tie, trim what is trimmed together, check.
import { wordsForPass } from "../sewing/move-words.ts";
import { uncapital } from "../wording.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** The steps from the threaded needle to the finished book. */
export function sewPamphlet(context: PlanContext<"pamphlet">): readonly DraftStep[] {
  const { geometry } = context.model;
  const trimsTogether = geometry.isTrimmed && geometry.square.n === 0n;
  return [sew(context), tie(context), ...(trimsTogether ? [trimTogether(context)] : []), finish(context)];
}

function sew({ definition, model, say }: PlanContext<"pamphlet">): DraftStep {
  const { geometry } = model;
  const thread = model.thread!;
  const path = thread.paths[0]!;
  const middle = path.places.get(path.start.at.place)!.name;
  const side = geometry.tiedInside ? "inside" : "outside";
  return {
    id: "sew", stage: "Sewing", title: "Sew through the fold",
    action: [
      `Cut ${say.size(thread.needlefuls[0]!.length)} of thread. Thread the needle and let a short end hang; make no knot.`,
      `Begin ${geometry.tiedInside ? "inside the fold" : "outside, on the cover"}, at hole ${middle}, the middle one. Leave ${say.size(path.start.length)} of thread hanging there.`,
      ...path.passes.map(({ n, name }) => `Pass ${n}, ${name}: ${uncapital(wordsForPass(path, n))}.`),
      "After each stitch pull the thread along the fold, towards where it goes next, never away from it: it tears the paper.",
      `You end where you began, ${side} at hole ${middle}, with the long stitch between the two ends.`,
    ],
    parts: ["text-sheet", "cover"],
    sizes: [{ label: "thread to cut", text: say.size(thread.needlefuls[0]!.length) }, { label: "end left hanging", text: say.size(definition.book.thread.tail) }],
    tools: ["needle", "scissors"], minutes: geometry.stations.length === 3 ? 6 : 9, cautions: ["needle", "scissors"], figure: "sewing",
    check: `Every gap between two holes is sewn ${geometry.tiedInside ? "on the outside" : "on the inside"}; ${geometry.tiedInside ? "inside" : "outside"}, one stitch runs past hole ${middle}; one end comes out on each side of it.`,
    mistake: { sign: "Both ends come out on the same side of the long stitch.", repair: "Draw the last end out and put it in again on the other side of the long stitch." },
  };
}

function tie({ model }: PlanContext<"pamphlet">): DraftStep {
  const path = model.thread!.paths[0]!;
  const middle = path.places.get(path.start.at.place)!.name;
  return {
    id: "tie", stage: "Sewing", title: "Tie the ends",
    action: [
      "Pull both ends along the fold until every stitch lies tight.",
      "Cross the right end over the left, tuck it under and pull tight: the long stitch lies under the crossing.",
      "The same end lies left now. Cross it over the other, tuck it under and pull tight. This is a square knot; it does not slip.",
      "Cut both ends 15 mm or 5/8 in from the knot.",
    ],
    parts: [],
    tools: ["scissors"], minutes: 3, cautions: ["scissors", "needle"], figure: "tie",
    check: `The knot sits at hole ${middle} on the long stitch, and no stitch can be lifted with a fingernail.`,
    mistake: { sign: "The knot slips or sits askew.", repair: "It is a granny knot: both halves were crossed the same way. Pick the second half open with the needle, pointing away from your hand, and tie it the other way." },
  };
}

function trimTogether({ model, say }: PlanContext<"pamphlet">): DraftStep {
  const { textWidth, coverThickness } = model.geometry;
  return {
    id: "trim-together", stage: "Sewing", title: "Trim pages and cover together",
    action: [
      `Measure ${say.about(say.size(textWidth))} from the back of the fold, at head and tail. Mark both points on the cover.`,
      "Lay the book on the cutting mat, fold away from the blade. Lay the steel ruler on the marks, over what you keep, and hold it down with all fingers.",
      "Cut with a new blade in many light strokes until the strip comes away.",
    ],
    parts: ["text-sheet", "cover"],
    sizes: [{ label: "from the back of the fold", text: say.size(textWidth) }, { label: "cover", text: say.thickness(coverThickness) }],
    tools: ["pencil", "ruler", "knife", "mat"], minutes: 8, cautions: ["knife", "boardCutter", "paperEdge"], figure: "trim-fore-edge",
    check: "Seen from the head, the fore-edge is one straight line from cover to cover.",
    mistake: { sign: "The edge is slanting or torn.", repair: "Change the blade and trim again, a little further in." },
  };
}

function finish({ model, say }: PlanContext<"pamphlet">): DraftStep {
  const { finished } = model;
  return {
    id: "finish", stage: "Sewing", title: "Press and check the book",
    action: ["Shut the book. Rub the fold once with the bone folder through clean paper.", "Leave it under a weight for an hour, or until the next day.", "Open it in the middle: it lies open by itself and the stitches stay tight."],
    parts: [],
    sizes: [{ label: "finished book, height × width", text: say.sizes(finished.height, finished.width) }, { label: "thickness", text: say.thickness(finished.thickness) }],
    tools: ["boneFolder", "weight"], minutes: 3, cautions: ["weights", "boneFolder"], figure: "section",
    check: "Head and tail of cover and pages are parallel, and nothing stands out at the fore-edge.",
    mistake: { sign: "The book springs open.", repair: "Fold it back the other way once along the spine, shut it and press it overnight." },
  };
}
