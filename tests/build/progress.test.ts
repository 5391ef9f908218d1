// What a build says on a terminal and in a log, and how sizes and times are put.
import { expect, test } from "vitest";
import { openProgress, sizeInWords, timeInWords } from "../../src/build/progress.ts";
import { faultInWords } from "../../src/build/fault-words.ts";

function listen(options: { isTTY: boolean; columns?: number }): { terminal: Parameters<typeof openProgress>[0]; text: () => string } {
  const written: string[] = [];
  return { terminal: { ...options, write: (text: string) => written.push(text) }, text: () => written.join("") };
}

test("in a log each step is a line and nothing is written over", () => {
  const { terminal, text } = listen({ isTTY: false });
  const progress = openProgress(terminal);
  progress.step("one");
  progress.say("two");
  progress.done();
  expect(text()).toBe("one\ntwo\n");
});

test("on a terminal a step takes the place of the last, what is said stays, and the end leaves a clean line", () => {
  const { terminal, text } = listen({ isTTY: true, columns: 40 });
  const progress = openProgress(terminal);
  progress.step("one");
  progress.say("two");
  progress.done();
  expect(text()).toBe("\r\u001b[2Kone\r\u001b[2Ktwo\n\r\u001b[2K");
});

test("a step wider than the terminal is cut, so that it can be written over", () => {
  const { terminal, text } = listen({ isTTY: true, columns: 30 });
  openProgress(terminal).step("x".repeat(60));
  expect(text().replace("\r\u001b[2K", "")).toBe(`${"x".repeat(28)}…`);
});

test("sizes and times are put in the unit a reader would choose", () => {
  expect([0, 999, 1000, 999_499, 1_000_000, 1_449_000].map(sizeInWords)).toEqual(["0 B", "999 B", "1 kB", "999 kB", "1.0 MB", "1.4 MB"]);
  expect([0, 1449, 59_900, 65_000].map(timeInWords)).toEqual(["0.0 s", "1.4 s", "59.9 s", "1 min 05 s"]);
});

test("a mistake of ours is called one, keeps its causes, and shows no stack trace", () => {
  const words = faultInWords(new Error("page cannot be rendered", { cause: new Error("no such filter") }));
  expect(words).toContain("internal error: page cannot be rendered");
  expect(words).toContain("caused by: no such filter");
  expect(words).not.toMatch(/\n\s+at /);
  expect(faultInWords(new Error("internal error: x"))).not.toContain("internal error: internal error");
});
