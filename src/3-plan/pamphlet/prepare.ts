// The first half of a pamphlet's steps: fold and nest the sheets, trim the fore-edge, fold the cover, pierce the holes.
import type { DraftStep, PlanContext } from "../binding.ts";
import { pagesOnSheets } from "../../catalogue/nested-sheets.ts";
import { listInWords } from "../wording.ts";

/** The steps from the folded sheets to the pierced fold. */
export function preparePamphlet(context: PlanContext<"pamphlet">): readonly DraftStep[] {
  const { geometry } = context.model;
  return [foldSheets(context), ...(geometry.isTrimmed && geometry.square.n > 0n ? [trimForeEdge(context)] : []), foldCover(context), pierceHoles(context)];
}

function foldSheets({ model, say }: PlanContext<"pamphlet">): DraftStep {
  const { sheets, pageHeight, pageWidth, sectionThickness } = model.geometry;
  return {
    id: "fold-sheets", stage: "The section", title: sheets === 1 ? "Fold the sheet" : "Fold the sheets and lay them into each other",
    action: [
      "Lay a sheet before you, the grain arrow pointing away from you. Bring its right edge over to the left edge, corner on corner.",
      "Hold the corners. Press the fold down with the flat of the bone folder, from its middle towards each end.",
      ...(sheets > 1 ? ["Fold every sheet by itself.", "Lay the folded sheets into each other, fold into fold. Knock the folds and the heads level on the table."] : []),
      "Put the section under a weight for ten minutes.",
    ],
    table: {
      caption: "Pages on each sheet, left and right, if you print or number them before folding",
      columns: ["sheet", "outer face", "inner face"],
      rows: pagesOnSheets(sheets).map(({ outer, inner }, i) => [i === 0 ? "1, outermost" : i === sheets - 1 ? `${i + 1}, innermost` : `${i + 1}`, `${outer[0]} | ${outer[1]}`, `${inner[0]} | ${inner[1]}`]),
    },
    parts: ["text-sheet"],
    sizes: [{ label: "page, height × width", text: say.sizes(pageHeight, pageWidth) }, { label: "section, pressed", text: say.thickness(sectionThickness) }],
    tools: ["boneFolder", "weight"], minutes: 6 + sheets, cautions: ["boneFolder", "paperEdge", "weights"], figure: "fold-sheets",
    check: sheets === 1 ? "The two edges lie on each other and the fold is sharp from end to end." : "The heads are level, and no fold stands away from the one around it.",
    mistake: { sign: "A sheet is folded askew.", repair: "Open it, fold it again along the right line and press hard; use it as the innermost sheet, where the old fold hides." },
  };
}

function trimForeEdge({ model, say }: PlanContext<"pamphlet">): DraftStep {
  const { textWidth, creep, leastCreep, sheets, pageWidth } = model.geometry;
  const stepped = sheets > 1
    ? `The inner leaves stand out beyond the outer ones: by ${say.thickness(leastCreep)} if the folds are very sharp, by up to ${say.thickness(creep)} if they are round.`
    : "A single sheet has no steps; trim it only if its edges do not lie level.";
  return {
    id: "trim-fore-edge", stage: "The section", title: "Trim the fore-edge",
    action: [
      stepped,
      `Measure ${say.size(textWidth)} from the back of the fold, at head and tail. Mark both points on the outermost leaf.`,
      "Lay the section on the cutting mat, fold away from the blade. Lay the steel ruler on the marks, over the pages you keep, and hold it down with all fingers.",
      "Cut with a new blade in many light strokes, leaf by leaf, until the strip comes away.",
    ],
    parts: ["text-sheet"],
    sizes: [{ label: "page width before", text: say.size(pageWidth) }, { label: "from the back of the fold after", text: say.size(textWidth) }],
    tools: ["pencil", "ruler", "knife", "mat"], minutes: 8, cautions: ["knife", "boardCutter", "paperEdge"], figure: "trim-fore-edge",
    check: "Seen from the head, the fore-edge is one straight line from the first leaf to the last.",
    mistake: { sign: "The edge is slanting or torn.", repair: "Change the blade and trim again, a little further in; measure the cover’s width from the new edge." },
  };
}

function foldCover({ model, say }: PlanContext<"pamphlet">): DraftStep {
  const { coverFold, coverWidth, coverHeight, square } = model.geometry;
  return {
    id: "fold-cover", stage: "The cover", title: "Score and fold the cover",
    action: [
      `Lay the cover inside up. Mark its middle, ${say.size(coverFold)} from the left edge, at head and tail.`,
      "Lay the ruler on the two marks and draw the point of the bone folder along it, twice, with light pressure.",
      "Fold along the score, the score inside. Press the fold down through clean paper.",
      square.n > 0n ? `Lay the section into the cover, fold into fold. The cover must stand out ${say.size(square)} at the head, at the tail and at the fore-edge.` : "Lay the section into the cover, fold into fold, heads and tails level.",
    ],
    parts: ["cover"],
    sizes: [{ label: "cover, height × width", text: say.sizes(coverHeight, coverWidth) }, { label: "fold from the left edge", text: say.size(coverFold) }],
    tools: ["pencil", "ruler", "boneFolder"], minutes: 6, cautions: ["boneFolder"], figure: "cover-layout",
    check: square.n > 0n ? "The section lies in the cover with the same margin at head and tail." : "Cover and section are level at head and tail.",
    mistake: { sign: "The fold is beside the middle.", repair: "Fold it anew where it belongs. If the old line shows, turn the cover inside out." },
  };
}

function pierceHoles({ model, say }: PlanContext<"pamphlet">): DraftStep {
  const { stations, holeDiameter, square, sheets } = model.geometry;
  const names = stations.map((_, k) => `${k + 1}`);
  return {
    id: "pierce-holes", stage: "The cover", title: "Pierce the holes",
    action: [
      `Open section and cover in the middle${square.n > 0n ? `, the section ${say.size(square)} from the cover’s head` : ", heads level"}. Hold them together with clips at the fore-edges.`,
      "Cut out the hole template, fold it along its line and lay it into the fold, its head at the head of the pages.",
      "Lay the fold into the punching cradle, cover below. With a cork mat, open the section halfway and let the fold rest on the mat.",
      `Pierce each hole through the fold: ${listInWords(names)}. Hold the awl so that it halves the angle between the pages; push it through ${sheets === 1 ? "the sheet" : `all ${sheets} sheets`} and the cover in one go.`,
    ],
    table: {
      caption: `Holes in the fold, in ${say.unitName}`,
      columns: ["hole", "from the head of the pages", ...(square.n > 0n ? ["from the head of the cover"] : [])],
      rows: stations.map((along, k) => [names[k]!, say.number(along), ...(square.n > 0n ? [say.number(model.holes.find((hole) => hole.part === "cover" && hole.id === names[k])!.along)] : [])]),
    },
    parts: ["text-sheet", "cover"],
    sizes: [{ label: "hole diameter", text: say.thickness(holeDiameter) }],
    tools: ["awl", "cradle", "clips", "ruler"], minutes: 6, cautions: ["awl"], figure: "pierce-holes",
    check: "Held against the light, every hole shows, and on the outside all holes lie exactly on the fold.",
    mistake: { sign: "A hole has come out beside the fold.", repair: "Close it by rubbing it with the bone folder, and pierce again from the inside, a needle’s width up or down the fold." },
  };
}
