// Adhesives of the bench with their times; only the order of the times is published, the minutes are from memory and may be overridden.
import { mm, noLength } from "../units/length.ts";
import type { Length } from "../units/length.ts";

/** An adhesive and what a binder must know to plan with it. */
export interface CatalogueAdhesive {
  readonly id: string;
  /** As printed in a step: "brush on PVA". */
  readonly name: string;
  readonly aliases: readonly string[];
  /** Latest minute at which the parts must be together; null when there is no hurry. */
  readonly openMinutes: number | null;
  /** Minutes until the joint may be handled gently. */
  readonly setMinutes: number;
  /** Minutes until it may be bent, pressed open or drilled, under weight. */
  readonly dryMinutes: number;
  /** Layer left in the joint. */
  readonly thickness: Length;
  /** What a brush lays on, wet; null for what comes off a roll. */
  readonly gramsPerSquareMetre: number | null;
  /** Whether it brings water into paper and board, so that they stretch and must dry under weight. */
  readonly wet: boolean;
  /** Whether it gives off solvent: steps that use it carry the caution about vapour and fire. */
  readonly solvent: boolean;
  /** Where the times come from, as printed. */
  readonly source: string;
}

const timesFromMemory = "times from memory, the maker's data sheet comes first: try it on scrap";
const layerUnsourced = "layer thickness and amount common practice, no source";

/**
 * The order PVA, hide glue, paste in drying is D. Rash, Book_Arts-L, April 2000; the open time of PVA being the shortest is Roberts and
 * Etherington, "open assembly time". The waits of half a day and overnight are Brown (ALA 1921) and Vaughn (1912).
 */
export const adhesives: readonly CatalogueAdhesive[] = [
  {
    id: "pva", name: "PVA", aliases: ["PVA glue", "white glue"],
    openMinutes: 8, setMinutes: 30, dryMinutes: 12 * 60, thickness: mm("0.05"), gramsPerSquareMetre: 120, wet: true, solvent: false,
    source: `open and set ${timesFromMemory}; drying overnight under weight as in Vaughn (1912) and Brown (1921); ${layerUnsourced}`,
  },
  {
    id: "pva-and-methyl-cellulose", name: "PVA and methyl cellulose mix", aliases: ["mix", "PVA mix", "PVA and methyl cellulose"],
    openMinutes: 12, setMinutes: 45, dryMinutes: 14 * 60, thickness: mm("0.05"), gramsPerSquareMetre: 120, wet: true, solvent: false,
    source: `${timesFromMemory}; that methyl cellulose lengthens the working time of PVA is J. Thompson, Book_Arts-L 1999; ${layerUnsourced}`,
  },
  {
    id: "hide-glue", name: "hide glue", aliases: ["animal glue"],
    openMinutes: 10, setMinutes: 40, dryMinutes: 16 * 60, thickness: mm("0.05"), gramsPerSquareMetre: 150, wet: true, solvent: false,
    source: `${timesFromMemory}; that it dries after PVA and before paste is D. Rash, Book_Arts-L 2000; ${layerUnsourced}`,
  },
  {
    id: "wheat-paste", name: "wheat paste", aliases: ["paste", "wheat starch paste", "starch paste"],
    openMinutes: 20, setMinutes: 60, dryMinutes: 24 * 60, thickness: mm("0.02"), gramsPerSquareMetre: 150, wet: true, solvent: false,
    source: `${timesFromMemory}; that paste dries last is D. Rash, Book_Arts-L 2000; ${layerUnsourced}`,
  },
  {
    id: "double-sided-tape", name: "double-sided tape", aliases: ["tape"],
    openMinutes: null, setMinutes: 0, dryMinutes: 0, thickness: mm("0.1"), gramsPerSquareMetre: null, wet: false, solvent: false,
    source: "holds at once, no wait; thickness common practice, no source",
  },
  {
    id: "self-adhesive-tape", name: "self-adhesive tape", aliases: ["self-adhesive cloth tape"],
    openMinutes: null, setMinutes: 0, dryMinutes: 0, thickness: noLength, gramsPerSquareMetre: null, wet: false, solvent: false,
    source: "holds at once, no wait; its adhesive is counted in the thickness of the tape itself",
  },
  {
    id: "solvent-cement", name: "solvent cement", aliases: ["cement", "contact cement", "all-purpose cement", "multi-purpose cement", "rubber cement"],
    openMinutes: 5, setMinutes: 15, dryMinutes: 4 * 60, thickness: mm("0.05"), gramsPerSquareMetre: 150, wet: false, solvent: true,
    source: `${timesFromMemory}; ${layerUnsourced}`,
  },
];

/** Every name and other name, for a message that suggests the nearest one. */
export const adhesiveNames: readonly string[] = adhesives.flatMap((adhesive) => [adhesive.name, ...adhesive.aliases]);

/** The adhesive of a name or id, whatever its capitals, blanks and hyphens; null when none is called so. */
export function findAdhesive(name: string): CatalogueAdhesive | null {
  const wanted = keyOf(name);
  return adhesives.find((adhesive) => [adhesive.id, adhesive.name, ...adhesive.aliases].some((known) => keyOf(known) === wanted)) ?? null;
}

function keyOf(name: string): string {
  return name.trim().toLowerCase().replace(/[\s_-]+/gu, " ");
}
