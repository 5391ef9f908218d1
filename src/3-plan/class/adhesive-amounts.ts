// How much adhesive a class needs: the surfaces of its steps, and what is laid on them; tapes by their length.
import type { Definition } from "../../1-definition/types.ts";
import { mm } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { addRational, compareRational, multiplyRational, rational, rationalToNumber } from "../../units/rational.ts";
import type { Rational } from "../../units/rational.ts";
import type { Spread } from "../bench/spread.ts";
import type { DraftStep } from "../binding.ts";

/** What all books of a class take of one adhesive. */
export interface AdhesiveAmount {
  readonly name: string;
  readonly steps: readonly string[];
  /** For what is brushed on: the surface in whole square centimetres, and grams with what stays in pot and brush. */
  readonly brushed: { readonly squareCentimetres: number; readonly gramsPerSquareMetre: number; readonly grams: number } | null;
  /** For what comes off a roll: its length. */
  readonly taped: Length | null;
}

/** As much again stays in the pot and the brush. Common practice, no source. */
const withLosses = 2n;

/** Tape is laid along the long side of what it covers; what is wider than this has it along all its edges. */
const widestTaped = mm(60);

/** Each adhesive of the steps once, for `sets` books. A tape that is a part itself covers nothing and is left out. */
export function amountsOf(definition: Definition, drafts: readonly DraftStep[], sets: number): readonly AdhesiveAmount[] {
  const glued = drafts.flatMap((draft) => (draft.glueing ? [{ id: draft.id, adhesive: definition.adhesives[draft.glueing.job]!, spread: draft.glueing.spread }] : []));
  const names = [...new Set(glued.filter(({ spread }) => spread.length > 0).map(({ adhesive }) => adhesive.name))];
  return names.map((name): AdhesiveAmount => {
    const own = glued.filter(({ adhesive, spread }) => adhesive.name === name && spread.length > 0);
    const { gramsPerSquareMetre } = own[0]!.adhesive;
    const spread = own.flatMap((each) => each.spread);
    const steps = own.map(({ id }) => id);
    if (gramsPerSquareMetre === null) return { name, steps, brushed: null, taped: sum(spread.map(tapeFor), sets) as Length };
    const area = sum(spread.map(({ height, width, count }) => multiplyRational(multiplyRational(height, width), rational(count))), sets);
    return {
      name, steps, taped: null,
      brushed: {
        squareCentimetres: Math.ceil(rationalToNumber(area) / 100),
        gramsPerSquareMetre,
        // Grams: square millimetres to square metres, times what is laid on, with the losses; up to the next ten.
        grams: 10 * Math.ceil(rationalToNumber(multiplyRational(area, rational(BigInt(gramsPerSquareMetre) * withLosses, 1_000_000n))) / 10),
      },
    };
  });
}

function sum(each: readonly Rational[], times: number): Rational {
  return multiplyRational(each.reduce((total, one) => addRational(total, one), rational(0)), rational(times));
}

function tapeFor({ height, width, count }: Spread): Rational {
  const [long, short] = compareRational(height, width) >= 0 ? [height, width] : [width, height];
  const one = compareRational(short, widestTaped) <= 0 ? long : multiplyRational(addRational(long, short), rational(2));
  return multiplyRational(one, rational(count));
}
