// Figures of the sewing: one small drawing for each pass, the front before the reader, the spine edge below, the head to the left.
import type { Place, ThreadPath } from "../../2-model/sewing/types.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { toMillimetres } from "../../units/length.ts";
import { waysOf } from "../../3-plan/stab-binding/sew.ts";
import { wordsForPass } from "../../3-plan/sewing/move-words.ts";
import { capital } from "../../3-plan/wording.ts";
import type { DrawingInput } from "../binding.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel } from "../leaders.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, viewsBeside, withHeading } from "../views.ts";
import { drawCloseUp, touchedBy } from "./close-up.ts";
import { edgeStrip } from "../sewing/edge-strip.ts";
import { drawPass, orderCaption, passCaption, placeOrder } from "../sewing/pass-view.ts";

/** Length of the book along the spine on paper, and least distance between two holes along it. */
const strip = { length: 146, least: 9, rim: 7.5 } as const;

/** The strip along the spine as the passes are drawn on it: true along where holes do not crowd, widened across. */
interface Strip {
  readonly wide: number;
  readonly deep: number;
  at(place: Pick<Place, "id">): Point;
}

function stripOf(input: DrawingInput<"stab-binding">, passes: number, main = passes > 4 ? 11.5 : 13): Strip {
  const { geometry } = input.model;
  const { height, setBack } = geometry;
  const holes = [...geometry.holes, ...geometry.innerHoles].sort((a, b) => toMillimetres(a.along) - toMillimetres(b.along));
  const factor = strip.length / toMillimetres(height);
  // Pattern holes and those of the inner binding never stand in one drawing, so each row is spread by itself.
  const xs = new Map<string, number>();
  for (const row of [holes.filter(({ kind }) => kind !== "inner"), holes.filter(({ kind }) => kind === "inner")]) {
    const places = spreadPositions(row.map(({ along }) => toMillimetres(along) * factor), Math.min(strip.least, (strip.length - 2 * strip.rim) / Math.max(1, row.length - 1)), strip.rim, strip.length - strip.rim)!;
    row.forEach(({ id }, index) => xs.set(id, places[index]!));
  }
  const ys = new Map(holes.map(({ id, across }) => [id, main * 1.75 - (toMillimetres(across) / toMillimetres(setBack)) * main]));
  return { wide: strip.length, deep: main * 1.75, at: ({ id }) => point(xs.get(id)!, ys.get(id)!) };
}

function drawStrip({ wide, deep }: Strip): readonly SceneItem[] {
  return edgeStrip(wide, deep);
}

/** `depth` is that of the main holes on paper; the spine edge is named below the last strip of a figure only. */
function passView(input: DrawingInput<"stab-binding">, path: ThreadPath, pass: number, { passes, depth, isLast }: { readonly passes: number; readonly depth: number | undefined; readonly isLast: boolean }): readonly SceneItem[] {
  const ground = stripOf(input, passes, depth);
  const { wide, deep, at } = ground;
  const drawing = drawPass({
    path, pass, at, facing: "front", name: `pass ${pass}`,
    edgeOf: ({ edge }, from) => (edge === "head" ? point(0, from.y) : edge === "tail" ? point(wide, from.y) : point(from.x, deep)),
  });
  return placeOrder(placeEvery([...drawStrip(ground), ...drawing.items], [
    ...drawing.labels,
    areaLabel(`head ${pass}`, "head", [point(-6, deep * 0.5), point(-6, deep * 0.8)]),
    areaLabel(`tail ${pass}`, "tail", [point(wide + 5, deep * 0.5), point(wide + 5, deep * 0.8)]),
    ...(isLast ? [areaLabel(`spine ${pass}`, "spine edge", [0.5, 0.4, 0.6, 0.3, 0.7].map((share) => point(wide * share, deep + 2.8)))] : []),
  ]), drawing.order);
}

/** Passes that go to and fro among holes no further apart than this on the strip are drawn from near by. */
const crowded = 26;

function isCrowded(input: DrawingInput<"stab-binding">, path: ThreadPath, pass: number, passes: number): boolean {
  const stitches = path.moves.filter((move) => move.pass === pass && move.kind !== "hole");
  const { at } = stripOf(input, passes);
  const xs = touchedBy(path, pass).map((place) => at(place).x);
  return stitches.length > 2 && Math.max(...xs) - Math.min(...xs) <= crowded;
}

/** Figures `sewing-1` to `sewing-10`: the passes of one step; null where the pattern needs fewer steps. */
export function drawWay(input: DrawingInput<"stab-binding">, number: number): FigureDraft | null {
  const path = input.model.thread!.paths.at(-1)!;
  const way = waysOf(path)[number - 1];
  if (!way) return null;
  // Drawings from near by are narrow: two of them, one after the other, stand beside each other.
  const passes = way.passes.length;
  const near = way.passes.some((n) => isCrowded(input, path, n, passes));
  // A drawing from near by is high: the strips beside it are flatter, so that the step stays on one page.
  const depth = near ? (passes > 4 ? 9.5 : 10.5) : undefined;
  const rows: { near: boolean; views: (readonly SceneItem[])[] }[] = [];
  for (const n of way.passes) {
    const isNear = isCrowded(input, path, n, passes);
    const name = capital(path.passes[n - 1]!.name);
    const view = isNear ? withHeading(`pass ${n}`, `${name}, from near by`, drawCloseUp(input, path, n, `pass ${n}`)) : withHeading(`pass ${n}`, name, passView(input, path, n, { passes, depth, isLast: n === way.passes.at(-1) }));
    const last = rows.at(-1);
    if (isNear && last?.near && last.views.length === 1) last.views.push(view);
    else rows.push({ near: isNear, views: [view] });
  }
  return {
    id: `sewing-${number}`,
    title: `Sewing towards the ${way.towards}`,
    caption: `The front of the book, its spine edge below, its head to the left; not to scale.${near ? " From near by, only the thread of the holes shown is drawn." : ""} ${passCaption} ${orderCaption}`,
    alternative: `${way.passes.map((n) => `${path.passes[n - 1]!.name}: ${wordsForPass(path, n).toLowerCase()}`).join(". ")}.`,
    items: viewsBelow(rows.map(({ views }) => viewsBeside(views, 8)), 4),
  };
}

/** Figure `inner-binding`. */
export function drawInnerBinding(input: DrawingInput<"stab-binding">): FigureDraft | null {
  const paths = input.model.thread!.paths.slice(0, -1);
  if (paths.length === 0) return null;
  const views = paths.map((path, index) => withHeading(`pair ${index + 1}`, capital(path.passes[0]!.name.replace("inner binding at ", "holes ")), drawCloseUp(input, path, 1, `pair ${index + 1}`)));
  return {
    id: "inner-binding",
    title: "The inner binding",
    caption: "The front of the leaves, spine edge below, head to the left; not to scale. Solid: thread on the front; dashed: on the back. Each thread begins at the dot and comes back to it, at the ring: tie it there. Ringed numbers give the order of the stitches.",
    alternative: paths.map((path) => `One thread: ${wordsForPass(path).toLowerCase()}; it is tied at the first hole`).join(". ") + ".",
    items: viewsBeside(views, 8),
  };
}
