// The class plan and the kit slips as the templates show them: plain texts, ready drawings, nothing left to decide.
import { papers } from "../catalogue/papers.ts";
import { cutsInWords, offcutsInWords } from "../3-plan/class/cut-words.ts";
import type { CutSentence } from "../3-plan/class/cut-words.ts";
import { printMoney } from "../3-plan/class/money.ts";
import type { Bag, ClassPlan, HazardLine, KitLine, LengthPlanOfMaterial, MistakeLine, RoomLine } from "../3-plan/class/types.ts";
import type { PrintedTimetable } from "../3-plan/class/printed-timetable.ts";
import { listInWords, wordingFor } from "../3-plan/wording.ts";
import { viewFigure } from "./inline-figure.ts";
import type { FigureView } from "./inline-figure.ts";
import type { FigureRoom } from "./paper.ts";
import { stepList, viewCatalogueCaution, viewOwnCaution } from "./step-view.ts";
import type { CautionView } from "./step-view.ts";
import type { Booklet } from "./types.ts";

/** One line of the shopping list, as printed. */
export interface OrderView {
  readonly name: string;
  readonly unit: string;
  readonly needed: string;
  readonly inHand: string;
  readonly buy: string;
  readonly price: string;
  readonly over: string;
  readonly note: string;
}

/** A piece that a cut plan cuts, with its letter in the cut list. */
export interface PieceView {
  readonly letter: string;
  readonly name: string;
  readonly size: string;
  readonly count: number;
}

/** One material's cut plan, as printed. */
export interface CutPlanView {
  readonly material: string;
  readonly verdict: string;
  readonly pieces: readonly PieceView[];
  readonly grainNote: string;
  readonly layouts: readonly { readonly n: number; readonly times: string; readonly drawing: FigureView | null; readonly cuts: readonly CutSentence[]; readonly offcuts: readonly string[] }[];
}

/** One material that is sold by length, as printed. */
export interface LengthPlanView {
  readonly material: string;
  readonly verdict: string;
  readonly pieces: readonly PieceView[];
  readonly rows: readonly { readonly times: string; readonly cuts: string; readonly rest: string }[];
}

/** The class as the templates see it. */
export interface ClassView {
  readonly sets: number;
  readonly glance: readonly { readonly label: string; readonly text: string }[];
  readonly orders: readonly OrderView[];
  readonly costs: readonly { readonly label: string; readonly text: string }[];
  readonly unpriced: string;
  readonly cutPlans: readonly CutPlanView[];
  readonly lengthPlans: readonly LengthPlanView[];
  readonly unplanned: ClassPlan["unplanned"];
  readonly kit: readonly KitLine[];
  /** Bags in blocks as wide as the page, for the columns in which the packer ticks. */
  readonly packing: readonly (readonly Bag[])[];
  readonly bags: readonly Bag[];
  readonly onBags: readonly string[];
  readonly hasTeacher: boolean;
  readonly hasSpares: boolean;
  readonly labelPaper: string;
  readonly room: readonly (RoomLine & { readonly share: string })[];
  readonly toolsBeforehand: string;
  readonly preparation: readonly string[];
  readonly cuttingCautions: readonly CautionView[];
  readonly questions: readonly string[];
  readonly hazards: readonly HazardLine[];
  /** Cautions of the author's own, as HTML. */
  readonly ownHazards: readonly (CautionView & { readonly steps: string })[];
  readonly mistakes: readonly MistakeLine[];
  readonly notes: ClassPlan["notes"];
  readonly timetable: PrintedTimetable;
  readonly chart: FigureView | null;
}

/** The class of a booklet; null when it has none. */
export function viewClass({ definition, plan, drawings }: Booklet, room?: FigureRoom): ClassView | null {
  const own = plan.class;
  if (!own || !definition.class) return null;
  const { currency } = definition.class;
  const say = wordingFor({ ...definition.units, dual: false });
  const letters = new Map(plan.cutList.map((item) => [item.part.id, item.letter]));
  const letter = (piece: string): string => letters.get(piece) ?? piece;
  const names = new Map(plan.cutList.map((item) => [item.part.id, item.part.name]));
  const piecesOf = <Piece extends { readonly id: string; readonly count: number }>(pieces: readonly Piece[], sizeOf: (piece: Piece) => string): readonly PieceView[] =>
    pieces.map((piece) => ({ letter: letters.get(piece.id) ?? "", name: names.get(piece.id) ?? piece.id, size: sizeOf(piece), count: piece.count }));
  const figure = (id: string): FigureView | null => {
    const drawn = drawings.classFigures.get(id);
    return drawn ? viewFigure(drawn, "class", room) : null;
  };
  return {
    sets: own.sets,
    glance: [
      { label: "Participants", text: String(own.participants) },
      { label: "Sets of material", text: `${own.sets}${own.sets > own.makers ? `, ${own.sets - own.makers} of them spare` : ""}` },
      { label: "Sessions", text: String(definition.class.sessions.length) },
      { label: "Timetable", text: own.timetable.verdict },
      { label: "To spend", text: own.costs.toSpend },
      { label: "Per participant", text: own.costs.perParticipant },
    ].filter(({ text }) => text !== ""),
    orders: own.orders.map((line) => ({
      name: line.name, unit: line.unit, note: line.note,
      needed: String(line.needed),
      inHand: line.inHand === 0 ? "" : String(line.inHand),
      buy: !line.isCounted ? "" : line.packSize === 1 ? String(line.packs) : `${line.packs} ${line.packs === 1 ? "pack" : "packs"} of ${line.packSize}`,
      price: line.price === null ? "" : printMoney(line.price, currency),
      over: line.over === 0 ? "" : String(line.over),
    })),
    costs: [
      { label: "To spend", text: own.costs.toSpend },
      { label: "Per participant", text: own.costs.perParticipant },
      { label: "Material used for one set", text: own.costs.usedPerSet },
      { label: "Price of a kit", text: own.costs.kitPrice },
    ].filter(({ text }) => text !== ""),
    // Names may hold commas.
    unpriced: own.costs.unpriced.join("; "),
    cutPlans: own.cutPlans.map((each) => ({
      material: each.material, verdict: each.verdict, grainNote: each.grainNote, pieces: piecesOf(each.request.pieces, ({ height, width }) => say.sizes(height, width)),
      layouts: each.plan.layouts.map((layout, index) => ({
        n: index + 1,
        times: layout.times === 1 ? "once" : `${layout.times} times`,
        drawing: figure(`cut-${each.role.replaceAll(" ", "-")}-${index + 1}`),
        cuts: cutsInWords(layout, letter, say),
        offcuts: offcutsInWords(layout.offcuts, letter, say),
      })),
    })),
    lengthPlans: own.lengthPlans.map((each) => viewLengths(each, letter, say.size, piecesOf(each.request.pieces, ({ length }) => say.size(length)))),
    unplanned: own.unplanned,
    kit: own.kit,
    packing: inBlocks(own.bags, mostColumns),
    bags: own.bags,
    onBags: own.onBags,
    hasTeacher: definition.class.teacherCopy,
    hasSpares: definition.class.spares > 0,
    labelPaper: papers[definition.class.labels.paper].name,
    room: own.room.map((line) => ({ ...line, share: line.shared ? `${line.count}, one for ${line.peopleEach}` : `${line.count}, one each` })),
    toolsBeforehand: listInWords(own.toolsBeforehand),
    preparation: own.preparation,
    cuttingCautions: own.cuttingCautions.map(viewCatalogueCaution),
    questions: own.questions,
    hazards: own.hazards,
    ownHazards: plan.safety.own.map(({ markdown, steps }) => ({ ...viewOwnCaution(markdown, { topHeading: 5, pictures: new Set() }), steps: stepList(steps) })),
    mistakes: own.mistakes,
    notes: own.notes,
    timetable: own.timetable,
    chart: figure("class-timetable"),
  };
}

/** As many columns as stand beside the parts' names and sizes. */
const mostColumns = 14;

/** Blocks of equal length, as few as will do. */
function inBlocks<T>(items: readonly T[], most: number): readonly (readonly T[])[] {
  const blocks = Math.ceil(items.length / most);
  const each = Math.ceil(items.length / blocks);
  return Array.from({ length: blocks }, (_, block) => items.slice(block * each, (block + 1) * each));
}

function viewLengths({ material, verdict, plan }: LengthPlanOfMaterial, letter: (piece: string) => string, size: (length: LengthPlanOfMaterial["plan"]["layouts"][number]["rest"]) => string, pieces: readonly PieceView[]): LengthPlanView {
  return {
    material, verdict, pieces,
    rows: plan.layouts.map((layout) => {
      const counts = new Map<string, number>();
      for (const { piece } of layout.pieces) counts.set(piece, (counts.get(piece) ?? 0) + 1);
      return { times: layout.times === 1 ? "one roll" : `${layout.times} rolls`, cuts: [...counts].map(([piece, count]) => `${count} × ${letter(piece)}`).join(", "), rest: size(layout.rest) };
    }),
  };
}
