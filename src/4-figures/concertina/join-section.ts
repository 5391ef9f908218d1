// Figure `join-section`: a join in section, drawn open and shut, thickness much enlarged.
import type { Path } from "../../geometry/path.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { DrawingInput } from "../binding.ts";
import { raggedEnd } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { preferredLeader } from "../leaders.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"concertina">;

/** On paper: thickness of paper and adhesive, how far panels are shown, the tab and the set back. */
const shown = { paper: 1.6, glue: 0.7, panel: 26, tab: 19, setBack: 2.4 } as const;

/** Figure `join-section`; none for a strip in one piece. */
export function drawJoinSection(input: Input): FigureDraft | null {
  const { geometry } = input.model;
  if (geometry.strips.length === 1) return null;
  const words = sectionWords(input);
  const [tab, setBack] = [words.size(geometry.tab), words.thickness(geometry.setBack)];
  const fold = geometry.strips[0]!.panels;
  return {
    id: "join-section",
    title: "A join in section",
    caption: `The join at fold ${fold} seen from the head, not to scale; paper and adhesive are drawn much too thick. The next strip lies on the front of the tab, its edge ${setBack} back from the fold; every other join is the same.`,
    alternative: `Section through the join at fold ${fold}, front up. Open: panel ${fold} ends in the join fold, beyond which its tab, ${tab} wide, goes on to the right. On the tab lie adhesive and panel ${fold + 1} of the next strip, its left edge ${setBack} from the fold. `
      + `Shut: panel ${fold} lies on panel ${fold + 1}, the tab is bent round that panel’s edge and lies behind it, out of sight from the front.`,
    items: viewsBelow([
      withHeading("open", "Open, front up", drawOpen(input, fold, tab, setBack)),
      withHeading("shut", "Shut: a valley, the tab behind", drawShut(fold)),
    ], 6),
  };
}

/** The fold at x = 0, the front of strip 1 at y = 0. */
function drawOpen(input: Input, fold: number, tab: string, setBack: string): readonly SceneItem[] {
  const { paper, glue, panel } = shown;
  const next = -glue - paper;
  const fixed: SceneItem[] = [
    area(rectangle(-panel, 0, panel + shown.tab, paper), "card", "outline"),
    area(rectangle(shown.setBack, -glue, shown.tab - shown.setBack, glue), "adhesive", "none"),
    area(rectangle(shown.setBack, next, panel + 6, paper), "paper", "outline"),
    stroke(line(point(0, -0.2), point(0, paper + 0.2)), "edge"),
    ...raggedEnd(-panel, -0.6, paper + 0.6, -1), ...raggedEnd(shown.setBack + panel + 4, next - 0.6, -glue + 0.6, 1),
  ];
  return placeEvery(fixed, [
    dimension({ name: "tab", from: point(0, paper), to: point(shown.tab, paper), side: "below", text: tab, offset: 6 }),
    dimension({ name: "set back", from: point(0, next), to: point(shown.setBack, next), side: "above", text: setBack, offset: 5, outside: "before" }),
    preferredLeader({ name: "panel", text: `panel ${fold}`, target: point(-panel * 0.6, paper / 2), directions: [230, 240, 220, 250], reach: 7 }),
    preferredLeader({ name: "next", text: `panel ${fold + 1}, next strip`, target: point(panel * 0.7, next + paper / 2), directions: [50, 60, 40, 70], reach: 7 }),
    preferredLeader({ name: "adhesive", text: sectionWords(input).adhesiveLines("joins"), target: point(shown.tab - 2, -glue / 2), directions: [330, 320, 340, 310], reach: 12 }),
    preferredLeader({ name: "fold", text: "join fold", target: point(0, paper), end: "arrow", directions: [260, 250, 240, 270], reach: 9 }),
  ]);
}

/** The join shut: panel above, next panel, adhesive and tab below, the paper bent round the next panel's edge. */
function drawShut(fold: number): readonly SceneItem[] {
  const { paper, glue, panel } = shown;
  // Layers from the top: panel, next panel, adhesive, tab.
  const nextTop = paper;
  const tabTop = nextTop + paper + glue;
  const outer = (tabTop + paper) / 2;
  const inner = outer - paper;
  const strip: Path = [
    { kind: "move", to: point(panel, 0) },
    { kind: "line", to: point(0, 0) },
    { kind: "arc", radius: outer, large: false, clockwise: false, to: point(0, 2 * outer) },
    { kind: "line", to: point(shown.tab, 2 * outer) },
    { kind: "line", to: point(shown.tab, tabTop) },
    { kind: "line", to: point(0, tabTop) },
    { kind: "arc", radius: inner, large: false, clockwise: true, to: point(0, paper) },
    { kind: "line", to: point(panel, paper) },
    { kind: "close" },
  ];
  const fixed: SceneItem[] = [
    area(strip, "card", "outline"),
    area(rectangle(0.4, nextTop + paper, shown.tab - 0.4, glue), "adhesive", "none"),
    area(rectangle(0.4, nextTop, panel - 0.4, paper), "paper", "outline"),
    ...raggedEnd(panel - 1, -0.6, nextTop + paper + 0.6, 1),
  ];
  return placeEvery(fixed, [
    preferredLeader({ name: "shut panel", text: `panel ${fold}`, target: point(panel * 0.5, paper / 2), directions: [110, 100, 120, 90], reach: 6 }),
    preferredLeader({ name: "shut next", text: `panel ${fold + 1}`, target: point(panel - 4, nextTop + paper / 2), directions: [340, 350, 330, 0], reach: 10 }),
    preferredLeader({ name: "shut tab", text: "tab, behind it", target: point(shown.tab * 0.7, tabTop + paper / 2), directions: [290, 300, 280, 310], reach: 6 }),
    preferredLeader({ name: "spine side", text: "spine side", target: point(-outer, outer), end: "arrow", directions: [180, 170, 190], reach: 5 }),
  ]);
}
