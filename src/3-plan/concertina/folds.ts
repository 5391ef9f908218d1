// The folding of a concertina's strips: by scores at running dimensions, or by halving one layer at a time.
import type { DraftStep, PlanContext } from "../binding.ts";
import type { StepTable } from "../types.ts";

/** Ids of the parts that are strips. */
export function stripParts({ model }: PlanContext<"concertina">): readonly string[] {
  return model.parts.filter((part) => part.material === "panel paper").map((part) => part.id);
}

/** Where the folds fall, from the left edge. Middle strips are alike. */
function foldTable({ model, say }: PlanContext<"concertina">): StepTable {
  const { geometry, parts, scores } = model;
  const marked = scores.filter((score) => parts.find((part) => part.id === score.part)!.material === "panel paper");
  return {
    caption: `Folds from the left edge of ${geometry.strips.length > 1 ? "each strip" : "the strip"}, front up, in ${say.unitName}`,
    columns: ["line", "from the left edge", "seen from the front"],
    rows: marked.map((score) => [score.name, say.number(score.at), `${score.fold} fold`]),
  };
}

/** The step that marks every fold from one edge. */
export function markFolds(context: PlanContext<"concertina">): DraftStep {
  const { model, say } = context;
  const { geometry } = model;
  const joined = geometry.strips.length > 1;
  const lines = foldTable(context).rows.length;
  const last = say.size(geometry.panelWidth);
  return {
    id: "mark-folds", stage: "The strip", title: joined ? "Mark the folds on every strip" : `Mark the ${lines === 1 ? "fold" : `${lines} folds`}`,
    action: [
      `Lay ${joined ? "each strip" : "the strip"} down front up, head edge away from you.`,
      "Lay the ruler along the head edge with its zero at the left edge and make a short pencil mark at every position of the table without moving it. Do the same along the tail edge. Or lay the fold guide of the templates along each edge and tick beside it.",
      ...(joined ? ["The last line of a strip with a tab is the fold of its join; mark it like the others."] : []),
    ],
    table: foldTable(context),
    parts: stripParts(context),
    sizes: [{ label: "panel, fold to fold", text: last }, ...(joined ? [{ label: "tab", text: say.size(geometry.tab) }] : [])],
    tools: ["pencil", "ruler"], minutes: 4 + Math.ceil(lines / 3) + 2 * geometry.strips.length, cautions: [], figure: "fold-map",
    check: joined
      ? `From the last mark to the right edge it is ${say.about(say.size(geometry.tab))} on a strip with a tab and ${say.about(last)} on the last strip, at head and tail.`
      : `From the last mark to the right edge it is ${say.about(last)}, at head and tail.`,
    mistake: { sign: "The last panel is wider or narrower than the others.", repair: "The marks were stepped off one from the other, and the error grew with each. Rub them out and read all of them from the left edge." },
  };
}

/** The step that presses a groove at every mark. */
export function scoreFolds(context: PlanContext<"concertina">): DraftStep {
  const { strips, panels } = context.model.geometry;
  return {
    id: "score-folds", stage: "The strip", title: panels === 2 ? "Score the fold" : "Score the folds",
    action: [
      "Lay the ruler on the head and tail marks of the first line and hold it down with your whole hand.",
      "Draw the bone folder along it two or three times, lightly first, until the groove shades all along.",
      `Score every line${strips.length > 1 ? " of every strip" : ""} on the front, from left to right.`,
    ],
    parts: stripParts(context),
    tools: ["ruler", "boneFolder", "mat"], minutes: 3 + Math.ceil(panels / 2), cautions: ["boneFolder"],
    notices: [{ hazard: "A sharp point cuts the surface of the paper.", consequence: "The fold will crack.", avoid: "Use the rounded point; try it on an offcut of the same paper first." }],
    figure: "scoring",
    check: "With light from the side you see every groove run from edge to edge.",
    mistake: { sign: "A groove runs beside its marks.", repair: "Score again in the right place; press the wrong groove flat from the back with the side of the bone folder." },
  };
}

/** The step that folds along the scores, panel upon panel. */
export function foldScores(context: PlanContext<"concertina">): DraftStep {
  const { geometry } = context.model;
  const joined = geometry.strips.length > 1;
  return {
    id: "fold-strip", stage: "The strip", title: joined ? "Fold each strip zigzag" : "Fold the strip zigzag",
    action: [
      "Begin at the left, front up. Fold along the first score and lay the edges of the two panels on each other before you crease.",
      "Go on score by score, valley and mountain in turn as in the table, each panel edge to edge with the pile below it.",
      ...(joined ? ["The last fold of a strip with a tab is a valley: crease it as well, and open the tab flat again."] : []),
      "Knock the pile up on the bench at one side and at the tail, and rub every fold down with the bone folder through clean paper.",
      "Leave it under a board and a weight until the covers are dry.",
    ],
    parts: stripParts(context),
    sizes: [{ label: "folded, fold to fold", text: context.say.size(geometry.foldedWidth) }],
    tools: ["boneFolder", "wasteSheets", "pressingBoards", "weight"], minutes: 5 + geometry.panels, cautions: ["boneFolder", "paperEdge", "weights"], figure: "fold-strip",
    check: "Seen from the head, all folds of one side lie in one line, and no panel stands out of the pile.",
    mistake: { sign: "The folds drift: each panel stands out a little farther.", repair: "Open the strip to the first panel that is off and fold that one anew, edge to edge with the pile; its score had moved. The folds after it then come right." },
  };
}

/** The step that finds every fold by halving. */
export function foldHalves(context: PlanContext<"concertina">): DraftStep {
  const { model, say } = context;
  const { geometry, scores } = model;
  const { panels, halving, stackedTakeUp } = geometry;
  const several = panels > 2;
  const place = (fold: number): string => (fold === 0 ? "left edge" : fold === panels ? "right edge" : `fold ${fold}`);
  const at = (fold: number): string => say.number(scores.find((score) => score.name === `fold ${fold}`)!.at);
  return {
    id: "fold-strip", stage: "The strip", title: "Fold the strip by halving",
    action: [
      "Lay the strip down front up, head edge away from you. Write “left” and “right” in pencil at its two ends, on the back.",
      ...(several ? [
        "Turn the strip over for the mountain folds. Bring the two places of the table together, lay the head edges on each other, crease, and open the strip flat again.",
        "Turn it front up for the last round, the valley folds, and fold these in the same way.",
        "Make every fold through one layer only; never fold a pile.",
        "Fold the strip up along its creases, valley and mountain in turn.",
      ] : ["Bring the two ends together, lay the head edges on each other, and crease."]),
      "Knock the pile up on the bench at one side and at the tail, and rub every fold down with the bone folder through clean paper.",
      "Leave it under a board and a weight until the covers are dry.",
    ],
    table: {
      caption: `Order of the folds; in the last column, as a check, where they fall from the left edge, front up, in ${say.unitName}`,
      columns: ["order", "side up", "bring", "onto", "makes", "seen from the front", "falls at"],
      rows: halving.map((fold, index) => [
        String(index + 1), fold.direction === "mountain" ? "back" : "front", place(fold.from), place(fold.onto), `fold ${fold.fold}`, `${fold.direction} fold`, at(fold.fold),
      ]),
    },
    parts: stripParts(context),
    sizes: [{ label: "panel, fold to fold", text: say.size(geometry.panelWidth) }, { label: "folded, fold to fold", text: say.size(geometry.foldedWidth) }],
    tools: ["pencil", "ruler", "boneFolder", "wasteSheets", "pressingBoards", "weight"], minutes: 6 + 2 * panels, cautions: ["boneFolder", "paperEdge", "weights"],
    ...(stackedTakeUp ? { notices: [{
      hazard: "Halving a folded pile makes the outer layers run round the inner ones.",
      consequence: `In the last round the outermost crease would be ${say.thickness(stackedTakeUp)} off.`,
      avoid: "Open the strip flat after every fold and crease one layer at a time.",
    }] } : {}),
    figure: "halving",
    check: "All panels are equally wide: seen from the head, all folds of one side lie in one line.",
    mistake: { sign: "The folds drift.", repair: "An early fold was not in the middle, and the later ones took over half of its error. Press the strip flat, measure the folds against the table and make the wrong ones anew; an old crease fades under the bone folder." },
  };
}
