// Figure: one sheet as it is cut, to scale, with the pieces' letters, the numbers of the cuts and the running marks of the first one.
import type { CutPlanOfMaterial } from "../../3-plan/class/types.ts";
import type { CutStep, SheetLayout } from "../../3-plan/cutting/types.ts";
import type { Box } from "../../geometry/box.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, drawBalloon, gridCentres } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { fittingScale } from "../scale.ts";
import { area, label, labelType, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { measureText } from "../text-metrics.ts";

/** Room for a sheet on paper, in millimetres. */
const room = { width: 78, height: 92 } as const;

/** What a layout is drawn from. */
export interface CutLayoutInput {
  readonly of: CutPlanOfMaterial;
  readonly layout: SheetLayout;
  /** 1 for the first layout of its material. */
  readonly n: number;
  letter(piece: string): string;
  size(length: Length): string;
}

/** Figure `cut-<role>-<n>`. */
export function drawCutLayout(input: CutLayoutInput): FigureDraft {
  const { of, layout, n } = input;
  const sheet = of.request.sheets.find((each) => each.id === layout.sheet)!;
  const [width, height] = [toMillimetres(sheet.width), toMillimetres(sheet.height)];
  const scale = fittingScale(width, height, room.width, room.height, 1);
  const { factor } = scale;
  const box = (x: number, y: number, w: number, h: number): Box => ({ left: x * factor, right: (x + w) * factor, top: (height - y - h) * factor, bottom: (height - y) * factor });
  const pieces = layout.pieces.map((piece) => ({ piece, at: box(toMillimetres(piece.x), toMillimetres(piece.y), toMillimetres(piece.width), toMillimetres(piece.height)) }));
  const offcuts = layout.offcuts.map((offcut) => ({ offcut, at: box(toMillimetres(offcut.x), toMillimetres(offcut.y), toMillimetres(offcut.width), toMillimetres(offcut.height)) }));
  const fixed: readonly SceneItem[] = [
    ...offcuts.map(({ at }) => area(rectangle(at.left, at.top, at.right - at.left, at.bottom - at.top), "none", "edge")),
    ...pieces.map(({ at }) => area(rectangle(at.left, at.top, at.right - at.left, at.bottom - at.top), "face-light", "edge")),
    area(rectangle(0, 0, width * factor, height * factor), "none", "outline"),
    label("width", input.size(sheet.width), point((width * factor) / 2, height * factor + 7), { anchor: "middle" }),
    label("height", input.size(sheet.height), point(-7, (height * factor) / 2), { anchor: "middle", angle: 90 }),
  ];
  const counts = new Map<string, number>();
  for (const { piece } of pieces) counts.set(piece.piece, (counts.get(piece.piece) ?? 0) + 1);
  const content = [...counts].map(([piece, count]) => `${count} × ${input.letter(piece)}`).join(", ");
  const times = layout.times === 1 ? "1 sheet" : `${layout.times} sheets`;
  return {
    id: `cut-${of.role.replaceAll(" ", "-")}-${n}`,
    title: `${of.material}, layout ${n}`,
    caption: `Layout ${n}, ${times} of ${input.size(sheet.height)} × ${input.size(sheet.width)} cut so, ${scale.name}: ${content}. Ringed numbers are the cuts in their order.`,
    alternative: `A sheet ${input.size(sheet.height)} high × ${input.size(sheet.width)} wide with ${content}${offcuts.length === 0 ? ", nothing left over" : ` and ${offcuts.length} ${offcuts.length === 1 ? "offcut" : "offcuts"}`}. The cuts are listed beside the drawing.`,
    items: placeEvery(fixed, [
      ...cutNumbers(layout, width, height, factor),
      ...pieces.map(({ piece, at }, index) => nameIn(`piece ${index + 1}`, input.letter(piece.piece), at)),
      ...offcuts.map(({ at }, index) => nameIn(`offcut ${index + 1}`, "offcut", at)),
    ], { clearance: 0.3 }),
  };
}

/** A word in its field where it fits, upright or level; nothing where the field is too small for it. */
function nameIn(name: string, text: string, at: Box): Placeable {
  const centres = gridCentres(at, 5, 5);
  const [long, high] = [measureText(text, labelType, 600) + 0.8, labelType + 0.4];
  const [w, h] = [at.right - at.left, at.bottom - at.top];
  const level = w >= long && h >= high ? [...areaLabel(name, text, centres, { weight: 600 }).candidates] : [];
  const upright = h >= long && w >= high ? [...areaLabel(name, text, centres, { weight: 600, angle: 90 }).candidates] : [];
  return { name, candidates: [...level, ...upright, []] };
}

/** The number of each cut in a ring at the beginning of its first line, where the part that it cuts begins. */
function cutNumbers(layout: SheetLayout, width: number, height: number, factor: number): readonly Placeable[] {
  const parts = new Map<string, Box>([["sheet", { left: 0, right: width, top: height, bottom: 0 }]]);
  return layout.cuts.map((step): Placeable => {
    const part = parts.get(step.part)!;
    for (const { from, to, use } of step.parts) if (use.kind === "part") parts.set(use.part, within(part, step, toMillimetres(from), toMillimetres(to)));
    const mark = toMillimetres(step.marks[0]!);
    const across = step.measured === "from-left";
    // Here y is still counted up from the lower edge.
    const at = (share: number): Point => (across ? point(part.left + mark, part.bottom + (part.top - part.bottom) * share) : point(part.left + (part.right - part.left) * share, part.bottom + mark));
    const onPaper = (p: Point): Point => point(p.x * factor, (height - p.y) * factor);
    const outside = step.part === "sheet" ? [across ? point(onPaper(at(0)).x, height * factor + 3.2) : point(-3.2, onPaper(at(0)).y)] : [];
    const name = `cut ${step.number}`;
    const ring = (centre: Point) => drawBalloon(name, String(step.number), centre);
    const inside = [0.12, 0.25, 0.5, 0.75, 0.88].flatMap((share) => [3.4, -3.4].map((aside) => {
      const p = onPaper(at(share));
      return across ? point(p.x + aside, p.y) : point(p.x, p.y + aside);
    }));
    return { name, candidates: [...outside.map((centre) => ring(centre)), ...inside.map((centre) => [stroke(line(centre, foot(centre, onPaper(at(0)), across)), "dimension", name), ...ring(centre)]), []] };
  });
}

function within(part: Box, step: CutStep, from: number, to: number): Box {
  return step.measured === "from-left"
    ? { ...part, left: part.left + from, right: part.left + to }
    : { ...part, bottom: part.bottom + from, top: part.bottom + to };
}

/** Where the ring's short pointer meets the line of the cut. */
function foot(centre: Point, onLine: Point, across: boolean): Point {
  return across ? point(onLine.x, centre.y) : point(centre.x, onLine.y);
}
