// Stage 2 of the stub album: cut, score, fold and close the card, before anything is cut that depends on it.
import { zone } from "../bench/spread.ts";
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
  const closed = model.values.get("closed stub")!.quantity.value as typeof geometry.stubDepth;
  const bundle = model.values.get("closed stubs together")!.quantity.value as typeof geometry.stubDepth;
  return [
    {
      id: "cut-card", stage: "The stubs", title: "Cut the card",
      action: [
        "Find the grain of the sheet: bend it gently both ways; it bends more easily along the grain. Draw an arrow along the grain.",
        "Cut a true edge first. Measure from that edge and cut the card with the arrow along its height (the first number).",
        "Keep the offcuts: to try the score, and for washers.",
      ],
      parts: ["card"],
      tools: ["pencil", "ruler", "triangle", "knife", "mat"], minutes: 12, cautions: ["knife", "boardCutter", "paperEdge"], cutsParts: {}, figure: "cut-card",
      check: "The set square fits all four corners, and the height is the same at the left and at the right edge.",
      mistake: { sign: "A corner is out of square.", repair: "The score lines would lean. Trim the edge square if the size allows it, else cut the card again." },
    },
    {
      id: "mark-scores", stage: "The stubs", title: `Mark the ${scores.length} score lines`,
      action: [
        "Lay the card down with the side that will be the inside of the book up, the head edge away from you. Write “inside” and “head” on it small, in pencil, between the left edge and the first score.",
        "Lay the ruler along the head edge with its zero at the left edge and mark all positions of the table without moving it. Do the same along the tail edge. Or lay the score guide of the templates along each edge and tick the card at the end of every line.",
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
        "Fold along the ruler’s edge, one line at a time, the inside of the book towards you. Crest lines are mountain folds: their ridge points towards you. Base lines are valley folds: their ridge points away from you.",
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
        `Turn the card over, its inside down: ${geometry.stubs === 1 ? "the stub is now a groove. Open it" : "each stub is now a groove. Open the first one"} until its two leaves lie flat.`,
        glue.wet
          ? `Cover the other leaf with waste paper up to the crest. Brush ${glue.name} thinly over one leaf, from base to crest, and take the paper away.`
          : `Lay ${glue.name} on one leaf, from ${say.size(geometry.pages.adhesiveClearance)} off the base line to the crest, the whole height.`,
        `Fold the stub shut and turn the card back. Press its two leaves together between ruler and bone folder, starting at the crest.${geometry.stubs === 1 ? "" : " Go on stub by stub."}`,
        geometry.stubs === 1
          ? `Measure the closed stub: it should be ${say.about(say.thickness(closed))} thick.`
          : `Press all ${geometry.stubs} stubs together and measure the bundle. The thickness planned is ${say.onRuler(bundle)}. Divided by ${geometry.stubs}, that is one closed stub, planned ${say.thickness(closed)}; write it in its box at the end of the handout.`,
      ],
      parts: ["card"],
      sizes: [{ label: "one closed stub", text: say.thickness(closed) }, ...(geometry.stubs === 1 ? [] : [{ label: "all of them pressed together", text: say.thickness(bundle) }])],
      tools: glue.wet ? ["brush", "wasteSheets", "boneFolder", "ruler", "caliper", "pressingBoards", "weight"] : ["boneFolder", "ruler", "caliper", "scissors"],
      minutes: 5 + 2 * geometry.stubs,
      glueing: { job: "stubs", openMinutes: 2, spread: zone(geometry.stripHeight, geometry.pages.adhesiveZone, geometry.stubs), inStrips: true }, rest: glue.wet ? "with the stubs pressed together, lying over to one side, a board and a weight on them" : "",
      cautions: glue.wet ? ["wetAdhesive", "weights"] : ["scissors"],
      figure: "close-stubs",
      check: `You can see no light between the leaves of ${stubsInWords}, and no adhesive has come out at a base line.`,
      mistake: { sign: "A stub gapes at its base.", repair: `${glue.wet ? "Press it again while the adhesive is open; once it has set, work a little more in with a strip of card." : "Press it again along the base line. If it still gapes, open it and lay the tape nearer to the base."} An open stub makes the floor wider.` },
    },
  ];
}
