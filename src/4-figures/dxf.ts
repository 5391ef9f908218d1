// A template for cutting machines as DXF of release 12 in ASCII, the form that most programs read: millimetres, one layer for each act, names as texts.
// Source of group codes: Autodesk, *DXF Reference* (the HEADER, TABLES and ENTITIES sections).
import { pathPoints } from "../geometry/path.ts";
import type { Point } from "../geometry/point.ts";
import { templateActs } from "./template-lines.ts";
import type { NamedLine, TemplateLines } from "./template-lines.ts";

/** Curves become chains of straight lines no further off than this, in millimetres. */
const curveTolerance = 0.005;
const nameHeight = 2;
const application = "BENCHLEAF";
const namesLayer = "names";

type Group = readonly [code: number, value: string | number];

/** The whole file. `height` turns the drawing over: in DXF y runs up. */
export function writeDxf({ lines, names }: TemplateLines, width: number, height: number): string {
  const up = ({ x, y }: Point): Point => ({ x, y: height - y });
  const groups: readonly Group[] = [
    ...section("HEADER", [
      [9, "$ACADVER"], [1, "AC1009"],
      [9, "$INSBASE"], ...at({ x: 0, y: 0 }),
      [9, "$EXTMIN"], ...at({ x: 0, y: 0 }),
      [9, "$EXTMAX"], ...at({ x: width, y: height }),
      // 4: millimetres; 1: metric. Release 12 knows neither, and readers that do not know them pass them over.
      [9, "$INSUNITS"], [70, 4],
      [9, "$MEASUREMENT"], [70, 1],
    ]),
    ...section("TABLES", [
      ...table("LTYPE", [[[2, "CONTINUOUS"], [70, 0], [3, "Solid line"], [72, 65], [73, 0], [40, real(0)]]]),
      ...table("LAYER", ["0", ...templateActs, namesLayer].map((name): readonly Group[] => [[2, name], [70, 0], [62, 7], [6, "CONTINUOUS"]])),
      ...table("STYLE", [[[2, "STANDARD"], [70, 0], [40, real(0)], [41, real(1)], [50, real(0)], [71, 0], [42, real(nameHeight)], [3, "txt"], [4, ""]]]),
      ...table("APPID", [[[2, application], [70, 0]]]),
    ]),
    ...section("ENTITIES", [
      ...lines.flatMap((each) => entity(each, up)),
      ...names.flatMap(({ text, at: place, upright }): readonly Group[] => [[0, "TEXT"], [8, namesLayer], ...at(up(place)), [40, real(nameHeight)], [1, ascii(text)], [50, real(upright ? 90 : 0)]]),
    ]),
    [0, "EOF"],
  ];
  return groups.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join("");
}

function section(name: string, inner: readonly Group[]): readonly Group[] {
  return [[0, "SECTION"], [2, name], ...inner, [0, "ENDSEC"]];
}

function table(name: string, entries: readonly (readonly Group[])[]): readonly Group[] {
  return [[0, "TABLE"], [2, name], [70, entries.length], ...entries.flatMap((entry): readonly Group[] => [[0, name], ...entry]), [0, "ENDTAB"]];
}

function entity({ act, name, path, hole }: NamedLine, up: (at: Point) => Point): readonly Group[] {
  const called: readonly Group[] = [[1001, application], [1000, ascii(name)]];
  if (hole) return [[0, "CIRCLE"], [8, act], ...at(up(hole.centre)), [40, real(hole.radius)], ...called];
  const isClosed = path.at(-1)?.kind === "close";
  return pathPoints(path, curveTolerance).flatMap((points): readonly Group[] => {
    const corners = (isClosed ? points.slice(0, -1) : points).map(up);
    const [from, to] = corners;
    if (corners.length === 2 && from && to) return [[0, "LINE"], [8, act], ...at(from), ...at(to, 1), ...called];
    return [
      [0, "POLYLINE"], [8, act], [66, 1], ...at({ x: 0, y: 0 }), [70, isClosed ? 1 : 0], ...called,
      ...corners.flatMap((corner): readonly Group[] => [[0, "VERTEX"], [8, act], ...at(corner)]),
      [0, "SEQEND"], [8, act],
    ];
  });
}

function at({ x, y }: Point, which = 0): readonly Group[] {
  return [[10 + which, real(x)], [20 + which, real(y)], [30 + which, real(0)]];
}

/** Four decimals: a tenth of a micrometre; never a minus before a zero. */
function real(value: number): string {
  const text = value.toFixed(4);
  return Number(text) === 0 ? "0.0000" : text;
}

/** Other characters by their number, as the format writes them. */
function ascii(text: string): string {
  return text.replace(/[^\x20-\x7e]/g, (character) => `\\U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`);
}
