// The stations along the fold: measured from the head in a figure, and as a folded guide at true size.
import { circle, line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import type { TextBlock } from "../../2-model/text-block/block.ts";
import type { Station } from "../../2-model/text-block/stations.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, drawLeader, leaderAnywhere } from "../leaders.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scalesThatFit } from "../scale.ts";
import { area, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";

/** Sections and where they are pierced. */
export interface PiercedSections {
  readonly text: TextBlock;
  readonly stations: readonly Station[];
}

/** Room for the guide on paper: its height, and the drawn width of one flap. */
const room = { height: 80, flap: 12 } as const;

/** Figure `station-layout`: the guide unfolded, its fold in the middle, head at the top. */
export function drawStationLayout(input: DrawingInput, { stations, text }: PiercedSections): FigureDraft {
  const pageHeight = toMillimetres(text.pageHeight);
  const { items, scale } = placeAtScale(scalesThatFit(room.flap * 2, pageHeight, room.height, room.height), ({ factor }) => {
    const height = pageHeight * factor;
    const fold = room.flap;
    const at = stations.map((station) => toMillimetres(station.at) * factor);
    const running = runningDimensions({
      name: "stations from the head", side: "left", edge: 0, datum: 0, low: -25, high: height + 25,
      marks: [{ name: "head 0", at: 0, text: "0" }, ...stations.map((station, k) => ({ name: `${station.name} along`, at: at[k]!, text: input.number(station.at) })), { name: "tail", at: height, text: input.number(text.pageHeight) }],
    })!;
    const names = spreadPositions(at, 4.2)!;
    return {
      fixed: [
        area(rectangle(0, 0, 2 * fold, height), "paper", "outline"),
        stroke(line(point(fold, 0), point(fold, height)), "valley"),
        ...at.map((y) => area(circle(point(fold, y), 0.8), "plate", "outline")),
        ...running.items,
        ...stations.flatMap((station, k) => drawLeader({ name: station.name, text: station.name, target: point(fold + 0.8, at[k]!), end: "none" }, point(2 * fold + 4, names[k]!))),
      ],
      labels: [
        areaLabel("head", "head", [3, 7, 11].map((up) => point(fold, -up))),
        areaLabel("tail", "tail", [3, 7, 11].map((down) => point(fold, height + down))),
        leaderAnywhere({ name: "fold", text: ["fold, laid into", "the fold of a section"], target: point(fold, (at[0]! + at[1]!) / 2), end: "arrow", directions: [15, 25, 5, 35, -15], reach: fold + 5 }),
      ],
    };
  });
  return {
    id: "station-layout", title: "Stations along the fold",
    caption: `The piercing guide unfolded, ${scale.name} along its height; its width is not to scale. Measure all stations from the head (the ring at 0). ${input.unitNote}`,
    alternative: `A strip of paper as high as the page, ${input.number(text.pageHeight)}, with a fold along its middle. On the fold lie the stations: ${stations.map((station) => `${station.name} at ${input.number(station.at)} from the head`).join(", ")}.`,
    items,
  };
}

/** Width of one flap of the guide and of the paper beside it for words, in millimetres. */
const flap = 22;
const wordsRoom = 46;
/** From one line of words to the next; fractions are set larger. */
const wordPitch = 4.6;

/** Template `station-template`: a strip to fold and lay into the fold of each section. */
export function draftStationTemplate(input: DrawingInput, { stations, text }: PiercedSections): TemplateDraft {
  const { definition } = input;
  const height = toMillimetres(text.pageHeight);
  const at = stations.map((station) => toMillimetres(station.at));
  // The words beside a short page with many stations reach further down than the page.
  const heights = spreadPositions(at, wordPitch, 4, Math.max(height - 4, 4 + stations.length * wordPitch))!;
  const items: readonly SceneItem[] = [
    area(rectangle(0, 0, 2 * flap, height), "none", "cut"),
    stroke(line(point(flap, 0), point(flap, height)), "mountain"),
    ...stations.flatMap((station, k): readonly SceneItem[] => [
      stroke(line(point(flap - 3, at[k]!), point(flap + 3, at[k]!)), "edge", station.name),
      ...drawLeader({ name: station.name, target: point(flap + 3, at[k]!), end: "none", text: `${station.name}: ${input.number(station.at)} from head` }, point(2 * flap + 3, heights[k]!)),
    ]),
    label("head", "head", point(flap / 2, 5), { anchor: "middle" }),
    label("tail", "tail", point(flap / 2, height - 2), { anchor: "middle" }),
  ];
  return {
    id: "station-template", title: "Piercing guide for the sections", book: `${definition.title}, revision ${definition.revision}`,
    use: [
      `Cut it out along its heavy outline and measure it: it must be ${input.number(text.pageHeight)} ${definition.units.governing} high, like the page.`,
      "Fold it along its middle line, words outside.",
      "Lay it into the fold of an open section, head to head, and pierce through its fold at each mark.",
    ],
    alternative: `A strip as high as the page with a fold along its middle; across the fold lie marks for the stations: ${stations.map((station) => `${station.name}, ${input.number(station.at)} from the head`).join("; ")}. ${input.unitNote}`,
    width: 2 * flap + wordsRoom, height: Math.max(height, heights.at(-1)! + 3), items,
    marks: [
      { name: "fold", act: "fold", from: [flap, 0], to: [flap, height] },
      ...stations.map((station, k) => ({ name: station.name, act: "pierce" as const, from: [flap, at[k]!] as const, to: [flap, at[k]!] as const })),
    ],
  };
}
