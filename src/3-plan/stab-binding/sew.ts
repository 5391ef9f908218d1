// The second half of a stab binding's steps: the pattern way by way, a pass at each main hole, then the end hidden between the leaves.
import type { Needleful, ThreadPath } from "../../2-model/sewing/types.ts";
import { patterns } from "../../2-model/stab-binding/patterns.ts";
import { addLengths, toMillimetres } from "../../units/length.ts";
import { numberedWordsForPass } from "../sewing/move-words.ts";
import { capital, uncapital } from "../wording.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** Passes sewn in one step: one way along the spine, or a part of it that one figure can show. */
export interface Way {
  readonly towards: "head" | "tail";
  readonly passes: readonly number[];
}

/** As many small drawings as stand under each other on a page. */
const mostPasses = 5;

/** The ways of the pattern's thread: a new one begins where the needle turns round; long ones are split evenly. */
export function waysOf(path: ThreadPath): readonly Way[] {
  const along = (id: string): number => toMillimetres(path.places.get(id)!.along);
  const headings = path.passes.map(({ n }) => {
    const moves = path.moves.filter((move) => move.pass === n);
    return Math.sign(along(moves.at(-1)!.to.place) - along(moves[0]!.from.place));
  });
  // A pass that comes back to its hole belongs to the way on which the thread goes on from there.
  const ways: { towards: "head" | "tail"; passes: number[] }[] = [];
  path.passes.forEach(({ n }, index) => {
    const heading = headings.slice(index).find((each) => each !== 0) ?? headings.findLast((each) => each !== 0) ?? 1;
    const towards = heading > 0 ? "tail" : "head";
    const last = ways.at(-1);
    if (last?.towards === towards) last.passes.push(n);
    else ways.push({ towards, passes: [n] });
  });
  return ways.flatMap(({ towards, passes }) => {
    const parts = Math.ceil(passes.length / mostPasses);
    const size = Math.ceil(passes.length / parts);
    return Array.from({ length: parts }, (_, part) => ({ towards, passes: passes.slice(part * size, (part + 1) * size) }));
  });
}

/** The steps from the first pass to the finished book. */
export function sewPattern(context: PlanContext<"stab-binding">): readonly DraftStep[] {
  const path = context.model.thread!.paths.at(-1)!;
  const ways = waysOf(path);
  return [...ways.map((way, index) => sewWay(context, way, index, ways.length)), hideEnd(context), finish(context)];
}

function sewWay({ definition, model, say }: PlanContext<"stab-binding">, way: Way, index: number, count: number): DraftStep {
  const thread = model.thread!;
  const path = thread.paths.at(-1)!;
  const own = thread.needlefuls.filter((each) => each.path === thread.paths.length);
  const { geometry } = model;
  const start = geometry.startHole;
  const begins = index === 0 ? [
    own.length === 1 ? `Cut ${say.size(own[0]!.length)} of thread and thread the needle; make no knot.` : `Cut ${own.length} lengths of thread, ${own.map(({ length }) => say.size(length)).join(" and ")}. Thread the first; make no knot.`,
    `Open the book at the middle. Push the needle from between the leaves up through hole ${start}, out at the front. Leave ${say.size(definition.book.thread.tail)} of thread between the leaves.`,
  ] : [];
  const passes = way.passes.flatMap((n) => [
    `${capital(path.passes[n - 1]!.name)}: ${(n === 1 ? numberedWordsForPass(path, n).replace(/^[^,]*, /, "") : uncapital(numberedWordsForPass(path, n)))}.`,
    ...joinsIn(own, path, n),
  ]);
  return {
    id: `sew-${index + 1}`, stage: "Sewing", title: `Sew towards the ${way.towards}, ${way.passes.length === 1 ? `pass ${way.passes[0]}` : `passes ${way.passes[0]} to ${way.passes.at(-1)}`}`,
    action: [
      ...begins, ...passes,
      ...(index === 0 ? ["Pull each stitch tight before the next, along the stitch and not away from it. Let the needle pass beside thread that is in the hole already, not through it."] : []),
    ],
    parts: ["leaf", "cover"],
    sizes: index === 0 ? [{ label: "thread, all lengths for the pattern", text: say.size(addLengths(...own.map(({ length }) => length))) }] : [],
    tools: ["needle", "scissors", "clips"], minutes: 3 + 3 * way.passes.length, cautions: ["needle", "scissors"], figure: `sewing-${index + 1}`,
    check: index === count - 1
      ? `The pattern, ${patterns[geometry.pattern].look}, is complete on both sides: no line or wrap is missing, none is double.`
      : "Front and back show what the drawings show, and every stitch lies tight on the paper.",
    mistake: { sign: "A stitch is missing or lies on the wrong side.", repair: "Draw the thread back, stitch by stitch, eye of the needle first, and go on from the last drawing that agrees with your book." },
  };
}

/** Where a length of thread ends within a pass, and how the next one begins. */
function joinsIn(own: readonly Needleful[], path: ThreadPath, pass: number): readonly string[] {
  return own.filter(({ last, joinAt }) => joinAt && path.moves[last - 1]!.pass === pass).map(({ joinAt, last }) => {
    const stitch = path.moves.filter((move) => move.pass === pass && move.kind !== "hole" && move.n <= last).length;
    return `In this pass your thread is used up: after stitch ${stitch} put the needle into hole ${path.places.get(joinAt!.place)!.name} only as far as between the leaves, and leave the end there. Begin the next length between the leaves at the same hole and bring it out on the other side.`;
  });
}

function hideEnd({ model }: PlanContext<"stab-binding">): DraftStep {
  const { startHole } = model.geometry;
  return {
    id: "hide-end", stage: "Sewing", title: "Hide the ends",
    action: [
      `You are back at hole ${startHole}. Open the book where the first end lies and bring the needle out between the same leaves.`,
      "Pull both ends tight. Tie them with a square knot, close to the hole: right over left, then left over right, so that the same end goes over both times.",
      "Cut the ends 10 mm or 3/8 in from the knot, push the knot into the hole with the point of the needle, and let the ends lie between the leaves along the spine.",
    ],
    parts: [],
    tools: ["needle", "scissors"], minutes: 5, cautions: ["needle", "scissors"], figure: "hide-end",
    check: "Neither knot nor end shows on the outside, and no stitch can be lifted with a fingernail.",
    mistake: { sign: "The needle came out between other leaves than the first end.", repair: "Draw it back and bring it out beside the first end; otherwise the knot pulls the leaves between them into folds." },
  };
}

function finish({ model, say }: PlanContext<"stab-binding">): DraftStep {
  const { finished, geometry } = model;
  return {
    id: "finish", stage: "Sewing", title: "Check the book",
    action: ["Take the clamps off.", "Open every tenth leaf and run the bone folder down beside the line of holes, so that the leaves bend there.", "Leave the book under a weight overnight."],
    parts: [],
    sizes: [
      { label: "finished book, height × width", text: say.sizes(finished.height, finished.width) }, { label: "thickness", text: say.thickness(finished.thickness) },
      { label: "width that can be written on", text: say.size(geometry.usableWidth) },
    ],
    tools: ["boneFolder", "weight"], minutes: 6, cautions: ["boneFolder", "weights"], figure: "section",
    check: "The spine edge is straight, the thread lies tight on front, back and edge, and the leaves turn without pulling at it.",
    mistake: { sign: "The first leaves do not turn over.", repair: "Score them beside the thread with the bone folder along a ruler and fold them back once." },
  };
}
