// Sessions as stretches of time in which hands may work, and how to say when something happens.
import type { ClassActivities, ClassSession } from "./class-types.ts";
import type { StartWindow } from "./project.ts";

/** A stretch without a break: its end is not part of it. */
export interface Stretch {
  readonly session: number;
  readonly start: number;
  readonly end: number;
}

const day = 24 * 60;

/** The stretches of all sessions, without breaks and clean-up, from the start of the first session. */
export function stretchesOf(sessions: readonly ClassSession[], cleanUpMinutes: number): readonly Stretch[] {
  return sessions.flatMap((session, number) => {
    const stretches: Stretch[] = [];
    let from = 0;
    const close = (until: number): void => {
      if (until > from) stretches.push({ session: number, start: session.start + from, end: session.start + until });
    };
    const lastWork = session.minutes - cleanUpMinutes;
    for (const pause of [...session.breaks].sort((a, b) => a.start - b.start)) {
      close(Math.min(pause.start, lastWork));
      from = Math.max(from, pause.start + pause.minutes);
    }
    close(lastWork);
    return stretches;
  });
}

/** The last minute at which hands may work. */
export function lastMinute({ sessions, cleanUpMinutes }: ClassActivities): number {
  return Math.max(0, ...stretchesOf(sessions, cleanUpMinutes).map(({ end }) => end));
}

/** When something of a given length may start so as not to be interrupted; empty when it is longer than every stretch. */
export function windowsFor(stretches: readonly Stretch[], minutes: number): readonly StartWindow[] {
  return stretches.filter(({ start, end }) => end - start >= minutes).map(({ start, end }) => ({ first: start, last: end - minutes }));
}

/** Further sessions after the last one, each like it and a day later. */
export function withFurtherSessions(sessions: readonly ClassSession[], count: number): readonly ClassSession[] {
  const last = sessions[sessions.length - 1]!;
  return [...sessions, ...Array.from({ length: count }, (_, index) => ({ ...last, start: last.start + (index + 1) * day }))];
}

/** More sessions than the class can need, if every piece of work has its turn alone and every wait a day of its own. */
export function sessionsEnough(activities: ClassActivities): number {
  const { steps, groups, pace, sessions } = activities;
  const last = sessions[sessions.length - 1]!;
  const stretch = Math.max(1, ...stretchesOf([last], activities.cleanUpMinutes).map(({ start, end }) => end - start));
  const work = steps.reduce((sum, step) => sum + Math.ceil((groups * Math.ceil(step.minutes * pace) + step.demonstrationMinutes) / stretch), 0);
  const waits = steps.reduce((sum, step) => sum + Math.ceil(Math.max(0, step.rest ? step.rest.minutes : 0, ...step.needs.map((need) => need.leastMinutes)) / day), 0);
  return Math.min(40, 2 + work + waits);
}

/** The session in which a minute lies, or the last one that began before it. */
export function sessionAt(sessions: readonly ClassSession[], minute: number): number {
  let session = 0;
  while (session + 1 < sessions.length && sessions[session + 1]!.start <= minute) session += 1;
  return session;
}
