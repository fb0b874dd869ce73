import loadHighs from 'highs';

/** A row of a problem: what its sum must lie between; null is no limit. */
export interface Row {
  readonly least: number | null;
  readonly most: number | null;
}

/** A variable of a problem, from zero up. */
export interface Column {
  readonly cost: number;
  /** The most it may be; null is no limit. */
  readonly most: number | null;
  readonly whole: boolean;
  /** Row and factor of every row it stands in. */
  readonly entries: readonly (readonly [row: number, factor: number])[];
}

/** The least cost of columns whose rows keep to their limits. */
export interface Problem {
  readonly rows: readonly Row[];
  readonly columns: readonly Column[];
}

export interface SolveLimits {
  /** Branches looked at before it stops: a limit that gives the same answer on every machine, as a clock would not. */
  readonly nodes: number;
  /** A known answer to begin with, a value a column. */
  readonly start?: readonly number[];
}

export interface Answer {
  /** `limit`: the best found before the limit; `none`: nothing keeps to the rows, or nothing was found. */
  readonly status: 'optimal' | 'limit' | 'none';
  readonly cost: number;
  /** No answer costs less than this. */
  readonly bound: number;
  readonly values: readonly number[];
  /** What one more of each row's least would cost: only where no column is whole. */
  readonly prices: readonly number[];
}

/** Solves linear and whole-number problems (HiGHS, WebAssembly, one thread): the same problem, the same answer. */
export interface Solver {
  solve(problem: Problem, limits?: SolveLimits): Answer;
}

/** Loads the solver. */
export async function loadSolver(): Promise<Solver> {
  const highs = await loadHighs();
  const { modelStatus } = highs.constants;
  const limit = (value: number | null, none: number): number => value ?? none;
  return {
    solve({ rows, columns }, { nodes, start } = { nodes: 0 }) {
      const starts = [0];
      for (const { entries } of columns) starts.push((starts.at(-1) ?? 0) + entries.length);
      const entries = columns.flatMap((column) => column.entries);
      const whole = columns.some((column) => column.whole);
      return highs.withModel({
        numCols: columns.length,
        numRows: rows.length,
        colCost: columns.map(({ cost }) => cost),
        colLower: columns.map(() => 0),
        colUpper: columns.map(({ most }) => limit(most, highs.infinity)),
        rowLower: rows.map(({ least }) => limit(least, -highs.infinity)),
        rowUpper: rows.map(({ most }) => limit(most, highs.infinity)),
        matrix: {
          format: 'csc', numRows: rows.length, numCols: columns.length,
          starts, indices: entries.map(([row]) => row), values: entries.map(([, factor]) => factor),
        },
        ...(whole ? { integrality: Int32Array.from(columns, (column) => (column.whole ? 1 : 0)) } : {}),
      }, (model): Answer => {
        model.options.set({ output_flag: false, random_seed: 1 });
        if (whole && nodes > 0) model.options.set({ mip_max_nodes: nodes, mip_rel_gap: 0, mip_abs_gap: 1e-6 });
        if (start !== undefined) model.setSolution({ colValue: start });
        model.run();
        const status = model.getModelStatus();
        const solution = model.getSolution();
        const cost = model.getObjectiveValue();
        const found = status === modelStatus.optimal || (whole && Number.isFinite(cost) && Math.abs(cost) < 1e29 && solution.colValue.length === columns.length
          && keeps(rows, columns, solution.colValue));
        return {
          status: status === modelStatus.optimal ? 'optimal' : found ? 'limit' : 'none',
          cost,
          bound: whole ? Number(model.info.get('mip_dual_bound')) : cost,
          values: Array.from(solution.colValue),
          prices: Array.from(solution.rowDual),
        };
      });
    },
  };
}

/** Whether an answer keeps to its rows: after a stop at a limit the solver may hold none. */
function keeps(rows: readonly Row[], columns: readonly Column[], values: ArrayLike<number>): boolean {
  const sums = rows.map(() => 0);
  columns.forEach(({ entries }, index) => {
    for (const [row, factor] of entries) sums[row] = (sums[row] ?? 0) + factor * (values[index] ?? 0);
  });
  return rows.every(({ least, most }, index) =>
    (least === null || (sums[index] ?? 0) >= least - 1e-6) && (most === null || (sums[index] ?? 0) <= most + 1e-6));
}
