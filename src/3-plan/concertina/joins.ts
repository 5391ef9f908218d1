// The joins of a concertina: strips numbered by the join plan, and glued tab behind panel.
import { zone } from "../bench/spread.ts";
import type { Strip } from "../../2-model/concertina/geometry.ts";
import type { DraftStep, PlanContext } from "../binding.ts";
import { listInWords } from "../wording.ts";
import { stripParts } from "./folds.ts";

/** Strips in words: "strips 2 and 3". */
function stripsInWords(strips: readonly Strip[]): string {
  return strips.length === 1 ? `strip ${strips[0]!.n}` : `strips ${listInWords(strips.map((strip) => String(strip.n)))}`;
}

/** The last panel of a strip bears the number of the fold after it. */
function lastPanel(strip: Strip): number {
  return strip.firstPanel + strip.panels - 1;
}

/** The step that numbers the strips and marks which end bears the tab. */
export function numberStrips(context: PlanContext<"concertina">): DraftStep {
  const { model, say } = context;
  const { geometry, parts } = model;
  const { strips } = geometry;
  return {
    id: "number-strips", stage: "The strip", title: "Number the strips",
    action: [
      "Lay the strips out from left to right in their order, front up, head edges away from you.",
      "Turn each one over like the leaf of a book and write its number and “head” in pencil on its back.",
      `Write “tab” on the back of ${stripsInWords(strips.slice(0, -1))}, at the end that lies right when the front is up.`,
    ],
    table: {
      caption: "Join plan: seen from the front, every join lies in a valley",
      columns: ["strip", "cut as", "panels", "how many", "tab", "joined at"],
      rows: strips.map((strip) => [
        String(strip.n), parts.find((part) => part.id === strip.part)!.name, strip.panels === 1 ? String(strip.firstPanel) : `${strip.firstPanel}–${lastPanel(strip)}`, String(strip.panels),
        strip.hasTab ? "at the right end" : "none", strip.hasTab ? `fold ${lastPanel(strip)}` : "–",
      ]),
    },
    parts: stripParts(context),
    sizes: [{ label: "tab", text: say.size(geometry.tab) }],
    tools: ["pencil"], minutes: 4, cautions: ["paperEdge"], figure: "join-plan",
    check: `All strips together have ${geometry.panels} panels, and the last strip has no tab.`,
    mistake: { sign: "A tab lies at the left end.", repair: "The strip lies head to tail or back up. Turn it and number it again." },
  };
}

/** The step that glues strip to strip. */
export function joinStrips(context: PlanContext<"concertina">): DraftStep {
  const { definition, model, say } = context;
  const { geometry } = model;
  const { strips, setBack } = geometry;
  const glue = definition.adhesives["joins"]!;
  const folds = strips.slice(0, -1).map((strip) => String(lastPanel(strip)));
  const trimmed = setBack.n > 0n;
  return {
    id: "join-strips", stage: "The strip", title: strips.length === 2 ? "Join the two strips" : `Join the ${strips.length} strips`,
    action: [
      ...(trimmed ? [`Trim ${say.thickness(setBack)}, the width of a pencil line, off the left edge of ${stripsInWords(strips.slice(1))}.`] : []),
      `Lay strip 1 down folded, the front of panel ${lastPanel(strips[0]!)} up and its tab flat at the right.`,
      "Cover the panel with waste paper up to the join fold, and lay another sheet under the tab.",
      `${glue.wet ? `Brush ${glue.name} thinly` : `Lay ${glue.name}`} on the front of the tab, and take the waste paper away.`,
      `Lay strip 2 on the tab, front up: its left edge along the join fold${trimmed ? `, ${say.thickness(setBack)} short of it` : ""}, its head edge in one line with that of strip 1, along the ruler.`,
      "Rub the join down through clean paper and shut it once: it folds as a valley, and the tab is out of sight behind the panel.",
      ...(strips.length > 2 ? ["Go on with the next strip in the order of the numbers."] : []),
    ],
    parts: stripParts(context),
    sizes: [
      { label: "tab", text: say.size(geometry.tab) }, { label: "from the join fold to the next strip’s edge", text: say.thickness(setBack) },
      { label: folds.length === 1 ? "join at fold" : "joins at folds", text: listInWords(folds) },
    ],
    tools: ["ruler", "knife", "mat", ...(glue.wet ? ["brush" as const] : []), "wasteSheets", "boneFolder", "barrier", "weight"], minutes: 4 + 6 * (strips.length - 1),
    glueing: { job: "joins", openMinutes: 2, spread: zone(geometry.panelHeight, geometry.tab, strips.length - 1) }, rest: "folded, barrier sheets in the joins, under a weight",
    cautions: glue.wet ? ["knife", "wetAdhesive", "weights"] : ["knife", "weights"], figure: "join-section",
    check: "No tab shows from the front; shut, the joined panel lies in line with the pile; drawn open, the head edges are in one line.",
    mistake: { sign: "The tab shows on the front, or the join stands up as a crest.", repair: "The strip was laid under the tab, or strips were mixed up. Pull it off while the adhesive is soft, wipe the tab and join it anew. Once it has set, cut through the fold and glue a strip of the same paper behind the join." },
  };
}
