// The sewing of a long-stitch binding: thread cut, sections sewn through the cover one after the other, the ends tied.
import { piecesToCut } from "../../2-model/sewing/thread.ts";
import { lengthOf } from "../../units/length.ts";
import { joinSentences } from "../sewing/joins.ts";
import { needleTable } from "../sewing/needle-table.ts";
import type { DraftStep, PlanContext } from "../binding.ts";
import { longStitchWords } from "./needle-words.ts";

type Context = PlanContext<"long-stitch">;
const stage = "Sew";

/** The steps from the cut thread to the finished book. */
export function sewBook(context: Context): readonly DraftStep[] {
  const { sections } = context.model.geometry.text;
  return [cutThread(context), sewFirst(context), sewSecond(context), ...(sections > 3 ? [sewLater(context)] : []), sewLast(context), finish(context)];
}

function cutThread({ model, say }: Context): DraftStep {
  const pieces = piecesToCut(model.thread!);
  const rule = model.values.get("thread by rule of thumb")!;
  return {
    id: "cut-thread", stage, title: "Cut and thread the thread",
    action: [
      pieces.length === 1 ? `Cut one length of thread, ${say.size(pieces[0]!.length)}.` : `Cut ${pieces.length} lengths of thread, as listed below. Thread the first and keep the others in order.`,
      "Draw it twice over the beeswax and once through your fingers; waxed thread needs neither.",
      "Leave a hand’s width hanging from the needle’s eye. Do not double the thread and make no knot.",
    ],
    ...(pieces.length > 1 ? { table: { caption: "Lengths of thread as cut", columns: ["length", "cut"], rows: pieces.map(({ length }, index) => [`${index + 1}`, say.size(length)]) } } : {}),
    parts: [],
    sizes: [
      { label: "thread in all, from its way", text: say.size(model.thread!.length) },
      { label: `rule of thumb, for comparison: (${model.geometry.text.sections} sections + 2) × page height`, text: say.about(say.size(lengthOf(rule.quantity.value))) },
    ],
    tools: ["ruler", "scissors", "beeswax", "needle"], minutes: 5 + pieces.length, cautions: ["scissors", "needle"], figure: "thread-lengths",
    check: "The thread runs through the fingers without catching, and every length is as long as printed.",
    mistake: { sign: "A length is too short.", repair: "Use it all the same and join the next one earlier, inside a fold." },
  };
}

/** What all sewing steps share. */
const sewingStep = { stage, parts: [], tools: ["needle"], cautions: ["needle"] } as const satisfies Partial<DraftStep>;

function passTable({ model }: Context, section: number): NonNullable<DraftStep["table"]> {
  return needleTable(model.thread!.paths[0]!, section, longStitchWords);
}

function sewFirst(context: Context): DraftStep {
  const { model, say } = context;
  const { stations, square, longStitches } = model.geometry;
  const last = stations.length;
  const tail = say.size(model.thread!.paths[0]!.start.length);
  return {
    ...sewingStep, id: "sew-first-section", title: "Sew section 1 through the cover",
    action: [
      "Hold the cover half open, its spine towards you, the front cover below, its head to the right.",
      `Lay section 1 onto the front cover, its fold against the spine, ${say.size(square)} from the cover’s head. Open it in its middle.`,
      `From outside go in at station 1, through the hole nearest to the front cover and the fold. Leave ${tail} of thread hanging outside.`,
      "Inside go along to station 2, and out through fold and cover.",
      `Outside go along to station 3, and in: this is a long stitch.${longStitches > 1 ? " Go on in turn, inside and outside." : ""} Inside go along to station ${last}, and out.`,
      ...joinSentences(model.thread!, 1, 1),
      "Pull snug, always along the spine, and hold the end outside while you do.",
      `Lay section 2 on, head to head. Outside go straight up to its station ${last}.`,
    ],
    table: passTable(context, 1),
    sizes: [{ label: "thread left hanging outside", text: tail }],
    minutes: 8 + 2 * last, figure: "sew-first-section",
    check: `Outside lies ${longStitches === 1 ? "one long stitch" : `a row of ${longStitches} long stitches`}, inside ${longStitches + 1} short ones; nothing is loose.`,
    mistake: { sign: "A long stitch lies inside, a short one outside.", repair: "You went along the wrong side. Draw the thread back to that station with the eye of the needle and sew on from there." },
  };
}

function sewSecond(context: Context): DraftStep {
  const { model } = context;
  const last = model.geometry.stations.length;
  return {
    ...sewingStep, id: "sew-second-section", title: "Sew section 2 and tie it to the end that hangs outside",
    action: [
      `Go in at station ${last} of section 2, and sew back as you came: along the inside, out, along the outside, in. Come out at station 1.`,
      ...joinSentences(model.thread!, 2, 2),
      "Pull both ends snug along the spine, the thread and the end that hangs out of section 1.",
      "Outside go down to station 1 of section 1. Tie the thread there to its own end: right over left and under, then left over right and under.",
      "Thread the short end on another needle, take it in at station 1 of section 1, and leave it inside the fold.",
      "Lay section 3 on, head to head. Outside go straight up to its station 1, over the hole of section 2.",
    ],
    table: passTable(context, 2), sizes: [{ label: "stations", text: String(last) }],
    minutes: 10 + 2 * last, figure: "sew-second-section",
    check: "The knot sits at station 1 of section 1 and does not slip. Both sections lie close to the spine.",
    mistake: { sign: "The knot slips.", repair: "It is a granny knot: both halves were crossed the same way. Pick the second half open with the needle and tie it the other way." },
  };
}

function sewLater(context: Context): DraftStep {
  const { model, say } = context;
  const { text, stations, sectionPitch } = model.geometry;
  const last = stations.length;
  const until = text.sections - 1;
  return {
    ...sewingStep, id: "sew-later-sections", title: until === 3 ? "Sew section 3" : `Sew sections 3 to ${until}`,
    action: [
      "Go in at the station where the thread stands, and sew to the other end: along the inside, out, along the outside, in. Come out at the other end station.",
      "Slip the needle, eye first, behind the stitch that lies between the two sections before. Pull snug along the spine.",
      "Lay the next section on, head to head. Outside go straight up to it, at the same station.",
      ...(until === 3 ? [] : [`Section 3 runs from station 1 to station ${last}, section 4 back, and so on to section ${until}.`]),
      ...joinSentences(model.thread!, 3, until),
    ],
    table: passTable(context, 3),
    sizes: [{ label: "each section adds to the spine", text: say.about(say.thickness(sectionPitch)) }],
    minutes: Math.ceil((until - 2) * (5 + 1.5 * last)), figure: "sew-later-sections",
    check: "Outside, the long stitches lie side by side like the strings of a harp; at both ends the climbs hang in each other like a chain.",
    mistake: { sign: "A section stands off the spine.", repair: "Its stitches are slack. Pull the slack from stitch to stitch towards the needle with the needle’s eye, before the next section goes on." },
  };
}

function sewLast(context: Context): DraftStep {
  const { model, definition, say } = context;
  const { sections } = model.geometry.text;
  const end = sections % 2 === 1 ? model.geometry.stations.length : 1;
  const tail = say.size(definition.book.thread.tail);
  return {
    ...sewingStep, id: "sew-last-section", title: `Sew section ${sections} and tie off inside`, tools: ["needle", "scissors"], cautions: ["needle", "scissors"],
    action: [
      `Sew section ${sections} like the one before, and come out at station ${end}.`,
      ...joinSentences(model.thread!, sections, sections),
      "Slip the needle behind the stitch that lies between the two sections before, and pull snug.",
      `Go in again at station ${end} of section ${sections}, where you came out.`,
      "Inside, tie the thread with two half knots to the stretch that lies in the fold.",
      `Cut it off ${tail} from the knot.`,
    ],
    table: passTable(context, sections),
    sizes: [{ label: "thread left after the knot", text: tail }],
    minutes: 10 + 2 * model.geometry.stations.length, figure: "sew-last-section",
    check: "No stitch outside can be lifted with a fingernail, and no end of thread is left outside.",
    mistake: { sign: "The last section is loose.", repair: "Untie it, pull the slack along the section towards the end station, link again and tie." },
  };
}

function finish({ model, say }: Context): DraftStep {
  const { geometry, finished } = model;
  const { flap, text } = geometry;
  return {
    id: "finish", stage, title: "Check the book",
    action: [
      "Shorten the ends inside the folds to the width of two fingers and fray them a little, so that they lie flat.",
      "Open the book in the middle of every section: it lies flat, and the thread lies tight in the fold.",
      `Shut it, ${flap ? "bring the flap round it, " : ""}knock it up on its head, and leave it under a light weight for an hour.`,
    ],
    parts: [],
    sizes: [
      { label: "finished book, height × width", text: say.sizes(finished.height, finished.width) },
      { label: flap ? "thickness with cover and flap" : "thickness at the spine, covers included", text: say.about(say.size(finished.thickness)) },
      { label: "sewn sections in the spine", text: say.about(say.thickness(text.spineThickness)) },
      { label: "square at head and fore-edge", text: say.about(say.size(geometry.square)) },
    ],
    tools: ["scissors", "needle", "weight"], minutes: 8, cautions: ["scissors", "needle", "weights"], figure: "spine-section",
    check: `The covers lie shut by themselves${flap ? ", and the flap lies flat on the front" : ""}; head and tail of cover and pages are parallel.`,
    mistake: { sign: "The covers stand open.", repair: "The folds beside the spine are not sharp. Rub them down once more through clean paper, shut the book, and press it overnight." },
  };
}
