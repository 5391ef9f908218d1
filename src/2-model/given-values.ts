// Enters what was given into the ledger as every binding does: where a key comes from, layers of material, and layers of adhesive.
import type { Definition } from "../1-definition/types.ts";
import type { Ledger } from "./ledger.ts";

/** Whether the author wrote the key at a path (`book/turn in`) or left it to our default. */
export function originAt({ defaulted }: Pick<Definition, "defaulted">, path: string): "given" | "default" {
  return defaulted.has(path) ? "default" : "given";
}

/** A value's name, the material role or glueing job it comes from, and what it means. */
export type Layer = readonly [name: string, of: string, meaning: string];

/** Enters the thickness of one layer of each material, with where it is known from. */
export function giveThicknesses(layers: readonly Layer[], materials: Definition["materials"], ledger: Ledger): void {
  for (const [name, role, meaning] of layers) {
    const material = materials[role];
    if (!material?.thickness) throw new Error(`internal error: material "${role}" has no thickness`);
    ledger.give(name, material.thickness, material.thicknessFrom === "default" ? "default" : "material", {
      meaning, shownAs: "thickness",
      source: material.thicknessFrom === "grammage" ? "grammage × bulk ÷ 1000 (ISO 534, from memory)" : material.thicknessFrom === "default" ? "common practice, no source" : "",
    });
  }
}

/** Enters the thickness of the layer that the adhesive of each job leaves. */
export function giveAdhesiveLayers(jobs: readonly (readonly [name: string, job: string])[], adhesives: Definition["adhesives"], ledger: Ledger): void {
  for (const [name, job] of jobs) {
    const adhesive = adhesives[job];
    if (!adhesive) throw new Error(`internal error: no adhesive for "${job}"`);
    ledger.give(name, adhesive.thickness, "material", { meaning: `layer left by ${adhesive.name}`, shownAs: "thickness", source: "common practice, no source" });
  }
}
