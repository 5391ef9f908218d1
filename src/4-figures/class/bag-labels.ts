// Labels for the bags of a class, at full size on their sheets: whose bag, and what is in it as far as the label has room.
import type { Bag, ClassPlan, KitLine } from "../../3-plan/class/types.ts";
import type { Definition } from "../../1-definition/types.ts";
import { papers } from "../../catalogue/papers.ts";
import type { Box } from "../../geometry/box.ts";
import { rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { addLengths, multiplyLength, toMillimetres } from "../../units/length.ts";
import { area, headingType, label, labelType, smallestType } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { writeSvg } from "../svg.ts";
import { measureText } from "../text-metrics.ts";
import type { FontWeight } from "../text-metrics.ts";
import type { BagLabels } from "../types.ts";

/** White inside a label's outline; line heights in parts of the type. */
const rim = 3;
const leading = 1.3;

/** How much larger than in a drawing a label is set: the most at which it holds everything. */
const growths = [2, 1.8, 1.6, 1.4, 1.2, 1] as const;

/** The type of a label, room between columns, and the side of a box to tick, in millimetres. */
interface LabelType {
  readonly heading: number;
  readonly foot: number;
  readonly contents: number;
  readonly columnGap: number;
  readonly tick: number;
}

function labelTypeAt(growth: number): LabelType {
  return { heading: headingType * growth, foot: labelType * growth, contents: smallestType * growth, columnGap: 4 * growth, tick: 2.2 * growth };
}

/** What is the same for all labels of a class. */
interface LabelSetting {
  readonly definition: Definition;
  readonly own: ClassPlan;
  readonly type: LabelType;
}

/** A line of a label as it is set. */
interface SetLine {
  readonly text: string;
  readonly size: number;
  readonly weight: FontWeight;
}

/** All sheets of labels for a class, one label for each bag; null without a class. */
export function drawBagLabels(definition: Definition, own: ClassPlan | null): BagLabels | null {
  if (!own || !definition.class) return null;
  const { labels } = definition.class;
  const { width, height } = papers[labels.paper];
  const onSheet = labels.columns * labels.rows;
  const first = labelBox(labels, 0);
  const settings = growths.map((growth): LabelSetting => ({ definition, own, type: labelTypeAt(growth) }));
  const setting = settings.find((each) => own.bags.every((bag) => holdsAll(each, bag, first))) ?? settings.at(-1)!;
  const box = { left: 0, top: 0, right: toMillimetres(width), bottom: toMillimetres(height) };
  const placed = own.bags.map((bag, index) => ({ bag, sheet: Math.floor((index + labels.first - 1) / onSheet), at: labelBox(definition.class!.labels, (index + labels.first - 1) % onSheet) }));
  return {
    paper: labels.paper,
    sheets: Array.from({ length: placed.at(-1)!.sheet + 1 }, (_, sheet) => {
      const here = placed.filter((each) => each.sheet === sheet);
      const items = here.flatMap(({ bag, at }) => drawLabel(setting, bag, at, labels.outlines));
      const title = `${definition.title}: bag labels, sheet ${sheet + 1}`;
      const { svg } = writeSvg(items, { id: `bag-labels-${sheet + 1}`, title, description: `Labels for ${here.map(({ bag }) => bag.words).join(", ")}.`, pen: "small", box });
      return { label: title, svg, items, boxes: here.map(({ at }) => at) };
    }),
  };
}

/** The label with this number on its sheet, counted along the rows from 0. */
function labelBox({ columns, width, height, left, top, columnGap: across, rowGap: down }: NonNullable<Definition["class"]>["labels"], index: number): Box {
  const x = toMillimetres(addLengths(left, multiplyLength(addLengths(width, across), index % columns)));
  const y = toMillimetres(addLengths(top, multiplyLength(addLengths(height, down), Math.floor(index / columns))));
  return { left: x, top: y, right: x + toMillimetres(width), bottom: y + toMillimetres(height) };
}

function drawLabel(setting: LabelSetting, bag: Bag, at: Box, hasOutline: boolean): readonly SceneItem[] {
  const { head, foot, room, inner } = divideLabel(setting, bag, at);
  const name = (part: string): string => `${bag.mark} ${part}`;
  return [
    ...(hasOutline ? [area(rectangle(at.left, at.top, at.right - at.left, at.bottom - at.top), "none", "edge", name("outline"))] : []),
    ...setLines(head, inner.left, inner.top, name("head")),
    ...drawContents(setting, room, name),
    ...setLines(foot, inner.left, inner.bottom - heightOf(foot), name("foot")),
  ];
}

/** Whether nothing of the label has to be cut short or left out. */
function holdsAll(setting: LabelSetting, bag: Bag, at: Box): boolean {
  const { head, foot, room, inner, hasWholeTitle } = divideLabel(setting, bag, at);
  const fits = ({ text, size, weight }: SetLine): boolean => measureText(text, size, weight) <= inner.right - inner.left && !text.endsWith("…");
  return hasWholeTitle && [...head, ...foot].every(fits) && columnsOf(setting, room) !== null;
}

/** Head and foot of a label, and the room between them. The title takes two lines at most. */
function divideLabel({ definition, own, type }: LabelSetting, bag: Bag, at: Box): { readonly head: readonly SetLine[]; readonly foot: readonly SetLine[]; readonly room: Box; readonly inner: Box; readonly hasWholeTitle: boolean } {
  const inner = { left: at.left + rim, top: at.top + rim, right: at.right - rim, bottom: at.bottom - rim };
  const width = inner.right - inner.left;
  const title = breakLines(definition.title, width, type.heading, 600);
  const head: readonly SetLine[] = [
    ...title.slice(0, 2).map((text) => ({ text, size: type.heading, weight: 600 as const })),
    { text: bag.words, size: type.heading, weight: 400 },
  ];
  const foot: readonly SetLine[] = [
    ...own.onBags.flatMap((words) => breakLines(words, width, type.foot, 600)).map((text) => ({ text, size: type.foot, weight: 600 as const })),
    ...breakLines([`revision ${definition.revision}`, definition.author.workshop ?? definition.author.name].join(" · "), width, smallestType, 400).slice(0, 1).map((text) => ({ text, size: smallestType, weight: 400 as const })),
  ];
  return { head, foot, inner, hasWholeTitle: title.length <= 2, room: { ...inner, top: inner.top + heightOf(head) + 1.2, bottom: inner.bottom - heightOf(foot) - 1.2 } };
}

/** In how many columns the contents stand; null when they do not fit. */
function columnsOf({ own: { kit }, type }: LabelSetting, room: Box): { readonly count: number; readonly width: number } | null {
  const rows = Math.floor((room.bottom - room.top) / (type.contents * leading));
  if (rows <= 0) return null;
  const count = Math.ceil(kit.length / rows);
  const width = (room.right - room.left - (count - 1) * type.columnGap) / count;
  return kit.some((line) => type.tick * 1.5 + measureText(contentWords(line), type.contents) > width) ? null : { count, width };
}

function contentWords({ letter, name, count }: KitLine): string {
  return `${count} × ${letter === "" ? "" : `${letter} `}${name}`;
}

/** What is in the bag, line by line with boxes to tick; only how much it is where the label is too small. */
function drawContents(setting: LabelSetting, room: Box, name: (part: string) => string): readonly SceneItem[] {
  const { own: { kit }, type: { contents, tick, columnGap } } = setting;
  const row = contents * leading;
  const columns = columnsOf(setting, room);
  if (columns === null) {
    const pieces = kit.reduce((sum, { count }) => sum + count, 0);
    const texts = breakLines(`${pieces} pieces of ${kit.length} kinds: see the slip inside`, room.right - room.left, contents, 400);
    return setLines(texts.slice(0, Math.max(0, Math.floor((room.bottom - room.top) / row))).map((text) => ({ text, size: contents, weight: 400 })), room.left, room.top, name("contents"));
  }
  const perColumn = Math.ceil(kit.length / columns.count);
  return kit.flatMap((line, index): readonly SceneItem[] => {
    const x = room.left + Math.floor(index / perColumn) * (columns.width + columnGap);
    const base = room.top + (index % perColumn) * row + contents * 0.85;
    return [
      area(rectangle(x, base - tick + 0.2, tick, tick), "none", "edge", name(`line ${index + 1}`)),
      label(name(`line ${index + 1}`), contentWords(line), point(x + tick * 1.5, base), { size: contents }),
    ];
  });
}

function setLines(lines: readonly SetLine[], left: number, top: number, name: string): readonly SceneItem[] {
  let y = top;
  return lines.map(({ text, size, weight }, index) => {
    const item = label(`${name} ${index + 1}`, text, point(left, y + size * 0.85), { size, weight });
    y += size * leading;
    return item;
  });
}

function heightOf(lines: readonly SetLine[]): number {
  return lines.reduce((sum, { size }) => sum + size * leading, 0);
}

/** Words on lines of a width; a word that is wider alone is cut short with an ellipsis. */
function breakLines(text: string, width: number, size: number, weight: FontWeight): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && measureText(longer, size, weight) <= width) lines[lines.length - 1] = longer;
    else lines.push(cutShort(word, width, size, weight));
  }
  return lines;
}

function cutShort(word: string, width: number, size: number, weight: FontWeight): string {
  if (measureText(word, size, weight) <= width) return word;
  const letters = [...word];
  while (letters.length > 1 && measureText(`${letters.join("")}…`, size, weight) > width) letters.pop();
  return `${letters.join("")}…`;
}
