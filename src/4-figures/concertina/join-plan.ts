// Figure `join-plan`: the whole strip drawn open and seen from its head, with its pieces and tabs.
import { polyline } from "../../geometry/path.ts";
import { addPoints, between, point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import type { DrawingInput } from "../binding.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { group, label, smallestType, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";
import { zigzagPoints } from "./zigzag.ts";

type Input = DrawingInput<"concertina">;

/** On paper: the whole zigzag, its widest panel, its rise, and the space between two layers. */
const room = { width: 136, panel: 12, rise: 13, layer: 1.1 } as const;

/** Figure `join-plan`; none for a strip in one piece. */
export function drawJoinPlan(input: Input): FigureDraft | null {
  const { geometry } = input.model;
  const { strips, panels } = geometry;
  if (strips.length === 1) return null;
  const words = sectionWords(input);
  const across = Math.min(room.panel, room.width / panels);
  const points = zigzagPoints(panels, across, room.rise);
  const joins = strips.slice(0, -1).map((strip) => strip.firstPanel + strip.panels - 1);
  const first = points[joins[0]!]!;
  const fixed = [...strips.flatMap((strip, index) => drawStrip(points, strip, index, strips.length)), ...brackets(input, points)];
  const bounds = { left: -14, right: points[panels]!.x + 20, top: -40, bottom: 40 };
  const labels: readonly Placeable[] = [
    leaderAnywhere({ name: "first join", text: [`join at fold ${joins[0]}:`, "a valley, tab behind"], target: behind(first, points[joins[0]! + 1]!, 0.08), end: "arrow", directions: [290, 280, 300, 270, 310, 260], reach: 14 }),
    leaderAnywhere({ name: "panel 1", text: "panel 1", target: between(points[0]!, points[1]!, 0.2), directions: [120, 110, 135, 90], reach: 6 }),
    leaderAnywhere({ name: "last panel", text: `panel ${panels}`, target: between(points[panels]!, points[panels - 1]!, 0.25), directions: [50, 60, 40, 70, 30], reach: 6 }),
    { name: "front", candidates: [7, 10, 13].map((up) => [label("front", "front: the side that you read", point((points[panels]!.x) / 2, -room.rise - up), { anchor: "middle" })]) },
  ];
  return {
    id: "join-plan",
    title: "Join plan",
    caption: `All ${strips.length} strips, joined, drawn open and seen from the head with the front up; not to scale. Numbers below are the strips. Every join lies in a valley, its tab (thin line) behind the next strip.`,
    alternative: `${strips.map((strip) => `Strip ${strip.n} (${words.part(strip.part)}): ${strip.panels} ${strip.panels === 1 ? "panel" : "panels"}, from ${strip.firstPanel} to ${strip.firstPanel + strip.panels - 1}${strip.hasTab ? `, with a tab that is glued behind strip ${strip.n + 1} at fold ${strip.firstPanel + strip.panels - 1}` : ", no tab"}`).join(". ")}. Seen from the front all joins are valley folds.`,
    items: placeEvery(fixed, labels, { bounds }),
  };
}

/** A strip as one line; every second one a layer higher, so that ends can be seen, and its tab below the next one. */
function drawStrip(points: readonly Point[], strip: Input["model"]["geometry"]["strips"][number], index: number, count: number): readonly SceneItem[] {
  const [from, to] = [strip.firstPanel - 1, strip.firstPanel - 1 + strip.panels];
  const own = points.slice(from, to + 1);
  const start = index === 0 ? own[0]! : point(own[0]!.x + 0.5, own[0]!.y - room.layer);
  const chain = [start, ...own.slice(1)];
  const joinAt = points[to]!;
  const next = points[to + 1];
  const tab: readonly SceneItem[] = strip.hasTab && next && index < count - 1
    ? [stroke(polyline([joinAt, behind(joinAt, next, 0), behind(joinAt, next, 0.45)]), "edge")] : [];
  return [group(`strip ${strip.n}`, [stroke(polyline(chain), "outline"), ...tab])];
}

/** So far along a rising panel, and behind it. */
function behind(foot: Point, top: Point, share: number): Point {
  const [across, rise] = [top.x - foot.x, foot.y - top.y];
  const length = Math.hypot(across, rise);
  return addPoints(between(foot, top, share), point((room.layer * rise) / length, (room.layer * across) / length));
}

/** A bracket under each strip with its number. */
function brackets({ model }: Input, points: readonly Point[]): readonly SceneItem[] {
  const y = 3.2;
  return model.geometry.strips.map((strip) => {
    const [left, right] = [points[strip.firstPanel - 1]!.x + 0.5, points[strip.firstPanel - 1 + strip.panels]!.x - 0.5];
    const name = `number ${strip.n}`;
    return group(name, [
      stroke(polyline([point(left, y - 1), point(left, y), point(right, y), point(right, y - 1)]), "edge"),
      label(name, String(strip.n), point((left + right) / 2, y + 3), { anchor: "middle", size: smallestType, weight: 600 }),
    ]);
  });
}
