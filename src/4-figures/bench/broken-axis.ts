// Where points lie on paper when a long stretch without marks is left out of a drawing.

/** A direction of a drawing: true millimetres to paper, and where on paper a stretch is left out (null when nothing is). */
export interface BrokenAxis {
  readonly size: number;
  readonly breakAt: number | null;
  place(trueAt: number): number;
}

/** What is drawn along a direction. */
export interface AxisSpec {
  /** In true millimetres, from end to end. */
  readonly trueSize: number;
  /** On paper. */
  readonly size: number;
  readonly factor: number;
  /** Where on paper the break stands; what lies before it is measured from the start, what lies behind it from the end. Default the middle. */
  readonly breakAt?: number;
}

/** An axis with a stretch left out where the paper is smaller than the thing at that factor. Nothing that is marked may lie in the stretch. */
export function brokenAxis({ trueSize, size, factor, breakAt = size / 2 }: AxisSpec): BrokenAxis {
  const isWhole = size >= trueSize * factor - 1e-6;
  return {
    size, breakAt: isWhole ? null : breakAt,
    place: (trueAt) => (isWhole || trueAt * factor <= breakAt ? trueAt * factor : size - (trueSize - trueAt) * factor),
  };
}
