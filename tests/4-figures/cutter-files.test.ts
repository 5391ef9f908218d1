// The templates of every demo as files for cutting machines, read back: SVG by its numbers, DXF by a parser that owes us nothing.
import path from "node:path";
import dxfParser from "dxf-parser";
import { beforeAll, describe, expect, it } from "vitest";
import { computeProject } from "../../src/build/compute.ts";
import { readContent } from "../../src/build/content.ts";
import type { Template, TemplateMark } from "../../src/4-figures/types.ts";

// The package is in the older module format, its types are not: its one export is the parser itself.
const Parser = dxfParser as unknown as new () => { parseSync(text: string): unknown };

/** What design and issue ask of a template, in millimetres. */
const tolerance = 0.05;
const acts = ["place", "pierce", "score", "fold", "cut"];

interface Drawn {
  readonly name: string;
  readonly template: Template;
  /** All that the steps and tables of the book say, in small letters. */
  readonly steps: string;
}

let drawn: readonly Drawn[] = [];

beforeAll(async () => {
  const projects = await readContent(path.resolve(import.meta.dirname, "../../content"));
  const booklets = (await Promise.all(projects.map((project) => computeProject(project)))).flatMap((computed) => computed.booklets);
  drawn = booklets.flatMap(({ definition, drawings, plan }) => {
    const steps = JSON.stringify(plan.steps).toLowerCase();
    return drawings.templates.map((template) => ({ name: `${definition.project} ${template.id}`, template, steps }));
  });
});

interface DxfPoint {
  readonly x: number;
  readonly y: number;
}

interface DxfEntity {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: readonly DxfPoint[];
  readonly shape?: boolean;
  readonly center?: DxfPoint;
  readonly radius?: number;
  readonly text?: string;
  readonly extendedData?: { readonly applicationName?: string; readonly customStrings?: readonly string[] };
}

interface Dxf {
  readonly header: Readonly<Record<string, unknown>>;
  readonly tables: { readonly layer: { readonly layers: Readonly<Record<string, unknown>> } };
  readonly entities: readonly DxfEntity[];
}

function readDxf({ dxf }: Template): Dxf {
  return new Parser().parseSync(dxf) as unknown as Dxf;
}

const near = (a: DxfPoint, b: DxfPoint): boolean => Math.abs(a.x - b.x) <= tolerance && Math.abs(a.y - b.y) <= tolerance;
const ends = ({ from, to }: TemplateMark): readonly [DxfPoint, DxfPoint] => [{ x: from[0], y: from[1] }, { x: to[0], y: to[1] }];

/** Whether a line with these ends, both ways round, is among the sides of the chain. */
function hasSide(chain: readonly DxfPoint[], isClosed: boolean, [from, to]: readonly [DxfPoint, DxfPoint]): boolean {
  const corners = isClosed ? [...chain, chain[0]!] : chain;
  return corners.slice(1).some((corner, index) => (near(corners[index]!, from) && near(corner, to)) || (near(corners[index]!, to) && near(corner, from)));
}

/** A mark that only names what an outline does: the outline then has its two ends among its corners. */
function isOfOutline(mark: TemplateMark, chains: readonly (readonly DxfPoint[])[]): boolean {
  const [from, to] = ends(mark);
  return chains.some((chain) => chain.some((corner) => near(corner, from)) && chain.some((corner) => near(corner, to)));
}

describe("DXF", () => {
  it("is made for every template of every demo, in millimetres, with a layer for each act and one for names", () => {
    expect(drawn.length).toBeGreaterThan(25);
    for (const { name, template } of drawn) {
      const { header, tables } = readDxf(template);
      expect([header["$ACADVER"], header["$INSUNITS"]], name).toEqual(["AC1009", 4]);
      for (const layer of [...acts, "names"]) expect(Object.keys(tables.layer.layers), name).toContain(layer);
    }
  });

  it("has every mark in its place, to 0.05 mm, on the layer of its act, with its name", () => {
    let count = 0;
    for (const { name, template } of drawn) {
      // In DXF y runs up from the lower edge.
      const up = ({ x, y }: DxfPoint): DxfPoint => ({ x, y: template.height - y });
      const { entities } = readDxf(template);
      const outlines = entities.filter(({ type, layer }) => type === "POLYLINE" && layer === "cut").map(({ vertices }) => vertices!.map(up));
      for (const mark of template.marks) {
        const own = entities.filter(({ layer, extendedData }) => layer === mark.act && extendedData?.customStrings?.[0] === mark.name);
        const [from, to] = ends(mark);
        const isThere = mark.act === "cut" && own.length === 0 ? isOfOutline(mark, outlines)
          : mark.act === "pierce" ? own.some(({ type, center, radius }) => type === "CIRCLE" && near(up(center!), from) && (mark.diameter === undefined || Math.abs(2 * radius! - mark.diameter) <= tolerance))
            : own.some(({ type, vertices }) => type === "LINE" && hasSide(vertices!.map(up), false, [from, to]));
        expect(isThere, `${name}: ${mark.name}`).toBe(true);
        expect(entities.some(({ type, layer, text }) => type === "TEXT" && layer === "names" && text === mark.name), `${name}: the name ${mark.name}`).toBe(true);
        count += 1;
      }
    }
    expect(count).toBeGreaterThan(200);
  });

  it("has closed outlines on the layer cut, and nothing that is neither an outline, a mark nor a name", () => {
    for (const { name, template } of drawn) {
      const { entities } = readDxf(template);
      // What is cut is an outline, or a slit that has a mark of its own.
      const slits = entities.filter(({ layer, type, extendedData }) => layer === "cut" && type === "LINE" && template.marks.some((mark) => mark.name === extendedData?.customStrings?.[0]));
      const outlines = entities.filter((each) => each.layer === "cut" && !slits.includes(each));
      expect(outlines.length, name).toBeGreaterThan(0);
      for (const outline of outlines) expect([outline.type, outline.shape], name).toEqual(["POLYLINE", true]);
      const worked = template.marks.filter(({ act }) => act !== "cut").length;
      expect(entities.length, name).toBe(outlines.length + slits.length + worked + template.marks.length);
      expect(entities.filter(({ type }) => type !== "TEXT").every(({ extendedData }) => (extendedData?.customStrings?.[0] ?? "") !== ""), name).toBe(true);
    }
  });

  it("is plain ASCII with whole lines, and the same whenever it is made", () => {
    for (const { name, template } of drawn) {
      expect(template.dxf, name).toMatch(/^(?: {0,2}\d+\r\n[\x20-\x7e]*\r\n)+$/);
      expect(template.dxf.endsWith("  0\r\nEOF\r\n"), name).toBe(true);
      expect(template.dxf, name).not.toMatch(/NaN|Infinity|-0\.0000/);
    }
  });
});

/** Every line with a name: act, name and corners, straight from the text of the SVG. */
function readSvg({ svg }: Template): readonly { readonly act: string; readonly id: string; readonly name: string; readonly corners: readonly DxfPoint[]; readonly isClosed: boolean; readonly isRound: boolean }[] {
  return [...svg.matchAll(/<g id="(\w+)">\n([^]*?)\n<\/g>/g)].flatMap(([, act, inner]) =>
    [...inner!.matchAll(/<path id="([^"]+)"[^>]* d="([^"]+)"><title>([^<]*)<\/title>/g)].map(([, id, data, name]) => ({
      act: act!, id: id!, name: name!.replaceAll("&amp;", "&"), isClosed: data!.endsWith("Z"), isRound: data!.includes("A"),
      corners: [...data!.matchAll(/([-\d.]+) ([-\d.]+)(?=[MLAZ]|$)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) })),
    })));
}

describe("SVG", () => {
  it("has one unit for one millimetre", () => {
    for (const { name, template } of drawn) {
      const [, width, height, view] = /^<svg [^>]*width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]+)"/.exec(template.svg)!;
      expect(view!.split(" ").slice(2), name).toEqual([width, height]);
    }
  });

  it("has every mark in its place, to 0.05 mm, in the group of its act, with an id of its own and its name as title", () => {
    for (const { name, template } of drawn) {
      const lines = readSvg(template);
      expect(new Set(lines.map(({ id }) => id)).size, name).toBe(lines.length);
      const outlines = lines.filter(({ act, name: of }) => act === "cut" && of.startsWith("outline"));
      expect(outlines.length, name).toBeGreaterThan(0);
      expect(outlines.every(({ isClosed }) => isClosed), name).toBe(true);
      for (const mark of template.marks) {
        const own = lines.filter((each) => each.act === mark.act && each.name === mark.name);
        const [from, to] = ends(mark);
        const isThere = mark.act === "cut" && own.length === 0 ? isOfOutline(mark, outlines.map(({ corners }) => corners))
          : mark.act === "pierce" ? own.some(({ corners: [right, left], isRound }) => isRound && near({ x: (right!.x + left!.x) / 2, y: (right!.y + left!.y) / 2 }, from) && (mark.diameter === undefined || Math.abs(right!.x - left!.x - mark.diameter) <= tolerance))
            : own.some(({ corners }) => hasSide(corners, false, [from, to]));
        expect(isThere, `${name}: ${mark.name}`).toBe(true);
      }
    }
  });
});

describe("names", () => {
  it("of what is scored, folded and pierced are made of words that the steps use", () => {
    for (const { name, template, steps } of drawn) {
      const said = new Set(steps.match(/[a-z0-9]+/g)!.flatMap((word) => [word, word.replace(/s$/, "")]));
      for (const mark of template.marks.filter(({ act }) => act === "score" || act === "pierce" || act === "fold")) {
        for (const word of mark.name.toLowerCase().match(/[a-z0-9]+/g)!) expect(said.has(word), `${name}: ${word} of ${mark.name}`).toBe(true);
      }
    }
  });
});
