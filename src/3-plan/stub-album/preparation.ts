// Stage 1 of the stub album: check the printed templates, cut the parts.
import type { DraftStep, PlanContext } from "../binding.ts";

/** The steps before any part is worked: checking boards and templates, and cutting. */
export function prepare({ model, say }: PlanContext<"stub-album">): readonly DraftStep[] {
  const { geometry, parts } = model;
  const cutParts = parts.filter((part) => !part.readyMade);
  const pieces = cutParts.reduce((sum, part) => sum + part.count, 0);
  return [
    {
      id: "check-print", stage: "Prepare", title: "Check the boards and the templates",
      action: [
        `Measure a board: it must be ${say.sizes(geometry.boardHeight, geometry.boardWidth)} and ${say.thickness(geometry.boardThickness)} thick. If yours differ, stop here: the sizes in this booklet do not fit them.`,
        "Print the templates at 100 %, with every “fit to page” setting off.",
        "Lay a steel ruler on the two check lines of each template sheet: one must measure 100 mm, the other 4 in.",
      ],
      parts: ["boards"], tools: ["ruler"], minutes: 5, cautions: [], figure: "scale-check",
      check: "Both check lines agree with the ruler to the width of a pencil line, and the boards have the printed size.",
      mistake: { sign: "A check line is too short or too long.", repair: "The printer scaled the sheet. Print again at 100 %; throw the wrong sheet away before anybody uses it." },
    },
    {
      id: "cut-parts", stage: "Prepare", title: "Cut the parts",
      action: [
        "Find the grain of each sheet: bend it gently both ways; it bends more easily along the grain. Draw an arrow along the grain.",
        "Cut every part in the list with the arrow along its height (the first number). Write its letter on it in pencil.",
        "Cut a true edge first and measure every size from that edge.",
        "Test each pair: lay one piece on the other, then turn one over; any error shows doubled.",
      ],
      parts: cutParts.map((part) => part.id),
      tools: ["pencil", "ruler", "triangle", "knife", "mat", "scissors"],
      minutes: 15 + 2 * pieces,
      cautions: ["knife", "boardCutter", "scissors", "paperEdge"],
      figure: "cut-parts",
      check: "Each pair of equal parts matches edge to edge, and again with one of them turned over. Card and strips have the same height.",
      mistake: { sign: "A part is out of square.", repair: "Cut it again from the true edge; keep the bad piece for a smaller part. A strip that is short by more than a pencil line shows in the finished hinge." },
    },
  ];
}
