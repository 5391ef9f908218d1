// The holes of a board: every one measured from the head and from the spine edge; as a figure and as a template.
import type { Hole } from "../../2-model/types.ts";
import { circle, line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { addLengths, mm, toMillimetres } from "../../units/length.ts";
import { draftHoleStrip } from "../bench/hole-strip.ts";
import type { DrawingInput } from "../binding.ts";
import { wavyLine } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, drawLeader, leaderAnywhere } from "../leaders.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scales, scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room for what is shown of the board, on paper. */
const room = { width: 52, height: 84 } as const;
/** So much of a board is shown beyond its holes, in hole distances. */
const shownDistances = 4;

function frontHoles(input: DrawingInput<"link-stitch">): readonly Hole[] {
  return input.model.holes.filter((hole) => hole.part === "boards" && hole.id.startsWith("front-"));
}

function holeName(hole: Hole): string {
  return hole.id.replace("front-", "");
}

/** Figure `board-holes`: the front board from outside, spine edge to the left. */
export function drawBoardHoles(input: DrawingInput<"link-stitch">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const holes = frontHoles(input);
  const [boardHeight, boardWidth] = [toMillimetres(geometry.boardHeight), toMillimetres(geometry.boardWidth)];
  const shown = Math.min(boardWidth, toMillimetres(geometry.holeDistance) * shownDistances);
  const [diameter, distance] = [words.thickness(geometry.holeDiameter), words.size(geometry.holeDistance)];
  const fitting = scalesThatFit(shown, boardHeight, room.width, room.height, 1);
  const { items, scale } = placeAtScale([...fitting, ...scales.filter(({ factor }) => factor > fitting.at(-1)!.factor && factor <= 1).reverse()], ({ factor }) => {
    const [width, height] = [shown * factor, boardHeight * factor];
    const at = (hole: Hole) => point(toMillimetres(hole.across) * factor, toMillimetres(hole.along) * factor);
    const radius = Math.max((toMillimetres(geometry.holeDiameter) * factor) / 2, 0.5);
    const running = runningDimensions({
      name: "holes from the head", side: "left", edge: 0, datum: 0, low: -25, high: height + 25,
      marks: [{ name: "head 0", at: 0, text: "0" }, ...holes.map((hole) => ({ name: `hole ${holeName(hole)} along`, at: at(hole).y, text: input.number(hole.along) })), { name: "tail", at: height, text: input.number(geometry.boardHeight) }],
    })!;
    const names = spreadPositions(holes.map((hole) => at(hole).y), 4.2)!;
    const broken = shown < boardWidth;
    return {
      fixed: [
        area(rectangle(0, 0, width, height), "face-light", broken ? "none" : "outline"),
        ...(broken ? [stroke(line(point(0, 0), point(width, 0)), "outline"), stroke(line(point(0, height), point(width, height)), "outline"), stroke(line(point(0, 0), point(0, height)), "outline"), stroke(wavyLine(point(width, 0), point(width, height)), "edge")] : []),
        stroke(line(point(at(holes[0]!).x, -3), point(at(holes[0]!).x, height + 3)), "centre"),
        ...holes.flatMap((hole) => [area(circle(at(hole), radius), "plate", "outline")]),
        ...running.items,
        ...holes.flatMap((hole, index) => drawLeader({ name: `hole ${holeName(hole)}`, text: `hole ${holeName(hole)}`, target: point(at(hole).x + radius, at(hole).y), end: "none" }, point(width + 4, names[index]!))),
      ],
      labels: [
        dimension({ name: "across", from: point(0, 0), to: point(at(holes[0]!).x, 0), side: "above", text: input.number(geometry.holeDistance), offset: 7 }),
        areaLabel("spine edge", "spine edge", [at(holes[0]!).x / 2, -running.depth - 4].flatMap((x) => [0.5, 0.4, 0.6, 0.3, 0.7].map((share) => point(x, height * share))), { angle: 90 }),
        areaLabel("head", "head", [3, 7, 11, 15].map((up) => point(width + 6, -up))),
        areaLabel("tail", "tail", [3, 7, 11, 15].map((down) => point(width + 6, height + down))),
        leaderAnywhere({ name: "board", text: words.part("boards"), target: point(width * 0.75, height * 0.93), directions: [300, 290, 310, 320, 280], reach: 10 }),
      ],
    };
  });
  return {
    id: "board-holes", title: "Holes in a board",
    caption: `The front board from outside, ${scale.name}, spine edge to the left; the back board is the mirror image. Measure from the head edge (the ring at 0) and from the spine edge; every hole is ${diameter} wide. ${input.unitNote}`,
    alternative: `The front board seen from outside, spine edge to the left. ${holes.map((hole) => `Hole ${holeName(hole)} lies ${input.number(hole.along)} from the head`).join("; ")}; all lie ${distance} from the spine edge and are ${diameter} wide.`,
    items,
  };
}

/** Template `board-template`: a strip along the board's spine edge at true size, with a cross at every hole. */
export function draftBoardTemplate(input: DrawingInput<"link-stitch">): TemplateDraft {
  const { definition, model } = input;
  const { geometry } = model;
  return draftHoleStrip(input, {
    id: "board-template", title: "Hole template for the boards", what: "A strip along the spine edge of a board",
    height: geometry.boardHeight, width: addLengths(geometry.holeDistance, geometry.holeDistance, mm(8)), fold: null,
    holes: frontHoles(input).map((hole) => ({ ...hole, name: `hole ${holeName(hole)}` })),
    use: [
      "Cut the strip out along its heavy outline; the words beside it fall away.",
      `Measure it: it must be ${input.number(geometry.boardHeight)} ${definition.units.governing} high, like the board.`,
      "Lay it on the outside of the front board, words up, spine edge on the spine edge, head to head, and tape it down.",
      "Prick through the middle of every cross with an awl.",
      "For the back board turn the strip over, spine edge on the spine edge again, head to head; the pricked holes show the places.",
    ],
  });
}
