// Findings that every binding shares: holes near an edge, grain, stock sheets, measured values far off the calculated.
import type { Definition, Material } from "../1-definition/types.ts";
import { isLess, multiplyLength, subtractLength, toMillimetres } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { printLength, printSizes, printThickness } from "../units/print-length.ts";
import { compareRational, rational, rationalToNumber } from "../units/rational.ts";
import { deviationOf } from "./ledger.ts";
import type { Finding, Hole, Part, Value } from "./types.ts";

/** The key that places holes, and what to do when one is too near an edge. */
export interface HoleRemedy {
  readonly path: string;
  readonly remedy: string;
}

const postRemedy: HoleRemedy = { path: "book/posts", remedy: "move the hole inwards, widen the part or take a thinner post" };

/** A hole closer to an edge than one and a half diameters tears out; one that breaks through the edge cannot be made. */
export function findEdgeFaults(holes: readonly Hole[], parts: readonly Part[], definition: Definition, { path, remedy }: HoleRemedy = postRemedy): readonly Finding[] {
  const found = new Map<string, Finding>();
  for (const hole of holes) {
    const part = parts.find((each) => each.id === hole.part);
    if (!part) continue;
    const edges: readonly (readonly [edge: string, distance: Length])[] = [
      ["the head", hole.along], ["the tail", subtractLength(part.height, hole.along)],
      ["the spine-side edge", hole.across], ["the far edge", subtractLength(part.width, hole.across)],
    ];
    for (const [edge, distance] of edges) {
      if (!isLess(distance, multiplyLength(hole.diameter, { n: 3n, d: 2n }))) continue;
      const breaksOut = !isLess(multiplyLength(hole.diameter, { n: 1n, d: 2n }), distance);
      found.set(`${part.id} ${edge}`, {
        code: "hole-near-edge", severity: breaksOut ? "stop" : "warn", where: part.name, path,
        message: `the middle of hole ${hole.id} is ${printLength(distance, definition.units)} from ${edge}; holes of ${printThickness(hole.diameter, definition.units)} want at least ${printThickness(multiplyLength(hole.diameter, { n: 3n, d: 2n }), definition.units)}`,
        consequence: breaksOut ? "the hole breaks through the edge" : "the hole tears out to the edge",
        remedy,
      });
    }
  }
  return [...found.values()];
}

/**
 * Grain and stock: each part with grain must come out of a sheet with its height along the sheet's grain.
 * Materials whose sheets the author does not name cannot be checked and are left alone.
 */
export function findGrainFaults(parts: readonly Part[], definition: Definition): readonly Finding[] {
  const found: Finding[] = [];
  for (const part of parts) {
    const material = definition.materials[part.material];
    if (!material || part.readyMade || material.sheets.length === 0) continue;
    const path = `materials/${part.material}`;
    const sheetText = material.sheets.map((sheet) => printSizes(sheet.height, sheet.width, definition.units)).join(", ");
    const fits = material.sheets.map((sheet) => fitOf(part, sheet, material));
    if (fits.includes("with the grain")) continue;
    if (!fits.includes("across the grain")) {
      found.push({
        code: "larger-than-sheet", severity: "stop", where: part.name, path,
        message: `${printSizes(part.height, part.width, definition.units)} for the ${part.name} is larger than any sheet of ${material.name} (${sheetText})`,
        consequence: "it cannot be cut in one piece",
        remedy: "name a larger sheet, or change the size of the book",
      });
    } else {
      found.push({
        code: "grain-across", severity: "warn", where: part.name, path,
        message: `${printSizes(part.height, part.width, definition.units)} for the ${part.name} fits a sheet of ${material.name} (${sheetText}) only with the grain across its height`,
        consequence: "boards and pages warp when glued, folds crack",
        remedy: "use a larger sheet, or one with the grain the other way",
      });
    }
  }
  const unknown = [...new Set(parts.filter((part) => part.grain !== "none" && !part.readyMade && definition.materials[part.material]?.grain === "unknown").map((part) => definition.materials[part.material]!.name))];
  if (unknown.length > 0) {
    found.push({
      code: "grain-unknown", severity: "note", where: "materials", path: "materials",
      message: `the grain is not known of: ${unknown.join("; ")}`,
      consequence: "a part cut across the grain warps or cracks at the fold",
      remedy: "bend each sheet both ways and mark the easier way: that is the grain; let it run along the height of every part",
    });
  }
  return found;
}

function fitOf(part: Part, sheet: { readonly height: Length; readonly width: Length }, material: Material): "with the grain" | "across the grain" | "not" {
  const upright = !isLess(sheet.height, part.height) && !isLess(sheet.width, part.width);
  const turned = !isLess(sheet.width, part.height) && !isLess(sheet.height, part.width);
  if (!upright && !turned) return "not";
  if (part.grain === "none" || material.grain === "none" || material.grain === "unknown") return "with the grain";
  const heightIsLong = !isLess(sheet.height, sheet.width);
  const grainAlongHeight = (material.grain === "long") === heightIsLong;
  return (part.grain === "height") === grainAlongHeight ? (upright ? "with the grain" : "across the grain") : turned ? "with the grain" : "across the grain";
}

/** A measured value more than 15 % off the calculated one: one of the two is wrong. */
export function findDeviations(values: ReadonlyMap<string, Value>, definition: Definition): readonly Finding[] {
  const found: Finding[] = [];
  for (const value of values.values()) {
    const share = deviationOf(value);
    if (!share || compareRational(share, rational(15, 100)) <= 0) continue;
    const calculated = value.calculated!.value as Length;
    const measured = value.quantity.value as Length;
    found.push({
      code: "measured-far-off", severity: "warn", where: value.name, path: `measured/${value.name}`,
      message: `measured ${printThickness(measured, definition.units)}, calculated ${printThickness(calculated, definition.units)}: ${Math.round(100 * rationalToNumber(share))} % ${toMillimetres(measured) > toMillimetres(calculated) ? "more" : "less"}`,
      consequence: "if the measured value is a slip, every size that depends on it is wrong",
      remedy: "measure again; if it stands, check the thicknesses given for the materials",
    });
  }
  return found;
}
