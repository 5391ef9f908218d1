// The corners of a post album's covers, as the shared figures of cutting and turning in and the corner template need them.
import type { PostAlbumGeometry } from "../../2-model/post-album/geometry.ts";
import type { Box } from "../../geometry/box.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import type { CornerCutSpec } from "../bench/corner-cut.ts";
import type { CornerTemplateSpec } from "../bench/corner-template.ts";
import type { CornerGeometry } from "../bench/corner-view.ts";
import type { TurnInSpec } from "../bench/turn-in.ts";
import { coveringId } from "./cover-plan.ts";

type Input = DrawingInput<"post-album">;

/** The head left corner: that of the hinge strip. */
function hingeCorner({ turnIn, cornerDistance, hingeWidth, boardThickness, jointGap }: PostAlbumGeometry): CornerGeometry {
  return { turnIn, cornerDistance, sideStripWidth: hingeWidth, stripThickness: boardThickness, jointGap };
}

function covering(input: Input) {
  const id = coveringId(input.model.geometry);
  return { covering: id, what: input.model.parts.find((part) => part.id === id)!.name, stuff: "cloth", board: "hinge-strip", geometry: hingeCorner(input.model.geometry) };
}

/** For the figure `corner-cut`. */
export function cornerCut(input: Input): CornerCutSpec {
  const { geometry } = input.model;
  const [turnIn, strip, gap, board, height] = [geometry.turnIn, geometry.hingeWidth, geometry.jointGap, geometry.boardWidth, geometry.coverHeight].map(toMillimetres) as [number, number, number, number, number];
  const field = (left: number, width: number): Box => ({ left, right: left + width, top: turnIn, bottom: turnIn + height });
  const shown = geometry.paper ? toMillimetres(geometry.clothLap) : board;
  return {
    ...covering(input), boardWord: "hinge strip", boards: [field(turnIn, strip), field(turnIn + strip + gap, shown)],
    corners: geometry.paper ? ["head-left", "tail-left"] : ["head-left", "head-right", "tail-left", "tail-right"],
  };
}

/** For the figure `turn-in`. */
export function turnIn(input: Input): TurnInSpec {
  return { ...covering(input), id: "turn-in", whole: "cover", others: input.model.geometry.paper ? "the corner at the tail is" : "the other three corners are" };
}

/** For the template `corner-template`. */
export function cornerTemplate(input: Input): CornerTemplateSpec {
  const { geometry } = input.model;
  return {
    what: geometry.paper ? "hinge cloth and cover paper" : "cover cloth", stuff: "covering", board: "board", work: "glued-up cover",
    corners: "all four corners of each cover", turnIn: geometry.turnIn, cornerDistance: geometry.cornerDistance,
  };
}
