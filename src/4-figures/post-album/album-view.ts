// The finished album lying on the bench, pictorial and in true proportions: shut but for a gap, or with its front cover up.
import type { PostAlbumGeometry } from "../../2-model/post-album/geometry.ts";
import { convexHull } from "../../geometry/hull.ts";
import { circle, line, pathPoints, polygon, transformPath } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { isometric, isometricPlane, spacePoint } from "../../geometry/project.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { bar, face } from "../bench/solid.ts";
import type { FaceTones } from "../bench/solid.ts";
import { factorToFill } from "../views.ts";

/** How the album lies: which long edge is nearest to the reader, and how far its front cover stands open, in degrees. */
export interface AlbumPose {
  readonly near: "spine" | "fore-edge";
  readonly open: number;
}

/** The drawing, and where things are on it: `along` from the head of the leaves, `across` from the spine edge, `up` from the bench, in millimetres of the book. */
export interface AlbumView {
  readonly items: readonly SceneItem[];
  readonly factor: number;
  at(along: number, across: number, up: number): Point;
  /** On the front board: `out` from its edge beside the joint, on its outside or inside. */
  onBoard(along: number, out: number, side: "outside" | "inside"): Point;
  /** Height of the inside of the front hinge strip. */
  readonly stripFoot: number;
}

const clothTones: FaceTones = { top: "face-middle", left: "face-dark", right: "face-deep" };
const paperTones: FaceTones = { top: "face-light", left: "face-dark", right: "face-deep" };

/** The album as large as the room allows. */
export function viewAlbum(geometry: PostAlbumGeometry, pose: AlbumPose, room: { readonly width: number; readonly height: number }): AlbumView {
  return drawAlbum(geometry, pose, factorToFill(drawAlbum(geometry, pose, 1).items, room));
}

interface Flat {
  readonly y: number;
  readonly z: number;
}

function drawAlbum(geometry: PostAlbumGeometry, pose: AlbumPose, factor: number): AlbumView {
  const mm = (length: Length): number => toMillimetres(length);
  const [hinge, gap, board, cover, leafWidth, leafHeight, shift, thick] = [
    geometry.hingeWidth, geometry.jointGap, geometry.boardWidth, geometry.coverHeight, geometry.leafWidth, geometry.leafHeight, geometry.posts.coverShift, geometry.coverAtHinge,
  ].map(mm) as [number, number, number, number, number, number, number, number];
  const stack = mm(geometry.leafStack);
  const whole = hinge + gap + board;
  const foot = thick + stack;
  // A full album may be thicker at the fore-edge: the board lies on it.
  const rise = Math.max(0, Math.atan2(mm(geometry.wedge), whole - hinge));
  const angle = rise + (pose.open * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  /** A place of the cut across the book, on paper; the book is turned round where its fore-edge is near. */
  const flat = (across: number, up: number): Flat => ({ y: (pose.near === "spine" ? across : whole - across) * factor, z: up * factor });
  const turned = (out: number, up: number): Flat => flat(hinge + gap + out * cos - up * sin, foot + out * sin + up * cos);
  const long = (along: number): number => (pose.near === "spine" ? along : leafHeight - along) * factor;
  const [coverFrom, coverTo] = [Math.min(long(-shift), long(cover - shift)), Math.max(long(-shift), long(cover - shift))];
  const [leafFrom, leafTo] = [Math.min(long(0), long(leafHeight)), Math.max(long(0), long(leafHeight))];
  const at = (along: number, across: number, up: number): Point => {
    const { y, z } = flat(across, up);
    return isometric(spacePoint(long(along), y, z));
  };
  const onBoard = (along: number, out: number, side: "outside" | "inside"): Point => {
    const { y, z } = turned(out, side === "outside" ? thick : 0);
    return isometric(spacePoint(long(along), y, z));
  };
  const box = (from: number, to: number, low: number, high: number): readonly Flat[] => [flat(from, low), flat(to, low), flat(to, high), flat(from, high)];
  const joint = (a: Flat, b: Flat): SceneItem => face([spacePoint(coverFrom, a.y, a.z), spacePoint(coverTo, a.y, a.z), spacePoint(coverTo, b.y, b.z), spacePoint(coverFrom, b.y, b.z)], "face-dark");
  const boardTones = geometry.paper ? paperTones : clothTones;
  const back = [
    ...bar(box(hinge + gap, whole, 0, thick), coverFrom, coverTo, boardTones, "outline"), joint(flat(hinge, thick * 0.3), flat(hinge + gap, thick * 0.3)),
    ...bar(box(0, hinge, 0, thick), coverFrom, coverTo, clothTones, "outline"),
  ];
  const page = [flat(hinge, thick), flat(leafWidth, thick), flat(leafWidth, foot + Math.max(mm(geometry.wedge), -stack * 0.8)), flat(hinge, foot)];
  const leafTones: FaceTones = { top: "paper", left: "paper", right: "paper" };
  const body = [
    ...bar(page, leafFrom, leafTo, leafTones), ...bar(box(0, hinge, thick, foot), leafFrom, leafTo, { top: "paper", left: "face-light", right: "face-light" }),
    ...leafEdges(geometry, { flat, leafFrom, leafTo, thick, factor, near: pose.near, spineAt: flat(0, 0).y, foreAt: flat(leafWidth, 0).y }),
    ...(pose.near === "fore-edge" ? geometry.scores.map((score) => stroke(line(at(0, mm(score), foot), at(leafHeight, mm(score), foot)), "edge")) : []),
  ];
  const front = [turned(0, 0), turned(board, 0), turned(board, thick), turned(0, thick)];
  const frontBoard = [...bar(front, coverFrom, coverTo, boardTones, "outline"), ...coverDetails(geometry, pose, onBoard, cover, shift)];
  const strip = [...bar(box(0, hinge, foot, foot + thick), coverFrom, coverTo, clothTones, "outline"), ...postHeads(geometry, at, foot + thick, factor, pose)];
  const frontJoint = joint(flat(hinge, foot + thick * 0.8), pose.near === "spine" ? turned(0, thick * 0.8) : turned(0, 0));
  return {
    items: pose.near === "spine" ? [...back, ...body, ...frontBoard, frontJoint, ...strip] : [...back, ...body, ...strip, frontJoint, ...frontBoard],
    factor, at, onBoard, stripFoot: foot,
  };
}

/** Single leaves on the faces that can be seen: across the tail (or head) end, and along the near edge; only as many as stay apart on paper. */
function leafEdges(geometry: PostAlbumGeometry, view: {
  readonly flat: (across: number, up: number) => Flat; readonly leafFrom: number; readonly leafTo: number; readonly thick: number; readonly factor: number; readonly near: AlbumPose["near"]; readonly spineAt: number; readonly foreAt: number;
}): readonly SceneItem[] {
  const { flat, leafFrom, leafTo, thick, factor } = view;
  const [leaf, guard, insert, hinge, width] = [geometry.leafThickness, geometry.guardThickness, geometry.inserts, geometry.hingeWidth, geometry.leafWidth].map(toMillimetres) as [number, number, number, number, number];
  const pitch = leaf + Math.max(guard, 0);
  const step = Math.max(1, Math.ceil(0.65 / Math.max(pitch * factor, 1e-6)));
  const numbers = Array.from({ length: Math.floor((geometry.leaves - 1) / step) }, (_, k) => (k + 1) * step);
  return numbers.flatMap((k): readonly SceneItem[] => {
    const [low, high] = [thick + k * pitch, thick + k * (leaf + insert)];
    const chain = [flat(0, low), flat(hinge, low), flat(width, high)].map(({ y, z }) => isometric(spacePoint(leafTo, y, z)));
    const nearEdge = view.near === "spine" ? flat(0, low) : flat(width, high);
    return [
      stroke([{ kind: "move", to: chain[0]! }, { kind: "line", to: chain[1]! }, { kind: "line", to: chain[2]! }], "edge"),
      stroke(line(isometric(spacePoint(leafFrom, nearEdge.y, nearEdge.z)), isometric(spacePoint(leafTo, nearEdge.y, nearEdge.z))), "edge"),
    ];
  });
}

/** Cloth and paper on the outside; linings on the inside when the cover stands up. */
function coverDetails(geometry: PostAlbumGeometry, pose: AlbumPose, onBoard: AlbumView["onBoard"], cover: number, shift: number): readonly SceneItem[] {
  const mm = toMillimetres;
  const lap = Math.min(mm(geometry.clothLap), mm(geometry.boardWidth) * 0.9);
  if (pose.near === "spine") {
    return geometry.paper ? [area(polygon([onBoard(-shift, 0, "outside"), onBoard(cover - shift, 0, "outside"), onBoard(cover - shift, lap, "outside"), onBoard(-shift, lap, "outside")]), "face-middle", "edge")] : [];
  }
  const inset = mm(geometry.inset);
  const panel = (from: number, to: number, rim: number): Point[] => [onBoard(rim - shift, from, "inside"), onBoard(cover - shift - rim, from, "inside"), onBoard(cover - shift - rim, to, "inside"), onBoard(rim - shift, to, "inside")];
  return [
    area(polygon(panel(0, mm(geometry.boardWidth), 0)), "face-dark", "outline"),
    area(polygon(panel(0, lap, inset)), "face-middle", "edge"),
    ...(geometry.lining ? [area(polygon(panel(inset, mm(geometry.boardWidth) - inset, inset)), "paper", "edge")] : []),
  ];
}

/** Post heads on the front hinge strip, a little proud of it; drawn twice as wide as the barrel. */
function postHeads(geometry: PostAlbumGeometry, at: AlbumView["at"], top: number, factor: number, pose: AlbumPose): readonly SceneItem[] {
  const mm = toMillimetres;
  const radius = mm(geometry.posts.barrel) * factor;
  const sign = pose.near === "spine" ? 1 : -1;
  return [...geometry.posts.along].sort((a, b) => sign * (mm(a) - mm(b))).flatMap((along) => {
    const head = (up: number) => {
      const centre = at(mm(along), mm(geometry.posts.across), top + up);
      const plane = isometricPlane(spacePoint(0, 0, 0), spacePoint(1, 0, 0), spacePoint(0, 1, 0));
      return transformPath({ ...plane, e: centre.x, f: centre.y }, circle(point(0, 0), radius));
    };
    const proud = Math.max(mm(geometry.posts.head), 0.6);
    return [area(polygon(convexHull([head(0), head(proud)].flatMap((path) => pathPoints(path)[0]!))), "metal", "edge"), area(head(proud), "face-light", "edge")];
  });
}
