// Figure: the stacked album cut through at a post, to scale: covers, leaves and guards, the post and its extensions.
import type { PostAlbumGeometry } from "../../2-model/post-album/geometry.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAlong, raggedEnd } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scales } from "../scale.ts";
import { area, moveItems, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";
import { coverLayers, drawnThickness, shortSection, turnedOver } from "./cover-section.ts";
import type { CoverSection } from "./cover-section.ts";

type Input = DrawingInput<"post-album">;

/** Paper for the section; a stack higher than `whole` is broken in its middle. */
const room = { width: 88, whole: 62, broken: 52 } as const;
/** A post's head as drawn: about twice the barrel wide, from memory of what is sold. */
const headWidth = 2;

/** Figure `post-section`. */
export function drawPostSection(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { items, scale } = placeAtScale(scalesFor(geometry), ({ factor }) => {
    const view = layOut(geometry, factor);
    return { fixed: blockItems(input, view), labels: labelsOf(input, view) };
  });
  const view = layOut(geometry, scale.factor);
  const { posts } = geometry;
  const stack = words.thickness(posts.stack);
  const left = view.breakAt === null ? "" : "; leaves in the middle left out";
  const extensions = posts.choice?.extensions ?? [];
  const post = posts.choice
    ? `The post is ${words.size(posts.choice.post)} long inside${extensions.length === 0 ? "" : `, with ${extensions.length === 1 ? `an extension of ${words.size(extensions[0]!)}` : `extensions of ${extensions.map(words.size).join(" and ")}`} it reaches ${words.size(posts.choice.reach)}`}`
    : "No post in the list is long enough";
  return {
    id: "post-section",
    title: "The album cut through at a post",
    caption: `Section through the hinge at a post, ${scale.name}${left}, adhesive left out. All layers together are ${stack}. ${post}; its barrel of ${words.thickness(posts.barrel)} goes through holes of ${words.thickness(posts.holeDiameter)}.`,
    alternative: `From the top down: cap of the post, front cover ${words.thickness(geometry.coverAtHinge)} thick at the hinge, ${geometry.leaves} leaves of ${words.thickness(geometry.leafThickness)}${geometry.guardLayers > 0 ? `, between every two of them ${geometry.guardLayers} guard ${geometry.guardLayers === 1 ? "strip" : "strips"} of ${words.thickness(geometry.guardCardThickness)}` : ""}, back cover, head of the post. `
      + `Leaves and guards together are ${words.thickness(geometry.leafStack)}, all layers ${stack}. ${post}.`,
    items,
  };
}

function scalesFor(geometry: PostAlbumGeometry) {
  const pitch = toMillimetres(geometry.leafThickness) + toMillimetres(geometry.guardThickness);
  // As large as the hinge allows, but so that not only two or three leaves are seen beside the break.
  const fitting = scales.filter(({ factor }) => factor <= 5 && layOut(geometry, factor).end <= room.width && drawnThickness(layOut(geometry, factor).section) * 2 + pitch * factor * 5 <= room.whole);
  return (fitting.length > 0 ? fitting : [scales.at(-1)!]).slice(0, 3);
}

/** On paper: y down from the outer face of the front cover; the spine edge of the hinge strips at x = 0. */
interface View {
  readonly factor: number;
  readonly section: CoverSection;
  readonly cover: number;
  readonly leaf: number;
  readonly guard: number;
  /** Top of each leaf that is drawn. */
  readonly leaves: readonly number[];
  readonly height: number;
  readonly end: number;
  readonly breakAt: number | null;
  readonly axis: number;
}

function layOut(geometry: PostAlbumGeometry, factor: number): View {
  const mm = (length: Length): number => toMillimetres(length) * factor;
  const section = shortSection(geometry, factor);
  const cover = drawnThickness(section);
  const [leaf, guard] = [mm(geometry.leafThickness), mm(geometry.guardThickness)];
  const stack = geometry.leaves * leaf + (geometry.leaves - 1) * guard;
  const isWhole = stack + 2 * cover <= room.whole;
  const each = Math.floor(((room.broken - 2 * cover) / 2 - 3) / (leaf + guard));
  const shown = isWhole ? stack : 2 * (Math.max(1, each) * (leaf + guard) + leaf) + 6;
  const fromTop = Array.from({ length: isWhole ? geometry.leaves : Math.max(1, each) + 1 }, (_, k) => cover + k * (leaf + guard));
  const fromFoot = isWhole ? [] : fromTop.map((_, k) => cover + shown - leaf - k * (leaf + guard)).reverse();
  return {
    factor, section, cover, leaf, guard, leaves: [...fromTop, ...fromFoot], height: shown + 2 * cover, end: section.end,
    breakAt: isWhole ? null : cover + shown / 2, axis: mm(geometry.posts.across),
  };
}

function blockItems(input: Input, view: View): readonly SceneItem[] {
  const { geometry } = input.model;
  const { section, leaf, guard, leaves, height, end, breakAt, factor } = view;
  const layers = coverLayers(geometry, section);
  // Outer face of the cloth: one cloth below the zero of the section.
  const back = moveItems(layers, 0, height - section.cloth);
  const front = moveItems(turnedOver(layers), 0, section.cloth);
  const strips = leaves.slice(0, -1).flatMap((top, index): readonly SceneItem[] => {
    const gap = leaves[index + 1]! - top - leaf;
    if (gap <= 0.02 || guard === 0 || gap > guard + 0.5) return [];
    const each = toMillimetres(geometry.guardCardThickness) * factor;
    // Strips too thin to be told apart are drawn as one.
    const layers = each >= 1.2 ? geometry.guardLayers : 1;
    return Array.from({ length: layers }, (_, k) => area(rectangle(0, top + leaf + (k * guard) / layers, section.stripRight, guard / layers), "face-middle", "edge"));
  });
  const sheets = leaves.map((top) => (leaf >= 0.5 ? area(rectangle(0, top, end + 1, leaf), "card", "edge") : stroke(line(point(0, top + leaf / 2), point(end + 1, top + leaf / 2)), "edge")));
  return [
    ...front, ...back, ...strips, ...sheets,
    ...raggedEnd(end, -section.cloth - 1, height + section.cloth + 1, 1),
    ...(breakAt === null ? [] : breakAlong(breakAt, -section.cloth - 2, end + 2)),
    ...postItems(input, view),
  ];
}

/** What the post is longer than the stack shows above it; the drawn stack leaves the adhesive out. */
function spareOf({ posts }: PostAlbumGeometry, factor: number): number {
  return posts.choice ? (toMillimetres(posts.choice.reach) - toMillimetres(posts.stack)) * factor : 0;
}

/** Head below, cap above; where extensions are screwed on, a line across the barrel. */
function postItems({ model: { geometry } }: Input, { axis, height, factor, breakAt }: View): readonly SceneItem[] {
  const { posts } = geometry;
  const mm = (length: Length): number => toMillimetres(length) * factor;
  const half = mm(posts.barrel) / 2;
  const head = Math.max(mm(posts.head), 0.8);
  const spare = spareOf(geometry, factor);
  const top = -spare;
  const length = height + spare;
  const disc = (y: number): SceneItem => area(rectangle(axis - half * headWidth, y, half * headWidth * 2, head), "metal", "outline");
  const joins = breakAt !== null || !posts.choice ? [] : posts.choice.extensions.slice(0, -1).reduce<readonly number[]>((at, each) => [...at, at.at(-1)! - mm(each)], [height - mm(posts.choice.post)]);
  const hasJoins = posts.choice !== null && posts.choice.extensions.length > 0 && breakAt === null;
  return [
    area(rectangle(axis - half, top, half * 2, length), "metal", "outline"),
    ...(hasJoins ? joins.map((y) => stroke(line(point(axis - half, y), point(axis + half, y)), "outline")) : []),
    area(rectangle(axis - half * 0.5, top, half, Math.min(length * 0.3, 8)), "plate", "edge"),
    disc(top - head), disc(height),
    ...(breakAt === null ? [] : breakAlong(breakAt, axis - half - 1, axis + half + 1)),
    stroke(line(point(axis, top - head - 4), point(axis, height + head + 4)), "centre"),
  ];
}

function labelsOf(input: Input, view: View): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { posts } = geometry;
  const { section, cover, leaf, guard, leaves, height, end, axis, factor } = view;
  const half = (toMillimetres(posts.barrel) * factor) / 2;
  const head = Math.max(toMillimetres(posts.head) * factor, 0.8);
  const right = [0, 10, -10, 20, -20, 30, -30];
  const last = leaves.at(-1)!;
  const to = (name: string, text: string | readonly string[], x: number, y: number, directions: readonly number[] = right): Placeable => leaderAnywhere({ name, text, target: point(x, y), directions, reach: end - x + 6 });
  return [
    // On a thin stack both sizes stand outside their arrows, where one would lie on the other's lines: then the inner one gets a pointer.
    ...(height >= 34 ? [dimension({ name: "leaf stack", from: point(0, cover), to: point(0, height - cover), side: "left" as const, text: words.thickness(geometry.leafStack), offset: 5 })] : []),
    dimension({ name: "post stack", from: point(0, 0), to: point(0, height), side: "left", text: words.thickness(posts.stack), offset: height >= 34 ? 12 : 5 }),
    ...(height >= 34 ? [] : [leaderAnywhere({ name: "leaf stack", text: ["leaves and guards", words.thickness(geometry.leafStack)], target: point(0.6, height / 2), directions: [215, 205, 225, 235, 195], reach: 20 })]),
    dimension({ name: "hinge width", from: point(0, height), to: point(section.stripRight, height), side: "below", text: words.size(geometry.hingeWidth), offset: 11 }),
    dimension({ name: "across", from: point(0, 0), to: point(axis, 0), side: "above", text: words.size(posts.across), offset: 10, outside: "before" }),
    to("front cover", "front cover", end - 3, cover * 0.5, [10, 20, 0]),
    to("back cover", "back cover", end - 3, height - cover * 0.5, [-10, -20, 0]),
    to("first leaf", `${words.part("leaf")}, ${words.thickness(geometry.leafThickness)}`, end - 4, leaves[0]! + leaf / 2, [0, 10, -10]),
    ...(guard > 0 ? [leaderAnywhere({ name: "guard", text: [`${words.part("guard")},`, `${geometry.guardLayers} × ${words.thickness(geometry.guardCardThickness)}`], target: point(section.stripRight - 1.5, last - guard / 2), directions: [0, -10, 10, -20, 20], reach: end - section.stripRight + 7 })] : []),
    leaderAnywhere({ name: "cap", text: "cap", target: point(axis + half * 1.5, -spareOf(geometry, factor) - head / 2), directions: [60, 45, 30, 75], reach: 7 }),
    leaderAnywhere({ name: "head", text: ["head of", "the post"], target: point(axis + half * 1.5, height + head / 2), directions: [-60, -45, -75, -30], reach: 8 }),
    ...(posts.choice && posts.choice.extensions.length > 0 ? [leaderAnywhere({ name: "extension", text: posts.choice.extensions.length === 1 ? "extension" : "extensions", target: point(axis, cover + 1), directions: [130, 120, 140, 110, 60], reach: 14 })] : []),
  ];
}
