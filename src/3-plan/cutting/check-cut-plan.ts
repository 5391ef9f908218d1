// An independent check of cut plans: it shares no code with the search and believes nothing that a plan says.
import { addLengths, compareLengths, isLess, noLength, sameLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { BarCutPlan, BarCutRequest, CutStep, PlacedPiece, SheetCutPlan, SheetCutRequest, SheetLayout, StockSheet } from "./types.ts";

interface Rectangle {
  readonly x: Length;
  readonly y: Length;
  readonly width: Length;
  readonly height: Length;
}

/** Every fault of a plan in words; none for a sound one. */
export function checkSheetPlan(request: SheetCutRequest, plan: SheetCutPlan): readonly string[] {
  const layouts = plan.layouts.flatMap((layout, index) => checkLayout(request, layout).map((fault) => `layout ${index + 1}: ${fault}`));
  const counts = request.pieces.flatMap(({ id, count }) => {
    const made = plan.layouts.reduce((sum, layout) => sum + layout.times * layout.pieces.filter((each) => each.piece === id).length, 0);
    return made === count ? [] : [`${made} of ${id} are cut, ${count} are wanted`];
  });
  const used = (id: string): number => plan.layouts.reduce((sum, layout) => sum + (layout.sheet === id ? layout.times : 0), 0);
  const supply = request.sheets.flatMap(({ id, available }) => (available !== null && used(id) > available ? [`${used(id)} of ${id} are used, ${available} are there`] : []));
  const sheets = plan.layouts.reduce((sum, layout) => sum + layout.times, 0);
  const cost = request.sheets.reduce((sum, sheet) => sum + used(sheet.id) * sheet.cost, 0);
  return [
    ...layouts, ...counts, ...supply,
    ...(sheets === plan.sheets ? [] : [`${sheets} sheets are used, the plan says ${plan.sheets}`]),
    ...(cost === plan.cost ? [] : [`the sheets cost ${cost}, the plan says ${plan.cost}`]),
    ...checkBound(plan.bound, plan.bound.counts === "sheets" ? sheets : cost),
  ];
}

function checkBound(bound: { readonly atLeast: number; readonly mostAbove: number }, value: number): readonly string[] {
  if (value < bound.atLeast) return [`the plan needs ${value}, less than the ${bound.atLeast} that are said to be the least`];
  return value - bound.atLeast === bound.mostAbove ? [] : [`the plan is ${value - bound.atLeast} above its bound and says ${bound.mostAbove}`];
}

function checkLayout(request: SheetCutRequest, layout: SheetLayout): readonly string[] {
  const sheet = request.sheets.find((each) => each.id === layout.sheet);
  if (!sheet) return [`there is no sheet ${layout.sheet}`];
  if (!Number.isInteger(layout.times) || layout.times < 1) return [`it is cut ${layout.times} times`];
  const { kerf = noLength } = request;
  const inner = usable(request, sheet);
  const sizes = layout.pieces.flatMap((placed) => checkPiece(request, placed, inner));
  const laid = [...layout.pieces, ...layout.offcuts];
  const overlaps = laid.flatMap((a, index) => laid.slice(index + 1).flatMap((b) => (isApart(a, b, noLength) ? [] : [`${nameOf(a)} and ${nameOf(b)} overlap`])));
  const isCuttable = canBeParted(layout.pieces, kerf);
  const outside = layout.offcuts.flatMap((offcut) => (isInside(offcut, inner) ? [] : ["an offcut lies outside the sheet"]));
  const holds = layout.offcuts.flatMap((offcut) => request.pieces.filter((piece) => {
    const fits = fitsInto(piece.width, piece.height, offcut) || (piece.mayTurn && fitsInto(piece.height, piece.width, offcut));
    return fits !== offcut.holds.includes(piece.id);
  }).map((piece) => `an offcut says wrongly whether it holds ${piece.id}`));
  return [...sizes, ...overlaps, ...(isCuttable ? [] : ["it cannot be cut from edge to edge"]), ...outside, ...holds, ...replay(request, sheet, layout)];
}

function nameOf(each: Rectangle & { readonly piece?: string }): string {
  return each.piece ?? "an offcut";
}

function usable({ trim = noLength, kerf = noLength }: SheetCutRequest, sheet: StockSheet): Rectangle {
  const edge = sameLength(trim, noLength) || !isLess(trim, kerf) ? trim : kerf;
  return { x: edge, y: edge, width: subtractLength(subtractLength(sheet.width, edge), edge), height: subtractLength(subtractLength(sheet.height, edge), edge) };
}

function fitsInto(width: Length, height: Length, room: { readonly width: Length; readonly height: Length }): boolean {
  return !isLess(room.width, width) && !isLess(room.height, height);
}

function isInside(a: Rectangle, room: Rectangle): boolean {
  return !isLess(a.x, room.x) && !isLess(a.y, room.y) && !isLess(endX(room), endX(a)) && !isLess(endY(room), endY(a));
}

function endX({ x, width }: Rectangle): Length {
  return addLengths(x, width);
}

function endY({ y, height }: Rectangle): Length {
  return addLengths(y, height);
}

function checkPiece(request: SheetCutRequest, placed: PlacedPiece, inner: Rectangle): readonly string[] {
  const piece = request.pieces.find((each) => each.id === placed.piece);
  if (!piece) return [`there is no piece ${placed.piece}`];
  const [width, height] = placed.turned ? [piece.height, piece.width] : [piece.width, piece.height];
  return [
    ...(sameLength(width, placed.width) && sameLength(height, placed.height) ? [] : [`${placed.piece} has the wrong size`]),
    ...(placed.turned && !piece.mayTurn ? [`${placed.piece} lies across the grain`] : []),
    ...(isInside(placed, inner) ? [] : [`${placed.piece} lies outside the sheet`]),
  ];
}

/** Whether one lies beside or above the other with at least a gap between them. */
function isApart(a: Rectangle, b: Rectangle, gap: Length): boolean {
  const before = (end: Length, start: Length): boolean => !isLess(start, addLengths(end, gap));
  return before(endX(a), b.x) || before(endX(b), a.x) || before(endY(a), b.y) || before(endY(b), a.y);
}

/** Parts the pieces by any cut that goes through none of them, and each side likewise; if one order of cuts does it, every order does. */
function canBeParted(pieces: readonly Rectangle[], kerf: Length): boolean {
  if (pieces.length < 2) return true;
  for (const [start, end] of [[(each: Rectangle) => each.x, endX], [(each: Rectangle) => each.y, endY]] as const) {
    const ordered = [...pieces].sort((a, b) => compareLengths(start(a), start(b)));
    let reached = end(ordered[0]!);
    for (let index = 1; index < ordered.length; index++) {
      if (!isLess(start(ordered[index]!), addLengths(reached, kerf))) return canBeParted(ordered.slice(0, index), kerf) && canBeParted(ordered.slice(index), kerf);
      if (isLess(reached, end(ordered[index]!))) reached = end(ordered[index]!);
    }
  }
  return false;
}

/** Carries the steps out as they are written and compares what falls off with what the layout shows. */
function replay(request: SheetCutRequest, sheet: StockSheet, layout: SheetLayout): readonly string[] {
  const { kerf = noLength } = request;
  const faults: string[] = [];
  const parts = new Map<string, Rectangle>([["sheet", { x: noLength, y: noLength, width: sheet.width, height: sheet.height }]]);
  const made: (Rectangle & { readonly piece: string })[] = [];
  layout.cuts.forEach((step, index) => {
    if (step.number !== index + 1) faults.push(`step ${index + 1} has the number ${step.number}`);
    const part = parts.get(step.part);
    if (!part) { faults.push(`step ${step.number} cuts ${step.part}, which is not there`); return; }
    parts.delete(step.part);
    const whole = step.measured === "from-left" ? part.width : part.height;
    faults.push(...checkMarks(step, whole, kerf));
    for (const { from, to, use } of step.parts) {
      const cut = step.measured === "from-left"
        ? { ...part, x: addLengths(part.x, from), width: subtractLength(to, from) }
        : { ...part, y: addLengths(part.y, from), height: subtractLength(to, from) };
      if (use.kind === "piece") made.push({ ...cut, piece: use.piece });
      if (use.kind === "part" && parts.has(use.part)) faults.push(`step ${step.number} names ${use.part} a second time`);
      if (use.kind === "part") parts.set(use.part, cut);
    }
  });
  const isUncutPiece = layout.cuts.length === 0 && layout.pieces.length === 1 && sameLength(layout.pieces[0]!.width, sheet.width) && sameLength(layout.pieces[0]!.height, sheet.height);
  if (isUncutPiece) return faults;
  for (const name of parts.keys()) faults.push(`${name} is never cut`);
  const keyOf = (each: Rectangle & { readonly piece: string }): string => [each.piece, each.x, each.y, each.width, each.height].map((value) => (typeof value === "string" ? value : `${value.n}/${value.d}`)).join(" ");
  const [shown, cut] = [layout.pieces.map(keyOf).sort(), made.map(keyOf).sort()];
  if (shown.join("\n") !== cut.join("\n")) faults.push("the cuts do not give the pieces that the layout shows");
  return faults;
}

/** Marks go up and stay within the part; each part reaches from an edge or a cut to the next cut or the other edge. */
function checkMarks({ number, marks, parts }: CutStep, whole: Length, kerf: Length): readonly string[] {
  const starts = [noLength, ...marks.map((mark) => addLengths(mark, kerf))];
  const ends = [...marks, whole];
  const isRising = marks.every((mark, index) => !isLess(mark, index === 0 ? noLength : starts[index]!) && isLess(mark, whole));
  const isBetweenCuts = parts.every(({ from, to }) => starts.some((start, index) => sameLength(start, from) && sameLength(ends[index]!, to) && isLess(from, to)));
  const isApartInOrder = parts.every(({ from }, index) => index === 0 || !isLess(from, parts[index - 1]!.to));
  return isRising && isBetweenCuts && isApartInOrder && marks.length > 0 ? [] : [`step ${number} has marks that do not give its parts`];
}

/** Every fault of a plan for bars in words; none for a sound one. */
export function checkBarPlan(request: BarCutRequest, plan: BarCutPlan): readonly string[] {
  const { kerf = noLength } = request;
  const layouts = plan.layouts.flatMap((layout, index) => {
    const bar = request.bars.find((each) => each.id === layout.bar);
    if (!bar) return [`layout ${index + 1}: there is no bar ${layout.bar}`];
    const faults = layout.pieces.flatMap(({ piece, from, to }, place) => {
      const wanted = request.pieces.find((each) => each.id === piece);
      const start = place === 0 ? noLength : addLengths(layout.pieces[place - 1]!.to, kerf);
      return wanted && sameLength(subtractLength(to, from), wanted.length) && !isLess(from, start) && !isLess(bar.length, to) ? [] : [`layout ${index + 1}: ${piece} is not cut right`];
    });
    const end = layout.pieces.at(-1)?.to ?? noLength;
    const left = subtractLength(subtractLength(bar.length, end), kerf);
    return sameLength(layout.rest, isLess(left, noLength) ? noLength : left) ? faults : [...faults, `layout ${index + 1}: the rest is wrong`];
  });
  const counts = request.pieces.flatMap(({ id, count }) => {
    const made = plan.layouts.reduce((sum, layout) => sum + layout.times * layout.pieces.filter((each) => each.piece === id).length, 0);
    return made === count ? [] : [`${made} of ${id} are cut, ${count} are wanted`];
  });
  const used = (id: string): number => plan.layouts.reduce((sum, layout) => sum + (layout.bar === id ? layout.times : 0), 0);
  const supply = request.bars.flatMap(({ id, available }) => (available !== null && used(id) > available ? [`${used(id)} of ${id} are used, ${available} are there`] : []));
  const bars = plan.layouts.reduce((sum, layout) => sum + layout.times, 0);
  const cost = request.bars.reduce((sum, bar) => sum + used(bar.id) * bar.cost, 0);
  return [...layouts, ...counts, ...supply, ...(bars === plan.bars && cost === plan.cost ? [] : ["the totals are wrong"]), ...checkBound(plan.bound, plan.bound.counts === "bars" ? bars : cost)];
}
