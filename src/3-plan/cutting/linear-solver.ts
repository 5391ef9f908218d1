// What the cut plans ask of a solver of linear and integer programs; it is handed in, since loading one reads a file.

/** One column of a linear program: its cost, its limits and its entries in the rows. */
export interface ProgramColumn {
  readonly cost: number;
  readonly lower: number;
  readonly upper: number;
  readonly rows: readonly number[];
  readonly entries: readonly number[];
}

/** One row: the limits of the sum of its entries. */
export interface ProgramRow {
  readonly lower: number;
  readonly upper: number;
}

/** The best fractional answer; `null` from the solver means that there is none. */
export interface FractionalAnswer {
  readonly value: number;
  readonly columns: Float64Array;
  /** What one more unit in each row would cost. */
  readonly duals: Float64Array;
}

/** An answer in whole numbers; `isBest` when the solver has proved that its columns allow none better. */
export interface WholeAnswer {
  readonly value: number;
  readonly columns: Float64Array;
  readonly isBest: boolean;
}

/** How long a search in whole numbers may go on, in counts, so that results repeat on every computer. */
export interface WholeLimits {
  readonly nodes: number;
  /** Simplex iterations within one search. */
  readonly iterations: number;
  /** A cost that is good enough to stop. */
  readonly target?: number;
  /** An answer to start from. */
  readonly start?: Float64Array;
}

/** A minimisation that grows by columns. */
export interface LinearProgram {
  addColumns(columns: readonly ProgramColumn[]): void;
  setColumnLimits(column: number, lower: number, upper: number): void;
  setRowLimits(row: number, lower: number, upper: number): void;
  solveFractional(): FractionalAnswer | null;
  /** Gives the memory back; the program is not used afterwards. */
  close(): void;
}

/** A solver of linear and integer programs. */
export interface LinearSolver {
  openProgram(rows: readonly ProgramRow[]): LinearProgram;
  /** Minimises with every column a whole number; `null` when nothing was found within the limits. */
  solveWhole(rows: readonly ProgramRow[], columns: readonly ProgramColumn[], limits: WholeLimits): WholeAnswer | null;
}
