// Law of durations: whole minutes are printed and read back unchanged.
import fc from "fast-check";
import { expect, test } from "vitest";
import { printDuration, readDuration } from "../../src/units/duration.ts";

test("any whole number of minutes is printed and read back unchanged", () => {
  fc.assert(fc.property(fc.nat(200_000), (minutes) => {
    expect(readDuration(printDuration(minutes))).toEqual({ ok: true, minutes });
  }));
});

test("no text makes the reader throw or mark a place outside it", () => {
  fc.assert(fc.property(fc.oneof(fc.string({ maxLength: 70, unit: "binary" }), fc.stringMatching(/^([\d.½/ ]{1,4}(h|min|days|d|s|) ?){0,4}$/u)), (text) => {
    const reading = readDuration(text);
    if (reading.ok) expect(Number.isSafeInteger(reading.minutes) && reading.minutes >= 0).toBe(true);
    else expect(0 <= reading.start && reading.start <= reading.end && reading.end <= text.length).toBe(true);
  }), { numRuns: 1_000 });
});
