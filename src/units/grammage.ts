// Weights of paper: grammage from pounds and basis size, and thickness from grammage and bulk, all exact.
import { inches, lengthOf } from "./length.ts";
import type { Length } from "./length.ts";
import { divideRational, multiplyRational, rational } from "./rational.ts";
import type { Rational } from "./rational.ts";
import { quoted, readNumber } from "./read-number.ts";

/** The kinds of paper that North American mills weigh by the ream, each in sheets of its own basis size. */
export type BasisGrade = "bond" | "cover" | "bristol" | "index" | "tag" | "book";

/** Basis size of each grade. Source: PrintWiki "Grammage" and Hewlett-Packard, LaserJet 5550 manual, Table 1-23. */
export const basisSizes: Readonly<Record<BasisGrade, { readonly height: Length; readonly width: Length }>> = {
  bond: { height: inches(22), width: inches(17) },
  cover: { height: inches(26), width: inches(20) },
  bristol: { height: inches("28.5"), width: inches("22.5") },
  index: { height: inches("30.5"), width: inches("25.5") },
  tag: { height: inches(36), width: inches(24) },
  book: { height: inches(38), width: inches(25) },
};

/** Sheets in the ream that a basis weight is the weight of. */
const sheetsPerReam = rational(500);

/** The avoirdupois pound, exact by definition. Source: the 1959 international yard and pound agreement. */
const gramsPerPound = rational(45_359_237, 100_000);

const squareMillimetresPerSquareMetre = rational(1_000_000);

/** Grammage in g/m² of paper whose ream of 500 basis-size sheets weighs so many pounds. Formula: pounds × 453.59237 ÷ (500 × area). */
export function grammageFromPounds(pounds: Rational, grade: BasisGrade): Rational {
  return multiplyRational(pounds, gramsPerSquareMetrePerPound(grade));
}

/** Basis weight in pounds of paper of a grammage in g/m²: the inverse of `grammageFromPounds`. */
export function poundsFromGrammage(grammage: Rational, grade: BasisGrade): Rational {
  return divideRational(grammage, gramsPerSquareMetrePerPound(grade));
}

/** Grammage in g/m² of a sheet from its weight in pounds and its size: for board sold by the bundle. */
export function grammageOfSheet(pounds: Rational, height: Length, width: Length): Rational {
  const area = divideRational(multiplyRational(height, width), squareMillimetresPerSquareMetre);
  return divideRational(multiplyRational(pounds, gramsPerPound), area);
}

/** Bulk in cm³/g where the author gives none: an ordinary uncoated paper. Common practice, no source. */
export const usualBulk: Rational = rational(5, 4);

/**
 * Thickness of one sheet from its grammage in g/m² and its bulk in cm³/g: grammage × bulk ÷ 1000 millimetres.
 * Source: the definition of bulk (apparent specific volume); ISO 534 from memory.
 */
export function thicknessFromGrammage(grammage: Rational, bulk: Rational): Length {
  return lengthOf(divideRational(multiplyRational(grammage, bulk), rational(1000)));
}

/** A grammage in g/m² that was read, or why the text is none, with the half-open span of offsets in it. */
export type GrammageReading =
  | { readonly ok: true; readonly grammage: Rational; readonly pounds: { readonly weight: Rational; readonly grade: BasisGrade } | null }
  | { readonly ok: false; readonly code: "value-type" | "value-unknown" | "value-range"; readonly message: string; readonly hint: string; readonly start: number; readonly end: number };

const gradeWords: Readonly<Record<string, BasisGrade>> = {
  bond: "bond", writing: "bond", ledger: "bond", cover: "cover", bristol: "bristol", index: "index", tag: "tag", book: "book", text: "book", offset: "book",
};

const forms = "write grams per square metre, such as 300 or 300 g/m2, or pounds with their grade, such as 65 lb cover";
const longestGrammageText = 60;

/** Reads `300`, `300 g/m²`, `300 gsm`, `65 lb cover`, `20# bond`; a bare number is g/m². Pounds need their grade: 65 lb cover is 176 g/m², 65 lb text 96. */
export function readGrammage(text: string): GrammageReading {
  const problem = (code: Extract<GrammageReading, { ok: false }>["code"], message: string, hint: string, start: number, end: number): GrammageReading =>
    ({ ok: false, code, message, hint, start, end });
  if (text.length > longestGrammageText) return problem("value-type", `${quoted(text)} is too long for a weight of paper (${text.length} characters)`, forms, 0, text.length);
  const number = readNumber(text, 0, text.length);
  if (!number.ok) return problem("value-type", number.message, number.hint.startsWith("start with") ? forms : number.hint, number.start, number.end);
  if (number.value.n <= 0n) return problem("value-range", `${quoted(text)} is not above zero`, "write the weight on the packet", number.start, number.end);
  const rest = text.slice(number.end);
  const unit = rest.trim().toLowerCase();
  const start = number.end + rest.length - rest.trimStart().length;
  const end = text.trimEnd().length;
  if (/^(?:|gsm|g|g\s*\/\s*(?:m2|m²|m\^2|qm|sqm|sq m)|g\s*m-2|gm2|gm²)$/u.test(unit)) return { ok: true, grammage: number.value, pounds: null };
  const inPounds = /^(?:lbs?\.?|#|pounds?)\s*(.*)$/u.exec(unit);
  if (!inPounds) return problem("value-type", `${quoted(rest)} is not a unit of paper weight that is known here`, forms, start, end);
  const gradeText = inPounds[1]!.replace(/\s+(?:paper|stock|weight)$/u, "");
  const grades = "bond, writing, ledger, cover, bristol, index, tag, book, text or offset";
  if (gradeText === "") return problem("value-type", `${quoted(text)} does not say pounds of what`, `add the grade: ${grades}`, number.start, end);
  const grade = Object.hasOwn(gradeWords, gradeText) ? gradeWords[gradeText] : undefined;
  if (!grade) return problem("value-unknown", `${quoted(gradeText)} is not a grade of paper that is known here`, `use ${grades}`, end - inPounds[1]!.length, end);
  return { ok: true, grammage: grammageFromPounds(number.value, grade), pounds: { weight: number.value, grade } };
}

function gramsPerSquareMetrePerPound(grade: BasisGrade): Rational {
  const { height, width } = basisSizes[grade];
  return divideRational(grammageOfSheet(rational(1), height, width), sheetsPerReam);
}
