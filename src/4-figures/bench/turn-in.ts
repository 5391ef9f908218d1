// Figure: turning in a covering at a corner, in four frames from the cut corner to the finished one.
import { line, polygon } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { arrowhead } from "../arrows.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { movementArrow } from "../movement.ts";
import { scalesThatFit } from "../scale.ts";
import { area, headingType, label, moveItems, stroke } from "../scene.ts";
import type { PathItem, SceneItem, TextItem } from "../scene.ts";
import { boneFolder } from "./bench-tools.ts";
import { cornerView, flatCloth, headFlap, sideFlap, stripsIn, viewEnds } from "./corner-view.ts";
import type { CornerGeometry, CornerView } from "./corner-view.ts";
import { sectionWords } from "./section-words.ts";

/** Side of one frame on paper, and the step from one frame to the next. */
const frame = { side: 32, right: 41, down: 48 } as const;

/** Whose corner it is. */
export interface TurnInSpec {
  readonly id: string;
  /** What is turned in, in the title: "hinge cloth". */
  readonly what: string;
  /** The whole thing with four such corners: "hinge", "board". */
  readonly whole: string;
  /** Part ids of the covering and of the board or strip at the corner. */
  readonly covering: string;
  readonly board: string;
  /** "cloth", "paper". */
  readonly stuff: string;
  readonly geometry: CornerGeometry;
  /** Which corners are done alike; default "the other three corners are". */
  readonly others?: string;
}

/** A figure of one corner being turned in, in four frames. */
export function drawTurnIn(input: DrawingInput, spec: TurnInSpec): FigureDraft {
  const { geometry, stuff } = spec;
  const board = input.model.parts.find((part) => part.id === spec.board)!.name;
  const words = sectionWords(input);
  const wanted = toMillimetres(geometry.turnIn) * 2.3;
  const { items, scale } = placeAtScale(scalesThatFit(wanted, wanted, frame.side, frame.side, 2).slice(0, 1), ({ factor }) => {
    const view = cornerView(geometry, factor, frame.side);
    return {
      fixed: [cutFrame(view), headFrame(view), nipFrame(view), sideFrame(view)].flatMap((items, index) => placeFrame(index, items)),
      labels: [
        dimension({ name: "turn-in", from: point(view.end, 0), to: point(view.end, view.turnIn), side: "right", text: words.size(geometry.turnIn), offset: 4 }),
        leaderAnywhere({ name: "corner distance", text: words.inLines(words.thickness(geometry.cornerDistance))[0]!.split(/(?<=^about)\u00a0/), target: cutMiddle(view), end: "none", directions: [25, 35, 15, 45, 55, 5], reach: 4 }),
        leaderAnywhere({ name: "board", text: words.part(spec.board), target: point(view.turnIn + 2, view.end - 3), directions: [300, 310, 290, 320, 330, 270, 250], reach: 5 }),
        leaderAnywhere({ name: "right side", text: `right side of the ${stuff}`, target: onHeadFlap(view), directions: [270, 260, 280, 250, 290], reach: view.end - view.turnIn }),
        leaderAnywhere({ name: "wrong side", text: [words.part(spec.covering), "wrong side"], target: point(view.turnIn * 0.5, frame.down + view.end - 3), directions: [300, 310, 290, 320], reach: 5 }),
      ],
    };
  });
  return {
    id: spec.id,
    title: `Turning in the ${spec.what}`,
    caption: `One corner of the ${spec.whole} from near by, wrong side of the ${stuff} up, ${scale.name}; ${spec.others ?? "the other three corners are"} done alike. 1: cut the corner off at 45°, ${words.thickness(geometry.cornerDistance)} from the corner of the ${board}. `
      + "2: turn in head and tail. 3: press the little fold at the corner in against the edge. 4: turn in the sides.",
    alternative: `Four frames of one corner. Frame 1: the ${stuff} reaches ${words.size(geometry.turnIn)} beyond the ${board} on both sides; its corner is cut off at 45°, ${words.thickness(geometry.cornerDistance)} from the corner of the ${board}. `
      + `Frame 2: the ${stuff} at the head is folded over the edge onto the ${board}; a little of it stands out past the side edge. `
      + `Frame 3: the point of a bone folder presses that bit in against the edge. Frame 4: the ${stuff} at the side is folded over; it meets the head’s turn-in in a slanting line from the corner.`,
    items,
  };
}

function placeFrame(index: number, items: readonly SceneItem[]): readonly SceneItem[] {
  return moveItems(items, (index % 2) * frame.right, Math.floor(index / 2) * frame.down);
}

function title(number: string, text: string): readonly TextItem[] {
  return [
    label(`frame ${number}`, number, point(0, -5.2), { size: headingType, weight: 600 }),
    label(`frame ${number} words`, text, point(3.6, -5.2), { size: headingType, weight: 600 }),
  ];
}

function cutFrame(view: CornerView): readonly SceneItem[] {
  const { cutReach } = view;
  const away = -1.6;
  const offcut: readonly SceneItem[] = cutReach === 0 ? [] : [
    area(polygon([point(away, away), point(cutReach + away, away), point(away, cutReach + away)]), "none", "formed"),
    stroke(line(point(cutReach + 1.2, -1.2), point(-1.2, cutReach + 1.2)), "cut"),
  ];
  return [...flatCloth(view, { head: true, side: true }), ...stripsIn(view), ...offcut, ...distanceArrow(view), ...viewEnds(view, 0, 0), ...title("1", "Cut off the corner")];
}

/** The distance from the strip's corner to the cut, drawn as its own small dimension at 45°. */
function distanceArrow(view: CornerView): readonly PathItem[] {
  const corner = point(view.turnIn, view.turnIn);
  const onCut = point(view.cutReach / 2, view.cutReach / 2);
  const out = (at: Point, by: number): Point => point(at.x + by, at.y + by);
  const owner = "corner distance";
  return [
    stroke(line(out(onCut, -2.6), out(corner, 2.6)), "dimension", owner),
    arrowhead(onCut, point(1, 1), owner, 1.6),
    arrowhead(corner, point(-1, -1), owner, 1.6),
  ];
}

function cutMiddle(view: CornerView): Point {
  return point(view.turnIn + 1.8, view.turnIn + 1.8);
}

/** A point on the head's turn-in of the second frame, right of its slanting end. */
function onHeadFlap({ turnIn, turnedIn, cutReach, end }: CornerView): Point {
  const past = Math.max(0, cutReach - turnIn);
  const depth = 0.8;
  const slant = past + (cutReach - past) * depth;
  return point(frame.right + (Math.min(slant, end - 2) + end) / 2, turnIn + turnedIn * depth);
}

function headFrame(view: CornerView): readonly SceneItem[] {
  const x = view.end * 0.72;
  return [
    ...flatCloth(view, { head: false, side: true }), ...stripsIn(view), ...headFlap(view, false), ...viewEnds(view, 0, view.turnIn),
    ...movementArrow(point(x, view.turnIn - view.turnIn * 0.7), point(x, view.turnIn + view.turnedIn * 0.6), -3), ...title("2", "Turn in head and tail"),
  ];
}

function nipFrame(view: CornerView): readonly SceneItem[] {
  return [
    ...flatCloth(view, { head: false, side: true }), ...stripsIn(view), ...headFlap(view, true), ...viewEnds(view, 0, view.turnIn),
    ...boneFolder(point(view.turnIn - 0.6, view.turnIn + 0.8), 128, Math.min(20, view.turnIn + 8)), ...title("3", "Nip the corner in"),
  ];
}

function sideFrame(view: CornerView): readonly SceneItem[] {
  const y = view.end * 0.8;
  return [
    ...flatCloth(view, { head: false, side: false }), ...stripsIn(view), ...headFlap(view, true), ...sideFlap(view), ...viewEnds(view, view.turnIn, view.turnIn),
    ...movementArrow(point(view.turnIn * 0.3, y), point(view.turnIn + view.turnedIn * 0.6, y), 3), ...title("4", "Turn in the sides"),
  ];
}
