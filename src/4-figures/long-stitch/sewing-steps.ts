// Figures of the sewing: the spine after each kind of pass, drawn from the very moves of the thread.
import { numberedWordsForPass } from "../../3-plan/sewing/move-words.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";
import { fittingScale } from "../scale.ts";
import type { SceneItem } from "../scene.ts";
import { drawLinkDetail, linkWords } from "../sewing/link-detail.ts";
import { passCaption } from "../sewing/pass-view.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { drawSpineStage } from "./spine-view.ts";
import type { SpineStage } from "./spine-view.ts";

type Input = DrawingInput<"long-stitch">;

/** Room for the length of the spine on paper; the names of covers and sections stand left of it. */
const spineRoom = 114;

interface Spec {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly stages: readonly SpineStage[];
  /** A link from near by, with its heading and the words for its numbers. */
  readonly detail?: { readonly heading: string; readonly items: readonly SceneItem[]; readonly words: string };
}

function drawStages(input: Input, { id, title, about, stages, detail }: Spec): FigureDraft {
  const { geometry, thread } = input.model;
  const path = thread!.paths[0]!;
  const scale = fittingScale(toMillimetres(geometry.coverHeight), 1, spineRoom, spineRoom, 2);
  const views = stages.map((stage) => {
    const view = drawSpineStage(geometry, path, stage, scale.factor);
    return stages.length === 1 ? view : withHeading(`section ${stage.pass}`, `Section ${stage.pass}`, view);
  });
  const slits = geometry.slits.length > 0 ? " Narrow white bars are the slits." : "";
  return {
    id, title,
    caption: `The spine as you hold it, from outside, head to the right, ${scale.name} along it; across it not to scale. ${about}${slits} ${passCaption}${detail ? ` From near by: ${detail.words}` : ""}`,
    alternative: `The spine seen from outside, stations 1 to ${geometry.stations.length} from right to left. ${stages.map(({ pass }) => `Section ${pass}: ${numberedWordsForPass(path, pass)}`).join(". ")}.`,
    items: viewsBelow([...views, ...(detail ? [withHeading("detail", detail.heading, detail.items)] : [])], 6),
  };
}

/** Figure `sew-first-section`. */
export function drawFirstSection(input: Input): FigureDraft {
  return drawStages(input, {
    id: "sew-first-section", title: "Section 1 through the cover", stages: [{ from: 1, to: 2, pass: 1 }],
    about: "The front cover is drawn folded down flat. Dashed stitches lie inside the fold; the others are the long stitches and the climb to section 2.",
  });
}

/** Figure `sew-second-section`. */
export function drawSecondSection(input: Input): FigureDraft {
  return drawStages(input, {
    id: "sew-second-section", title: "Section 2, tied to the end of section 1", stages: [{ from: 1, to: 3, pass: 2 }],
    about: "At the head the thread goes down to its own end, is tied to it, and goes up to section 3.",
  });
}

/** Figure `sew-later-sections`: one section towards the tail and one back; none for a book of three sections. */
export function drawLaterSections(input: Input): FigureDraft | null {
  const { sections } = input.model.geometry.text;
  if (sections < 4) return null;
  return drawStages(input, {
    id: "sew-later-sections", title: "Later sections, linked at their ends",
    stages: [{ from: 1, to: 4, pass: 3 }, ...(sections > 4 ? [{ from: 2, to: 5, pass: 4 }] : [])],
    detail: { heading: "One link from near by", items: drawLinkDetail(["section 3", "section 2", "section 1"], { climbs: true, strands: 1 }), words: linkWords.replace("in again where you came out", "up to the next section") },
    about: sections > 4 ? "Odd sections are sewn like section 3, even ones like section 4." : "The thread links under the stitch between the two sections before.",
  });
}

/** Figure `sew-last-section`. */
export function drawLastSection(input: Input): FigureDraft {
  const { sections } = input.model.geometry.text;
  return drawStages(input, {
    id: "sew-last-section", title: `Section ${sections}, the last`, stages: [{ from: Math.max(1, sections - 2), to: sections, pass: sections }],
    detail: { heading: "The last link from near by", items: drawLinkDetail([`section ${sections}`, `section ${sections - 1}`, `section ${sections - 2}`], { climbs: false, strands: 1 }), words: linkWords },
    about: "The back cover is drawn folded up flat. After the last link the thread goes in again and is tied inside.",
  });
}
