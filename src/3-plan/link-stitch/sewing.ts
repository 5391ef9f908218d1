// The sewing of a link stitch: thread cut, first section on the front board, the sections one after the other, the last with the back board.
import { piecesToCut } from "../../2-model/sewing/thread.ts";
import type { DraftStep, PlanContext } from "../binding.ts";
import type { ToolId } from "../../catalogue/tools.ts";
import { linkStitchWords } from "./needle-words.ts";
import { needleTable } from "../sewing/needle-table.ts";
import { joinSentences } from "../sewing/joins.ts";

/** The steps from the cut thread to the finished book. */
export function sewBook(context: PlanContext<"link-stitch">): readonly DraftStep[] {
  const { model } = context;
  const { sections } = model.geometry.text;
  return [cutThread(context), sewFirst(context), sewSecond(context), ...(sections > 3 ? [sewLater(context)] : []), sewLast(context), finish(context)];
}

const stage = "Sew";

function cutThread({ model, say }: PlanContext<"link-stitch">): DraftStep {
  const { text, needles } = model.geometry;
  const pieces = piecesToCut(model.thread!);
  const two = needles === 2;
  const rule = model.values.get("thread by rule of thumb")!.quantity.value as Parameters<typeof say.size>[0];
  return {
    id: "cut-thread", stage, title: "Cut and thread the thread",
    action: [
      pieces.length === 1 ? `Cut one length of thread, ${say.size(pieces[0]!.length)}.` : `Cut ${pieces.length} lengths of thread, as listed below; ${two ? "tie a slip of paper with its number to each" : "thread the first, keep the others in order"}.`,
      "Draw it twice over the beeswax and once through your fingers; waxed thread needs neither.",
      two ? "Put a needle on each end of each length." : "Thread the curved needle and leave a hand’s width hanging from its eye. Do not double the thread and make no knot.",
    ],
    ...(pieces.length > 1 ? { table: {
      caption: "Lengths of thread as cut", columns: ["length", "cut", two ? "for" : ""].filter((each) => each !== ""),
      rows: pieces.map((piece, index) => [`${index + 1}`, say.size(piece.length), ...(two ? [piece.needles === 2 ? `stations ${2 * index + 1} and ${2 * index + 2}` : "going on"] : [])]),
    } } : {}),
    parts: [],
    sizes: [
      { label: "thread in all, from its way", text: say.size(model.thread!.length) },
      { label: `rule of thumb, for comparison: (${text.sections} sections + 2 covers + 1) × page height`, text: say.about(say.size(rule)) },
    ],
    tools: ["ruler", "scissors", "beeswax", ...needleTools(two)], minutes: 6 + pieces.length, cautions: ["scissors", "needle"], figure: "thread-lengths",
    check: "The thread runs through the fingers without catching, and every length is as long as printed.",
    mistake: { sign: "A length is too short.", repair: "Use it all the same and join the next one earlier, inside a fold." },
  };
}

/** The needles that this book is sewn with. */
export function needleTools(two: boolean): readonly ToolId[] {
  return two ? ["needle"] : ["curvedNeedle"];
}

/** What all sewing steps share. */
function sewingStep({ model }: PlanContext<"link-stitch">): Pick<DraftStep, "stage" | "parts" | "tools" | "cautions"> {
  return { stage, parts: [], tools: needleTools(model.geometry.needles === 2), cautions: ["needle"] };
}

function sewFirst(context: PlanContext<"link-stitch">): DraftStep {
  const { model } = context;
  const { stations, needles } = model.geometry;
  const last = stations.length;
  const tail = context.say.size(context.definition.book.thread.tail);
  return {
    ...sewingStep(context), id: "sew-first-section", title: "Sew section 1 to the front board",
    action: [...(needles === 1 ? [
      "Lay the front board outside down, its spine edge at the edge of the table, and section 1 on it, head to head, fold level with the board’s spine edge.",
      `Open the section in its middle. From inside, go out at station 1; leave ${tail} of thread inside.`,
      "Take the thread round the board’s spine edge and along its outside to hole 1. Go in there, so that the needle comes out between board and section.",
      "Pass the needle once round the thread that lies on the board’s edge, go in at station 1 again and pull snug. Tie the thread to its own tail inside, with two half knots.",
      `Go along inside to station 2, out, and sew hole 2 of the board in the same way. Go on to station ${last}.`,
      `At station ${last} do not go back in: lay section 2 on, head to head, and take the thread straight up to its station ${last}.`,
    ] : [
      "Lay the front board outside down, its spine edge at the edge of the table, and section 1 on it, head to head, fold level with the board’s spine edge.",
      "Take the first length. From inside, bring one needle out at station 1 and the other at station 2, and pull until both ends are equally long.",
      "With each needle: round the board’s spine edge and along its outside to the hole of the same number, in there, so that it comes out between board and section.",
      "Pass each needle once round its own thread on the board’s edge and go in again at its station. Pull both snug.",
      "Cross over inside: the needle from station 1 comes out at 2, the one from 2 at 1. Lay section 2 on and take each once under the stitch below and straight up to section 2.",
      ...(last > 2 ? [`Sew the other ${last === 4 ? "pair" : "pairs"} of stations in the same way, each with its own length.`] : []),
    ]), ...joinSentences(model.thread!, 1, 1)],
    table: needleTable(model.thread!.paths[0]!, 1, linkStitchWords),
    sizes: [{ label: "thread left inside", text: needles === 1 ? tail : "none: both halves equally long" }],
    minutes: 10 + 5 * last, figure: "sew-first-section",
    check: "The board opens like a door and the section cannot be shifted on it; nothing is loose on the outside.",
    mistake: { sign: "The thread tears a slit from the hole.", repair: "You pulled upwards. Pull along the fold, in the direction in which you sew. Paste a strip of thin paper over the slit inside the fold and pierce it anew." },
  };
}

function sewSecond(context: PlanContext<"link-stitch">): DraftStep {
  const { model } = context;
  const { stations, needles, text } = model.geometry;
  const last = stations.length;
  return {
    ...sewingStep(context), id: "sew-second-section", title: "Sew section 2",
    action: [...(needles === 1 ? [
      `Go in at station ${last} of section 2 and along inside to ${last === 2 ? "station 1" : `station ${last - 1}`}. Come out.`,
      ...(last > 2 ? [
        "Slip the needle, eye first, behind the stitch that goes from section 1 to the board, below the station where you came out. Draw the thread through: it hangs in that stitch now.",
        `Go back in at the same station, along inside to the next, and link there in the same way.`,
      ] : []),
      "At station 1 come out, slip the needle behind the stitch below and pull snug.",
      "Lay section 3 on, head to head, and take the thread straight up to its station 1.",
    ] : [
      "Go in with each needle at the station above the one it came from, cross over inside, and come out at the other’s station.",
      "Slip each needle, eye first, behind the stitch that goes from section 1 to the board, below the station where it came out. Draw the thread through: it hangs in that stitch now.",
      "Lay section 3 on, head to head, and take each thread straight up to section 3.",
      ...(last > 2 ? ["Do the other pairs of stations before you go on to section 3."] : []),
    ]), ...joinSentences(model.thread!, 2, 2)],
    table: needleTable(model.thread!.paths[0]!, 2, linkStitchWords), sizes: [{ label: "stations", text: String(last) }],
    minutes: 8 + 2 * last, figure: "sew-second-section",
    check: `At every station${needles === 1 && last > 2 ? " between the ends" : ""} a little loop hangs in the stitch below; sections 1 and 2 lie close together.`,
    mistake: { sign: "A link is missing.", repair: `Draw the thread back to that station with the eye of the needle, link there, and sew on. Later, when section ${Math.min(4, text.sections)} is on, it cannot be reached any more.` },
  };
}

function sewLater(context: PlanContext<"link-stitch">): DraftStep {
  const { model, say } = context;
  const { stations, needles, text, sectionPitch } = model.geometry;
  const last = stations.length;
  const until = text.sections - 1;
  const which = until === 3 ? "section 3" : `sections 3 to ${until}`;
  return {
    ...sewingStep(context), id: "sew-later-sections", title: `Sew ${which}`,
    action: [...(needles === 1 ? [
      "Go in at the end station where the thread stands, along inside to the next station, and come out.",
      ...(last > 2 ? ["Slip the needle behind the link between the two sections before, always from the same side, and go back in where you came out. Go on like this from station to station."] : []),
      "At the last station come out, slip the needle behind the stitch between the two sections before, and pull snug along the fold.",
      until === 3 ? `Leave the thread hanging there: section ${text.sections} goes on together with the back board.` : `Lay the next section on and climb straight up to it. Section 3 runs from station 1 to station ${last}, section 4 back, and so on to section ${until}.`,
      "Press the sections down with your thumb before you pull each link tight.",
    ] : [
      "Go in with each needle at the station above the one it came from, cross over inside, and come out at the other’s station.",
      "Slip each needle behind the link between the two sections before, always from the same side, and pull snug.",
      until === 3 ? `Leave the needles hanging: section ${text.sections} goes on together with the back board.` : `Lay the next section on and climb straight up to it. Go on like this to section ${until}; sew all pairs of a section before the next is laid on.`,
      "Press the sections down with your thumb before you pull each link tight.",
    ]), ...joinSentences(model.thread!, 3, until)],
    table: needleTable(model.thread!.paths[0]!, 3, linkStitchWords),
    sizes: [{ label: "each section adds to the spine", text: say.about(say.thickness(sectionPitch)) }],
    minutes: Math.ceil((until - 2) * (4 + 1.5 * last)), figure: "sew-later-sections",
    check: "From outside the links stand in upright chains, one above each station, and the sections are level at the head.",
    mistake: { sign: "The pile leans to one side.", repair: "The thread is tighter at one end. Even the links out with the eye of the needle from the first section upwards, before more sections go on." },
  };
}

function sewLast(context: PlanContext<"link-stitch">): DraftStep {
  const { model, definition, say } = context;
  const { stations, needles, text } = model.geometry;
  const { sections } = text;
  const starts = sections % 2 === 0 ? stations.length : 1;
  const ends = sections % 2 === 0 ? 1 : stations.length;
  return {
    ...sewingStep(context), id: "sew-last-section", title: `Sew section ${sections} and the back board`,
    tools: [...needleTools(needles === 2), "scissors"], cautions: ["needle", "scissors"],
    action: [...(needles === 1 ? [
      `Lay section ${sections} and the back board on, outside up, heads and spine edges level.`,
      `Take the thread round the board’s spine edge and along its outside to hole ${starts}, in there, once round the thread on the board’s edge, and into section ${sections} at station ${starts}.`,
      "Go along inside to the next station and out. Link under the stitch between the two sections before, then take the board: round its edge, in at its hole, once round the thread, and in at the same station.",
      `Go on like this to station ${ends}. Inside, tie the thread with two half knots to the stretch that lies in the fold, and cut it off ${say.size(definition.book.thread.tail)} from the knot.`,
    ] : [
      `Lay section ${sections} and the back board on, outside up, heads and spine edges level.`,
      "Take each thread from its climb round the board’s spine edge and along its outside to the hole of the same number, in there, and once round the thread on the board’s edge.",
      `Go in at the same station of section ${sections}. Tie the two ends of each pair to each other inside the fold with two half knots, and cut them off ${say.size(definition.book.thread.tail)} from the knot.`,
    ]), ...joinSentences(model.thread!, sections, sections)],
    table: needleTable(model.thread!.paths[0]!, model.thread!.paths[0]!.passes.length, linkStitchWords),
    sizes: [{ label: "thread left after the knot", text: say.size(definition.book.thread.tail) }],
    minutes: 12 + 5 * stations.length, figure: "sew-last-section",
    check: "Both boards stand alike: the thread lies in straight lines from hole to edge, and the back board opens like the front one.",
    mistake: { sign: "The back board is loose.", repair: "Pull the slack from station to station towards the knot with the eye of the needle, and tie again." },
  };
}

function finish({ model, say }: PlanContext<"link-stitch">): DraftStep {
  const { geometry, finished } = model;
  return {
    id: "finish", stage, title: "Check the book",
    action: [
      "Shorten the ends inside the folds to the width of two fingers and fray them a little, so that they lie flat.",
      "Open the book in the middle of every section: it lies flat, and the thread lies tight in the fold.",
      "Shut it, knock it up on its head, and leave it under a light weight for an hour.",
    ],
    parts: [],
    sizes: [
      { label: "finished book, height × width", text: say.sizes(finished.height, finished.width) },
      { label: "thickness at the spine, boards included", text: say.about(say.size(finished.thickness)) },
      { label: "square at head and fore-edge", text: say.about(say.size(geometry.square)) },
    ],
    tools: ["scissors", ...needleTools(geometry.needles === 2), "weight"], minutes: 8, cautions: ["scissors", "needle", "weights"], figure: "spine-section",
    check: "The book stands, opens flat everywhere and shuts without being pressed.",
    mistake: { sign: "The sections rattle on the spine.", repair: "The links are slack. Draw the slack from the first section to the last with the eye of the needle, and tie the end anew." },
  };
}
