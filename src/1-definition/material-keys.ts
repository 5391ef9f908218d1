// The keys of one material in hand, and the material that comes of them and of the usual one.
import { thicknessFromGrammage, usualBulk } from "../units/grammage.ts";
import type { Length } from "../units/length.ts";
import { rationalToNumber } from "../units/rational.ts";
import type { Rational } from "../units/rational.ts";
import type { MaterialRole } from "./binding-definition.ts";
import { listWithDefault, mapping, optionalMapping } from "./collections.ts";
import { count, decimal, optionalChoice, optionalGrammage } from "./fields.ts";
import { optionalLength, sheet } from "./length-fields.ts";
import { optionalText } from "./text-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";
import type { SheetInHand } from "./length-fields.ts";
import type { Material, SheetGrain } from "./types.ts";

/** What an author may write about a material; keys that make no sense for its role are absent. */
export interface WrittenMaterial {
  readonly name: string | null;
  readonly thickness?: Length | null;
  readonly grammage?: Rational | null;
  readonly bulk?: Rational | null;
  readonly grain?: SheetGrain | null;
  readonly sheets?: readonly WrittenSheet[];
  readonly price?: Rational | null;
  readonly "pack length"?: Length | null;
  readonly "pack count"?: number;
  readonly "extension price"?: Rational | null;
  readonly "extension count"?: number;
}

/** A sheet with what it costs, as written. */
interface WrittenSheet {
  readonly size: SheetInHand;
  readonly price: Rational | null;
  readonly pack: number;
  readonly "in hand": number;
}

/** The schema of one role's material. */
export function materialOfRole(role: MaterialRole, context: FieldContext): Field<WrittenMaterial | null> {
  const name = optionalText({ about: "What you call it, as printed in the material list.", most: 120, example: "grey card" });
  const thickness = optionalLength(context, { about: "Thickness of one layer, measured. Governs over the grammage.", least: "0.01", most: "10", example: "0.4 mm" });
  const grammage = optionalGrammage({ about: "Weight in g/m², or in pounds with the grade; the thickness follows from it and the bulk.", least: 10, most: 3000 });
  const bulk = decimal({ about: "Bulk in cm³/g: thickness in mm = grammage × bulk ÷ 1000. Default: 1.25.", least: "0.4", most: "4", default: null, example: "1.25" });
  const grain = optionalChoice({ about: `Which side of the sheet the grain runs along. Default: ${role.usual.grain}.`, of: ["long", "short", "none", "unknown"] });
  const sheets = listWithDefault(
    mapping({
      size: sheet(context, { about: "Height × width with a unit, or a name such as A3.", least: "20", most: "5000" }),
      price: price("Price of a pack of these sheets."),
      pack: count({ about: "Sheets in a pack.", least: 1, most: 1000, default: 1, example: 10 }),
      "in hand": count({ about: "Sheets that are there already.", least: 0, most: 10000, default: 0, example: 4 }),
    }, { about: "A sheet you have or can buy.", shorthand: "size", example: "500 mm x 700 mm" }),
    [], { about: "Sheets you have or can buy.", most: 20, oneMayStandAlone: true, mayBeEmpty: true },
  );
  const perPack = price("Price of a pack.");
  const packLength = optionalLength(context, { about: "Length on a roll or in a pack.", least: "10", most: "2000000", example: "10 m" });
  const packCount = count({ about: "Pieces in a pack.", least: 1, most: 10000, default: 1, example: 20 });
  const about = { about: role.about, example: "{name: …}" };
  switch (role.keys) {
    case "sheet": return optionalMapping({ name, thickness, grammage, bulk, grain, sheets }, about);
    case "board": return optionalMapping({ name, grain, sheets, price: perPack, "pack count": packCount }, about);
    case "band": return optionalMapping({ name, thickness, price: perPack, "pack length": packLength }, about);
    case "extended hardware": return optionalMapping({
      name, price: perPack, "pack count": packCount,
      "extension price": price("Price of a pack of extensions."),
      "extension count": count({ about: "Extensions in a pack.", least: 1, most: 10000, default: 1, example: 10 }),
    }, about);
    case "hardware": return optionalMapping({ name, price: perPack, "pack count": packCount }, about);
  }
}

/**
 * The material of a role: what is written, else the usual one.
 * A measured thickness governs over grammage × bulk, which governs over the usual thickness.
 */
export function settleMaterial(role: string, usual: MaterialRole["usual"], written: WrittenMaterial | null, fromBook: { readonly thickness: Length; readonly isDefault: boolean } | null): Material {
  const grammage = written?.grammage ?? null;
  const rest = {
    role,
    name: written?.name ?? nameWithout(usual.name, written),
    grammage: grammage && rationalToNumber(grammage),
    grain: written?.grain ?? usual.grain,
    sheets: (written?.sheets ?? []).map(({ size, price: each, pack, "in hand": inHand }) => ({ ...size, price: each, pack, inHand })),
    price: written?.price ?? null,
    packLength: written?.["pack length"] ?? null,
    packCount: written?.["pack count"] ?? 1,
    extensions: { price: written?.["extension price"] ?? null, packCount: written?.["extension count"] ?? 1 },
  };
  if (fromBook) return { ...rest, thickness: fromBook.thickness, thicknessFrom: fromBook.isDefault ? "default" : "given" };
  if (written?.thickness) return { ...rest, thickness: written.thickness, thicknessFrom: "given" };
  if (grammage) return { ...rest, thickness: thicknessFromGrammage(grammage, written?.bulk ?? usualBulk), thicknessFrom: "grammage" };
  return { ...rest, thickness: usual.thickness, thicknessFrom: "default" };
}

/** A price in the class's currency, exact; null when it is not written. */
export function price(about: string): Field<Rational | null> {
  return decimal<null>({ about: `${about} Needed only for what a class costs.`, least: "0", most: "100000", default: null, example: "2.40" });
}

/** A usual name such as "heavy card, about 300 g/m²" says too much once the author has given figures of another sheet. */
function nameWithout(usualName: string, written: WrittenMaterial | null): string {
  return written?.thickness || written?.grammage ? usualName.split(", about ")[0]! : usualName;
}
