// Figure `post-section`: a cover cut through at a post, every layer to scale, with the stack and the post's length.
import { rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { raggedEnd } from "../breaks.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import type { FillKind } from "../fill-kinds.ts";
import { drawLeader } from "../leaders.ts";
import { fittingScale } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area, label } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

const room = { width: 52, height: 34 } as const;
/** A post's head and cap as drawn, since only its barrel matters: from memory of what is sold, about twice the barrel wide and 1 mm thick. */
const headWidth = 2;
const headThickness = 1;

interface Layer {
  readonly name: string;
  readonly text: string;
  readonly thickness: Length;
  readonly fill: Exclude<FillKind, "none">;
}

export const drawPostSection: DrawFigure<"stub-album"> = (input) => {
  const { posts } = input.model.geometry;
  const words = sectionWords(input);
  const layers = layersOf(input);
  const stack = words.thickness(posts.stack);
  const scale = fittingScale(toMillimetres(posts.barrel) * headWidth + 3, toMillimetres(posts.stack), room.width, room.height, 5);
  const { turnIn, sideStripWidth } = input.model.geometry;
  const hollow = toMillimetres(sideStripWidth) - toMillimetres(posts.across) - toMillimetres(turnIn) > -toMillimetres(posts.holeDiameter) / 2;
  const length = posts.length ? `The post is ${words.size(posts.length)} long inside` : "No post in the list is long enough";
  return {
    id: "post-section",
    title: "A cover cut through at a post",
    caption: `Section through a cover at a post, ${scale.name}, every layer as thick as it is. All layers together are ${stack}. ${length}; its barrel of ${words.thickness(posts.barrel)} goes through a hole of ${words.thickness(posts.holeDiameter)}. `
      + `The head goes outside, the cap inside${posts.washers > 0 ? `, with ${washersInWords(posts.washers)} under it` : ""}.${hollow ? " The turned-in cloth ends at the post." : ""}`,
    alternative: `Section through a cover at a post. Layers from the outside to the inside: ${layers.map((layer) => `${layer.text} ${words.thickness(layer.thickness)}`).join("; ")}. Together they are ${stack} thick. `
      + `The head of the post lies on the outside; its barrel, ${words.thickness(posts.barrel)} across, goes through a hole of ${words.thickness(posts.holeDiameter)}; the cap is screwed in from the inside${posts.washers > 0 ? `, over ${washersInWords(posts.washers)}` : ""}. ${length}.`,
    items: drawCover(input, layers, scale),
  };
};

/** The layers that a post goes through, from the outside in. */
function layersOf(input: DrawingInput<"stub-album">): readonly Layer[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const glue = (job: string, under: string): Layer => ({ name: `adhesive ${under}`, text: words.adhesive(job), thickness: words.value(`${job === "boards" ? "board" : job} adhesive thickness`), fill: "adhesive" });
  return [
    { name: "cloth outside", text: words.part("hinge-cloth"), thickness: geometry.clothThickness, fill: "cloth" },
    glue("hinge", "cloth"),
    { name: "strip", text: words.part("side-strip"), thickness: geometry.stripThickness, fill: "strip" },
    glue("hinge", "turn-in"),
    { name: "turn-in", text: `${words.part("hinge-cloth")}, turned in`, thickness: geometry.clothThickness, fill: "cloth" },
    glue("boards", "strip"),
    { name: "board", text: words.part("boards"), thickness: geometry.boardThickness, fill: "board" },
    ...(geometry.lining
      ? [glue("lining", "lining"), { name: "lining", text: words.part("lining-paper"), thickness: words.value("lining paper thickness"), fill: "paper" } as const]
      : []),
  ];
}

/** x runs along the cover with the post's axis at 0, the outside of the book is up, the outer face of the cloth lies at y = 0. */
function drawCover(input: DrawingInput<"stub-album">, layers: readonly Layer[], { factor }: Scale): readonly SceneItem[] {
  const { posts, sideStripWidth, turnIn } = input.model.geometry;
  const words = sectionWords(input);
  const mm = (length: Length): number => toMillimetres(length) * factor;
  const hole = mm(posts.holeDiameter) / 2;
  const barrel = mm(posts.barrel) / 2;
  const head = barrel * headWidth;
  const wide = Math.min(head + 5, mm(posts.across) - 0.5, mm(sideStripWidth) - mm(posts.across) - 0.5);
  const reach = Math.max(wide, hole + 2);
  // The turn-in ends this far before the strip's outer edge; when it is short, the post misses it.
  const turnedFrom = Math.max(-reach - 1, mm(sideStripWidth) - mm(posts.across) - mm(turnIn));

  let y = 0;
  const placed = layers.map((layer) => {
    const top = y;
    y += mm(layer.thickness);
    return { ...layer, top, middle: (top + y) / 2, height: y - top };
  });
  const bottom = y;
  const band = (from: number, to: number, layer: (typeof placed)[number]): readonly SceneItem[] =>
    (to > from ? [area(rectangle(from, layer.top, to - from, layer.height), layer.fill, layer.fill === "adhesive" ? "none" : "edge")] : []);
  const isTurnIn = (layer: Layer): boolean => layer.name === "turn-in" || layer.name === "adhesive turn-in";
  const long = posts.length ? mm(posts.length) : bottom;
  const washer = mm(input.model.geometry.cardThickness);
  const washers = Array.from({ length: posts.washers }, (_, index) => bottom + index * washer);
  const fixed: SceneItem[] = [
    ...placed.flatMap((layer) => {
      const from = isTurnIn(layer) ? turnedFrom : -reach - 1;
      return [...band(from, -hole, layer), ...band(Math.max(hole, from), reach + 1, layer)];
    }),
    ...raggedEnd(-reach, -0.8, bottom + 0.8, -1), ...raggedEnd(reach, -0.8, bottom + 0.8, 1),
    ...washers.flatMap((top) => [rectangle(-head, top, head - hole, washer), rectangle(hole, top, head - hole, washer)].map((path) => area(path, "card", "edge"))),
    area(rectangle(-barrel, 0, barrel * 2, long), "metal", "outline"),
    area(rectangle(-barrel * 0.55, long * 0.35, barrel * 1.1, long * 0.65), "plate", "edge"),
    area(rectangle(-head, -headThickness * factor, head * 2, headThickness * factor), "metal", "outline"),
    area(rectangle(-head, long, head * 2, headThickness * factor), "metal", "outline"),
  ];
  const outer = Math.max(reach, head) + 4;
  const low = Math.max(bottom, long) + headThickness * factor;
  return placeEvery([
    ...fixed,
    label("outside", "outside of the book", point(-outer - 24, -headThickness * factor - 2.2)),
    label("inside", "inside of the book", point(-outer - 24, low + 5.2)),
    ...layerLabels(placed, words, reach - 1.6, outer + 3, low, washers.length === 0 ? [] : [{ name: "washers", text: washersInWords(posts.washers), middle: bottom + (washers.length * washer) / 2, x: head - 1 }]),
  ], [
    dimension({ name: "post stack", from: point(-reach, 0), to: point(-reach, bottom), side: "left", text: words.inLines(words.thickness(posts.stack))[0]!, offset: Math.max(6, head - reach + 5) }),
    ...(posts.length ? [dimension({ name: "post length", from: point(-head, 0), to: point(-head, long), side: "left", text: words.inLines(words.size(posts.length))[0]!, offset: Math.max(6, reach - head + 6) + 8 })] : []),
    dimension({ name: "hole", from: point(-hole, low), to: point(hole, low), side: "below", text: words.thickness(posts.holeDiameter), offset: 5 }),
  ]);
}

function washersInWords(count: number): string {
  return count === 1 ? "washer of card" : `${count} washers of card`;
}

/** A column of names to the right, in the order of the layers, each with its thickness. */
function layerLabels(placed: readonly (Layer & { readonly middle: number })[], words: ReturnType<typeof sectionWords>, x: number, column: number, low: number, washers: readonly { readonly name: string; readonly text: string; readonly middle: number; readonly x: number }[]): readonly SceneItem[] {
  const names = [{ name: "head", text: "head of the post", middle: -1.4, x: 0.8 }, ...placed.map((layer) => ({ name: layer.name, text: `${layer.text}, ${words.thickness(layer.thickness)}`, middle: layer.middle, x })), ...washers, { name: "cap", text: "cap, screwed in", middle: low - 1.4, x: 0.8 }];
  const places = spreadPositions(names.map((each) => each.middle), 4.3)!;
  return names.flatMap((each, index) => drawLeader({ name: each.name, text: each.text, target: point(each.x, each.middle) }, point(column, places[index]!)));
}
