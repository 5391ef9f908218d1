// Figure: boards and strip laid on the marked cloth in their order, with the spacer in a joint.
import { polygon } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { balloon, drawBalloon, leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxArea, caseSize, planCase } from "./case-plan.ts";
import type { CasePlan } from "./case-plan.ts";

type Input = DrawingInput<"case-binding">;

const room = { width: 78, height: 62 } as const;
/** Narrowest strip that has room for its number. */
const numberRoom = 5.6;

/** Figure `glue-boards`. */
export function drawGlueBoards(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const size = caseSize(geometry);
  const { items, scale } = placeAtScale(scalesThatFit(size.width, size.height, room.width, room.height), ({ factor }) => {
    const plan = planCase(geometry, factor);
    return { fixed: caseItems(plan), labels: labelsOf(input, plan) };
  });
  const joint = words.size(geometry.joint);
  return {
    id: "glue-boards",
    title: "Gluing boards and strip to the cloth",
    caption: `The cloth with its wrong side up, ${scale.name}. Lay the spine strip first (1), then the left board (2) and the right board (3), each adhesive down on its lines, heads in one line. A spacer ${joint} wide lies in the left joint.`,
    alternative: `${words.part("cloth")} lies wrong side up. ${words.part("spine-strip")} is laid first, in the middle, then a board on either side, ${joint} from the strip; a spacer of that width stands in the left joint. `
      + (geometry.covering.kind === "full" ? "The cloth stands out all round for turning in." : "The cloth stands out at head and tail for turning in; the boards reach beyond it at both sides."),
    items,
  };
}

function caseItems(plan: CasePlan): readonly SceneItem[] {
  const { cloth, left, strip, right, cut } = plan;
  const spacer = { left: left.right, right: strip.left, top: left.top + (left.bottom - left.top) * 0.55, bottom: left.bottom - 1 };
  const corners = [point(cut, 0), point(cloth.right - cut, 0), point(cloth.right, cut), point(cloth.right, cloth.bottom - cut), point(cloth.right - cut, cloth.bottom), point(cut, cloth.bottom), point(0, cloth.bottom - cut), point(0, cut)];
  return [
    area(polygon(cut === 0 ? [point(0, 0), point(cloth.right, 0), point(cloth.right, cloth.bottom), point(0, cloth.bottom)] : corners), "face-light", "outline"),
    ...[left, strip, right].map((box) => boxArea(box, "face-middle", "outline")),
    boxArea(spacer, "face-deep", "edge"),
  ];
}

function labelsOf(input: Input, plan: CasePlan): readonly Placeable[] {
  const words = sectionWords(input);
  const { cloth, left, strip, right } = plan;
  const middle = (box: typeof left, share: number) => point((box.left + box.right) / 2, box.top + (box.bottom - box.top) * share);
  const number = (name: string, text: string, box: typeof left): Placeable => ({
    name, candidates: [
      ...(box.right - box.left < numberRoom ? [] : [drawBalloon(name, text, middle(box, 0.3))]),
      ...balloon({ name, letter: text, target: middle(box, 0.97), directions: [270, 280, 260], reach: 4 + cloth.bottom - box.bottom }).candidates,
    ],
  });
  const to = (name: string, text: string | readonly string[], x: number, y: number, directions: readonly number[], reach: number): Placeable =>
    leaderAnywhere({ name, text, target: point(x, y), directions, reach });
  return [
    number("first", "1", strip), number("second", "2", left), number("third", "3", right),
    to("spacer", ["spacer", words.size(input.model.geometry.joint)], (left.right + strip.left) / 2, left.bottom - 5, [250, 240, 260, 230], 9 + cloth.bottom - left.bottom),
    to("board", words.part("boards"), right.right - 4, right.top + 8, [0, 15, -15, 30], 9 + cloth.right - Math.min(right.right, cloth.right)),
    to("strip", words.part("spine-strip"), strip.right - 0.8, strip.top + 4, [65, 80, 50, 95], 9 + strip.top),
    to("cloth", [words.part("cloth"), "wrong side"], Math.min(cloth.right, right.right) - 3, cloth.bottom - Math.min(1.5, plan.turnIn / 2), [330, 340, 320, 0], 8),
  ];
}
