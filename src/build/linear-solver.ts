// Loads the HiGHS solver and puts it behind the few questions that cut plans ask.
import type { Highs, Model, ModelData } from "highs";
import type { FractionalAnswer, LinearProgram, LinearSolver, ProgramColumn, ProgramRow, WholeAnswer, WholeLimits } from "../3-plan/cutting/linear-solver.ts";

const settings = { output_flag: false, random_seed: 0 };

let loaded: Promise<LinearSolver> | null = null;

/** A solver that is ready for use, loaded once. Loading takes a third of a second, so only who has a class to plan should ask for it; solving waits for nothing. */
export function loadLinearSolver(): Promise<LinearSolver> {
  return (loaded ??= load());
}

async function load(): Promise<LinearSolver> {
  const { default: highsModule } = await import("highs");
  // The package's types describe its CommonJS half, where the loader is a property; imported as a module, the loader is the default export itself.
  const highs = await (highsModule as unknown as typeof highsModule.default)();
  return {
    openProgram: (rows) => openProgram(highs, rows),
    solveWhole: (rows, columns, limits) => solveWhole(highs, rows, columns, limits),
  };
}

function packed(rows: readonly ProgramRow[], columns: readonly ProgramColumn[], whole: boolean): ModelData {
  const starts = new Int32Array(columns.length + 1);
  columns.forEach((column, index) => { starts[index + 1] = starts[index]! + column.rows.length; });
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: Float64Array.from(columns, (column) => column.cost),
    colLower: Float64Array.from(columns, (column) => column.lower),
    colUpper: Float64Array.from(columns, (column) => column.upper),
    rowLower: Float64Array.from(rows, (row) => row.lower),
    rowUpper: Float64Array.from(rows, (row) => row.upper),
    matrix: { format: "csc", numRows: rows.length, numCols: columns.length, starts, indices: Int32Array.from(columns.flatMap((column) => column.rows)), values: Float64Array.from(columns.flatMap((column) => column.entries)) },
    ...(whole ? { integrality: new Int32Array(columns.length).fill(1) } : {}),
  };
}

function openProgram(highs: Highs, rows: readonly ProgramRow[]): LinearProgram {
  const model: Model = highs.createModel(packed(rows, [], false));
  model.options.set({ ...settings, presolve: "off" });
  return {
    addColumns: (columns) => {
      for (const column of columns) model.addCol(column.cost, column.lower, column.upper, { indices: [...column.rows], values: [...column.entries] });
    },
    setColumnLimits: (column, lower, upper) => { model.changeColBounds(column, lower, upper); },
    setRowLimits: (row, lower, upper) => { model.changeRowBounds(row, lower, upper); },
    solveFractional: (): FractionalAnswer | null => {
      model.run();
      if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return null;
      const solution = model.getSolution();
      return { value: model.getObjectiveValue(), columns: solution.colValue, duals: solution.rowDual };
    },
    close: () => model.dispose(),
  };
}

function solveWhole(highs: Highs, rows: readonly ProgramRow[], columns: readonly ProgramColumn[], limits: WholeLimits): WholeAnswer | null {
  return highs.withModel(packed(rows, columns, true), (model): WholeAnswer | null => {
    model.options.set({ ...settings, mip_max_nodes: limits.nodes, mip_rel_gap: 0, mip_abs_gap: 1e-6, ...(limits.target === undefined ? {} : { objective_target: limits.target }) });
    if (limits.start) model.setSolution({ colValue: limits.start });
    let count = 0n;
    model.run({
      [highs.constants.callbackType.mipInterrupt](event) {
        count = event.data.mip_total_lp_iterations ?? count;
        if (count > BigInt(limits.iterations)) event.interrupt();
        return undefined;
      },
    });
    const { columns: values, value } = { columns: model.getSolution().colValue, value: model.getObjectiveValue() };
    if (values.length !== columns.length || model.info.get("primal_solution_status") !== 2) return null;
    return { value, columns: values.map(Math.round), isBest: model.getModelStatus() === highs.constants.modelStatus.optimal };
  });
}
