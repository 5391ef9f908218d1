// Figure: a cover cut through at the hinge: covering, turn-in, and the lining that goes down into the joint.
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import type { PostAlbumGeometry } from "../../2-model/post-album/geometry.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross, raggedEnd } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { preferredLeader } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { label } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";
import { coveringId } from "./cover-plan.ts";
import { coverLayers, layOutSection } from "./cover-section.ts";
import type { CoverSection } from "./cover-section.ts";

/** Paper for the section, and how much of strip and board may be shown whole or broken. */
const room = { width: 128, thickness: 14, thinnest: 4.5, strip: { whole: 60, broken: 44 }, board: { whole: 44, broken: 34 }, beyondLap: 10 } as const;

const layOut = (geometry: PostAlbumGeometry, factor: number): CoverSection => layOutSection(geometry, factor, room);

/** Figure `hinge-section`. */
export function drawHingeSection(input: DrawingInput<"post-album">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { items, scale } = placeAtScale(scalesFor(geometry), (at) => {
    const section = layOut(geometry, at.factor);
    return { fixed: sectionItems(input, section), labels: labelsOf(input, section), bounds: { left: -34, right: Math.min(section.end + 42, 134), top: -70, bottom: 70 } };
  });
  const section = layOut(geometry, scale.factor);
  const left = section.breaks.length === 0 ? "" : ", strip and board shortened";
  return {
    id: "hinge-section",
    title: "A cover cut through at the hinge",
    caption: `Section through a cover at its hinge, inside up, ${scale.name}${left}; adhesive left out. The hinge lining goes down the edge of the hinge strip, along the bottom of the joint and up the edge of the board: that is why it is two board thicknesses wider than what it covers. ${input.unitNote}`,
    alternative: `A cover lies inside up. From left to right: the hinge strip, ${words.size(geometry.hingeWidth)} wide, a joint of ${words.size(geometry.jointGap)}, the board, both ${words.thickness(geometry.boardThickness)} thick. The cloth lies under all of it and is turned in over the spine edge. `
      + `The hinge lining begins ${words.size(geometry.inset)} from the spine edge, follows both sides and the bottom of the joint and ends on the board, ${words.size(geometry.clothLap)} from its edge.`,
    items,
  };
}

function scalesFor(geometry: PostAlbumGeometry): readonly Scale[] {
  const thickness = toMillimetres(geometry.coverAtHinge);
  const thin = scales.filter(({ factor }) => factor <= 5 && thickness * factor <= room.thickness);
  const whole = thin.find((scale) => thickness * scale.factor >= room.thinnest && layOut(geometry, scale.factor).breaks.length === 0 && layOut(geometry, scale.factor).end <= room.width);
  const broken = thin.find((scale) => layOut(geometry, scale.factor).end <= room.width) ?? thin.at(-1)!;
  const first = whole ?? broken;
  return [first, ...scales.filter(({ factor }) => factor > first.factor && factor <= first.factor * 2).toReversed()];
}

function sectionItems({ model }: DrawingInput<"post-album">, section: CoverSection): readonly SceneItem[] {
  const { end, cloth, board, breaks } = section;
  return [
    ...coverLayers(model.geometry, section),
    ...raggedEnd(end, -board - cloth * 2 - 1, cloth * 2 + 1, 1),
    ...breaks.flatMap((x) => breakAcross(x, -board - cloth * 2 - 1.5, cloth * 2 + 1)),
    label("inside", "inside", point(-cloth - 6, -board - 2 * cloth - 14), { anchor: "end" }),
    label("outside", "outside", point(-cloth - 6, cloth + 14), { anchor: "end" }),
  ];
}

function labelsOf(input: DrawingInput<"post-album">, section: CoverSection): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { stripRight, boardLeft, lapEnd, end, cloth, board, turnedIn, inset } = section;
  const top = -board - 2 * cloth;
  const at = (name: string, text: string | readonly string[], target: Point, directions: readonly number[], reach: number): Placeable => preferredLeader({ name, text, target, directions, reach }, 10);
  return [
    dimension({ name: "hinge width", from: point(0, cloth), to: point(stripRight, cloth), side: "below", text: words.size(geometry.hingeWidth), offset: 7 }),
    dimension({ name: "joint gap", from: point(stripRight, cloth), to: point(boardLeft, cloth), side: "below", text: words.size(geometry.jointGap), offset: 7 }),
    dimension({ name: "lap", from: point(boardLeft, top), to: point(lapEnd, top), side: "above", text: words.size(geometry.clothLap), offset: 6 }),
    dimension({ name: "inset", from: point(0, top), to: point(inset, top), side: "above", text: words.size(geometry.inset), offset: 6, outside: "before" }),
    dimension({ name: "board thickness", from: point(end, -board), to: point(end, 0), side: "right", text: words.thickness(geometry.boardThickness), offset: 5 }),
    at("hinge lining", words.part("hinge-lining"), point(stripRight * 0.8, -board - cloth / 2), [75, 90, 105, 60], board + 12),
    at("joint", ["pressed down", "into the joint"], point((stripRight + boardLeft) / 2, -cloth / 2), [70, 80, 60, 90, 100], board + 14),
    at("turn-in", "turned in", point(turnedIn * 0.55, -board - cloth / 2), [110, 100, 120, 90], 10),
    at("hinge strip", words.part("hinge-strip"), point(stripRight * 0.35, -board / 2), [250, 260, 240, 270], board + 16),
    at("board", words.part("boards"), point(boardLeft + (lapEnd - boardLeft) * 0.7, -board / 2), [290, 280, 300, 270], board + 12),
    at("covering", words.part(coveringId(geometry)), point(stripRight * 0.75, cloth / 2), [255, 265, 245, 275], 14),
    ...(geometry.paper ? [at("cover paper", words.part("cover-paper"), point(end - 2, 0.1), [300, 290, 310, 280], 14)] : []),
  ];
}
