// What is risky about a text block: creep that shows or that a trim does not reach.
import type { Definition } from "../../1-definition/types.ts";
import { isLess, mm } from "../../units/length.ts";
import { printThickness } from "../../units/print-length.ts";
import type { Ledger } from "../ledger.ts";
import type { Finding } from "../types.ts";
import type { TextBlock } from "./block.ts";

/** From this creep on the stepped fore-edge is plain to see and the pages are worth trimming: common practice, no source. */
const creepThatShows = mm(1);

/** Findings about creep and trimming. */
export function findTextBlockFaults(block: TextBlock, definition: Pick<Definition, "units">, ledger: Ledger): readonly Finding[] {
  const thickness = (length: Parameters<typeof printThickness>[0]): string => printThickness(length, definition.units);
  if (block.trim === "none") {
    if (isLess(block.creep, creepThatShows)) return [];
    return [{
      code: "creep-shows", severity: "note", where: "sections", path: "book/text block/folded sheets",
      message: `the innermost leaf of a section stands out up to ${thickness(block.creep)} beyond the outermost`,
      consequence: "the fore-edge of each section is stepped",
      remedy: `leave it so, take fewer sheets in a section, or trim the fore-edge; trimmed flush, the innermost page is ${thickness(block.narrowestPage)} wide`,
    }];
  }
  if (!isLess(ledger.length("trim allowance"), block.creep)) return [];
  return [{
    code: "trim-less-than-creep", severity: "warn", where: "trim", path: "book/text block/trim allowance",
    message: `${thickness(ledger.length("trim allowance"))} are trimmed, the leaves of a section creep up to ${thickness(block.creep)}`,
    consequence: "the outermost leaves may not reach the cut, and the fore-edge stays stepped",
    remedy: `make the trim allowance at least ${thickness(block.creep)}, or take fewer sheets in a section`,
  }];
}

/** A section thicker than this is hard to pierce and pulls its outer sheets short: common practice, no source. */
const thickestSection = mm(4);

/** A section that is too thick to be pierced straight. */
export function findThickSections({ sectionThickness }: TextBlock, { units }: Pick<Definition, "units">): readonly Finding[] {
  if (!isLess(thickestSection, sectionThickness)) return [];
  return [{
    code: "section-too-thick", severity: "warn", where: "sections", path: "book/text block/folded sheets",
    message: `a section is ${printThickness(sectionThickness, units)} thick, more than ${printThickness(thickestSection, units)}`,
    consequence: "the awl wanders, the holes of inner and outer sheets miss each other, and the stitches gape",
    remedy: "take fewer folded sheets in a section and more sections, or thinner paper",
  }];
}
