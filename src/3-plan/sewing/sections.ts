// The sections of a book sewn through plain stations: folded and nested, trimmed where that is wanted, marked and pierced.
import { divideLength, subtractLength } from "../../units/length.ts";
import type { TextBlock } from "../../2-model/text-block/block.ts";
import type { Station } from "../../2-model/text-block/stations.ts";
import { listInWords } from "../wording.ts";
import type { Wording } from "../wording.ts";
import type { DraftStep } from "../binding.ts";

/** The sections, where they are pierced, and how lengths are said. */
export interface SectionsToMake {
  readonly text: TextBlock;
  readonly stations: readonly Station[];
  readonly say: Wording;
}

/** The steps from the folios to the pierced sections. */
export function makeSections({ text, stations, say }: SectionsToMake): readonly DraftStep[] {
  const [sections, sheets] = [text.sections, text.foldedSheets];
  const section = say.thickness(text.sectionThickness);
  const steps: DraftStep[] = [{
    id: "fold-sections", stage: "The sections", title: "Fold the folios and lay the sections",
    action: [
      "Fold a folio across its width, edge to edge, so that the fold runs along its height. Draw the bone folder along the fold from the middle outwards.",
      sheets === 1 ? `Fold all ${sections}. Each is a section.` : `Fold all ${sections * sheets} and lay ${sheets} into each other for each section: ${sections} sections.`,
      ...(sheets === 1 ? [] : ["Knock each section up on its fold and then on its head, so that the sheets are level there."]),
      `Number the sections from 1 to ${sections} in pencil at the head of the fold, 1 for the front of the book.`,
      "Press them under a weight until you need them, best overnight (Vaughn 1912).",
    ],
    parts: ["folio"],
    sizes: [
      { label: "sections", text: `${sections} of ${sheets === 1 ? "1 folio" : `${sheets} folios`}` },
      { label: "folded page, height × width", text: say.sizes(text.folioHeight, divideLength(text.folioWidth, 2)) },
      { label: "a section, pressed", text: say.thickness(text.sectionThickness) },
    ],
    tools: ["boneFolder", "pencil", "pressingBoards", "weight"], minutes: 5 + Math.ceil(sections * (1 + 0.5 * sheets)), cautions: ["boneFolder", "paperEdge", "weights"], figure: "fold-sections",
    check: `Every section is about ${section} thick, and its fold is sharp and square to the head.`,
    mistake: { sign: "A fold runs askew.", repair: "Open the sheet, fold it again edge to edge, and press the new fold over the old one; a sheet that is askew by more than a millimetre is cut anew." },
  }];
  if (text.trim !== "none") steps.push(trimSections(text, say));
  const names = listInWords(stations.map((_, k) => `${k + 1}`));
  steps.push(
    {
      id: "mark-stations", stage: "The sections", title: "Make the piercing guide",
      action: [
        "Cut the station template out along its heavy outline and fold it along its middle line, words outside.",
        `Compare it with a section: it is as high as the page, ${say.size(text.pageHeight)}.`,
        "Or mark the stations on a folded strip of paper, all from the head, at the distances in the table.",
      ],
      table: {
        caption: `Stations, from the head of the page, in ${say.unitName}`, columns: ["station", "from the head"],
        rows: stations.map((station, k) => [`${k + 1}`, say.number(station.at)]),
      },
      parts: [], sizes: [{ label: "head to the first station", text: say.size(stations[0]!.at) }],
      tools: ["scissors", "pencil", "ruler", "boneFolder"], minutes: 6, cautions: ["scissors"], figure: "station-layout",
      check: `The marks ${names} lie on the fold, and the head is named at one end.`,
      mistake: { sign: "The strip is longer or shorter than the page.", repair: "It was printed at another scale, or cut off the line. Print it again at 100 %." },
    },
    {
      id: "pierce-sections", stage: "The sections", title: "Pierce the sections",
      action: [
        "Open a section in its middle and lay it into the cradle, its fold down in the corner, its head to your left.",
        "Lay the piercing guide into the fold, head at the head.",
        `Push the awl through all sheets at each mark, ${names}, straight down into the corner of the cradle.`,
        `Do all ${sections} sections with the same guide, every head to the left.`,
      ],
      parts: [], sizes: [{ label: "holes in each section", text: String(stations.length) }, { label: "thread", text: say.thickness(text.threadThickness) }],
      tools: ["awl", "cradle"], minutes: 4 + 2 * sections, cautions: ["awl"], figure: "pierce-sections",
      check: "Stand the sections in a pile, heads level: the holes lie one above the other along the folds.",
      mistake: { sign: "One row of holes is out of line.", repair: "That section lay with its tail to the left. Turn it upside down; if its holes still miss the others, cut and fold new folios for it." },
    },
  );
  return steps;
}

/** Before sewing, because afterwards the covers are in the way. */
function trimSections(text: TextBlock, say: Wording): DraftStep {
  const all = text.trim === "three edges";
  const [height, width] = [say.size(text.pageHeight), say.size(text.pageWidth)];
  return {
    id: "trim-sections", stage: "The sections", title: all ? "Trim the sections on three edges" : "Trim the fore-edges",
    action: [
      `Lay a section on the mat and mark ${width} from its fold at head and tail.`,
      "Lay the steel ruler on the two marks, over the part that is kept. Cut along it in several light cuts, until the last sheet comes off.",
      ...(all ? [`Square off the head with a set square against the fold and cut it, ${say.size(divideLength(subtractLength(text.folioHeight, text.pageHeight), 2))} off. Mark ${height} from the new head and cut the tail.`] : []),
      "Do every section alike and check each against the first.",
    ],
    parts: [], sizes: [{ label: "page after trimming, height × width", text: say.sizes(text.pageHeight, text.pageWidth) }],
    tools: ["pencil", "ruler", "triangle", "knife", "mat"], minutes: 5 + 3 * text.sections, cautions: ["knife", "paperEdge"], figure: "trim-sections",
    check: `Every section is ${width} wide${all ? ` and ${height} high` : ""}, and the sections lie edge to edge in one pile.`,
    mistake: { sign: "The ruler slipped and a sheet is notched.", repair: "Trim the whole section by that much if the notch is small, or cut and fold that sheet anew." },
  };
}
