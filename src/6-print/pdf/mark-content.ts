// Marks a page's content anew: what has a place in the structure by its element, all else as an artifact (ISO 32000-1, 14.8.2.2).
import type { Operation } from "./content-stream.ts";
import { liesIn } from "./drawing-units.ts";
import type { Box, PaintedUnit, Unit } from "./drawing-units.ts";
import { isContent, isNode, leavesOf } from "./structure-tree.ts";
import type { ContentLeaf, StructureNode } from "./structure-tree.ts";

/** What the structure says about one piece of content. */
interface LeafPlace {
  readonly leaf: ContentLeaf;
  readonly figure: StructureNode | null;
  /** The list item that this is the first content of, if it has no label yet. */
  readonly item: StructureNode | null;
}

/** A drawing's place on the page, from the invisible mark behind it. */
interface DrawingRegion {
  readonly marker: PaintedUnit;
  readonly place: LeafPlace & { readonly figure: StructureNode };
  readonly box: Box;
}

type Owner = ContentLeaf | "decoration" | "page furniture";

/** Where each piece of content of the whole tree belongs, by page and mark number. */
export type LeafPlaces = ReadonlyMap<string, LeafPlace>;

/** The key of a mark in `LeafPlaces`. */
export function placeKey(page: number, mark: string): string {
  return `${page}: ${mark}`;
}

/** Looks up every content leaf of the tree. */
export function placeLeaves(top: StructureNode): LeafPlaces {
  const places = new Map<string, LeafPlace>();
  const visit = (node: StructureNode, figure: StructureNode | null): void => {
    const inFigure = node.type === "Figure" ? node : figure;
    for (const kid of node.kids) {
      if (isNode(kid)) visit(kid, inFigure);
      else if (isContent(kid)) places.set(placeKey(kid.page, kid.mark), { leaf: kid, figure: inFigure, item: null });
    }
    if (node.type !== "LI" || node.kids.some((kid) => isNode(kid) && kid.type === "Lbl")) return;
    const first = leavesOf(node).find(isContent);
    const place = first && places.get(placeKey(first.page, first.mark));
    if (place && place.item === null) places.set(placeKey(first.page, first.mark), { ...place, item: node });
  };
  visit(top, null);
  return places;
}

/**
 * The operators of the page with new marks, numbered in painting order and noted in the leaves; list labels get elements.
 * `isMarker` knows the invisible marks behind drawings; they are left out.
 */
export function markContent(
  units: readonly Unit[],
  page: number,
  places: LeafPlaces,
  isMarker: (unit: PaintedUnit) => boolean,
  makeLabel: () => StructureNode,
): readonly Operation[] {
  const placeOf = (unit: PaintedUnit): LeafPlace | null => (unit.mark === null ? null : (places.get(placeKey(page, unit.mark)) ?? null));
  const painted = units.filter((unit): unit is PaintedUnit => unit.kind !== "state");
  const regions = findRegions(painted, placeOf, isMarker);
  const owners = new Map<PaintedUnit, Owner>();
  for (const unit of painted) if (!isMarker(unit)) owners.set(unit, ownerOf(unit, placeOf(unit), regions));
  const owning = new Set(owners.values());
  for (const { marker, place } of regions) {
    // A drawing without a clip of its own cannot be told from the rest; the invisible mark is then all that stands for it.
    if (!owning.has(place.leaf)) owners.set(marker, place.leaf);
  }
  labelItems(painted, page, placeOf, owners, makeLabel);
  return writeMarks(units, owners);
}

function findRegions(painted: readonly PaintedUnit[], placeOf: (unit: PaintedUnit) => LeafPlace | null, isMarker: (unit: PaintedUnit) => boolean): readonly DrawingRegion[] {
  return painted.flatMap((marker): DrawingRegion[] => {
    const place = placeOf(marker);
    if (!isMarker(marker) || marker.box === null || place === null || place.figure === null) return [];
    return [{ marker, place: { ...place, figure: place.figure }, box: marker.box }];
  });
}

function ownerOf(unit: PaintedUnit, place: LeafPlace | null, regions: readonly DrawingRegion[]): Owner {
  const { clip } = unit;
  const around = regions.filter(({ box, place: { figure } }) => clip !== null && liesIn(clip, box) && (place === null || place.figure === figure));
  const region = around.toSorted((a, b) => area(a.box) - area(b.box))[0];
  if (region !== undefined) return region.place.leaf;
  if (place !== null && (place.figure !== null || unit.kind !== "path")) return place.leaf;
  return clip === null && unit.kind === "text" ? "page furniture" : "decoration";
}

function area({ left, right, low, high }: Box): number {
  return (right - left) * (high - low);
}

/** Numbers of list items are painted before their item on the same line, without a mark (Chromium before 150). */
function labelItems(
  painted: readonly PaintedUnit[],
  page: number,
  placeOf: (unit: PaintedUnit) => LeafPlace | null,
  owners: Map<PaintedUnit, Owner>,
  makeLabel: () => StructureNode,
): void {
  let unmarked: PaintedUnit[] = [];
  for (const unit of painted) {
    if (unit.kind !== "text") continue;
    if (unit.mark === null && owners.get(unit) === "decoration") {
      unmarked.push(unit);
      continue;
    }
    const item = placeOf(unit)?.item ?? null;
    const label = unmarked.filter((text) => item !== null && isBefore(text, unit));
    unmarked = [];
    if (item === null || label.length === 0 || item.kids.some((kid) => isNode(kid) && kid.type === "Lbl")) continue;
    const leaf: ContentLeaf = { page, mark: "label", marks: [] };
    item.kids.unshift({ ...makeLabel(), kids: [leaf] });
    for (const text of label) owners.set(text, leaf);
  }
}

function isBefore(label: PaintedUnit, text: PaintedUnit): boolean {
  if (label.box === null || text.box === null) return false;
  return Math.abs(label.box.high - text.box.high) < 1 && label.box.left < text.box.left;
}

function writeMarks(units: readonly Unit[], owners: ReadonlyMap<PaintedUnit, Owner>): readonly Operation[] {
  const written: Operation[] = [];
  let between: Operation[] = [];
  let open: Owner | null = null;
  let count = 0;
  for (const unit of units) {
    const owner = unit.kind === "state" ? null : owners.get(unit);
    if (owner === undefined) continue;
    if (unit.kind === "state" || owner === null) {
      between.push(...unit.operations);
      continue;
    }
    if (open !== null && open !== owner) written.push(endMark);
    written.push(...between);
    between = [];
    if (open !== owner) {
      written.push(beginMark(owner, count));
      if (typeof owner !== "string") {
        owner.marks.push(count);
        count += 1;
      }
    }
    open = owner;
    // One by one: a path may have more operators than a call may have arguments.
    for (const operation of unit.operations) written.push(operation);
  }
  return [...written, ...(open === null ? [] : [endMark]), ...between];
}

const endMark: Operation = { operator: "EMC", operands: [] };

/** The tag in the content only repeats the structure; a neutral one serves for all. */
function beginMark(owner: Owner, count: number): Operation {
  if (owner === "decoration") return { operator: "BMC", operands: ["/Artifact"] };
  if (owner === "page furniture") return { operator: "BDC", operands: ["/Artifact", "<<", "/Type", "/Pagination", ">>"] };
  return { operator: "BDC", operands: ["/Span", "<<", "/MCID", String(count), ">>"] };
}
