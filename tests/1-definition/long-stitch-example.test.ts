// The commented example of the long-stitch binding reads without a problem, holds every key of its book, and tells the truth about the defaults.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Definition } from "../../src/1-definition/types.ts";
import { readAny } from "./reading.ts";

const example = readFileSync(new URL("../../examples/long-stitch.yaml", import.meta.url), "utf8");

/** The same book with nothing written but what is required and what makes it this book. */
const bare = `benchleaf: 1
binding: long-stitch binding
title: T
summary: S
author: {name: N}
units: mm
book: {text block: {page: {height: 163 mm, width: 113 mm}, sections: 8}}
`;

describe("the commented example of the long-stitch binding", () => {
  const { definitions, problems } = readAny(example, { files: ["pictures/stitch.jpg", "pictures/sign.jpg"] });
  const [written] = definitions as readonly Definition<"long-stitch">[];
  const [left] = readAny(bare).definitions as readonly Definition<"long-stitch">[];

  it("reads without a problem, its variants included", () => {
    expect(problems).toEqual([]);
    expect(definitions.map((definition) => definition.project)).toEqual(["invented", "invented-with-a-flap", "invented-slits-in-inches"]);
  });
  it("writes every default as it is when it is left out", () => {
    expect(written!.book).toEqual(left!.book);
    expect(written!.bench).toEqual(left!.bench);
    expect(written!.adhesives).toEqual(left!.adhesives);
    for (const [role, material] of Object.entries(left!.materials)) expect({ ...written!.materials[role], thicknessFrom: "" }, role).toEqual({ ...material, thicknessFrom: "" });
  });
  it("leaves no key of the book to the default, so that every one is shown", () => {
    expect([...written!.defaulted].filter((path) => path.startsWith("book/"))).toEqual([]);
    expect([...left!.defaulted].filter((path) => path.startsWith("book/")).length).toBeGreaterThan(10);
  });
});
