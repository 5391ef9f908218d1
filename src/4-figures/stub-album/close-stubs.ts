// Figure `close-stubs`: where the adhesive goes on an open stub, and one closed stub much enlarged with what it adds to the floor.
import { polygon, polyline, rectangle } from "../../geometry/path.ts";
import { point, polar } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { breakAlong, raggedEnd } from "../breaks.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { preferredLeader } from "../leaders.ts";
import { pushArrow } from "../movement.ts";
import { placeEvery } from "../figure.ts";
import { fittingScale } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { halfStub, ribbonPath } from "./folded-card.ts";
import type { RibbonSizes } from "./folded-card.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room for the thickness of one closed stub and for its height with a break, in millimetres of paper. */
const stubRoom = 11;
const heightRoom = 24;

export const drawCloseStubs: DrawFigure<"stub-album"> = (input) => {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const closedStub = toMillimetres(geometry.stubGrowth) + toMillimetres(geometry.cardThickness);
  const scale = fittingScale(closedStub, 0, stubRoom, 1, 20);
  const [closed, growth, depth] = [words.thickness(words.value("closed stub")), words.thickness(geometry.stubGrowth), words.size(geometry.stubDepth)];
  const reach = adhesiveReach(input);
  const all = geometry.stubs === 1 ? "the stub" : `all ${geometry.stubs} stubs`;
  return {
    id: "close-stubs",
    title: "Closing the stubs",
    caption: `Closing the stubs, seen from the end; do it to ${all}. Open, not to scale, the card turned over, its outside up: ${words.adhesive("stubs")} goes on one leaf, ${reach}; then the two bases are brought together. `
      + `Closed: section ${scale.name}, shortened. The closed stub is ${closed} thick, and its two base scores stay ${growth} apart.`,
    alternative: `Two end views of one stub. Open: the card lies with its outside up and the stub is a shallow groove, its crest pointing down; ${words.adhesive("stubs")} lies on the upper side of one leaf, ${reach}; a leaf is ${depth} deep. `
      + `Closed, at ${scale.name}: two leaves of card with the adhesive between them, together ${closed} thick. At the base the middles of the two leaves stand ${growth} apart; so much does each stub add to the folded floor.`,
    items: viewsBelow([withHeading("open", "Turned over and open: adhesive on one leaf", drawOpen(input)), withHeading("closed", "Closed", drawClosed(input, scale))]),
  };
};

/** Tape keeps clear of the base line, so that none shows on the floor; a wet adhesive is brushed from base to crest. */
function adhesiveReach(input: DrawingInput<"stub-album">): string {
  const clearance = input.model.geometry.pages.adhesiveClearance;
  const kept = !input.definition.adhesives["stubs"]!.wet && clearance.n > 0n;
  return kept ? `from ${sectionWords(input).size(clearance)} off the base to the crest` : "from base to crest";
}

/** The card turned over, one stub opened until its leaves lie nearly flat, not to scale: the adhesive lies on the upper side of one leaf. */
function drawOpen(input: DrawingInput<"stub-album">): readonly SceneItem[] {
  const words = sectionWords(input);
  const leaf = 19;
  const dip = 345;
  const foot = point(0, 0);
  const crest = polar(foot, leaf, dip);
  const rightFoot = point(crest.x * 2, 0);
  const up = (at: Point, by: number): Point => polar(at, by, dip + 90);
  const [low, high] = [polar(foot, 2, dip), polar(foot, leaf - 0.6, dip)];
  const margin = 9;
  const fixed: SceneItem[] = [
    area(polygon([up(low, 0.45), up(high, 0.45), up(high, 1.5), up(low, 1.5)]), "adhesive", "edge"),
    stroke(polyline([point(-margin, 0), foot, crest, rightFoot, point(rightFoot.x + margin, 0)]), "outline"),
    pushArrow(point(-margin - 1, 0), point(1, 0), 6),
    pushArrow(point(rightFoot.x + margin + 1, 0), point(-1, 0), 6),
  ];
  const middle = up(polar(foot, leaf * 0.45, dip), 1);
  return placeEvery(fixed, [
    preferredLeader({ name: "adhesive", text: [...words.adhesiveLines("stubs"), "on one leaf,", ...adhesiveReach(input).split(/(?<=base) /)], target: middle, directions: [70, 80, 60, 90], reach: 8 }),
    preferredLeader({ name: "crest", text: "crest, pointing down", target: crest, end: "arrow", directions: [290, 300, 280, 270], reach: 6 }),
    preferredLeader({ name: "base", text: "base", target: foot, end: "arrow", directions: [250, 260, 240, 270], reach: 6 }),
  ], { bounds: { left: -30, right: 51, top: -100, bottom: 100 } });
}

/** The closed stub at a stated scale, its height shortened by a break. */
function drawClosed(input: DrawingInput<"stub-album">, { factor }: Scale): readonly SceneItem[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const card = toMillimetres(geometry.cardThickness) * factor;
  const slot = Math.max(0, toMillimetres(geometry.stubGrowth) * factor - card);
  const trueDepth = toMillimetres(geometry.closedStubDepth) * factor;
  const sizes: RibbonSizes = { card, slot, depth: Math.min(trueDepth, heightRoom) };
  const half = halfStub(sizes);
  const side = half + 12;
  const wet = input.definition.adhesives["stubs"]!.wet;
  const clear = wet ? 0 : Math.min(toMillimetres(geometry.pages.adhesiveClearance) * factor, sizes.depth * 0.3);
  const adhesive = slot > 0 ? rectangle(-slot / 2, -sizes.depth + half, slot, sizes.depth - half - clear + (clear > 0 ? 0 : card)) : null;
  const fixed: SceneItem[] = [
    area(ribbonPath([0], -side - 1, side + 1, sizes), "card", "none"),
    stroke(ribbonPath([0], -side - 1, side + 1, sizes).filter((step) => step.kind !== "close"), "outline"),
    ...(adhesive ? [area(adhesive, "adhesive", "none")] : []),
    ...raggedEnd(-side, -0.6, card + 0.6, -1), ...raggedEnd(side, -0.6, card + 0.6, 1),
    ...(trueDepth > heightRoom ? breakAlong(-sizes.depth * 0.55, -half - 1.5, half + 1.5) : []),
  ];
  const middle = (slot + card) / 2;
  return placeEvery(fixed, [
    dimension({ name: "closed stub", from: point(-half, -sizes.depth + half), to: point(half, -sizes.depth + half), side: "above", text: words.thickness(words.value("closed stub")), offset: half + 5 }),
    dimension({ name: "growth", from: point(-middle, card), to: point(middle, card), side: "below", text: words.thickness(geometry.stubGrowth), offset: 6 }),
    preferredLeader({ name: "leaf", text: "leaf of the stub", target: point(half - card / 2, -sizes.depth * 0.75), directions: [0, 20, 340, 45], reach: 8 + half }),
    ...(adhesive ? [preferredLeader({ name: "slot", text: words.adhesiveLines("stubs"), target: point(0, -sizes.depth * 0.4), directions: [0, 20, 340], reach: 10 + half })] : []),
    preferredLeader({ name: "floor", text: `${words.part("card")}, floor`, target: point(side - 4, card / 2), directions: [300, 315, 290, 270, 330, 250, 45, 30], reach: 8 }),
  ], { bounds: { left: -28, right: 53, top: -100, bottom: 100 } });
}
