// Findings about the tools in hand: what a ruler, a board cutter, a punch and a drill can and cannot do, to the mark.
import { describe, expect, it } from "vitest";
import type { ToolLimits } from "../../src/1-definition/types.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { findPiercingFaults } from "../../src/2-model/tool-findings.ts";
import type { Edge } from "../../src/2-model/tool-findings.ts";
import type { Finding } from "../../src/2-model/types.ts";
import { mm } from "../../src/units/length.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";

const none: ToolLimits = { rulerLength: null, cutterLength: null, punchReach: null, drillDepth: null };
const codes = ["longer-than-tool", "out-of-punch-reach", "thicker-than-drill"];

/** Numbers and units are kept together by blanks that do not break. */
function plain(finding: Finding): Finding {
  return { ...finding, message: finding.message.replace(/[\u00a0\u202f]/g, " ") };
}

function foundWith(tools: Partial<ToolLimits>, book: Parameters<typeof stubAlbumDefinition>[0] = {}) {
  const { model } = buildModel(stubAlbumDefinition({ ...book, rest: { tools: { ...none, ...tools } } }));
  return model.findings.filter((finding) => codes.includes(finding.code)).map(plain);
}

describe("a cut longer than the tool", () => {
  // The card of the usual album is 294 × 375 mm, its longest cut; next comes the hinge cloth, 324 mm high.
  it("is found for a ruler one mark too short, with the part and both numbers, and not for one that just reaches", () => {
    expect(foundWith({ rulerLength: mm(375) })).toEqual([]);
    const [finding, ...others] = foundWith({ rulerLength: mm("374.5") });
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ code: "longer-than-tool", severity: "warn", where: "steel ruler", path: "tools/ruler length" });
    expect(finding!.message).toBe("the ruler is 374.5 mm long; longer than it: card (294 × 375 mm)");
  });

  it("lists every part, but neither boards that are bought nor ribbon and tape that are cut across", () => {
    // The ready-made boards are 300 mm high, a bookmark about 412 mm long.
    const [finding] = foundWith({ cutterLength: mm(295) });
    expect(finding!.where).toBe("board cutter");
    expect(finding!.message).toContain("card (294 × 375 mm), hinge cloth (324 × ");
    expect(finding!.message).not.toMatch(/boards|bookmark|ribbon|tape/);
  });

  it("is only worth knowing when the other tool can do it, and says so", () => {
    const findings = foundWith({ rulerLength: mm(600), cutterLength: mm(360) });
    expect(findings.map(({ severity, where }) => [severity, where])).toEqual([["note", "board cutter"]]);
    expect(findings[0]!.remedy).toBe("cut these by hand along the steel ruler");
    expect(foundWith({ rulerLength: mm(300), cutterLength: mm(500) }).map(({ severity }) => severity)).toEqual(["note"]);
    expect(foundWith({ rulerLength: mm(300), cutterLength: mm(360) }).map(({ severity }) => severity)).toEqual(["warn", "warn"]);
  });
});

describe("a hole that the punch does not reach", () => {
  // Strips 294 mm high in boards of 300 mm: the first hole lies 49 mm from the strip's head, 52 mm from the board's.
  it("is measured from head and tail, because the hinge bars the way from the spine side", () => {
    expect(foundWith({ punchReach: mm(52) })).toEqual([]);
    const [finding] = foundWith({ punchReach: mm("51.5") });
    expect(finding!.message).toBe("hole front-head is 52 mm from the nearest edge that a punch can come in from, the punch reaches 51.5 mm");
  });

  it("is told with the hole that lies furthest in", () => {
    const [finding, ...others] = foundWith({ punchReach: mm(40) }, { book: { posts: { count: 3 } } });
    expect(others).toEqual([]);
    expect(finding!.message).toContain("hole front-middle is 150 mm");
  });

  it("takes the nearest of the edges that are free", () => {
    const definition = stubAlbumDefinition({ rest: { tools: { ...none, punchReach: mm(20) } } });
    const part = { ...buildModel(definition).model.parts[0]!, height: mm(100), width: mm(60) };
    const hole = { id: "one", part: part.id, along: mm(30), across: mm(12), diameter: mm(5) };
    const found = (from: readonly Edge[]) => findPiercingFaults([{ where: "leaves", part, holes: [hole], from, thickness: mm(1) }], definition).map((finding) => /is (\d+) mm/.exec(plain(finding).message)![1]);
    expect(found(["head", "tail", "spine-side edge", "far edge"])).toEqual([]);
    expect(found(["head", "tail", "far edge"])).toEqual(["30"]);
    expect(found(["tail", "far edge"])).toEqual(["48"]);
    expect(found(["tail"])).toEqual(["70"]);
  });
});

describe("layers thicker than the drill goes", () => {
  // The post stack of the usual album is 5.92 mm.
  it("are found from the first hundredth on", () => {
    expect(foundWith({ drillDepth: mm("5.92") })).toEqual([]);
    const [finding] = foundWith({ drillDepth: mm("5.91") });
    expect(finding!.message).toBe("the layers are 5.92 mm thick, the tool goes through 5.91 mm in one go");
  });
});

it("nothing is checked of tools that the author does not name", () => {
  expect(foundWith({}, { book: { boards: { height: mm(600), width: mm(600) } } })).toEqual([]);
});
