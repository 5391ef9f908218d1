// Random fractions, lengths and rulers for the laws in this folder.
import fc from "fast-check";
import { inches, lengthOf, mm } from "../../src/units/length.ts";
import type { Length, Unit } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";
import type { Rational } from "../../src/units/rational.ts";

/** Any fraction: mostly of book size, sometimes with terms far beyond what a float can count. */
export const anyRational: fc.Arbitrary<Rational> = fc.oneof(
  fc.tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: 1, max: 2_000 })).map(([n, d]) => rational(n, d)),
  fc.tuple(fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n }), fc.bigInt({ min: 1n, max: 10n ** 30n })).map(([n, d]) => rational(n, d)),
);

/** Any length, whatever its sign. */
export const anyLength: fc.Arbitrary<Length> = anyRational.map(lengthOf);

/** The steps that a definition may choose, with the unit they belong to. */
export const anyRuler: fc.Arbitrary<{ readonly governing: Unit; readonly step: Length }> = fc.constantFrom(
  ...[8, 16, 32, 64].map((denominator) => ({ governing: "in" as const, step: inches(1, denominator) })),
  ...["0.1", "0.25", "0.5", "1"].map((step) => ({ governing: "mm" as const, step: mm(step) })),
);
