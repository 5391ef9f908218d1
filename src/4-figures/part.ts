// The drawing of one part as it is cut: outline, height and width, grain, letter, corner cuts and where other parts will lie.
import type { Feature, Part } from "../2-model/types.ts";
import { capital } from "../3-plan/wording.ts";
import type { BindingId } from "../catalogue/bindings.ts";
import { line, rectangle } from "../geometry/path.ts";
import { point } from "../geometry/point.ts";
import { toMillimetres } from "../units/length.ts";
import type { DrawingInput } from "./binding.ts";
import { cornerReach } from "./corner-cut.ts";
import { dimension } from "./dimensions.ts";
import type { FigureDraft } from "./figure.ts";
import { placeEvery } from "./figure.ts";
import { drawBalloon, grainArrow, gridCentres } from "./leaders.ts";
import type { Placeable } from "./place.ts";
import { scales } from "./scale.ts";
import type { Scale } from "./scale.ts";
import { area, stroke } from "./scene.ts";
import type { SceneItem } from "./scene.ts";

/** Room for the outline of one part, in millimetres of paper: three such drawings stand side by side in the cut list. */
const room = { width: 43, height: 43 };
/** A part narrower than this on paper is drawn this wide, with a note that its width is not to scale. */
const thinnest = 3;

/** Figure `part-<id>`. */
export function drawPart<B extends BindingId>(input: DrawingInput<B>, part: Part): FigureDraft {
  const [height, width] = [toMillimetres(part.height), toMillimetres(part.width)];
  const scale = scales.find(({ factor }) => factor <= 1 && height * factor <= room.height && width * factor <= room.width) ?? scales.at(-1)!;
  const shape = outlineOf(part, scale);
  const items = placeEvery(shape.items, labelsOf(input, part, shape));
  const letter = input.letter(part.id);
  const [heightText, widthText] = [input.number(part.height), input.number(part.width)];
  return {
    id: `part-${part.id}`,
    title: letter ? `${letter}: ${part.name}` : part.name,
    caption: `${capital(part.name)}, ${scaleWords(scale, shape.distorted)}. Height ${heightText} along the spine × width ${widthText}. ${input.unitNote}${cutWords(part)}`,
    alternative: `${capital(part.name)}: a rectangle ${heightText} high along the spine and ${widthText} wide${grainWords(part)}.${cutWords(part)}${lineWords(input, part)}`,
    items,
  };
}

interface Outline {
  readonly items: readonly SceneItem[];
  readonly width: number;
  readonly height: number;
  readonly distorted: "" | "height" | "width";
}

function outlineOf(part: Part, { factor }: Scale): Outline {
  const trueWidth = toMillimetres(part.width) * factor;
  const trueHeight = toMillimetres(part.height) * factor;
  const [width, height] = [Math.max(trueWidth, thinnest), Math.max(trueHeight, thinnest)];
  const lines = part.features.filter((feature) => feature.kind === "placement line").map((feature) => {
    const at = toMillimetres(feature.at) * factor;
    return stroke(feature.direction === "vertical" ? line(point(at, 0), point(at, height)) : line(point(0, at), point(width, at)), "placement");
  });
  return {
    items: [area(rectangle(0, 0, width, height), "none", "outline"), ...lines, ...cornerCuts(part, factor, width, height)],
    width, height,
    distorted: trueWidth < thinnest ? "width" : trueHeight < thinnest ? "height" : "",
  };
}

/**
 * A corner cut runs at 45° at `distance` from the corner of what is covered. Where placement lines show that corner, the cut lies
 * outside of it, towards the part's own corner; without them it is measured from the part's corner inwards.
 */
function cornerCuts(part: Part, factor: number, width: number, height: number): readonly SceneItem[] {
  const inner = innerCorner(part.features);
  return part.features.filter((feature) => feature.kind === "corner cut").map((feature) => {
    const distance = toMillimetres(feature.distance);
    const reach = (inner ? cornerReach(inner, distance) : distance * Math.SQRT2) * factor;
    const [x, right] = feature.corner.endsWith("right") ? [width, -1] : [0, 1];
    const [y, down] = feature.corner.startsWith("tail") ? [height, -1] : [0, 1];
    return stroke(line(point(x + right * reach, y), point(x, y + down * reach)), "cut");
  });
}

function innerCorner(features: readonly Feature[]): { readonly x: number; readonly y: number } | null {
  const first = (direction: "vertical" | "horizontal"): number | null => {
    const positions = features.flatMap((feature) => (feature.kind === "placement line" && feature.direction === direction ? [toMillimetres(feature.at)] : []));
    return positions.length === 0 ? null : Math.min(...positions);
  };
  const [x, y] = [first("vertical"), first("horizontal")];
  return x === null || y === null ? null : { x, y };
}

function labelsOf<B extends BindingId>(input: DrawingInput<B>, part: Part, { width, height }: Outline): readonly Placeable[] {
  const inside = gridCentres({ left: 0, top: 0, right: width, bottom: height }, 15, 15);
  const letter = input.letter(part.id);
  const labels: Placeable[] = [
    dimension({ name: "width", from: point(0, height), to: point(width, height), side: "below", text: input.number(part.width) }),
    dimension({ name: "height", from: point(0, 0), to: point(0, height), side: "left", text: input.number(part.height) }),
  ];
  const beside = [16, 8, 24, 32].map((up) => point(width + 6, Math.max(0, height / 2 - up + 16)));
  if (part.grain !== "none") labels.push(grainArrow("grain", part.grain, [...inside, ...beside, point(width + 8, height / 2 + 12)]));
  if (letter) labels.push({ name: "letter", candidates: [...inside, ...beside, point(width + 8, 3), point(width + 8, -4), point(width / 2, -6)].map((centre) => drawBalloon("letter", letter, centre)) });
  return labels;
}

function scaleWords(scale: Scale, distorted: Outline["distorted"]): string {
  return distorted === "" ? scale.name : `${scale.name}, ${distorted} not to scale`;
}

function grainWords(part: Part): string {
  return part.grain === "none" ? "" : `, grain along the ${part.grain}`;
}

function cutWords(part: Part): string {
  return part.features.some((feature) => feature.kind === "corner cut") ? " The corners are cut off at 45° later, when a step says so." : "";
}

function lineWords<B extends BindingId>(input: DrawingInput<B>, part: Part): string {
  const words = part.features.flatMap((feature) => (feature.kind === "placement line" ? [`${feature.name} at ${input.number(feature.at)}`] : []));
  return words.length === 0 ? "" : ` Lines show where other parts will lie: ${words.join(", ")}.`;
}
