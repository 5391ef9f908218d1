// Figure `page-mounting`: page papers on their stubs in section, and one paper in plan with the adhesive along its spine edge.
import { rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { addLengths, sameLength, toMillimetres } from "../../units/length.ts";
import { raggedEnd, raggedTop } from "../breaks.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import { grainArrow, gridCentres, preferredLeader } from "../leaders.ts";
import { pushArrow } from "../movement.ts";
import { fittingScale } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area, label } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBeside, withHeading } from "../views.ts";
import { halfStub, ribbonPath, slotPaths, visibleLayers } from "./folded-card.ts";
import { mountedPapers } from "./mounted-papers.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room on paper for one opening and one stub's height, and for a page in plan. */
const sectionRoom = { width: 26, height: 40 } as const;
const planRoom = { width: 48, height: 54 } as const;
/** How much of the page is drawn beyond the stub. */
const beyond = 11;

export const drawPageMounting: DrawFigure<"stub-album"> = (input) => {
  const { geometry } = input.model;
  const { pages } = geometry;
  const words = sectionWords(input);
  const scale = fittingScale(toMillimetres(geometry.pitch), toMillimetres(geometry.closedStubDepth), sectionRoom.width, sectionRoom.height, 4);
  const planScale = fittingScale(toMillimetres(pages.width), toMillimetres(pages.height), planRoom.width, planRoom.height);
  const [zone, clear, height, width] = [words.size(pages.adhesiveZone), words.size(pages.adhesiveClearance), words.size(pages.height), words.size(pages.width)];
  const mounting = pages.backToBack ? "two papers on each stub, back to back, one on each face" : "one paper on each stub";
  return {
    id: "page-mounting",
    title: "Mounting the pages",
    caption: `Left: section, depth ${scale.name}, layers drawn thicker than they are: ${mounting}. Lay the adhesive along the spine edge of the paper, ${zone} deep, so that the crest stays clear; `
      + `push the paper down until it stands on the floor, then press it against the stub. Right: one page paper, ${planScale.name}.`,
    alternative: `Section through ${geometry.stubs === 1 ? "the stub" : "two neighbouring stubs"}: ${mounting}. The spine edge of each paper stands on the floor of the card. The adhesive, ${words.adhesive("pages")}, reaches ${zone} up from the floor; `
      + `it keeps clear of the crest (${clear} on a stub of ${words.size(geometry.stubDepth)}, measured flat). An arrow shows the paper being pushed down to the floor. `
      + `Plan of one page paper: ${height} high along the spine and ${width} wide, grain along the height, with the adhesive zone ${zone} deep along the whole spine edge. There are ${pages.papers} papers.`,
    items: viewsBeside([withHeading("section", "Section", drawSection(input, scale)), withHeading("plan", words.part("page-paper"), drawPlan(input, planScale))], 8),
  };
};

function drawSection(input: DrawingInput<"stub-album">, { factor }: Scale): readonly SceneItem[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const layers = visibleLayers(geometry, factor);
  const pitch = toMillimetres(geometry.pitch) * factor;
  const zone = toMillimetres(geometry.pages.adhesiveZone) * factor;
  const xs = geometry.stubs === 1 ? [0] : [0, pitch];
  const last = xs.at(-1)!;
  const face = halfStub(layers) + layers.adhesive + layers.paper;
  const [left, right] = [-face - 6, last + face + 6];
  const top = -layers.depth - beyond;
  const fixed: SceneItem[] = [
    ...slotPaths(xs, layers).map((path) => area(path, "adhesive", "none")),
    area(ribbonPath(xs, left - 1, right + 1, layers), "card", "edge"),
    ...raggedEnd(left, -0.6, layers.card + 0.6, -1), ...raggedEnd(right, -0.6, layers.card + 0.6, 1),
    ...mountedPapers(xs, { ...layers, zone, top: top - 1, backToBack: geometry.pages.backToBack }),
    ...xs.flatMap((x) => raggedTop(top, x - face, x + face, -1)),
    pushArrow(point(last, top - 1.5), point(0, 1)),
  ];
  const outer = last + face;
  return placeEvery(fixed, [
    dimension({ name: "adhesive zone", from: point(outer, 0), to: point(outer, -zone), side: "right", text: words.size(geometry.pages.adhesiveZone), offset: 9 }),
    ...(clearanceShows(input) ? [dimension({ name: "adhesive clearance", from: point(outer, -zone), to: point(last, -zone - toMillimetres(geometry.pages.adhesiveClearance) * factor), side: "right", text: words.size(geometry.pages.adhesiveClearance), offset: 9 })] : []),
    preferredLeader({ name: "down", text: "down to the floor", target: point(last + 0.8, top - 6), end: "none", directions: [20, 0, 30], reach: 5 }),
    preferredLeader({ name: "paper", text: words.part("page-paper"), target: point(-(geometry.pages.backToBack ? 1 : -1) * (layers.paper / 2 + (geometry.pages.backToBack ? layers.adhesive / 2 : 0)), top + 3), directions: [160, 170, 150, 180], reach: 9 }),
    preferredLeader({ name: "crest", text: "crest: no adhesive", target: point(0, -layers.depth + layers.card / 2), directions: [160, 170, 150], reach: 11 }),
    preferredLeader({ name: "adhesive", text: words.adhesiveLines("pages"), target: point((geometry.pages.backToBack ? -1 : 1) * (halfStub(layers) + layers.adhesive / 2), -zone * 0.55), directions: [170, 180, 160, 190], reach: 9 }),
    preferredLeader({ name: "card", text: `${words.part("card")}, floor`, target: point(left + 2, layers.card / 2), directions: [250, 240, 260, 290], reach: 6 }),
  ]);
}

/** The zone is rounded down to a ruler mark: only when nothing was lost does the clearance lie between it and the crest score. */
function clearanceShows({ model: { geometry } }: DrawingInput<"stub-album">): boolean {
  const { adhesiveZone, adhesiveClearance } = geometry.pages;
  return adhesiveClearance.n > 0n && sameLength(addLengths(adhesiveZone, adhesiveClearance), geometry.stubDepth);
}

function drawPlan(input: DrawingInput<"stub-album">, { factor }: Scale): readonly SceneItem[] {
  const { pages } = input.model.geometry;
  const words = sectionWords(input);
  const [width, height, zone] = [pages.width, pages.height, pages.adhesiveZone].map((length) => toMillimetres(length) * factor) as [number, number, number];
  const inside = gridCentres({ left: zone, top: 0, right: width, bottom: height }, 9, 9);
  return placeEvery([
    area(rectangle(0, 0, width, height), "paper", "outline"),
    area(rectangle(0, 0, zone, height), "adhesive", "none"),
    label("spine edge", "spine edge", point(-1.6, height / 2), { anchor: "middle", angle: 90 }),
  ], [
    dimension({ name: "page zone", from: point(0, 0), to: point(zone, 0), side: "above", text: words.size(pages.adhesiveZone) }),
    dimension({ name: "page width", from: point(0, height), to: point(width, height), side: "below", text: words.size(pages.width) }),
    dimension({ name: "page height", from: point(width, 0), to: point(width, height), side: "right", text: words.size(pages.height) }),
    grainArrow("grain", "height", [...inside, point(width + 16, height / 2), point(width + 24, height / 2)]),
  ]);
}
