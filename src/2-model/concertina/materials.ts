// Enters what the author gives of a concertina: sizes of the book section and thicknesses of the materials in hand.
import type { Definition } from "../../1-definition/types.ts";
import type { Length } from "../../units/length.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";

/** The role of the material that covers the boards. */
export function coveringRole({ book }: Definition<"concertina">): "cover paper" | "cloth" {
  return book.covering === "paper" ? "cover paper" : "cloth";
}

/** Enters every given value; what is computed later finds it by name. */
export function enterMaterials(definition: Definition<"concertina">, ledger: Ledger): void {
  const { book, materials, adhesives } = definition;
  const give = (name: string, quantity: Length | number, path: string, meaning: string, source = ""): void =>
    ledger.give(name, quantity, originAt(definition, path), { meaning, source });
  give("panels", book.panels, "book/panels", "panels of the folded strip, the two on the boards among them");
  give("panel height", book.panel.height, "book/panel/height", "panel, along its folds");
  give("panel width", book.panel.width, "book/panel/width", "panel, from fold to fold, flat");
  give("square", book.square, "book/square", "how far the boards reach beyond the folded strip", "Bean & Brodhead 1918, Problem VIII A: about 1/8 in");
  give("turn in", book["turn in"], "book/turn in", "covering turned over the edges of a board", "Roberts & Etherington, \"cover turned-in\": 5/8 in in library binding");

  const layers: readonly (readonly [role: string, meaning: string])[] = [
    ["panel paper", "caliper of the strip's paper"], ["boards", "caliper of the boards"], [coveringRole(definition), "caliper of the covering"],
  ];
  for (const [role, meaning] of layers) {
    const material = materials[role]!;
    if (!material.thickness) throw new Error(`internal error: material "${role}" has no thickness`);
    ledger.give(`${role} thickness`, material.thickness, material.thicknessFrom === "default" ? "default" : "material", {
      meaning, shownAs: "thickness",
      source: material.thicknessFrom === "grammage" ? "grammage × bulk ÷ 1000 (ISO 534, from memory)" : material.thicknessFrom === "default" ? "common practice, no source" : "",
    });
  }
  const glues: readonly (readonly [name: string, job: string])[] = [["covering adhesive thickness", "covering"], ["join adhesive thickness", "joins"], ["end adhesive thickness", "ends"]];
  for (const [name, job] of glues) {
    const adhesive = adhesives[job];
    if (!adhesive) throw new Error(`internal error: no adhesive for "${job}"`);
    ledger.give(name, adhesive.thickness, "material", { meaning: `layer left by ${adhesive.name}`, shownAs: "thickness", source: "common practice, no source" });
  }
}
