// Stage 3 of the stub album: score, fold and close the card, while the hinge dries.
import type { DraftStep, PlanContext } from "../binding.ts";

/** The steps from the flat card to its closed stubs. */
export function makeStubs({ definition, model, say }: PlanContext<"stub-album">): readonly DraftStep[] {
  const { geometry, scores } = model;
  const glue = definition.adhesives["stubs"]!;
  const stubsInWords = geometry.stubs === 1 ? "the stub" : `the ${geometry.stubs} stubs`;
  const rows = Array.from({ length: geometry.stubs }, (_, i) => {
    const lines = scores.slice(3 * i, 3 * i + 3);
    return [String(i + 1), ...lines.map((score) => say.number(score.at)), ...lines.map((score) => say.number(score.fromCentre))];
  });
  return [
    {
      id: "mark-scores", stage: "The stubs", title: `Mark the ${scores.length} score lines`,
      action: [
        "Lay the card down with the side that will be the inside of the book up, the head edge away from you. Write “inside” and “head” on it in pencil.",
        "Lay the ruler along the head edge with its zero at the left edge and mark all positions of the table without moving it. Do the same along the tail edge. Or lay the score guide of the templates along each edge and prick through it.",
        "Mark the middle of the card as well; the distances from the centre line are your check.",
      ],
      table: {
        caption: `Score positions in ${say.unitName}: running from the left edge, and from the centre line (− is left of it)`,
        columns: ["stub", "left base", "crest", "right base", "left base from centre", "crest from centre", "right base from centre"],
        rows,
      },
      parts: ["card"],
      sizes: [
        { label: "stub depth", text: say.size(geometry.stubDepth) },
        ...(geometry.stubs > 1 ? [{ label: "floor gap", text: say.size(geometry.floorGap) }] : []),
        { label: "margin", text: say.size(geometry.margin) },
      ],
      tools: ["pencil", "ruler", "awl"], minutes: 5 + Math.ceil(scores.length / 3), cautions: ["awl"], figure: "score-map",
      check: `The last mark is ${say.size(geometry.margin)} from the right edge, at the head and at the tail.`,
      mistake: { sign: "The last mark is off by more than a pencil line.", repair: "The marks were stepped off one after the other. Rub them out and read all of them from the left edge." },
    },
    {
      id: "score-card", stage: "The stubs", title: "Score the card",
      action: [
        "Lay the ruler on the head and tail marks of the first line and hold it down with your whole hand.",
        "Draw the bone folder along it two or three times, lightly first, until the groove shades all along.",
        `Score all ${scores.length} lines, from left to right, all on this side.`,
      ],
      parts: ["card"],
      tools: ["ruler", "boneFolder", "mat"], minutes: 3 + Math.ceil(scores.length / 2), cautions: ["boneFolder"],
      notices: [{ hazard: "A sharp point cuts the surface of the card.", consequence: "The fold will crack.", avoid: "Use the rounded point; try it on an offcut of the same card first." }],
      figure: "scoring",
      check: "Tilted to the light, every groove runs from head to tail without a break, and no fibre is torn.",
      mistake: { sign: "A score in the wrong place.", repair: "Rub it flat from the other side with the bone folder through paper, and score again. Fold only at the right line." },
    },
    {
      id: "fold-card", stage: "The stubs", title: "Fold the stubs",
      action: [
        "Fold along the ruler’s edge, one line at a time. Base lines are valley folds: the card comes up towards you. Crest lines are mountain folds: the card goes down away from you.",
        "Begin with the crests. Fold each one right over and crease it sharply through paper.",
        "Then fold the two bases of each stub until the stub stands upright and the floor lies flat.",
      ],
      parts: ["card"],
      sizes: [{ label: "stub depth, base to crest", text: say.size(geometry.stubDepth) }],
      tools: ["ruler", "boneFolder"], minutes: 5 + 2 * geometry.stubs, cautions: ["boneFolder"], figure: "fold-sequence",
      check: `${geometry.stubs === 1 ? "The stub stands" : `All ${geometry.stubs} stubs stand`} on the same side, the inside, and with the crests pinched the floor lies flat on the table.`,
      mistake: { sign: "A stub leans or the floor curls.", repair: "A base line is not folded through. Crease that line again along the ruler." },
    },
    {
      id: "close-stubs", stage: "The stubs", title: "Glue the stubs shut",
      action: [
        glue.wet
          ? `Open ${geometry.stubs === 1 ? "the stub" : "one stub"} a little, slip waste paper in front of it, and brush ${glue.name} thinly over the inside of one leaf, from base to crest.`
          : `Lay ${glue.name} on the inside of one leaf, from ${say.size(geometry.pages.adhesiveClearance)} above the base line to the crest, the whole height.`,
        "Press the two leaves together between ruler and bone folder, starting at the crest.",
        `${geometry.stubs === 1 ? "Measure the finished stub" : "Go on stub by stub. Measure one finished stub"}: it should be ${say.about(say.thickness(model.values.get("closed stub")!.quantity.value as typeof geometry.stubDepth))} thick.`,
        `Measure the folded floor, edge to edge, with the stubs upright: it should be ${say.about(say.thickness(geometry.foldedFloor))}. Write your measure in the box at the end of this booklet.`,
      ],
      parts: ["card"],
      sizes: [{ label: "folded floor", text: say.thickness(geometry.foldedFloor) }],
      tools: glue.wet ? ["brush", "wasteSheets", "boneFolder", "ruler", "pressingBoards", "weight"] : ["boneFolder", "ruler"],
      minutes: 5 + 2 * geometry.stubs,
      glueing: { job: "stubs", openMinutes: 2 }, rest: glue.wet ? "with the stubs pressed together, lying over to one side, a board and a weight on them" : "",
      cautions: glue.wet ? ["wetAdhesive", "weights"] : [],
      figure: "close-stubs",
      check: `You can see no light between the leaves of ${stubsInWords}, and the floor measures no more than the spine strip, ${say.size(geometry.spineStripWidth)}.`,
      mistake: {
        sign: "The folded floor is wider than the spine strip.",
        repair: "Trim the two margins of the floor by the same amount, half the excess each. If it is more than a margin can give, cut a new spine strip.",
      },
    },
  ];
}
