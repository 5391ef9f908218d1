// The first half of a stab binding's steps: fold and stack the leaves, tie them together, fold the covers, pierce the holes.
import { wordsForPass } from "../sewing/move-words.ts";
import type { CautionId } from "../../catalogue/cautions.ts";
import type { DraftStep, PlanContext } from "../binding.ts";
import { listInWords } from "../wording.ts";
import { drilledFrom } from "../../2-model/stab-binding/geometry.ts";
import type { StabHole } from "../../2-model/stab-binding/geometry.ts";
import { isLess } from "../../units/length.ts";

/** The steps from the leaves to the pierced book. */
export function prepareBlock(context: PlanContext<"stab-binding">): readonly DraftStep[] {
  const { isFolded, innerHoles } = context.model.geometry;
  return [
    ...(isFolded ? [foldLeaves(context)] : []), stackLeaves(context),
    ...(innerHoles.length > 0 ? [pierceInner(context), bindInner(context)] : []), foldCovers(context), pierceHoles(context),
  ];
}

function piercing({ model }: PlanContext<"stab-binding">): { readonly tools: DraftStep["tools"]; readonly cautions: readonly CautionId[]; readonly with: string } {
  const { thickness } = model.geometry;
  const isThick = isLess(drilledFrom, thickness);
  return isThick
    ? { tools: ["holeTool", "wasteBoard", "clips"], cautions: ["drill", "punch", "dust"], with: "Drill" }
    : { tools: ["awl", "wasteBoard", "clips"], cautions: ["awl"], with: "Pierce" };
}

function foldLeaves({ model, say }: PlanContext<"stab-binding">): DraftStep {
  const { width, leaves, height } = model.geometry;
  return {
    id: "fold-leaves", stage: "The leaves", title: "Fold the leaves",
    action: [
      "Lay a sheet before you, printed or fair side down. Bring its right edge over to the left edge, corner on corner.",
      "Press the fold down with the flat of the bone folder, from its middle towards each end. Fold every sheet by itself.",
      "The fold will be the fore-edge. The two open edges will be the spine edge.",
    ],
    parts: ["leaf"],
    sizes: [{ label: "folded leaf, height × width", text: say.sizes(height, width) }, { label: "leaves", text: String(leaves) }],
    tools: ["boneFolder"], minutes: 4 + Math.ceil(leaves / 3), cautions: ["boneFolder", "paperEdge"], figure: "fold-leaves",
    check: "The two edges of every leaf lie on each other.",
    mistake: { sign: "A leaf is folded askew.", repair: "Fold it again. Leaves are knocked level at the fold, so a wide open edge can be trimmed at the spine later." },
  };
}

function stackLeaves({ model, say }: PlanContext<"stab-binding">): DraftStep {
  const { blockThickness, isFolded, leaves } = model.geometry;
  return {
    id: "stack-leaves", stage: "The leaves", title: "Stack the leaves level",
    action: [
      "Put the leaves in order, first page on top.",
      `Knock the stack on the table: first the head, then ${isFolded ? "the folds" : "the spine edge"}. Knock until no leaf stands out.`,
      "Clamp the stack at the fore-edge between scraps of board, near head and tail. Keep the spine edge free.",
      `Measure the clamped stack at the spine edge. It should be ${say.about(say.thickness(blockThickness))} thick.`,
    ],
    parts: ["leaf"],
    sizes: [{ label: "leaves", text: String(leaves) }, { label: "stack at the spine edge", text: say.thickness(blockThickness) }],
    tools: ["clips", "ruler"], minutes: 6, cautions: ["paperEdge"], figure: "stack-leaves",
    check: "Head and spine edge feel smooth to the fingertip, like one piece.",
    mistake: { sign: "The stack slants.", repair: "Open one clip at a time, set the stack upright against a box or a set square, and clamp it again." },
  };
}

function holeTable({ say }: PlanContext<"stab-binding">, holes: readonly StabHole[], what: string): NonNullable<DraftStep["table"]> {
  return { caption: `${what}, in ${say.unitName}`, columns: ["hole", "from the head", "from the spine edge"], rows: holes.map(({ id, along, across }) => [id, say.number(along), say.number(across)]) };
}

function pierceInner(context: PlanContext<"stab-binding">): DraftStep {
  const { model, say } = context;
  const { innerHoles, holeDiameter } = model.geometry;
  const tool = piercing(context);
  return {
    id: "pierce-inner", stage: "The leaves", title: "Pierce the holes of the inner binding",
    action: [
      "Lay the hole template on the stack, its head at the head, its edge along the spine edge. Fix it with removable tape.",
      "Lay the stack on waste board, clamps off the edge of the table.",
      `${tool.with} only the holes of the inner binding, ${listInWords(innerHoles.map(({ id }) => id))}, straight down through all leaves.`,
    ],
    table: holeTable(context, innerHoles, "Holes of the inner binding"),
    parts: ["leaf"], sizes: [{ label: "hole diameter", text: say.thickness(holeDiameter) }],
    tools: [...tool.tools, "ruler", "tape"], minutes: 6, cautions: tool.cautions, figure: "inner-holes",
    check: "On the back of the stack the holes are as far from the spine edge as on the front.",
    mistake: { sign: "A hole comes out too near to the edge on the back.", repair: "The tool was not upright. Pierce again from the back, upright; covers and thread hide both holes." },
  };
}

function bindInner({ model, say }: PlanContext<"stab-binding">): DraftStep {
  const paths = model.thread!.paths.slice(0, -1);
  const lengths = model.thread!.needlefuls.filter(({ path }) => path < model.thread!.paths.length).map(({ length }) => length);
  return {
    id: "bind-inner", stage: "The leaves", title: "Tie the leaves together",
    action: [
      `Cut two threads of ${say.size(lengths[0]!)}. Leave ${say.size(paths[0]!.start.length)} hanging on the front at the first hole of a pair.`,
      ...paths.map((path) => `${wordsForPass(path).replace(/^Through/, "With one thread go through")}.`),
      "Pull tight along the spine edge. Tie the two ends with a square knot: right over left, then left over right.",
      "Cut the ends 10 mm or 3/8 in from each knot. Flatten the knots with the bone folder. Take the clamps off.",
    ],
    parts: ["leaf"], sizes: [{ label: "thread for each pair", text: say.size(lengths[0]!) }],
    tools: ["needle", "scissors", "boneFolder"], minutes: 8, cautions: ["needle", "scissors", "boneFolder"], figure: "inner-binding",
    check: "Lifted by one leaf, the whole stack hangs together.",
    mistake: { sign: "The leaves have shifted.", repair: "Cut the knots, knock the stack level, clamp it, tie again through the same holes." },
  };
}

function foldCovers({ model, say }: PlanContext<"stab-binding">): DraftStep {
  const { flap, width, coverWidth, height } = model.geometry;
  const hasFlap = flap.n > 0n;
  return {
    id: "fold-covers", stage: "The covers", title: hasFlap ? "Fold the covers" : "Lay on the covers",
    action: [
      ...(hasFlap ? [
        `Lay a cover inside up. Mark the fold ${say.size(width)} from its spine edge, at head and tail.`,
        "Lay the ruler on the marks, draw the point of the bone folder along it, fold the flap in and press it down.",
        "Fold the other cover the same way.",
      ] : []),
      "Lay one cover on each side of the leaves, outside out, level at head and spine edge.",
      "Clamp everything at the fore-edge, scraps of board under the jaws.",
    ],
    parts: ["cover"],
    sizes: [{ label: "cover, height × width", text: say.sizes(height, coverWidth) }, ...(hasFlap ? [{ label: "flap", text: say.size(flap) }] : [])],
    tools: ["pencil", "ruler", "boneFolder", "clips"], minutes: 8, cautions: ["boneFolder", "paperEdge"], figure: "cover-layout",
    check: "Head and spine edge of covers and leaves feel like one piece.",
    mistake: { sign: "A cover stands out at the fore-edge.", repair: "Fold the flap again, a little nearer to the spine edge." },
  };
}

function pierceHoles(context: PlanContext<"stab-binding">): DraftStep {
  const { model, say } = context;
  const { holes, innerHoles, holeDiameter } = model.geometry;
  const tool = piercing(context);
  return {
    id: "pierce-holes", stage: "The covers", title: "Pierce the holes of the pattern",
    action: [
      "Lay the hole template on the front cover, its head at the head, its edge along the spine edge. Fix it with removable tape.",
      "Lay the book on waste board, clamps off the edge of the table.",
      `${tool.with} the holes ${listInWords(holes.map(({ id }) => id))}, straight down through covers and leaves. ${innerHoles.length > 0 ? "Leave out w, x, y and z, the holes of the inner binding." : ""}`.trim(),
    ],
    table: holeTable(context, holes, "Holes of the pattern"),
    parts: ["cover", "leaf"], sizes: [{ label: "hole diameter", text: say.thickness(holeDiameter) }],
    tools: [...new Set([...tool.tools, "awl" as const, "needle" as const, "ruler" as const, "tape" as const])], minutes: 4 + 2 * holes.length, cautions: [...new Set([...tool.cautions, "awl" as const, "needle" as const])], figure: "hole-layout",
    check: "The needle drops through every hole, and the holes on the back lie as on the front.",
    mistake: { sign: "A hole comes out beside its line on the back.", repair: "The tool was not upright. Widen the hole from the back with the awl, upright, into waste board, until the needle runs straight." },
  };
}
