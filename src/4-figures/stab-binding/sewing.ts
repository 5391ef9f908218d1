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
import { viewsBelow, withHeading } from "../views.ts";
import { edgeStrip } from "../sewing/edge-strip.ts";
import { drawPass, passCaption, placeOrder } from "../sewing/pass-view.ts";

/** Length of the book along the spine on paper, and least distance between two holes along it. */
const strip = { length: 146, least: 9, rim: 7.5 } as const;

/** The strip along the spine as the passes are drawn on it: true along where holes do not crowd, widened across. */
interface Strip {
  readonly wide: number;
  readonly deep: number;
  at(place: Pick<Place, "id">): Point;
}

function stripOf(input: DrawingInput<"stab-binding">, passes: number): Strip {
  const { geometry } = input.model;
  const { height, setBack } = geometry;
  const holes = [...geometry.holes, ...geometry.innerHoles].sort((a, b) => toMillimetres(a.along) - toMillimetres(b.along));
  const factor = strip.length / toMillimetres(height);
  const main = passes > 4 ? 11.5 : 13;
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

function passView(input: DrawingInput<"stab-binding">, path: ThreadPath, pass: number, passes: number): readonly SceneItem[] {
  const ground = stripOf(input, passes);
  const { wide, deep, at } = ground;
  const drawing = drawPass({
    path, pass, at, facing: "front", name: `pass ${pass}`,
    edgeOf: ({ edge }, from) => (edge === "head" ? point(0, from.y) : edge === "tail" ? point(wide, from.y) : point(from.x, deep)),
  });
  return placeOrder(placeEvery([...drawStrip(ground), ...drawing.items], [
    ...drawing.labels,
    areaLabel(`head ${pass}`, "head", [point(-6, deep * 0.5), point(-6, deep * 0.8)]),
    areaLabel(`tail ${pass}`, "tail", [point(wide + 5, deep * 0.5), point(wide + 5, deep * 0.8)]),
    areaLabel(`spine ${pass}`, "spine edge", [0.5, 0.4, 0.6, 0.3, 0.7].map((share) => point(wide * share, deep + 2.8))),
  ]), drawing.order);
}

/** Figures `sewing-1` to `sewing-10`: the passes of one step; null where the pattern needs fewer steps. */
export function drawWay(input: DrawingInput<"stab-binding">, number: number): FigureDraft | null {
  const path = input.model.thread!.paths.at(-1)!;
  const way = waysOf(path)[number - 1];
  if (!way) return null;
  const views = way.passes.map((n) => {
    const { name } = path.passes[n - 1]!;
    return withHeading(`pass ${n}`, capital(name), passView(input, path, n, way.passes.length));
  });
  return {
    id: `sewing-${number}`,
    title: `Sewing towards the ${way.towards}`,
    caption: `The front of the book, its spine edge below, its head to the left; not to scale. ${passCaption}`,
    alternative: `${way.passes.map((n) => `${path.passes[n - 1]!.name}: ${wordsForPass(path, n).toLowerCase()}`).join(". ")}.`,
    items: viewsBelow(views, 4),
  };
}

/** Figure `inner-binding`. */
export function drawInnerBinding(input: DrawingInput<"stab-binding">): FigureDraft | null {
  const paths = input.model.thread!.paths.slice(0, -1);
  if (paths.length === 0) return null;
  const ground = stripOf(input, 1);
  const drawings = paths.map((path, index) => drawPass({ path, pass: 1, at: ground.at, facing: "front", name: `pair ${index + 1}`, edgeOf: (_, from) => from }));
  const { wide, deep } = ground;
  const items = placeEvery([...drawStrip(ground), ...drawings.flatMap((drawing) => drawing.items)], [
    ...drawings.flatMap((drawing) => drawing.labels),
    areaLabel("head", "head", [point(-6, deep * 0.5)]), areaLabel("tail", "tail", [point(wide + 5, deep * 0.5)]),
    areaLabel("spine", "spine edge", [point(wide / 2, deep + 2.8)]),
  ]);
  return {
    id: "inner-binding",
    title: "The inner binding",
    caption: "The front of the leaves, spine edge below, head to the left; not to scale. Solid: thread on the front; dashed: on the back. A dot and a ring mark where each thread begins and ends: tie it there.",
    alternative: paths.map((path) => `One thread: ${wordsForPass(path).toLowerCase()}; it is tied at the first hole`).join(". ") + ".",
    items,
  };
}
