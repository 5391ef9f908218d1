// The leaves of the post album: marked and scored, and pierced with their guards while the covers set.
import type { CautionId } from "../../catalogue/cautions.ts";
import { listInWords } from "../wording.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

const stage = "The leaves";

/** The steps from the flat leaf to the pierced one. */
export function makeLeaves({ model, say }: PlanContext<"post-album">): readonly DraftStep[] {
  const { geometry, scores, holes } = model;
  const { lots, posts, guardStrips } = geometry;
  const lines = scores.length === 1 ? "line" : "lines";
  const hasGuards = guardStrips > 0;
  const inLeaf = holes.filter((hole) => hole.part === "leaf");
  const piercing: readonly CautionId[] = ["punch", "drill", "awl", "dust"];
  const what = hasGuards ? "leaves and guards" : "leaves";
  return [
    {
      id: "mark-scores", stage, title: `Mark the score ${lines} on the leaves`,
      action: [
        "Lay the leaves in one pile, all the same way: front up, spine edge to the left, head away from you. Write “head” on a corner of the top one in pencil.",
        `Mark ${scores.length === 1 ? "the score" : "each score"} with a pencil tick at the head and at the tail of every leaf, ${listInWords(scores.map((score) => say.size(score.at)))} from the spine edge. Or cut a gauge from scrap board that wide and tick along it.`,
      ],
      ...(scores.length === 1 ? {} : { table: { caption: `Scores on every leaf, running from the spine edge, in ${say.unitName}`, columns: ["score", "from the spine edge"], rows: scores.map((score) => [score.name, say.number(score.at)]) } }),
      parts: ["leaf"],
      sizes: [...scores.map((score) => ({ label: `${score.name}, from the spine edge`, text: say.size(score.at) })), { label: "page that turns", text: say.size(geometry.pageWidth) }],
      tools: ["pencil", "ruler"], minutes: 4 + geometry.leaves, cautions: ["paperEdge"], figure: "leaf-layout",
      check: "Fanned out, the ticks of all leaves stand at the same place on head and tail.",
      mistake: { sign: "A tick is off.", repair: "Rub it out and measure again from the spine edge, never from the fore-edge." },
    },
    {
      id: "score-leaves", stage, title: "Score the leaves",
      action: [
        "Lay one leaf front up. Lay the ruler on its two ticks and hold it down with your whole hand.",
        "Draw the bone folder along it two or three times, lightly first, until the groove shades from head to tail.",
        `Bend the leaf up along the ${scores.length === 1 ? "score" : "scores"} once, as if it were turned, and lay it flat again. Do all ${geometry.leaves} leaves, all on the front.`,
      ],
      parts: ["leaf"],
      tools: ["ruler", "boneFolder", "mat"], minutes: 4 + 2 * geometry.leaves * scores.length, cautions: ["boneFolder", "paperEdge"],
      notices: [{ hazard: "A sharp point cuts the surface of the card.", consequence: "The leaf tears off at the score.", avoid: "Use the rounded point; try it on an offcut of the same card first." }],
      figure: "flexing-leaf",
      check: "Held by its spine edge, every leaf hangs down from the score and not from anywhere else.",
      mistake: { sign: "A score in the wrong place.", repair: "Rub it flat from the back with the bone folder through paper, and score again at the tick." },
    },
    {
      id: "pierce-leaves", stage, title: `Pierce the ${what}`,
      action: [
        `Knock up ${lots.leaves === geometry.leaves ? "all leaves" : `a lot of ${lots.leaves} ${lots.leaves === 1 ? "leaf" : "leaves"}`} at head and spine edge, front up, and clamp them on waste board between scraps of board.`,
        `Lay the hole template on the pile, spine edge to spine edge, ${posts.coverShift.n > 0n ? "its two thin lines on head and tail of the leaves" : "head to head"}, and fix it with removable tape.`,
        `Prick the middle of each hole with an awl: ${listInWords(inLeaf.map((hole) => hole.id))}. Pierce straight down, ${say.thickness(posts.holeDiameter)} wide.`,
        ...(lots.leaves === geometry.leaves ? [] : ["Use the lot as a pattern: lay its top leaf on the next lot, knock them up together, and mark through its holes."]),
        ...(hasGuards ? [`Pierce the ${guardStrips === 1 ? "guard" : `${guardStrips} guards`} in the same way, ${lots.guards === 1 ? "one by one" : `up to ${lots.guards} at a time`}, with the same template.`] : []),
      ],
      table: {
        caption: `Holes in every ${hasGuards ? "leaf and guard" : "leaf"}, in ${say.unitName}`,
        columns: ["hole", "from the head of the leaf", "from the spine edge"],
        rows: inLeaf.map((hole) => [hole.id, say.number(hole.along), say.number(hole.across)]),
      },
      parts: ["leaf", ...(hasGuards ? ["guard"] : [])],
      sizes: [{ label: "hole diameter", text: say.thickness(posts.holeDiameter) }, { label: "leaves in one lot", text: String(lots.leaves) }, ...(hasGuards ? [{ label: "guards in one lot", text: String(Math.min(lots.guards, guardStrips)) }] : [])],
      tools: ["pencil", "ruler", "awl", "tape", "holeTool", "wasteBoard", "clips"],
      minutes: 6 + (Math.ceil(geometry.leaves / lots.leaves) + Math.ceil(guardStrips / lots.guards)) * (2 + 2 * posts.count),
      cautions: [...piercing, "paperEdge"], figure: "pierce-leaves",
      check: `Knocked up at head and spine edge, you can see daylight through every hole of all ${what}.`,
      mistake: { sign: "One leaf’s holes do not line up with the others.", repair: "It was not knocked up. Widen its holes a little with a round file, or use it as a spare." },
    },
  ];
}
