// The timetable of a class as printed.
import type { Finding } from "../../2-model/types.ts";
import type { Remedy } from "./remedies.ts";
import type { ClassActivities, ClassTimetable } from "../timetable/class-types.ts";

/** What somebody does in a stretch of time. */
export type SlotKind = "work" | "demonstration" | "wait" | "break" | "set up" | "clean up";

/** One stretch of time in a session, in minutes from the session's start. */
export interface Slot {
  /** 1 for the first session. */
  readonly session: number;
  readonly start: number;
  readonly end: number;
  /** 1 for the first group; null for the whole class. */
  readonly group: number | null;
  /** Number of the step; null for breaks and the like. */
  readonly step: number | null;
  readonly kind: SlotKind;
  /** Which parts of a step that is done in several; null for a step that is done in one go. */
  readonly parts: { readonly from: number; readonly to: number; readonly of: number } | null;
}

/** One line of the clock timetable. */
export interface TimetableRow {
  /** "10:05–10:20". */
  readonly time: string;
  readonly who: string;
  readonly what: string;
  readonly kind: SlotKind;
}

/** One session as printed. */
export interface TimetableSession {
  readonly n: number;
  readonly heading: string;
  readonly rows: readonly TimetableRow[];
}

/** The whole timetable, or why there is none. */
export interface PrintedTimetable {
  readonly fits: boolean;
  /** "Proven shortest", or how far from it the plan may be, or that it does not fit. */
  readonly verdict: string;
  /** What the teacher should know: which wait or queue is to blame and what would make it fit, which queue is long, which step pauses. */
  readonly advice: readonly string[];
  readonly findings: readonly Finding[];
  /** Changes that make it fit; empty when it does. */
  readonly remedies: readonly Remedy[];
  readonly groups: number;
  readonly groupWords: string;
  readonly sessions: readonly TimetableSession[];
  readonly slots: readonly Slot[];
  /** What was scheduled, and how it came out. */
  readonly activities: ClassActivities;
  readonly made: ClassTimetable;
}
