// Figure: the finished album with every part named as in the cut list: from the spine, and from the fore-edge with its cover up.
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scaleWords } from "../scale.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";
import { viewAlbum } from "./album-view.ts";
import type { AlbumView } from "./album-view.ts";
import { coveringId } from "./cover-plan.ts";

type Input = DrawingInput<"post-album">;

/** Rooms for each view on paper, the wished one first: labels stand round it. */
const rooms = [{ width: 78, height: 58 }, { width: 90, height: 66 }, { width: 100, height: 70 }] as const;

/** Figure `named-parts`. */
export function drawNamedParts(input: Input): FigureDraft {
  const { geometry } = input.model;
  const { part } = sectionWords(input);
  const shut = placeAtScale(rooms.map((room) => viewAlbum(geometry, { near: "spine", open: 6 }, room)), (view) => ({ fixed: view.items, labels: shutLabels(input, view) }));
  const open = placeAtScale(rooms.map((room) => viewAlbum(geometry, { near: "fore-edge", open: 112 }, room)), (view) => ({ fixed: view.items, labels: openLabels(input, view) }));
  return {
    id: "named-parts",
    title: "The parts of the album",
    caption: `The parts of the album with their letters in the cut list; isometric views, ${scaleWords(shut.scale.factor)} and ${scaleWords(open.scale.factor)} along the edges. Above it lies with its spine edge towards you, below with its fore-edge, the front cover up.`,
    alternative: `The finished album in two views, its parts named: ${input.model.parts.map((each) => part(each.id)).join(", ")}, and the screw posts.`,
    items: viewsBelow([withHeading("spine", "From the spine", shut.items), withHeading("fore-edge", "From the fore-edge, front cover up", open.items)], 7),
  };
}

const left = [180, 170, 190, 160, 200, 150];
const right = [0, 10, -10, 20, -20, 30, -30];

function to(name: string, text: string | readonly string[], target: Point, directions: readonly number[], reach: number): Placeable {
  return leaderAnywhere({ name, text, target, directions, reach });
}

function shutLabels(input: Input, view: AlbumView): readonly Placeable[] {
  const { geometry } = input.model;
  const { part } = sectionWords(input);
  const mm = toMillimetres;
  const [height, hinge, board, thick] = [geometry.coverHeight, geometry.hingeWidth, geometry.boardWidth, geometry.coverAtHinge].map(mm) as [number, number, number, number];
  const top = view.stripFoot + thick;
  const spineAt = (along: number, share: number): Point => view.at(along, 0, thick + (view.stripFoot - thick) * share);
  return [
    to("post", "screw post", view.at(mm(geometry.posts.along[0]!), mm(geometry.posts.across), top + mm(geometry.posts.head)), [120, 135, 105, 150], 10),
    to("hinge-strip", [part("hinge-strip"), "under the cloth"], view.at(height * 0.42, hinge * 0.5, top), left, 16),
    to("covering", part(coveringId(geometry)), view.at(height * 0.3, hinge + mm(geometry.jointGap) * 0.5, top), [110, 120, 100, 130, 90], 14),
    to("boards", geometry.paper ? part("boards") : [part("boards"), "under the cloth"], view.onBoard(height * 0.6, board * 0.75, "outside"), [60, 75, 45, 90], 16),
    ...(geometry.paper ? [to("cover-paper", part("cover-paper"), view.onBoard(height * 0.85, board * 0.5, "outside"), right, 14)] : []),
    to("leaf", part("leaf"), view.at(mm(geometry.leafHeight), mm(geometry.leafWidth) * 0.55, thick + (view.stripFoot - thick) * 0.5), [-30, -45, -20, -60], 10),
    ...(geometry.guardStrips > 0 ? [to("guard", [part("guard"), "between the leaves"], spineAt(height * 0.7, 0.5), [225, 240, 210, 250, 200], 10)] : []),
  ];
}

function openLabels(input: Input, view: AlbumView): readonly Placeable[] {
  const { geometry } = input.model;
  const { part } = sectionWords(input);
  const mm = toMillimetres;
  const [height, board, inset, lap] = [geometry.coverHeight, geometry.boardWidth, geometry.inset, geometry.clothLap].map(mm) as [number, number, number, number];
  return [
    to("hinge-lining", part("hinge-lining"), view.onBoard(height * 0.9, geometry.lining ? Math.min(inset, lap) * 0.5 : lap * 0.5, "inside"), left, 12),
    ...(geometry.lining ? [to("lining-paper", part("lining-paper"), view.onBoard(height * 0.3, board * 0.6, "inside"), [30, 45, 15, 60, 0], 22)] : []),
    to("first leaf", [part("leaf"), "the first one"], view.at(height * 0.3, mm(geometry.leafWidth) * 0.75, view.stripFoot), [-20, -10, -30, 0], 30),
    to("score", geometry.scores.length === 1 ? "score" : "scores", view.at(height * 0.04, mm(geometry.scores.at(-1)!), view.stripFoot), right, 14),
  ];
}
