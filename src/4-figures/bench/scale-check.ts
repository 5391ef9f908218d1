// Figure: a ruler on a check line of a template sheet, and a part with its height along the spine.
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Part } from "../../2-model/types.ts";
import { inches, mm, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printSizes } from "../../units/print-length.ts";
import type { DrawingInput } from "../binding.ts";
import { wavyLine } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery, placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, gridCentres, leaderLabel } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { scales, scalesThatFit } from "../scale.ts";
import { area, label, labelType, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { measureText } from "../text-metrics.ts";
import { viewsBeside, withHeading } from "../views.ts";
import { sectionWords } from "./section-words.ts";
import type { SectionWords } from "./section-words.ts";
import { rulerSize, steelRuler } from "./steel-ruler.ts";

/** The foot of a sheet is drawn at this scale. */
const sheetScale = scales.find((scale) => scale.name === "1:1.5")!;
/** What is shown of the sheet, in millimetres of paper: its left margin, its height up to the break, and where the check lines lie above its foot. */
const sheet = { margin: 7, width: 98, height: 46, millimetreLine: 15, inchLine: 9, template: 33 } as const;
/** Between a check line and the ruler's edge, so that both can be seen: more on the side of the ticks. */
const rulerGap = { above: 1.2, below: 0.6 } as const;
/** Room for the board on paper. */
const boardRoom = { width: 34, height: 42 } as const;
/** A board lower than this on paper has its words beside it. */
const lowBoard = 20;
/** Labels of the board stay in here, so that the figure fits the column. */
const boardBounds = { left: -32, right: 45, top: -30, bottom: 90 } as const;

/** Figure `scale-check`: `partId` is the part that the maker measures to see how sizes are named, best one bought ready-made. */
export function drawScaleCheck(input: DrawingInput, partId: string): FigureDraft {
  const part = input.model.parts.find((each) => each.id === partId)!;
  const words = sectionWords(input);
  const board = drawBoard(input, part);
  const sizes = printSizes(part.height, part.width, { ...input.definition.units, dual: false });
  const [first, reading] = input.definition.units.governing === "mm" ? ["first", "100 mm"] : ["second", "4 in"];
  return {
    id: "scale-check",
    title: `Checking the templates and the ${part.name}`,
    caption: `Left: the foot of a template sheet, ${sheetScale.name}, a steel ruler on one of its two check lines; measure both. Right: ${words.part(part.id)}, ${board.scaleName}. Height is always measured along the spine and named first: ${sizes}.`,
    alternative: `At the foot of a template sheet lie two check lines, one exactly 100 mm long, one exactly 4 in. The end of a steel ruler lies at the left end of the ${first} line; at its right end the ruler reads ${reading}. `
      + `Beside it ${words.part(part.id)}: ${words.size(part.height)} high along the spine edge, ${words.size(part.width)} wide, ${words.thickness(part.thickness)} thick.`,
    items: viewsBeside([withHeading("sheet", "At the foot of every template sheet", drawSheetFoot(input)), withHeading("board", words.part(part.id), board.items)], 7),
  };
}

/** Origin at the sheet's lower left corner. */
function drawSheetFoot(input: DrawingInput): readonly SceneItem[] {
  const unit = input.definition.units.governing;
  const { factor } = sheetScale;
  const left = sheet.margin;
  const [hundred, fourInches] = [toMillimetres(mm(100)) * factor, toMillimetres(inches(4)) * factor];
  // The ruler covers neither of the lines: it lies above the upper one or below the lower one.
  const ruler = unit === "mm"
    ? { x: left, y: -sheet.millimetreLine - rulerGap.above, body: "above", shown: 12, unit, factor, reading: 100 } as const
    : { x: left, y: -sheet.inchLine + rulerGap.below, body: "below", shown: 5, unit, factor, reading: 4 } as const;
  const size = rulerSize(ruler);
  const onRuler = point(left + size.length * 0.35, ruler.y + size.width * (ruler.body === "above" ? -0.75 : 0.75));
  const fixed: readonly SceneItem[] = [
    area([...wavyLine(point(0, -sheet.height), point(sheet.width, -sheet.height)), ...wavyLine(point(sheet.width, -sheet.height), point(sheet.width, 0)).slice(1), { kind: "line", to: point(0, 0) }, { kind: "close" }], "paper", "none"),
    stroke(polyline([point(0, -sheet.height), point(0, 0), point(sheet.width, 0)]), "outline"),
    stroke(wavyLine(point(0, -sheet.height), point(sheet.width, -sheet.height)), "edge"),
    stroke(wavyLine(point(sheet.width, -sheet.height), point(sheet.width, 0)), "edge"),
    ...templateFoot(left),
    ...checkLine(left, -sheet.millimetreLine, hundred, 10),
    ...checkLine(left, -sheet.inchLine, fourInches, 8),
    ...steelRuler(ruler),
    label("check mm", "exactly 100 mm", point(left + hundred + 2, -sheet.millimetreLine + (unit === "mm" ? 2.1 : 0.3))),
    label("check in", "exactly 4 in", point(left + fourInches + 2, -sheet.inchLine + (unit === "mm" ? 0.6 : -0.3))),
  ];
  return placeEvery(fixed, [leaderLabel({ name: "steel ruler", text: "steel ruler, its end at the end of the line", target: onRuler, directions: unit === "mm" ? [60, 45, 70, 30] : [300, 310, 290], reach: 6 })]);
}

/** The lower end of some template, its upper part left out. */
function templateFoot(left: number): readonly SceneItem[] {
  const right = left + 52;
  const [top, foot] = [-sheet.height, -sheet.template];
  return [
    stroke(polyline([point(left, top + 0.3), point(left, foot), point(right, foot), point(right, top + 0.6)]), "cut"),
    label("template", "template", point(left + 26, (top + foot) / 2 + 1), { anchor: "middle" }),
  ];
}

/** A check line as every sheet has it: ticks at its ends and at even parts. */
function checkLine(left: number, y: number, length: number, parts: number): readonly SceneItem[] {
  const right = left + length;
  return [
    stroke(polyline([point(left, y - 2), point(left, y), point(right, y), point(right, y - 2)]), "outline"),
    ...Array.from({ length: parts - 1 }, (_, index) => {
      const x = left + (length * (index + 1)) / parts;
      return stroke(line(point(x, y), point(x, y - (2 * (index + 1) === parts ? 1.6 : 1.1))), "edge");
    }),
  ];
}

function drawBoard(input: DrawingInput, part: Part): { readonly items: readonly SceneItem[]; readonly scaleName: string } {
  const words = sectionWords(input);
  const [bookWidth, bookHeight] = [toMillimetres(part.width), toMillimetres(part.height)];
  const { items, scale } = placeAtScale(scalesThatFit(bookWidth, bookHeight, boardRoom.width, boardRoom.height), ({ factor }) => {
    const [width, height] = [bookWidth * factor, bookHeight * factor];
    const box = { left: 0, top: 0, right: width, bottom: height };
    return {
      fixed: [area(rectangle(0, 0, width, height), "face-middle", "outline")],
      labels: [
        dimension({ name: "board width", from: point(0, height), to: point(width, height), side: "below", text: sizeFor(words, part.width, width), offset: 5 }),
        dimension({ name: "board height", from: point(0, 0), to: point(0, height), side: "left", text: sizeFor(words, part.height, height), offset: 8 }),
        alongTheSpine(height),
        height < lowBoard
          ? leaderLabel({ name: "spine edge", text: "spine edge", target: point(0, height * 0.4), end: "arrow", directions: [70, 60, 80, 50], reach: height * 0.4 + 5 })
          : areaLabel("spine edge", "spine edge", [point(-2.6, height / 2)], { angle: 90 }),
        grainArrow("grain", "height", [...(height < lowBoard ? [] : gridCentres(box, 3, 3)), point(width + 5, height / 2), point(width + 10, height / 2)]),
        thicknessLabel(words.inLines(`${words.thickness(part.thickness)} thick`), width, height),
      ],
    };
  }, { bounds: boardBounds });
  return { items, scaleName: scale.name };
}

/** A size told in two units may be too long for a small board: the second unit then stands in the step only. */
function sizeFor(words: SectionWords, length: Length, span: number): string {
  const text = words.size(length);
  return measureText(text, labelType) + 6 <= span ? text : words.inLines(text)[0]!;
}

/** What the upright size is: the words stand outside its dimension line. */
function alongTheSpine(height: number): Placeable {
  const text = "height, along the spine";
  const outward = Array.from({ length: 8 }, (_, index) => point(-13.5 - 2 * index, height / 2));
  return areaLabel("along the spine", text, outward, { angle: 90 });
}

function thicknessLabel(text: readonly string[], width: number, height: number): Placeable {
  const name = "board thickness";
  const fits = text.length === 1 && measureText(text[0]!, labelType) + 4 <= width;
  const inside = fits ? [0.75, 0.85, 0.25, 0.15].map((share) => point(width / 2, height * share)) : [];
  const leader = (x: number, directions: readonly number[]): Placeable => leaderLabel({ name, text, target: point(x, height * 0.3), directions, reach: 5 });
  return firstOf(areaLabel(name, text[0]!, inside), leader(width - 0.8, [30, 45, 0, 60, 315]), leader(width * 0.7, [100, 120, 80, 260, 240, 280]));
}
