// The long-stitch binding's figures and templates: drawn thread against the moves of the model, template marks against its holes.
import { describe, expect, it } from "vitest";
import { pathPoints } from "../../src/geometry/path.ts";
import { drawings } from "../../src/4-figures/long-stitch.ts";
import { flatItems } from "../../src/4-figures/scene.ts";
import type { PathItem } from "../../src/4-figures/scene.ts";
import { toMillimetres } from "../../src/units/length.ts";
import { longStitchDefinition, longStitchInput } from "../fixtures/long-stitch.ts";

const inputOf = (more: string, sections = 5) =>
  longStitchInput(longStitchDefinition(`{text block: {page: {height: 165 mm, width: 115 mm}, sections: ${sections}, folded sheets: 6}${more}}`))!;

/** The lines of one kind as their end points, left one first. */
function linesOf(id: string, kind: PathItem["line"], input: ReturnType<typeof inputOf>): readonly (readonly [x: number, y: number, toX: number, toY: number])[] {
  return flatItems(drawings.figures[id]!(input)!.items).flatMap((item) => {
    if (item.kind !== "path" || item.line !== kind) return [];
    const points = pathPoints(item.path)[0]!;
    const [a, b] = [points[0]!, points.at(-1)!];
    return [a.x <= b.x ? [a.x, a.y, b.x, b.y] as const : [b.x, b.y, a.x, a.y] as const];
  });
}

describe("the drawing of section 1", () => {
  const input = inputOf(", sewing: {long stitches: 3}");
  const solid = linesOf("sew-first-section", "thread", input);
  const dashed = linesOf("sew-first-section", "thread-hidden", input);

  it("shows every long stitch heavy, every inside stitch dashed, and the climb", () => {
    const level = solid.filter(([, y, , toY]) => Math.abs(y - toY) < 0.01);
    expect(level).toHaveLength(3);
    expect(dashed).toHaveLength(4);
    expect(solid.filter(([x, , toX]) => Math.abs(x - toX) < 0.01)).toHaveLength(1);
  });
  it("has the head to the right: the stitches lie from right to left as far from each other as the stations", () => {
    const { rows } = input.model.geometry;
    const at = rows.map(toMillimetres);
    const drawn = dashed.map(([x, , toX]) => [x, toX] as const).sort((a, b) => b[0] - a[0]);
    // Inside stitches 1–2, 3–4, 5–6, 7–8, the first at the head.
    const scale = (drawn[0]![1] - drawn[3]![0]) / (at[7]! - at[0]!);
    drawn.forEach(([left, right], k) => {
      expect(drawn[0]![1] - right).toBeCloseTo((at[2 * k]! - at[0]!) * scale, 6);
      expect(drawn[0]![1] - left).toBeCloseTo((at[2 * k + 1]! - at[0]!) * scale, 6);
    });
  });
});

describe("the drawings of later sections", () => {
  it("draw section 3 and section 4, and thin all that was sewn before", () => {
    const input = inputOf("");
    const earlier = linesOf("sew-later-sections", "thread-before", input).filter(([, y, , toY]) => Math.abs(y - toY) < 0.01);
    // Two long stitches for each section sewn before and shown: sections 1 and 2, then 2 and 3.
    expect(earlier).toHaveLength(2 * 2 + 2 * 2);
  });
  it("are none for a book of three sections", () => {
    expect(drawings.figures["sew-later-sections"]!(inputOf("", 3))).toBeNull();
  });
});

describe("what only some books have", () => {
  it("is drawn only there: spine strip, slits, trimmed sections", () => {
    const drawn = (more: string) => ["spine-strip", "cut-slits", "trim-sections"].filter((id) => drawings.figures[id]!(inputOf(more)) !== null);
    expect(drawn("")).toEqual(["spine-strip"]);
    expect(drawn(", sewing: {openings: slits}, cover: {reinforced: no}")).toEqual(["cut-slits"]);
  });
});

describe.each([["holes", ""], ["slits", ", sewing: {openings: slits}"]])("the spine template with %s", (_, more) => {
  const input = inputOf(more);
  const template = drawings.templates["spine-template"]!(input)!;
  const { frontWidth, spineWidth, coverHeight, slits } = input.model.geometry;

  it("is as wide as the spine between its folds and as high as the cover", () => {
    const outline = flatItems(template.items).find((item) => item.kind === "path" && item.line === "cut") as PathItem;
    const points = pathPoints(outline.path)[0]!;
    expect(Math.max(...points.map(({ x }) => x))).toBeCloseTo(toMillimetres(spineWidth), 9);
    expect(Math.max(...points.map(({ y }) => y))).toBeCloseTo(toMillimetres(coverHeight), 9);
  });
  it("has a mark at every hole, named by section and station, and a cut for every slit", () => {
    const holes = input.model.holes.filter(({ part }) => part === "cover");
    const pierced = template.marks.filter(({ act }) => act === "pierce");
    expect(pierced).toHaveLength(holes.length);
    for (const hole of holes) {
      const [section, station] = hole.id.split("/");
      const mark = pierced.find(({ name }) => name === `section ${section}, station ${station}`)!;
      expect(mark.from[0]).toBeCloseTo(toMillimetres(hole.across) - toMillimetres(frontWidth), 9);
      expect(mark.from[1]).toBeCloseTo(toMillimetres(hole.along), 9);
    }
    expect(template.marks.filter(({ act }) => act === "cut").map(({ name }) => name)).toEqual(slits.map(({ station }) => `slit ${station}`));
  });
});
