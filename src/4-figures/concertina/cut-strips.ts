// Figure: the strips on their sheet, folds along the grain, from a true corner; and how a strip is tested for squareness.
import { curve, line, polygon, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { raggedEnd, raggedTop } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale, placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, viewsBeside, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"concertina">;

/** Room for the sheet on paper. */
const room = { width: 108, height: 62 } as const;

/** Figure `cut-strips`. */
export function drawCutStrips(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { sheet } = geometry;
  const { items, scaleName } = drawSheet(input);
  const grain = sheet.grainAssumed ? " The grain of your sheet is not known: test it first." : "";
  return {
    id: "cut-strips",
    title: geometry.strips.length === 1 ? "The strip on its sheet" : "The strips on their sheet",
    caption: `Above: ${shownWords(input)}, ${scaleName}, laid from the true corner at the left below; the grain runs away from you, along the folds.${grain} Below: the test for squareness, not to scale. ${input.unitNote}`,
    alternative: `A sheet with its grain running up the page${sheet.sizeAssumed ? "" : `, ${words.size(sheet.along)} along the grain and ${words.size(sheet.across)} across it`}. From its lower left corner, which is cut true, strips lie one above the other, each ${words.size(geometry.panelHeight)} high along the grain and running from left to right across it: `
      + `${input.model.parts.filter((part) => part.material === "panel paper").map((part) => `${part.name} ${words.size(part.width)} wide${part.count > 1 ? `, ${part.count} pieces` : ""}`).join("; ")}. `
      + "Below, a strip bent round with its ends together: when it is square its edges lie on each other; when it is not, one edge peeps out.",
    items: viewsBelow([items, viewsBeside([withHeading("square", "Square: one edge shows", bentStrip(0)), withHeading("not square", "Not square: an edge peeps out", bentStrip(3.2))], 12)], 6),
  };
}

/** How many strips the sheet shows. */
function shownCount({ model }: Input): number {
  const { strips, sheet } = model.geometry;
  return Math.max(1, Math.min(strips.length, sheet.stripsFromEach));
}

function shownWords(input: Input): string {
  const { strips, sheet } = input.model.geometry;
  const shown = shownCount(input);
  if (strips.length === 1) return "the strip on its sheet";
  if (shown === strips.length) return "all strips on one sheet";
  return `the first ${shown === 1 ? "strip" : `${shown} strips`} of ${strips.length} on one sheet${sheet.sizeAssumed ? "" : `; ${sheet.count} sheets are needed`}`;
}

function drawSheet(input: Input): { readonly items: readonly SceneItem[]; readonly scaleName: string } {
  const { geometry, parts } = input.model;
  const { sheet, strips } = geometry;
  const shown = strips.slice(0, shownCount(input));
  const stripHeight = toMillimetres(geometry.panelHeight);
  const widthOf = (id: string): number => toMillimetres(parts.find((part) => part.id === id)!.width);
  const widest = Math.max(...shown.map((strip) => widthOf(strip.part)));
  // A sheet that is not known is shown as far as the strips reach, and goes on.
  const sheetWidth = sheet.sizeAssumed ? widest * 1.12 : Math.max(toMillimetres(sheet.across), widest);
  const sheetHeight = sheet.sizeAssumed ? stripHeight * (shown.length + 0.3) : Math.max(toMillimetres(sheet.along), stripHeight * shown.length);
  const { items, scale } = placeAtScale(scalesThatFit(sheetWidth, sheetHeight, room.width, room.height), ({ factor }) => {
    const [width, height, each] = [sheetWidth * factor, sheetHeight * factor, stripHeight * factor];
    const boxes = shown.map((strip, index) => ({ strip, left: 0, top: height - (index + 1) * each, width: widthOf(strip.part) * factor }));
    const fixed: SceneItem[] = [
      area(rectangle(0, 0, width, height), "none", "edge"),
      ...(sheet.sizeAssumed ? [...raggedEnd(width, -0.6, height + 0.6, 1), ...raggedTop(0, -0.6, width + 0.6, -1)] : []),
      ...boxes.map((box) => area(rectangle(box.left, box.top, box.width, each), "face-light", "outline")),
      stroke(polyline([point(3, height), point(3, height - 3), point(0, height - 3)]), "edge"),
    ];
    const first = boxes[0]!;
    return {
      fixed,
      labels: [
        dimension({ name: "strip height", from: point(0, height - each), to: point(0, height), side: "left", text: input.number(geometry.panelHeight), offset: 6 }),
        dimension({ name: "strip width", from: point(0, height), to: point(first.width, height), side: "below", text: input.number(parts.find((part) => part.id === first.strip.part)!.width), offset: 6 }),
        ...(sheet.sizeAssumed ? [] : [
          dimension({ name: "sheet across", from: point(0, 0), to: point(width, 0), side: "above" as const, text: input.number(sheet.across), offset: 5 }),
          dimension({ name: "sheet along", from: point(0, 0), to: point(0, height), side: "left" as const, text: input.number(sheet.along), offset: 13 }),
        ]),
        grainArrow("grain", "height", [6, 10, 14, 18, 22].map((out) => point(width + out, height / 2)), Math.min(16, Math.max(10, height * 0.6))),
        ...nameStrips(input, boxes, each),
        leaderAnywhere({ name: "true corner", text: "true corner", target: point(1.5, height - 1.5), end: "arrow", directions: [235, 225, 245, 215], reach: 9 }),
      ],
    };
  });
  return { items, scaleName: scale.name };
}

interface StripBox { readonly strip: Input["model"]["geometry"]["strips"][number]; readonly left: number; readonly top: number; readonly width: number }

/** Every strip is named where there is room, else the first one with a pointer. */
function nameStrips(input: Input, boxes: readonly StripBox[], each: number): readonly Placeable[] {
  const words = sectionWords(input);
  const nameOf = ({ strip }: StripBox): string => (boxes.length === 1 && input.model.geometry.strips.length === 1 ? words.part("strip") : `strip ${strip.n}: ${words.part(strip.part)}`);
  const inside = (box: StripBox) => [0.5, 0.35, 0.65, 0.25, 0.75].map((share) => point(box.left + box.width * share, box.top + each / 2));
  const pointer = (box: StripBox): Placeable => leaderAnywhere({ name: `strip ${box.strip.n}`, text: nameOf(box), target: point(box.left + box.width * 0.8, box.top + each / 2), directions: [20, 30, 10, 40, 330], reach: 8 });
  if (each >= 4.6) return boxes.map((box) => firstOf(areaLabel(`strip ${box.strip.n}`, nameOf(box), inside(box)), pointer(box)));
  return [pointer(boxes[0]!)];
}

/** A strip bent round with its ends together at the right, seen from its front; `askew` is how far the end behind peeps out at the head. */
function bentStrip(askew: number): readonly SceneItem[] {
  const [length, height, bend] = [34, 15, 4];
  const behind = askew === 0 ? [] : [area(polygon([point(bend, 0), point(length, -askew), point(length + askew * 0.3, height - askew), point(bend, height)]), "face-middle", "edge")];
  return placeEvery([
    ...behind,
    area([
      { kind: "move", to: point(bend, 0) },
      { kind: "line", to: point(length, 0) }, { kind: "line", to: point(length, height) }, { kind: "line", to: point(bend, height) },
      { kind: "curve", control1: point(-1.5, height), control2: point(-1.5, 0), to: point(bend, 0) }, { kind: "close" },
    ], "paper", "outline"),
    stroke(line(point(bend, 0.6), point(bend, height - 0.6)), "dimension", "bend"),
    stroke(curve(point(bend - 1.6, 1.2), point(bend - 3, 4), point(bend - 3, height - 4), point(bend - 1.6, height - 1.2)), "dimension", "bend"),
    label("ends", askew === 0 ? "both ends" : "end behind", point(length + 3, askew === 0 ? height / 2 + 1 : 0.5)),
  ], []);
}
