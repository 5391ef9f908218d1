// A book's title in footers and lists: with its subtitle only where the title alone would name two books.
import { expect, test } from "vitest";
import { runningTitle } from "../../src/5-pages/running-title.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";

const plain = stubAlbumDefinition();
const book = { ...plain, project: "tides", title: "Eleven tides", subtitle: null };
const variant = { ...plain, project: "tides-in-inches", title: "Eleven tides", subtitle: "in inches" };

test("is the title where no other book has it", () => {
  expect(runningTitle(variant, [variant])).toBe("Eleven tides");
  expect(runningTitle(variant, [variant, { ...book, title: "Low tide" }])).toBe("Eleven tides");
});

test("has the subtitle behind it where another book has the same title", () => {
  expect(runningTitle(variant, [book, variant])).toBe("Eleven tides: in inches");
  expect(runningTitle(book, [book, variant])).toBe("Eleven tides");
});
