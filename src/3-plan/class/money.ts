// Money in whole cents: prices are exact fractions as written, and are rounded only where a cent is the smallest coin.
import { rational } from "../../units/rational.ts";
import type { Rational } from "../../units/rational.ts";

/** A price in cents, the nearest one; half a cent goes up. */
export function centsOf(price: Rational): number {
  return Number((price.n * 200n + price.d) / (2n * price.d));
}

/** Whole cents for one piece out of a pack, rounded to the nearest: only for weighing one sheet size against another. */
export function centsPerPiece(price: Rational, pack: number): number {
  return Math.round(centsOf(price) / pack);
}

/** Hundredths of a cent as whole cents, rounded up. */
export function ceilCents(hundredths: number): number {
  return Math.ceil(hundredths / 100 - 1e-9);
}

/** "€ 14.50": cents with the mark of the currency before them. */
export function printMoney(cents: number, currency: string): string {
  const whole = Math.trunc(cents / 100);
  return `${currency}\u00a0${whole}.${String(Math.abs(cents % 100)).padStart(2, "0")}`;
}

/** A sum with a margin on it, rounded up to a whole cent: `share` is 0.4 for forty per cent. */
export function withMargin(cents: number, share: Rational): number {
  const factor = rational(share.n + share.d, share.d);
  return Number((BigInt(cents) * factor.n + factor.d - 1n) / factor.d);
}
