// A few holes of a stab binding from near by: where a pass goes round one hole and its neighbours, and for the pairs of the inner binding.
import type { Place, ThreadPath } from "../../2-model/sewing/types.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { wavyLine } from "../breaks.ts";
import { placeEvery } from "../figure.ts";
import { areaLabel } from "../leaders.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { drawPass, placeOrder } from "../sewing/pass-view.ts";

/** On paper: between two holes, from the outer hole to head or tail, from the last hole shown to where the book is broken off; depths. */
const near = { gap: 24, rim: 20, broken: 12, deep: 34, main: 22 } as const;
/** Far-side thread is set aside further than in the strip. */
const aside = point(2, 2);

/** Draws the holes that a pass touches; the book is broken off beside them, but for head or tail where an outer hole is among them. */
export function drawCloseUp({ model }: DrawingInput<"stab-binding">, whole: ThreadPath, pass: number, name: string): readonly SceneItem[] {
  const { geometry } = model;
  const touched = touchedBy(whole, pass);
  const alongs = [...geometry.holes, ...geometry.innerHoles].map(({ along }) => toMillimetres(along));
  const [first, last] = [touched[0]!, touched.at(-1)!];
  const atHead = toMillimetres(first.along) === Math.min(...alongs);
  const atTail = toMillimetres(last.along) === Math.max(...alongs);
  const start = atHead ? near.rim : near.broken;
  const xs = new Map(touched.map(({ id }, index) => [id, start + index * near.gap]));
  const wide = start + (touched.length - 1) * near.gap + (atTail ? near.rim : near.broken);
  const at = ({ id, across }: Place): Point => point(xs.get(id)!, near.deep - (toMillimetres(across) / toMillimetres(geometry.setBack)) * near.main);
  const moves = whole.moves.filter((move) => xs.has(move.from.place) && xs.has(move.to.place));
  const drawing = drawPass({
    path: { ...whole, moves, places: new Map([...whole.places].filter(([id]) => xs.has(id))) }, pass, at, facing: "front", name, aside,
    edgeOf: ({ edge }, from) => (edge === "head" ? point(0, from.y) : edge === "tail" ? point(wide, from.y) : point(from.x, near.deep)),
  });
  const side = (x: number, isEdge: boolean): SceneItem => stroke(isEdge ? line(point(x, 0), point(x, near.deep)) : wavyLine(point(x, 0), point(x, near.deep)), isEdge ? "outline" : "edge");
  return placeOrder(placeEvery([
    area(rectangle(0, 0, wide, near.deep), "face-light", "none"),
    side(0, atHead), side(wide, atTail), stroke(wavyLine(point(0, 0), point(wide, 0)), "edge"), stroke(line(point(0, near.deep), point(wide, near.deep)), "outline"),
    ...drawing.items,
  ], [
    ...drawing.labels,
    ...(atHead ? [areaLabel(`${name} head`, "head", [0.5, 0.2, 0.8].map((share) => point(-6, near.deep * share)))] : []),
    ...(atTail ? [areaLabel(`${name} tail`, "tail", [0.5, 0.2, 0.8].map((share) => point(wide + 5, near.deep * share)))] : []),
    areaLabel(`${name} spine`, "spine edge", [0.5, 0.4, 0.6, 0.3, 0.7].map((share) => point(wide * share, near.deep + 2.8))),
  ]), drawing.order);
}

/** The holes that a pass comes to, from the head. */
export function touchedBy(path: ThreadPath, pass: number): readonly Place[] {
  const ids = new Set(path.moves.filter((move) => move.pass === pass).flatMap(({ from, to }) => [from.place, to.place]));
  return [...ids].map((id) => path.places.get(id)!).sort((a, b) => toMillimetres(a.along) - toMillimetres(b.along));
}
