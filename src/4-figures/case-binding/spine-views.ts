// Figures of the spine seen from behind, upright: ribbon, mull, endbands and paper lining as they are put on.
import { line, polygon, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { breakAlong } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"case-binding">;
type Layer = "ribbon" | "mull" | "endbands" | "lining";

/** The spine on paper, its head at y = 0: the middle of its height is left out where it is long. */
interface SpineView {
  readonly factor: number;
  readonly width: number;
  readonly height: number;
  readonly broken: boolean;
  /** From the head, or from the tail for what lies below the break. */
  fromTail(away: number): number;
}

const room = { width: 46, height: 62, shown: 54 } as const;

function layOut({ model }: Input, factor: number): SpineView {
  const { backWidth, block } = model.geometry;
  const true_ = toMillimetres(block.pageHeight) * factor;
  const height = true_ <= room.height ? true_ : room.shown;
  return { factor, width: toMillimetres(backWidth) * factor, height, broken: true_ > room.height, fromTail: (away) => height - away };
}

function drawView(input: Input, upTo: Layer, labels: (view: SpineView) => readonly Placeable[]): { readonly items: readonly SceneItem[]; readonly scaleName: string } {
  const { geometry } = input.model;
  const flaps = toMillimetres(geometry.mull.width);
  const { items, scale } = placeAtScale(scalesThatFit(Math.max(flaps, toMillimetres(geometry.backWidth) * 2), 1, room.width, Infinity, 2), ({ factor }) => {
    const view = layOut(input, factor);
    return { fixed: layers(input, view, upTo), labels: labels(view) };
  });
  return { items, scaleName: scale.name };
}

/** Everything that is on the spine by the time `upTo` has been put on. */
function layers(input: Input, view: SpineView, upTo: Layer): readonly SceneItem[] {
  const { geometry } = input.model;
  const { width, height, factor } = view;
  const paper = (length: Length): number => toMillimetres(length) * factor;
  const order: readonly Layer[] = ["ribbon", "mull", "endbands", "lining"];
  const has = (layer: Layer): boolean => order.indexOf(layer) <= order.indexOf(upTo);
  const [onBoards, short] = [paper(geometry.mull.onBoards), paper(geometry.mull.short)];
  const shortEnd = Math.min(short, height * 0.3);
  const items: SceneItem[] = [area(rectangle(0, 0, width, height), "face-light", "outline")];
  const furrows = Math.max(1, Math.min(geometry.block.sections, Math.floor(width / 1.6)));
  if (geometry.sewing) for (let index = 1; index < furrows; index += 1) items.push(stroke(line(point((width * index) / furrows, 0), point((width * index) / furrows, height)), "edge"));
  if (has("ribbon") && geometry.ribbon) {
    const half = paper(geometry.ribbon.width) / 2;
    const drawn = Math.min(half, width * 0.3);
    items.push(area(polygon([point(width / 2 - drawn, -7), point(width / 2 + drawn, -7), point(width / 2 + drawn, Math.max(5, shortEnd)), point(width / 2 - drawn, Math.max(5, shortEnd))]), "face-dark", "outline"));
  }
  if (has("mull")) items.push(area(rectangle(-onBoards, shortEnd, width + 2 * onBoards, height - 2 * shortEnd), "none", "outline"), ...weave(-onBoards, shortEnd, width + 2 * onBoards, height - 2 * shortEnd));
  if (has("endbands") && geometry.endband) {
    for (const y of [0, height]) {
      const down = y === 0 ? 1 : -1;
      items.push(area(rectangle(0, down > 0 ? 0 : y - 5, width, 5), "paper", "edge"), area(rectangle(0, down > 0 ? -1.6 : y, width, 1.6), "face-dark", "outline"));
    }
  }
  if (has("lining") && geometry.lining) items.push(area(rectangle(0.4, 0.4, width - 0.8, height - 0.8), "face-middle", "outline"));
  if (view.broken) items.push(...breakAlong(height / 2, -(has("mull") ? onBoards : 0) - 1, width + (has("mull") ? onBoards : 0) + 1));
  return items;
}

/** The open weave of the mull as thin lines both ways. */
function weave(left: number, top: number, width: number, height: number): readonly SceneItem[] {
  const pitch = 2.2;
  const upright = Array.from({ length: Math.floor(width / pitch) }, (_, index) => left + (index + 0.5) * pitch);
  const level = Array.from({ length: Math.floor(height / pitch) }, (_, index) => top + (index + 0.5) * pitch);
  return [
    ...upright.map((x) => stroke(line(point(x, top), point(x, top + height)), "hidden")),
    ...level.map((y) => stroke(line(point(left, y), point(left + width, y)), "hidden")),
  ];
}

function shared(id: string, title: string, what: string, scaleName: string, alternative: string, items: readonly SceneItem[]): FigureDraft {
  return { id, title, caption: `The spine from behind, head up, ${scaleName}. ${what}`, alternative, items };
}

function to(name: string, text: string | readonly string[], x: number, y: number, directions: readonly number[], reach: number, end: "dot" | "arrow" = "dot"): Placeable {
  return leaderAnywhere({ name, text, target: point(x, y), directions, reach, end });
}

/** Figure `ribbon`. */
export const drawRibbon: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  if (!geometry.ribbon) return null;
  const words = sectionWords(input);
  const { items, scaleName } = drawView(input, "ribbon", ({ width, height }) => [
    to("ribbon", words.part("ribbon"), width / 2, 3, [10, 0, 20, -10], width / 2 + 7),
    to("over the head", "goes over the head and down between the pages", width / 2, -5, [20, 30, 10, 45], width / 2 + 6),
    to("spine", "spine", width * 0.8, height * 0.3, [0, 10, -10], width * 0.2 + 7),
  ]);
  return shared("ribbon", "Gluing on the ribbon", "The end of the ribbon lies on the spine at the head, in the middle; the long end hangs between the pages.", scaleName,
    `The spine from behind. At the head the end of ${words.part("ribbon")} is glued to the middle of the spine; the rest goes over the head edge and down between the pages.`, items);
};

/** Figure `spine-lining`: the mull. */
export const drawMull: DrawFigure<"case-binding"> = (input) => {
  const { mull } = input.model.geometry;
  const words = sectionWords(input);
  const { items, scaleName } = drawView(input, "mull", ({ width, height, factor }) => {
    const onBoards = toMillimetres(mull.onBoards) * factor;
    const short = Math.min(toMillimetres(mull.short) * factor, height * 0.3);
    return [
      dimension({ name: "flap", from: point(width, height - short), to: point(width + onBoards, height - short), side: "below", text: words.size(mull.onBoards), offset: short + 5 }),
      dimension({ name: "other flap", from: point(-onBoards, height - short), to: point(0, height - short), side: "below", text: words.size(mull.onBoards), offset: short + 5 }),
      ...(mull.short.n > 0n ? [dimension({ name: "short", from: point(-onBoards, short), to: point(0, 0), side: "left", text: words.size(mull.short), offset: 5 })] : []),
      to("mull", words.part("mull"), width + onBoards * 0.7, height * 0.25, [15, 0, 30, -15], onBoards * 0.3 + 6),
      to("loose", "stays loose", width + onBoards * 0.7, height * 0.7, [0, -15, 15], onBoards * 0.3 + 6),
      to("spine", "spine", width * 0.12, short / 2, [110, 125, 100, 140], 8),
    ];
  });
  return shared("spine-lining", "Gluing on the mull", `It is glued to the spine only, ${words.size(mull.short)} short of head and tail; ${words.size(mull.onBoards)} stay loose on each side.`, scaleName,
    `The spine from behind. ${words.part("mull")}, ${words.size(mull.height)} high × ${words.size(mull.width)} wide, lies over it, its middle on the middle of the spine, ${words.size(mull.short)} from head and from tail, ${words.size(mull.onBoards)} loose on both sides.`, items);
};

/** Figure `endbands`. */
export const drawEndbands: DrawFigure<"case-binding"> = (input) => {
  const { endband } = input.model.geometry;
  if (!endband) return null;
  const words = sectionWords(input);
  const { items, scaleName } = drawView(input, "endbands", ({ width, height }) => [
    dimension({ name: "length", from: point(0, -1.6), to: point(width, -1.6), side: "above", text: words.size(endband), offset: 6 }),
    to("bead", "bead, over the edge of the pages", width * 0.8, -0.8, [20, 10, 30], width * 0.2 + 10),
    to("flange", "flange, glued to the spine", width * 0.8, 3, [340, 350, 330], width * 0.2 + 10),
    to("endband", words.part("endband"), width * 0.7, height + 0.8, [330, 340, 320], 9),
  ]);
  return shared("endbands", "Gluing on the endbands", `One at the head, one at the tail, ${words.size(endband)} long; only the bead stands up beyond the pages.`, scaleName,
    `The spine from behind with its mull. At head and tail a piece of endband, ${words.size(endband)} long, lies across it: its flange on the spine, its bead beyond the edge of the pages.`, items);
};

/** Figure `lining`: the paper over everything. */
export const drawLining: DrawFigure<"case-binding"> = (input) => {
  const { lining } = input.model.geometry;
  if (!lining) return null;
  const words = sectionWords(input);
  const { items, scaleName } = drawView(input, "lining", ({ width, height, factor }) => {
    const onBoards = toMillimetres(input.model.geometry.mull.onBoards) * factor;
    return [
      dimension({ name: "width", from: point(0, height), to: point(width, height), side: "below", text: words.size(lining.width), offset: 7 }),
      to("lining", words.part("spine-lining"), width * 0.7, height * 0.22, [15, 5, 25, 0], width * 0.3 + onBoards + 6),
      to("mull", words.part("mull"), width + onBoards * 0.6, height * 0.72, [0, 15, -15], onBoards * 0.4 + 6),
      to("edges", ["nowhere over", "the edges"], 0, height * 0.3, [170, 160, 180], onBoards + 5, "arrow"),
    ];
  });
  return shared("lining", "Lining the spine", "The paper covers mull and flanges from head to tail and ends at both edges of the back.", scaleName,
    `The spine from behind. ${words.part("spine-lining")}, ${words.size(lining.height)} high × ${words.size(lining.width)} wide, lies over the mull and ends at the edges of the back; the loose flaps of the mull stand out on both sides.`, items);
};
