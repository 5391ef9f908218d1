// The keys of a class: who comes, when and for how long, what is shared, and what the teacher counts on.
import { tools } from "../catalogue/tools.ts";
import type { ToolId } from "../catalogue/tools.ts";
import { rational } from "../units/rational.ts";
import type { Rational } from "../units/rational.ts";
import { list, mapping, mappingWithDefaults, optionalMapping } from "./collections.ts";
import { count, decimal, duration, optionalCount, yesOrNo } from "./fields.ts";
import { labelKeys } from "./label-keys.ts";
import type { LabelSheet, WrittenLabels } from "./label-keys.ts";
import { leaf, shownValue } from "./leaf.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { packKeys } from "./pack-keys.ts";
import type { WrittenPack } from "./pack-keys.ts";
import { text } from "./text-fields.ts";
import type { AdhesivePack, ClassSettings } from "./types.ts";

/** How a tool is called in a definition: its id in plain words. */
export const toolWords: Readonly<Record<ToolId, string>> = Object.fromEntries(
  Object.keys(tools).map((id) => [id, id.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)]),
) as Record<ToolId, string>;

/** A session as written. */
export interface WrittenSession {
  readonly length: number;
  readonly start: number;
  readonly "days after": number;
}

/** The class as written, before tools are looked up by id. */
export interface WrittenClass {
  readonly participants: number;
  readonly spares: number;
  readonly "teacher copy": boolean;
  readonly "cut beforehand": boolean;
  readonly sessions: readonly WrittenSession[];
  readonly breaks: { readonly every: number; readonly length: number };
  readonly "set up": number;
  readonly "clean up": number;
  readonly demonstration: Rational;
  readonly tools: Readonly<Record<string, number | null>>;
  readonly adhesives: readonly WrittenPack[];
  readonly currency: string;
  readonly "kit margin": Rational;
  readonly labels: WrittenLabels;
}

/** The schema of `class:`; null when there is no class. */
export function classKeys(context: FieldContext): Field<WrittenClass | null> {
  return optionalMapping({
    participants: count({ about: "How many people make the book.", least: 1, most: 60, example: 12 }),
    spares: count({ about: "Sets of material cut besides, for what is spoilt.", least: 0, most: 20, default: 1, example: 1 }),
    "teacher copy": yesOrNo({ about: "Whether the teacher makes a book along with the class.", default: true }),
    "cut beforehand": yesOrNo({ about: "Whether the parts are cut before the class meets, so that its timetable begins after that step.", default: true }),
    sessions: list(session(), { about: "The times the class meets, in order.", most: 20, oneMayStandAlone: true, mayBeEmpty: false }),
    breaks: mappingWithDefaults({
      every: duration({ about: "Longest time at the bench without a break.", least: 30, most: 8 * 60, limits: "from 30 min to 8 h", default: 90, defaultText: "90 min", example: "90 min" }),
      length: duration({ about: "Length of a break.", least: 0, most: 120, limits: "of at most 2 h", default: 10, defaultText: "10 min", example: "10 min" }),
    }, { about: "Breaks within a session.", example: "{every: 90 min, length: 10 min}" }),
    // Bean & Brodhead 1918, "Equipment": not more than 5 minutes to set up.
    "set up": duration({ about: "Time to lay out tools at the beginning of each session.", least: 0, most: 120, limits: "of at most 2 h", default: 5, defaultText: "5 min", example: "5 min" }),
    "clean up": duration({ about: "Time to clear away at the end of each session.", least: 0, most: 120, limits: "of at most 2 h", default: 10, defaultText: "10 min", example: "10 min" }),
    demonstration: decimal({ about: "The teacher shows each step first: this share of its working time. Default: 0.25.", least: "0", most: "2", default: rational(1n, 4n), example: "0.25" }),
    tools: mappingWithDefaults(Object.fromEntries(Object.entries(toolWords).map(([id, words]) => [
      words, optionalCount({ about: `How many the class has of: ${tools[id as ToolId].name}. Left out, one for each participant.`, least: 1, most: 200, example: 4 }),
    ])), { about: "What is shared, and how many there are.", noun: "tool that is known here", example: "{hole tool: 4}" }),
    adhesives: packKeys(context),
    currency: text({ about: "How prices are marked.", most: 8, default: "€", example: "€" }),
    "kit margin": decimal({ about: "What a kit is sold for above its cost, as a share of the cost. Default: 0.", least: "0", most: "10", default: rational(0), example: "0.4" }),
    labels: labelKeys(context),
  }, { about: "A class that makes this book. Left out, no class plan and no kit slips are made.", example: "{participants: 12, sessions: [3 h, 3 h]}" }) as Field<WrittenClass | null>;
}

function session(): Field<WrittenSession> {
  return mapping({
    length: duration({ about: "How long the session lasts, breaks, setting up and clearing away included.", least: 30, most: 14 * 60, limits: "from 30 min to 14 h", example: "3 h" }),
    start: timeOfDay(),
    "days after": count({ about: "Days after the session before.", least: 0, most: 60, default: 7, example: 1 }),
  }, { about: "One session.", shorthand: "length", example: "3 h" });
}

/** A time of day in minutes after midnight. */
function timeOfDay(): Field<number> {
  return leaf<number>({
    about: "When the session begins. Default: 10:00.",
    expected: "a time of day such as 18:30",
    example: "18:30",
    json: { type: "string", pattern: "^([01]?[0-9]|2[0-3]):[0-5][0-9]$", examples: ["18:30"] },
    fallback: { value: 10 * 60 },
    read: ({ text: written }) => {
      const [, hours, minutes] = /^\s*([01]?\d|2[0-3]):([0-5]\d)\s*$/.exec(written) ?? [];
      if (hours !== undefined && minutes !== undefined) return { ok: true, value: Number(hours) * 60 + Number(minutes) };
      return { ok: false, code: "value-type", says: ` is ${shownValue(written)}, but a time of day is needed`, hint: "write hours and minutes of the 24-hour day in quotation marks, such as \"18:30\"" };
    },
  });
}

/** The settings of the class as the plan uses them; its label sheet and its packs have been settled. */
export function settleClass(written: WrittenClass, labels: LabelSheet, packs: readonly AdhesivePack[]): ClassSettings {
  const ids = Object.entries(toolWords) as readonly (readonly [ToolId, string])[];
  return {
    participants: written.participants,
    spares: written.spares,
    teacherCopy: written["teacher copy"],
    cutBeforehand: written["cut beforehand"],
    sessions: written.sessions.map(({ length, start, "days after": daysAfter }) => ({ minutes: length, start, daysAfter })),
    breaks: written.breaks,
    setUp: written["set up"],
    cleanUp: written["clean up"],
    demonstration: written.demonstration,
    tools: new Map(ids.flatMap(([id, words]) => (written.tools[words] ? [[id, written.tools[words]] as const] : []))),
    packs,
    currency: written.currency,
    kitMargin: written["kit margin"],
    labels,
  };
}
