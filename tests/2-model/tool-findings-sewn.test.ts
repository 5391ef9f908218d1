// Findings about the tools in hand for the bindings that are sewn: their longest cut, their boards' holes, their drilled blocks, to the mark.
import { describe, expect, it } from "vitest";
import type { ToolLimits } from "../../src/1-definition/types.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { isLess, mm, subtractLength } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { caseDefinition } from "../fixtures/case-binding.ts";
import { linkStitchDefinition } from "../fixtures/link-stitch.ts";
import { pamphletDefinition, stabBindingDefinition } from "../fixtures/sewn-books.ts";

const none: ToolLimits = { rulerLength: null, cutterLength: null, punchReach: null, drillDepth: null };
const codes = ["longer-than-tool", "out-of-punch-reach", "thicker-than-drill"];
const link = linkStitchDefinition("{text block: {page: {height: 165 mm, width: 115 mm}, sections: 6}}");

const definitions = {
  pamphlet: (tools: Partial<ToolLimits>) => pamphletDefinition({ rest: { tools: { ...none, ...tools } } }),
  stab: (tools: Partial<ToolLimits>, leaves = 40) => stabBindingDefinition({ book: { leaves }, rest: { tools: { ...none, ...tools } } }),
  link: (tools: Partial<ToolLimits>) => ({ ...link, tools: { ...none, ...tools } }),
  case: (tools: Partial<ToolLimits>) => ({ ...caseDefinition(), tools: { ...none, ...tools } }),
};

function found(definition: Parameters<typeof buildModel>[0]): readonly string[] {
  return buildModel(definition).model.findings.filter(({ code }) => codes.includes(code)).map(({ code, message }) => `${code}: ${message.replace(/[\u00a0\u202f]/g, " ")}`);
}

/** The longest side of what is cut: parts with grain that are not bought ready-made. */
function longestCut(definition: Parameters<typeof buildModel>[0]) {
  const { parts } = buildModel(definition).model;
  const sides = parts.filter(({ readyMade, grain }) => !readyMade && grain !== "none").flatMap(({ height, width }) => [height, width]);
  return sides.reduce((longest, each) => (isLess(longest, each) ? each : longest));
}

describe("a ruler", () => {
  it.each(["pamphlet", "stab", "link", "case"] as const)("that just reaches is enough for a book of the kind %s, one mark less is not", (kind) => {
    const longest = longestCut(definitions[kind]({}));
    expect(found(definitions[kind]({ rulerLength: longest }))).toEqual([]);
    expect(found(definitions[kind]({ rulerLength: subtractLength(longest, mm("0.5")) }))).toEqual([expect.stringMatching(/^longer-than-tool: the ruler is /)]);
  });

  it("names the covers of a pamphlet of A5 pages with squares of 3 mm: 216 mm high, 302 mm wide", () => {
    expect(found(definitions.pamphlet({ rulerLength: mm(300) }))).toEqual(["longer-than-tool: the ruler is 300 mm long; longer than it: cover (216 × 302 mm)"]);
  });
});

describe("the covered boards of a link stitch", () => {
  const { geometry, holes } = buildModel(link).model as { geometry: { coverThickness: Length; holeDistance: Length }; holes: readonly unknown[] };

  it("are pierced one by one, as thick as board, covering and lining", () => {
    expect(holes.length).toBeGreaterThan(0);
    expect(found(definitions.link({ drillDepth: geometry.coverThickness }))).toEqual([]);
    expect(found(definitions.link({ drillDepth: subtractLength(geometry.coverThickness, mm("0.01")) }))).toEqual([expect.stringMatching(/^thicker-than-drill/)]);
  });

  it("have holes that a punch must reach from the spine edge", () => {
    expect(found(definitions.link({ punchReach: geometry.holeDistance }))).toEqual([]);
    expect(found(definitions.link({ punchReach: subtractLength(geometry.holeDistance, mm("0.5")) }))).toEqual([expect.stringMatching(/^out-of-punch-reach: hole /)]);
  });
});

describe("a stab binding", () => {
  it("is drilled only where it is thicker than 12 mm; then the bit must be long enough", () => {
    expect(found(definitions.stab({ drillDepth: mm(4) }))).toEqual([]);
    const thick = buildModel(definitions.stab({}, 160)).model.finished.thickness;
    expect(isLess(mm(12), thick)).toBe(true);
    expect(found(definitions.stab({ drillDepth: thick }, 160))).toEqual([]);
    expect(found(definitions.stab({ drillDepth: mm(12) }, 160))).toEqual([expect.stringMatching(/^thicker-than-drill: the layers are /)]);
  });
});
