// What a formula computes with: an exact number and its dimension.
import type { Rational } from "./rational.ts";

/** A number with its dimension: 0 a plain number, 1 a length in millimetres, 2 an area in square millimetres. */
export interface Quantity {
  readonly value: Rational;
  readonly dimension: number;
}
