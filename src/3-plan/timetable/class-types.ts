// What a class does and when: the timetable's own input and output, apart from definition and plan.

/** A session of the class; all times are whole minutes. */
export interface ClassSession {
  /** Counted from the start of the first session. */
  readonly start: number;
  readonly minutes: number;
  /** Counted from the start of the session. */
  readonly breaks: readonly { readonly start: number; readonly minutes: number }[];
}

/** Tools, presses and other things that groups must share. */
export interface ClassTool {
  readonly id: string;
  readonly count: number;
}

/** How many of a tool one group holds. */
export interface ToolUse {
  readonly tool: string;
  readonly count: number;
}

/** What must come before a step: another step of the same group, counted from the end of its work. */
export interface ClassNeed {
  readonly step: string;
  /** Setting or drying: at least so long; it may run over breaks and nights. */
  readonly leastMinutes: number;
  /** Open time: at most so long; null when there is no hurry. */
  readonly mostMinutes: number | null;
}

/** One step, as every group does it once. */
export interface ClassStep {
  readonly id: string;
  /** Hands-on minutes at pace 1. */
  readonly minutes: number;
  /** The teacher shows it to the whole class before the first group begins; 0 when nothing is shown. */
  readonly demonstrationMinutes: number;
  /** Whether the teacher must stand by while a group does it. */
  readonly needsTeacher: boolean;
  readonly tools: readonly ToolUse[];
  readonly needs: readonly ClassNeed[];
  /** Tools held from the end of the work while the piece rests in them, over breaks and nights too. */
  readonly rest: { readonly minutes: number; readonly tools: readonly ToolUse[] } | null;
  /** Nothing is spoilt when it is left half done for a break or a night. */
  readonly mayPause: boolean;
  /** Which part of which step this is, counted from 1; null for a step that is done in one go. */
  readonly part: { readonly of: string; readonly n: number; readonly count: number } | null;
}

/** All that the timetable of a class depends on. */
export interface ClassActivities {
  readonly groups: number;
  readonly teachers: number;
  /** Factor on the hands-on minutes of steps; what the teacher shows is not slowed down. */
  readonly pace: number;
  readonly sessions: readonly ClassSession[];
  /** Last minutes of every session, in which nothing else is done. */
  readonly cleanUpMinutes: number;
  readonly tools: readonly ClassTool[];
  /** In an order in which a single group could do them. */
  readonly steps: readonly ClassStep[];
}

/** One entry of the timetable. */
export interface TimetableSlot {
  /** From 0; a wait belongs to the session in which it begins. */
  readonly session: number;
  /** Both from the start of the session; a wait may end after it. */
  readonly start: number;
  readonly end: number;
  /** From 0; null for the whole class. */
  readonly group: number | null;
  readonly step: string | null;
  readonly kind: "work" | "demonstration" | "wait" | "break";
}

/** What keeps the class from fitting: each alone, or all of them together. */
export type Blame =
  | { readonly kind: "wait"; readonly step: string; readonly minutes: number }
  /** `minutes` are those for which each of the tools would be in use, one turn after another. */
  | { readonly kind: "queue"; readonly tool: string; readonly minutes: number }
  /** Too many steps need the teacher beside them. */
  | { readonly kind: "teacher" }
  | { readonly kind: "step-too-long"; readonly step: string; readonly isShown: boolean; readonly minutes: number; readonly longestStretch: number }
  /** Even with enough tools and no waits there is more to do than the sessions hold; `minutes` are those of one group. */
  | { readonly kind: "hands-on"; readonly minutes: number };

/** The timetable, or why there is none. */
export interface ClassTimetable {
  readonly fits: boolean;
  /** In order of time; empty when the class does not fit. */
  readonly slots: readonly TimetableSlot[];
  /** Minute, from the start of the first session, at which the last work ends; null when no schedule was found. */
  readonly end: number | null;
  /** No timetable lets the class end earlier. */
  readonly lowerBound: number;
  /** Of a class that fits: no timetable ends earlier. Of one that does not: no timetable fits. */
  readonly proven: boolean;
  /** Empty when the class fits. */
  readonly blame: readonly Blame[];
  /** Whether all of the blamed must go for the class to fit; otherwise each alone is enough. */
  readonly blamedTogether: boolean;
}
