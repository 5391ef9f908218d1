// Enters what the author gives: sizes of the book section and thicknesses of the materials in hand.
import type { Definition } from "../../1-definition/types.ts";
import type { Length } from "../../units/length.ts";
import { inches, mm } from "../../units/length.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { ValueOrigin } from "../types.ts";

/** Enters every given value of a post album; what is computed later finds it by name. */
export function enterMaterials(definition: Definition<"post-album">, ledger: Ledger): void {
  const { book, units } = definition;
  const origin = (path: string): ValueOrigin => originAt(definition, path);
  const give = (name: string, quantity: Length | number, path: string, meaning: string, source = ""): void =>
    ledger.give(name, quantity, origin(path), { meaning, source });
  const bean = "Bean & Brodhead 1918, Problem VIII A";

  give("leaves", book.leaves, "book/leaves", "number of single leaves");
  give("leaf height", book.leaf.height, "book/leaf/height", "leaf, along the spine");
  give("leaf width", book.leaf.width, "book/leaf/width", "leaf, across the spine, with the part held by the posts");
  ledger.give("inserts", book.inserts, origin("book/inserts"), { meaning: "thickness of what will be mounted between two leaves", source: definition.defaulted.has("book/inserts") ? "common practice, no source" : "", shownAs: "thickness" });
  give("hinge width", book.hinge, "book/hinge", "hinge strip of the covers, and the guards", `${bean}, asks 3/4 to 1 in for a hinge strip`);
  give("square", book.square, "book/square", "how far the covers reach beyond the leaves", `${bean}: about 1/8 in`);
  give("turn in", book["turn in"], "book/turn in", "covering turned over the edges of a cover", "Roberts & Etherington, \"cover turned-in\": 5/8 in in library binding");
  give("cloth lap", book["cloth lap"], "book/cloth lap", "how far the cloth of the hinge reaches onto the board", `${bean}: 1/2 in`);
  ledger.give("lining inset", units.governing === "in" ? inches(1, 8) : mm(3), "default", { meaning: "how far the linings stop short of a cover's edges", source: `${bean}: 1/8 in` });
  if (book.covering === "cloth and paper") {
    ledger.give("paper lap", units.governing === "in" ? inches(1, 8) : mm(3), "default", { meaning: "how far the cover paper lies over the edge of the cloth", source: "Vaughn 1912, half-cloth case: 1/8 in" });
  }
  enterThicknesses(definition, ledger);
}

function enterThicknesses(definition: Definition<"post-album">, ledger: Ledger): void {
  const { book, materials, adhesives } = definition;
  const roles: readonly (readonly [role: string, meaning: string, isUsed: boolean])[] = [
    ["board", "caliper of the board of the covers", true], ["cloth", "caliper of the cover cloth", true], ["cover paper", "caliper of the cover paper", book.covering === "cloth and paper"],
    ["lining paper", "caliper of the lining paper", book.lining], ["leaf card", "caliper of one leaf", true], ["guard card", "caliper of one guard strip", true],
  ];
  for (const [role, meaning, isUsed] of roles) {
    if (!isUsed) continue;
    const material = materials[role];
    if (!material?.thickness) throw new Error(`internal error: material "${role}" has no thickness`);
    ledger.give(`${role} thickness`, material.thickness, material.thicknessFrom === "default" ? "default" : "material", {
      meaning, shownAs: "thickness",
      source: material.thicknessFrom === "grammage" ? "grammage × bulk ÷ 1000 (ISO 534, from memory)" : material.thicknessFrom === "default" ? "common practice, no source" : "",
    });
  }
  for (const job of ["cover", "hinge"]) {
    const adhesive = adhesives[job];
    if (!adhesive) throw new Error(`internal error: no adhesive for "${job}"`);
    ledger.give(`${job} adhesive thickness`, adhesive.thickness, "material", { meaning: `layer left by ${adhesive.name}`, shownAs: "thickness", source: "common practice, no source" });
  }
}
