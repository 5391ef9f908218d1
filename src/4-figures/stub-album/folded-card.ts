// The folded card in section: floor and closed stubs as one ribbon, for every drawing that shows it.
import type { StubAlbumGeometry } from "../../2-model/stub-album/geometry.ts";
import type { Path, PathStep } from "../../geometry/path.ts";
import { rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";

/** Which stubs are drawn and where, in millimetres of paper; x runs across the floor, its left end at 0. */
export interface FloorLayout {
  readonly stubs: readonly { readonly index: number; readonly x: number }[];
  readonly width: number;
  /** Middle of the place where stubs are left out; null when all are drawn. */
  readonly breakAt: number | null;
}

/** At most this many stubs are drawn before and after the break, where not the whole card matters. */
export const shownStubs = { first: 2, last: 1 } as const;

/** White space between the last stub before a break and the first after it, in parts of the pitch and at least so much paper. */
const leastBreakRoom = 7;

/** Lays out all stubs, or the first `first` and the last `last` with a break between, at `factor` paper to book. */
export function layOutFloor(geometry: StubAlbumGeometry, factor: number, first: number, last: number): FloorLayout {
  const centres = geometry.stubCentres.map((centre) => toMillimetres(centre) * factor);
  const floor = toMillimetres(geometry.foldedFloor) * factor;
  const all = centres.map((x, index) => ({ index, x }));
  const leftOut = centres.length - first - last;
  if (leftOut <= 0) return { stubs: all, width: floor, breakAt: null };
  const room = Math.max(leastBreakRoom, toMillimetres(geometry.pitch) * factor);
  const shift = centres[centres.length - last]! - centres[first - 1]! - room;
  return {
    stubs: [...all.slice(0, first), ...all.slice(-last).map(({ index, x }) => ({ index, x: x - shift }))],
    width: floor - shift,
    breakAt: centres[first - 1]! + room / 2,
  };
}

/** What is said of a drawing that leaves stubs out; nothing when all are drawn. */
export function someStubsDrawn({ stubs }: StubAlbumGeometry): string {
  return stubs > shownStubs.first + shownStubs.last ? ` Of ${stubs} stubs, the first two and the last are drawn.` : "";
}

/** The largest scale, not above `largest`, at which the laid out floor and its stubs fit a room in millimetres of paper. */
export function scaleForFloor(geometry: StubAlbumGeometry, show: { readonly first: number; readonly last: number }, room: { readonly width: number; readonly height: number }, largest: number): Scale {
  const fits = scales.find(({ factor }) => factor <= largest
    && layOutFloor(geometry, factor, show.first, show.last).width <= room.width && toMillimetres(geometry.closedStubDepth) * factor <= room.height);
  return fits ?? scales.at(-1)!;
}

/** Sizes of the ribbon in millimetres of paper. */
export interface RibbonSizes {
  /** Thickness of the card as drawn. */
  readonly card: number;
  /** Thickness of the adhesive inside a stub as drawn. */
  readonly slot: number;
  /** Height of a closed stub above the inside of the floor. */
  readonly depth: number;
}

/**
 * Layers drawn thicker than they are, where their order matters and not their thickness; `factor` still holds for the depth.
 * Where stubs stand close together all layers are drawn thinner alike, so that neighbours never touch.
 */
export interface VisibleLayers extends RibbonSizes {
  readonly adhesive: number;
  readonly paper: number;
  readonly cloth: number;
}

/** Layer thicknesses that can be told apart on paper at a factor, in millimetres. */
export function visibleLayers(geometry: StubAlbumGeometry, factor: number): VisibleLayers {
  const pitch = toMillimetres(geometry.pitch) * factor;
  const size = geometry.stubs === 1 ? 1.4 : Math.min(1.4, pitch / 8);
  return {
    card: 0.95 * size, slot: 0.4 * size, adhesive: 0.5 * size, paper: 0.65 * size, cloth: 0.9,
    depth: toMillimetres(geometry.closedStubDepth) * factor,
  };
}

/** The folded card over its spine strip, layers drawn so that they can be told apart; `rest` is what the strip stands out on each side of the floor. */
export function layOutOnStrip(geometry: StubAlbumGeometry, factor: number): { readonly layers: VisibleLayers; readonly floor: FloorLayout; readonly rest: number; readonly stripHeight: number; readonly xs: readonly number[] } {
  const floor = layOutFloor(geometry, factor, shownStubs.first, shownStubs.last);
  return {
    layers: visibleLayers(geometry, factor), floor, xs: floor.stubs.map(({ x }) => x),
    rest: ((toMillimetres(geometry.spineStripWidth) - toMillimetres(geometry.foldedFloor)) * factor) / 2,
    stripHeight: Math.max(2.4, toMillimetres(geometry.stripThickness) * factor),
  };
}

/** True sizes at a scale, layers `thicken` times too thick. */
export function ribbonSizes(geometry: StubAlbumGeometry, factor: number, thicken = 1): RibbonSizes {
  const card = toMillimetres(geometry.cardThickness);
  return {
    card: card * factor * thicken,
    // A measured stub may be thinner than its two leaves: then no adhesive shows.
    slot: Math.max(0, toMillimetres(geometry.stubGrowth) - card) * factor * thicken,
    depth: toMillimetres(geometry.closedStubDepth) * factor,
  };
}

/** Half of a closed stub's thickness. */
export function halfStub({ card, slot }: RibbonSizes): number {
  return card + slot / 2;
}

/**
 * The ribbon: the inside of the floor lies at y = 0, stubs rise above it (negative y), the floor's own thickness lies below.
 * The crest is a half circle; the leaves lie flat against the adhesive down to the underside of the floor.
 */
export function ribbonPath(xs: readonly number[], left: number, right: number, sizes: RibbonSizes): Path {
  const { card, slot, depth } = sizes;
  const half = halfStub(sizes);
  const bend = -(depth - half);
  const inner = slot / 2;
  const to = (x: number, y: number): PathStep => ({ kind: "line", to: point(x, y) });
  const steps: PathStep[] = [{ kind: "move", to: point(left, 0) }];
  for (const x of xs) {
    steps.push(to(x - half, 0), to(x - half, bend), { kind: "arc", to: point(x + half, bend), radius: half, large: false, clockwise: true }, to(x + half, 0));
  }
  steps.push(to(right, 0), to(right, card));
  for (const x of [...xs].reverse()) {
    steps.push(to(x + inner, card), to(x + inner, bend));
    if (inner > 0) steps.push({ kind: "arc", to: point(x - inner, bend), radius: inner, large: false, clockwise: false });
    steps.push(to(x - inner, card));
  }
  steps.push(to(left, card), { kind: "close" });
  return steps;
}

/** The adhesive inside each closed stub; none where none shows. */
export function slotPaths(xs: readonly number[], sizes: RibbonSizes): readonly Path[] {
  if (sizes.slot <= 0) return [];
  const top = -(sizes.depth - halfStub(sizes));
  return xs.map((x) => rectangle(x - sizes.slot / 2, top, sizes.slot, sizes.card - top));
}
