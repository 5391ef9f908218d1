// The keys of one glueing job's adhesive, and the adhesive that comes of them and of the catalogue.
import { adhesiveNames, adhesives, findAdhesive } from "../catalogue/adhesives.ts";
import type { CatalogueAdhesive } from "../catalogue/adhesives.ts";
import { nearestOf } from "../problems/nearest.ts";
import { printDuration } from "../units/duration.ts";
import { optionalMapping } from "./collections.ts";
import { optionalDuration } from "./fields.ts";
import { leaf, listOf, shownValue } from "./leaf.ts";
import type { Field } from "./leaf.ts";
import type { Adhesive } from "./types.ts";

/** An adhesive from the catalogue with the times that the author overrides; null times are the catalogue's. */
export interface WrittenAdhesive {
  readonly use: CatalogueAdhesive;
  readonly open: number | null;
  readonly set: number | null;
  readonly dry: number | null;
}

/** The schema of one job's adhesive: a name, or a mapping with times. */
export function adhesiveOfJob(job: { readonly about: string; readonly usual: string }): Field<WrittenAdhesive | null> {
  const usual = usualAdhesive(job.usual);
  const time = (about: string, example: string): Field<number | null> =>
    optionalDuration({ about: `${about} Left out, the catalogue's.`, least: 0, most: 14 * 24 * 60, limits: "of at most 14 days", example });
  return optionalMapping({
    use: adhesiveName({ about: job.about, usual }),
    open: time("Latest moment the parts must be together.", "8 min"),
    set: time("How long until the joint may be handled.", "30 min"),
    dry: time("How long until it may be bent, opened or drilled.", "12 h"),
  }, { about: `${job.about} Default: ${usual.name}.`, shorthand: "use", example: usual.name });
}

/** An adhesive of the catalogue by name; required where none is usual. */
export function adhesiveName({ about, usual }: { readonly about: string; readonly usual: CatalogueAdhesive | null }): Field<CatalogueAdhesive> {
  const example = usual?.name ?? "PVA";
  const names = adhesives.map((adhesive) => adhesive.name);
  return leaf<CatalogueAdhesive>({
    about: usual ? `${about} Default: ${usual.name}.` : about,
    expected: `an adhesive such as ${example}`,
    example,
    json: { type: "string", examples: names },
    ...(usual ? { fallback: { value: usual } } : {}),
    read: ({ text }) => {
      const found = findAdhesive(text);
      if (found) return { ok: true, value: found };
      const near = nearestOf(text, adhesiveNames);
      return { ok: false, code: "value-unknown", says: `: ${shownValue(text)} is not an adhesive that is known here`, hint: near ? `did you mean ${near}?` : `use ${listOf(names)}; give its times with {use: …, open: …, set: …, dry: …}` };
    },
  });
}

/** Why two times of an adhesive do not fit, or the adhesive of a job. */
export type SettledAdhesive = { readonly ok: true; readonly adhesive: Adhesive } | { readonly ok: false; readonly key: "set" | "dry"; readonly says: string };

/** The adhesive of a job: what is written, else the usual one. It may not be dry before it is set. */
export function settleAdhesive(usual: string, written: WrittenAdhesive | null): SettledAdhesive {
  const { use, open, set, dry } = written ?? { use: usualAdhesive(usual), open: null, set: null, dry: null };
  const setMinutes = set ?? use.setMinutes;
  const dryMinutes = dry ?? use.dryMinutes;
  if (dryMinutes < setMinutes) {
    const known = (given: number | null): string => (given === null ? ", the usual time" : "");
    return dry === null
      ? { ok: false, key: "set", says: ` is ${printDuration(setMinutes)}, longer than it takes to dry (${printDuration(dryMinutes)}${known(dry)})` }
      : { ok: false, key: "dry", says: ` is ${printDuration(dryMinutes)}, shorter than it takes to set (${printDuration(setMinutes)}${known(set)})` };
  }
  const given = [open === null ? "" : "open", set === null ? "" : "set", dry === null ? "" : "dry"].filter((word) => word !== "");
  const source = given.length === 0 ? use.source : `${given.join(", ")} time as given in the definition; otherwise: ${use.source}`;
  return { ok: true, adhesive: { id: use.id, name: use.name, openMinutes: open ?? use.openMinutes, setMinutes, dryMinutes, thickness: use.thickness, gramsPerSquareMetre: use.gramsPerSquareMetre, wet: use.wet, solvent: use.solvent, source } };
}

function usualAdhesive(id: string): CatalogueAdhesive {
  const found = findAdhesive(id);
  if (!found) throw new Error(`internal error: no adhesive is called ${id}`);
  return found;
}
