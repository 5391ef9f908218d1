// Figure `closed-section`: the shut book in section across its folds, boards, covering, panels and tabs, seen from the head.
import { polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere, preferredLeader } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"concertina">;

/** On paper: width shown, board, square, distance of layers (smaller for many), and how far the turn-in reaches. */
const shown = { width: 74, board: 4.4, square: 4, turnIn: 11, cloth: 0.5, tab: 9 } as const;

/** Figure `closed-section`. */
export function drawClosedSection(input: Input): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { panels, strips } = geometry;
  const joined = strips.length > 1;
  const apart = Math.max(0.8, Math.min(1.7, 60 / panels));
  const { width, board, square } = shown;
  const top = board + 1.6;
  const bottom = top + (panels - 1) * apart;
  const back = bottom + 1.6;
  const total = back + board;
  const [left, right] = [square, width - square];
  // The front board is on top, so panel 1 runs from its edge at the right to fold 1 at the left.
  const layer = (index: number): readonly [Point, Point] => {
    const y = top + index * apart;
    return index % 2 === 0 ? [point(right, y), point(left, y)] : [point(left, y), point(right, y)];
  };
  const chain = Array.from({ length: panels }, (_, index) => layer(index)).flat();
  const joins = strips.slice(0, -1).map((strip) => strip.firstPanel + strip.panels - 1);
  const middle = width * 0.56;
  const fixed: readonly SceneItem[] = [
    ...cover(0, "front"), ...cover(back, "back"),
    stroke(polyline(chain), "outline"),
    ...joins.map((fold) => stroke(polyline([point(left - 0.5, top + (fold - 1) * apart), point(left - 0.5, top + fold * apart + apart * 0.45), point(left + shown.tab, top + fold * apart + apart * 0.45)]), "edge")),
    ...breakAcross(middle, -2, total + 2, 3),
  ];
  const firstJoin = joins[0];
  const labels: readonly Placeable[] = [
    dimension({ name: "finished thickness", from: point(0, -shown.cloth), to: point(0, total + shown.cloth), side: "left", text: words.thickness(geometry.shutThickness), offset: 17 }),
    dimension({ name: "finished width", from: point(-shown.cloth, total), to: point(width + shown.cloth, total), side: "below", text: words.size(finished.width), offset: 12 }),
    dimension({ name: "square", from: point(right, total), to: point(width, total), side: "below", text: words.size(geometry.square), offset: 6 }),
    firstOf(
      dimension({ name: "folded stack", from: point(0, top - 0.4), to: point(0, bottom + 0.4), side: "left", text: words.thickness(geometry.foldedStack), offset: 8 }),
      leaderAnywhere({ name: "folded stack", text: ["folded strip:", ...words.inLines(words.thickness(geometry.foldedStack))], target: point(left + 6, (top + bottom) / 2), directions: [200, 210, 190, 220, 180], reach: 36 }),
    ),
    preferredLeader({ name: "boards", text: `${words.part("boards")}: front`, target: point(width * 0.25, board / 2), directions: [105, 95, 115, 85], reach: 8 }),
    preferredLeader({ name: "covering", text: words.part("covering"), target: point(width * 0.8, -shown.cloth / 2), end: "arrow", directions: [60, 50, 70, 40], reach: 8 }),
    preferredLeader({ name: "turn-in", text: "turn-in, under panel 1", target: point(width - 2, board + shown.cloth / 2), end: "arrow", directions: [20, 10, 30, 0], reach: 9 }),
    preferredLeader({ name: "panels", text: [`${panels} panels of`, words.thickness(geometry.paperThickness)], target: point(right - 4, top + (panels > 2 ? apart : 0)), directions: [350, 0, 340, 10], reach: 13 }),
    preferredLeader({ name: "last board", text: `${words.part("boards")}: back`, target: point(width * 0.85, back + board / 2), directions: [330, 340, 320, 350], reach: 14 }),
    ...(firstJoin === undefined ? [] : [preferredLeader({ name: "tab", text: [`tab at fold ${firstJoin}`], target: point(left + shown.tab - 2, top + firstJoin * apart + apart * 0.45), end: "arrow" as const, directions: [190, 200, 180, 170, 210], reach: 34 })]),
  ];
  return {
    id: "closed-section",
    title: "Section through the shut book",
    caption: `The shut book in section, seen from the head, spine side at the left; not to scale: thickness is drawn too large, the middle of the width is left out. ${panels} panels of ${words.thickness(geometry.paperThickness)}${joined ? ` and ${joins.length} ${joins.length === 1 ? "tab" : "tabs"}, ${words.thickness(geometry.tabSwell)} in all,` : ""} make a stack of ${words.thickness(geometry.foldedStack)}; each cover adds ${words.thickness(geometry.coverStack)}.`,
    alternative: `Section across the folds of the shut book, ${words.size(finished.width)} wide and ${words.thickness(geometry.shutThickness)} thick. From the front: a board with its covering, turned in over its edges; ${panels} panels, folded zigzag, together ${words.thickness(geometry.foldedStack)} thick; the back board. Panel 1 is glued over the turn-in of the front board, panel ${panels} over that of the back board. `
      + `The boards reach ${words.size(geometry.square)} beyond the folds.${joined ? ` At ${joins.map((fold) => `fold ${fold}`).join(", ")} a tab lies at the spine side.` : ""}`,
    items: placeEvery(fixed, labels),
  };
}

/** A board with its covering: outside all over, inside as far as the turn-in. */
function cover(top: number, side: "front" | "back"): readonly SceneItem[] {
  const { width, board, cloth, turnIn } = shown;
  const [outer, inner] = side === "front" ? [top - cloth, top + board + cloth] : [top + board + cloth, top - cloth];
  const off = cloth;
  return [
    area(rectangle(0, top, width, board), "board", "edge"),
    stroke(polyline([point(turnIn, inner), point(-off, inner), point(-off, outer), point(width + off, outer), point(width + off, inner), point(width - turnIn, inner)]), "outline"),
  ];
}
