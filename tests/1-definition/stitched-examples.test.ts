// The commented examples of the link stitch and of the long-stitch binding read without a problem, hold every key of their book, and tell the truth about the defaults.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readAny } from "./reading.ts";

/** The same book with nothing written but what is required and what makes it this book. */
const bareOf = (binding: string, page: string): string => `benchleaf: 1
binding: ${binding}
title: T
summary: S
author: {name: N}
units: mm
book: {text block: {page: {${page}}, sections: 8}}
`;

describe.each([
  ["link-stitch", "link stitch", "height: 157 mm, width: 109 mm", "pictures/link.jpg", ["bare-boards", "two-needles-in-inches"]],
  ["long-stitch", "long-stitch binding", "height: 163 mm, width: 113 mm", "pictures/stitch.jpg", ["with-a-flap", "slits-in-inches"]],
] as const)("the commented example of %s", (id, binding, page, picture, variants) => {
  const example = readFileSync(new URL(`../../examples/${id}.yaml`, import.meta.url), "utf8");
  const { definitions, problems } = readAny(example, { files: [picture, "pictures/sign.jpg"] });
  const [written] = definitions;
  const [left] = readAny(bareOf(binding, page)).definitions;

  it("reads without a problem, its variants included", () => {
    expect(problems).toEqual([]);
    expect(definitions.map((definition) => definition.project)).toEqual(["invented", ...variants.map((variant) => `invented-${variant}`)]);
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
