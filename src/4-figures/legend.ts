// The legend: a short sample of each line kind beside its words.
import { line, rectangle } from "../geometry/path.ts";
import { point } from "../geometry/point.ts";
import { fillLooks } from "./fill-kinds.ts";
import type { FillKind } from "./fill-kinds.ts";
import { lineLooks } from "./line-kinds.ts";
import { area, label, labelType, stroke } from "./scene.ts";
import type { SceneItem } from "./scene.ts";
import { writeSvg } from "./svg.ts";
import { measureText } from "./text-metrics.ts";
import type { LineKind } from "./types.ts";

/** Length of a sample in millimetres: two repeats of the longest dash pattern. */
const sampleLength = 20;

/** One line as a small SVG of its own, for a legend set as a list in HTML; its words are `lineLooks[kind].meaning`. */
export function legendSample(kind: LineKind): { readonly svg: string; readonly words: string } {
  const { meaning } = lineLooks[kind];
  const box = { left: 0, top: -1.5, right: sampleLength, bottom: 1.5 };
  return { svg: writeSvg([stroke(line(point(0, 0), point(sampleLength, 0)), kind)], { id: `legend-${kind}`, title: meaning, description: `Sample of the line: ${meaning}`, pen: "small", box }).svg, words: meaning };
}

/** Samples in a row or column, to stand inside a figure. `at` is the top left corner; columns are as wide as their words. */
export function legendItems(kinds: readonly LineKind[], at: { readonly x: number; readonly y: number }, columns = 1, fills: readonly Exclude<FillKind, "none">[] = []): readonly SceneItem[] {
  const entries: readonly (readonly [kind: LineKind | null, fill: Exclude<FillKind, "none"> | null, words: string])[] = [
    ...kinds.map((kind) => [kind, null, lineLooks[kind].meaning] as const),
    ...fills.map((fill) => [null, fill, fillLooks[fill].meaning] as const),
  ];
  const rows = Math.ceil(entries.length / columns);
  const rowHeight = labelType * 1.7;
  const items: SceneItem[] = [];
  let left = at.x;
  for (let column = 0; column < columns; column += 1) {
    const inColumn = entries.slice(column * rows, (column + 1) * rows);
    inColumn.forEach(([kind, fill, words], row) => {
      const y = at.y + row * rowHeight + rowHeight / 2;
      if (kind) items.push(stroke(line(point(left, y), point(left + sampleLength - 4, y)), kind));
      if (fill) items.push(area(rectangle(left, y - 1.4, sampleLength - 4, 2.8), fill, "edge"));
      items.push(label(`legend ${words}`, words, point(left + sampleLength - 2, y + labelType * 0.3)));
    });
    left += sampleLength + 4 + Math.max(0, ...inColumn.map(([, , words]) => measureText(words, labelType)));
  }
  return items;
}
