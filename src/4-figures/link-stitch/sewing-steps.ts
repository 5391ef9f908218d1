// Figures of the sewing: one for each kind of pass, drawn from the very moves of the thread.
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";
import { scalesThatFit } from "../scale.ts";
import { passCaption } from "../sewing/pass-view.ts";
import { wordsForPass } from "../../3-plan/sewing/move-words.ts";
import { toMillimetres } from "../../units/length.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { drawLinkDetail, linkWords } from "../sewing/link-detail.ts";
import { boardWords, drawBoardDetail } from "./station-detail.ts";
import { drawSpineStage } from "./spine-view.ts";
import type { SpineStage } from "./spine-view.ts";

/** Room for the length of the spine on paper; the names of boards and sections stand left of it. */
const spineRoom = 132;

interface StageSpec extends SpineStage {
  /** One station from near by, with its heading and the words for its numbers. */
  readonly detail: { readonly heading: string; readonly items: readonly SceneItem[]; readonly words: string };
  readonly id: string;
  readonly title: string;
  readonly about: string;
}

/** Figure `sew-first-section`. */
export function drawFirstSection(input: DrawingInput<"link-stitch">): FigureDraft {
  return drawStage(input, {
    id: "sew-first-section", title: "Section 1 on the front board", from: 1, to: 2, frontBoard: true, backBoard: false, pass: 1,
    detail: { heading: "Across the spine at one station, not to scale", items: drawBoardDetail("front"), words: boardWords },
    about: "The thread goes from section 1 round the board’s edge to its hole, back between board and section, and at the end up to section 2.",
  });
}

/** Figure `sew-second-section`. */
export function drawSecondSection(input: DrawingInput<"link-stitch">): FigureDraft {
  return drawStage(input, {
    id: "sew-second-section", title: "Section 2 linked to the stitches of the board", from: 1, to: 3, frontBoard: true, backBoard: false, pass: 2,
    detail: { heading: "One link from near by", items: drawLinkDetail(["section 2", "section 1", "front board"], { climbs: input.model.geometry.needles === 2, strands: 2 }), words: linksOf(input) },
    about: "Each link hangs in the stitch that goes from section 1 to the board.",
  });
}

/** Figure `sew-later-sections`; none for a book of three sections. */
export function drawLaterSections(input: DrawingInput<"link-stitch">): FigureDraft | null {
  const { sections } = input.model.geometry.text;
  if (sections < 4) return null;
  return drawStage(input, {
    id: "sew-later-sections", title: "A later section linked between the two before", from: 1, to: 4, frontBoard: true, backBoard: false, pass: 3,
    detail: { heading: "One link from near by", items: drawLinkDetail(["section 3", "section 2", "section 1"], { climbs: input.model.geometry.needles === 2, strands: 2 }), words: linksOf(input) },
    about: "Section 3 is shown; every later one is sewn like it, one section higher each time.",
  });
}

/** Figure `sew-last-section`. */
export function drawLastSection(input: DrawingInput<"link-stitch">): FigureDraft {
  const { sections } = input.model.geometry.text;
  return drawStage(input, {
    id: "sew-last-section", title: `Section ${sections} and the back board`, from: Math.max(1, sections - 2), to: sections, frontBoard: sections === 3, backBoard: true, pass: sections,
    detail: { heading: "Across the spine at one station, not to scale", items: drawBoardDetail("back"), words: boardWords },
    about: input.model.geometry.needles === 2 ? "Each thread comes up from its link and takes the board." : "At each station the thread first links below, then takes the board.",
  });
}

/** Two needles climb straight on from a link; one goes in again, but for the end stations. */
function linksOf(input: DrawingInput<"link-stitch">): string {
  return input.model.geometry.needles === 2 ? linkWords.replace("in again where you came out", "up to the next section") : linkWords;
}

function drawStage(input: DrawingInput<"link-stitch">, { id, title, about, detail, ...stage }: StageSpec): FigureDraft {
  const { geometry, thread } = input.model;
  const scale = scalesThatFit(toMillimetres(geometry.text.pageHeight), 1, spineRoom, spineRoom, 2)[0]!;
  const paths = thread!.paths;
  const words = paths.length === 1 ? wordsForPass(paths[0]!, stage.pass) : `First needle: ${wordsForPass(paths[0]!, stage.pass)}. Second needle: ${wordsForPass(paths[1]!, stage.pass)}`;
  return {
    id, title,
    caption: `The spine before you, head to the right, ${scale.name} along the spine; across it not to scale: the outside of a board is drawn folded ${stage.backBoard ? "up" : "down"} flat. ${about} ${passCaption} From near by: ${detail.words}`,
    alternative: `The spine seen from outside with stations 1 to ${geometry.stations.length} from head to tail. ${words}.`,
    items: viewsBelow([drawSpineStage(geometry, paths, stage, scale.factor), withHeading("detail", detail.heading, detail.items)], 6),
  };
}
