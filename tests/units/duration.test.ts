// Tests of durations as authors write them and as they are printed.
import { describe, expect, test } from "vitest";
import { printDuration, readDuration } from "../../src/units/duration.ts";

describe("a duration", () => {
  test.each([
    ["45 min", 45], ["45", 45], ["45min", 45], ["45 minutes", 45], ["1 minute", 1], ["0 min", 0], ["1 h 30 min", 90], ["1h30min", 90], ["1 hour 30 minutes", 90],
    ["1.5 h", 90], ["1 1/2 hours", 90], ["1½ h", 90], ["½ h", 30], ["1/3 h", 20], ["12 hrs", 720], ["overnight", 720], [" Overnight ", 720],
    ["2 days", 2880], ["1 day", 1440], ["1 day 2 h 5 min", 1565], ["0.5 d", 720], ["1\u00a0h\u00a030\u00a0min", 90],
  ])("%j is %i minutes", (text, minutes) => {
    expect(readDuration(text)).toEqual({ ok: true, minutes });
  });

  test.each([
    ["", "no number", "overnight", 0, 0], ["soon", "does not start with a number", "overnight", 0, 4], ["-5 min", "is negative", "0 min or more", 0, 2],
    ["1:30", '":30" cannot be read', "1 h 30 min", 1, 4], ["1 h 30", '"30" has no unit', "1 h 30 min", 4, 6], ["30 min 1 h", "larger unit to the smaller", "1 h 30 min", 7, 10],
    ["1 h 2 h", "larger unit to the smaller", "1 h 30 min", 4, 7], ["20 s", '"s" is not a unit of time', "min, h or days", 3, 4], ["2 weeks", '"weeks" is not a unit of time', "min, h or days", 2, 7],
    ["1,5 h", "decimal comma", "1.5", 0, 3], ["0.33 h", "not a whole number of minutes", "whole minutes", 0, 6], ["4.5", "not a whole number of minutes", "whole minutes", 0, 3],
    ["1e3 min", "exponent", "in full", 0, 3], ["1/0 h", "divides by zero", "1 or more", 0, 3], ["  5 kg", '"kg" is not a unit', "min, h or days", 4, 6],
  ])("%j is refused: %s (%s), marked from %i to %i", (text, message, hint, start, end) => {
    expect(readDuration(text)).toEqual({ ok: false, code: "duration-syntax", message: expect.stringContaining(message), hint: expect.stringContaining(hint), start, end });
  });

  test("of a year is read, of a minute more is refused", () => {
    expect(readDuration("365 days")).toEqual({ ok: true, minutes: 525_600 });
    expect(readDuration("365 days 1 min")).toMatchObject({ ok: false, message: '"365 days 1 min" is longer than a year' });
    expect(readDuration("9".repeat(50)).ok).toBe(false);
  });

  test("that is absurdly long is refused unread", () => {
    expect(readDuration("9".repeat(100_000))).toMatchObject({ ok: false, message: expect.stringContaining("too long") });
  });
});

describe("a printed duration", () => {
  test.each([
    [0, "0 min"], [45, "45 min"], [60, "1 h"], [90, "1 h 30 min"], [720, "12 h"], [1440, "24 h"], [2879, "47 h 59 min"], [2880, "2 days"], [2880 + 90, "2 days 1 h 30 min"], [7.2, "8 min"],
  ])("of %d minutes is %s", (minutes, text) => {
    expect(printDuration(minutes).replaceAll("\u00a0", " ")).toBe(text);
  });

  test("stays on one line", () => {
    expect(printDuration(90)).not.toContain(" ");
  });
});
