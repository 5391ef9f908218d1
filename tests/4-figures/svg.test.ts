// The SVG writer: stands alone, names itself, rounds to three decimals, and says which label owns which line.
import { describe, expect, it } from "vitest";
import { circle, line, rectangle } from "../../src/geometry/path.ts";
import { point } from "../../src/geometry/point.ts";
import { finishFigure } from "../../src/4-figures/figure.ts";
import { legendSample } from "../../src/4-figures/legend.ts";
import { lineDashes, lineLooks, lineWidth } from "../../src/4-figures/line-kinds.ts";
import { area, label, stroke } from "../../src/4-figures/scene.ts";
import { pathData, writeSvg } from "../../src/4-figures/svg.ts";
import type { LineKind } from "../../src/4-figures/types.ts";

const options = { id: "f", title: "A & B", description: "Says \"all\"", pen: "small" } as const;
const kinds = Object.keys(lineLooks) as readonly LineKind[];

describe("a written drawing", () => {
  const { svg, width, height } = writeSvg([stroke(line(point(0, 0), point(10, 1 / 3)), "outline", "d1"), label("d1", "9\u00a03\u20444", point(2, 3), { angle: 90 })], options);
  it("is measured in millimetres", () => {
    expect(svg).toContain(`width="${width}mm" height="${height}mm" viewBox="-1.5 `);
  });
  it("names itself and describes itself", () => {
    expect(svg).toContain('role="img" aria-labelledby="f-title f-description"');
    expect(svg).toContain('<title id="f-title">A &amp; B</title>');
    expect(svg).toContain('<desc id="f-description">Says &quot;all&quot;</desc>');
  });
  it("rounds to three decimals", () => {
    expect(svg).toContain("M0 0L10 0.333");
    expect(svg).not.toMatch(/\d\.\d{4}/);
  });
  it("says which label a line belongs to", () => {
    expect(svg).toContain('data-owner="d1"');
    expect(svg).toContain('data-label="d1"');
  });
  it("sets a fraction as one, and turned labels to read from the right", () => {
    expect(svg).toMatch(/<tspan class="frac"[^>]*word-spacing:-0.08em[^>]*>\u00a03\u20444<\/tspan>/);
    expect(svg).toContain('transform="rotate(-90 2 3)"');
  });
  it("is the same every time", () => expect(writeSvg([area(circle(point(0, 0), 5), "board")], options)).toEqual(writeSvg([area(circle(point(0, 0), 5), "board")], options)));
  it("hatches board with real lines and needs no pattern", () => {
    const board = writeSvg([area(rectangle(0, 0, 20, 20), "board")], options).svg;
    expect(board).toContain('class="hatching"');
    expect(board).not.toContain("url(#");
  });
});

describe("line kinds", () => {
  it("are twice as wide when wide, in both pens", () => {
    for (const pen of ["small", "large"] as const) expect(lineWidth("outline", pen)).toBeCloseTo(2 * lineWidth("dimension", pen), 9);
  });
  it("can all be told apart by width and dashes", () => {
    const looks = kinds.filter((kind) => kind !== "dimension").map((kind) => `${lineWidth(kind, "small")} ${lineDashes(kind, "small")?.join(",") ?? "continuous"}`);
    expect(new Set(looks).size).toBe(looks.length);
  });
  it.each(kinds)("%s has a sample with words in the legend", (kind) => {
    const { svg, words } = legendSample(kind);
    expect(words.length).toBeGreaterThan(3);
    expect(svg).toContain(`line-${kind}`);
  });
});

describe("a finished figure", () => {
  it("lists the line kinds it uses, each once", () => {
    const { lines } = finishFigure({ id: "x", title: "x", caption: "x", alternative: "x", items: [stroke(line(point(0, 0), point(1, 1)), "valley"), stroke(line(point(0, 0), point(1, 1)), "valley"), stroke(line(point(0, 0), point(1, 1)), "cut")] });
    expect(lines).toEqual(["valley", "cut"]);
  });
});

it("path data writes arcs with their flags", () => {
  expect(pathData(circle(point(0, 0), 2))).toBe("M2 0A2 2 0 0 1 -2 0A2 2 0 0 1 2 0Z");
});
