// Figure: the class's sessions as bars, one row for each group, with the numbers of the steps; readable in grey.
import type { PrintedTimetable, Slot, SlotKind } from "../../3-plan/class/printed-timetable.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { printClock } from "../../units/duration.ts";
import type { FigureDraft } from "../figure.ts";
import type { FillKind } from "../fill-kinds.ts";
import { area, centredLabel, headingType, label, labelType, smallestType, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { measureText } from "../text-metrics.ts";

/** A session as the chart needs it: minutes after midnight at which it begins, and how long it lasts. */
export interface ChartedSession {
  readonly start: number;
  readonly minutes: number;
}

const chart = { left: 24, width: 138, row: 5.4, gap: 1, head: 9, between: 6 } as const;

const fills: Readonly<Record<SlotKind, FillKind>> = { work: "face-light", demonstration: "face-dark", wait: "none", break: "none", "set up": "face-middle", "clean up": "face-middle" };

/** Figure `class-timetable`; null when nothing could be planned. */
export function drawTimetable(timetable: PrintedTimetable, sessions: readonly ChartedSession[]): FigureDraft | null {
  if (!timetable.fits) return null;
  const longest = Math.max(...sessions.map((session) => session.minutes));
  const factor = chart.width / longest;
  const rows = Array.from({ length: timetable.groups }, (_, index) => index + 1);
  const height = chart.head + rows.length * (chart.row + chart.gap) + chart.between;
  const items = sessions.flatMap((session, index): readonly SceneItem[] => {
    const top = index * height;
    const slots = timetable.slots.filter((slot) => slot.session === index + 1);
    return slots.length === 0 ? [] : [
      label(`session ${index + 1}`, `Session ${index + 1}`, point(0, top + 3), { size: headingType, weight: 600 }),
      ...clockLines(session, top, rows.length, factor, index),
      ...rows.flatMap((group) => rowOf(group, slots, top + chart.head + (group - 1) * (chart.row + chart.gap), factor, index)),
    ];
  });
  return {
    id: "class-timetable",
    title: "The class as bars",
    caption: `Time runs to the right, ${rows.length === 1 ? "the whole class in one row" : "one row for each group"}. Numbers are steps: light, everybody works; dark, the teacher shows the step; tinted, setting up and clearing away; empty, a break or a wait.`,
    alternative: timetable.sessions.map((session) => `${session.heading}: ${session.rows.map((row) => `${row.time} ${row.who}: ${row.what}`).join("; ")}.`).join(" "),
    items,
  };
}

/** A line and its hour at every half hour. */
function clockLines({ start, minutes }: ChartedSession, top: number, rows: number, factor: number, session: number): readonly SceneItem[] {
  const foot = top + chart.head + rows * (chart.row + chart.gap);
  const first = Math.ceil(start / 30) * 30;
  return Array.from({ length: Math.floor((start + minutes - first) / 30) + 1 }, (_, index) => first + index * 30).flatMap((at) => {
    const x = chart.left + (at - start) * factor;
    return [
      stroke(line(point(x, top + chart.head - 1.4), point(x, foot)), "edge"),
      label(`hour ${session}.${at}`, printClock(at), point(x, top + chart.head - 2.2), { size: smallestType, anchor: "middle" }),
    ];
  });
}

function rowOf(group: number, slots: readonly Slot[], top: number, factor: number, session: number): readonly SceneItem[] {
  // A wait may run on after the session: it is told in words.
  const own = slots.filter((slot) => slot.kind !== "wait" && (slot.group === null || slot.group === group));
  return [
    label(`group ${session}.${group}`, slots.some((slot) => slot.group !== null) ? `group ${group}` : "class", point(chart.left - 2, top + chart.row / 2 + labelType * 0.3), { anchor: "end" }),
    ...own.flatMap((slot, index): readonly SceneItem[] => {
      const [left, width] = [chart.left + slot.start * factor, (slot.end - slot.start) * factor];
      const name = `slot ${session}.${group}.${index}`;
      const text = slot.step === null ? "" : String(slot.step);
      const fits = text !== "" && measureText(text, labelType, 600) + 0.6 <= width;
      return [
        area(rectangle(left, top, width, chart.row), fills[slot.kind], "outline", name),
        ...(fits && slot.kind !== "demonstration" ? [centredLabel(name, text, point(left + width / 2, top + chart.row / 2), { weight: 600 })] : []),
      ];
    }),
  ];
}
