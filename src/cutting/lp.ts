import loadHighs, { type Highs } from 'highs';

/** A row of the master problem: what its sum must lie between. */
export interface MasterRow {
  readonly lower: number;
  readonly upper: number;
}

export interface Relaxed {
  readonly cost: number;
  /** What one more on each row would cost. */
  readonly duals: Float64Array;
  /** How often each column is used, in parts. */
  readonly amounts: Float64Array;
}

export interface Whole {
  readonly cost: number;
  readonly amounts: readonly number[];
  /** No whole-numbered answer over these columns costs less (up to the tolerance of the solver). */
  readonly bound: number;
}

/**
 * Columns (ways of cutting) with a price, rows (what is wanted, what there is). Grows by columns; each solve starts from the last basis.
 * Owns memory outside JavaScript: dispose of it.
 */
export interface Master {
  /** Returns the column's number. Upper bound absent: any amount. */
  addColumn(cost: number, rows: readonly number[], values: readonly number[], upper?: number): number;
  /** What a row's sum must lie between from now on. */
  setRow(row: number, lower: number, upper: number): void;
  /** How much of a column there can be from now on. */
  setUpper(column: number, upper: number): void;
  /** What all columns cost from now on. */
  setCosts(costs: Float64Array): void;
  /** The linear relaxation; undefined when it is infeasible. */
  relax(): Relaxed | undefined;
  /**
   * The best whole-numbered answer found within so many nodes (the same every time), or undefined. `patienceS` is a last resort against a
   * node that takes for ever, in seconds.
   */
  whole(limits: { readonly nodes: number; readonly patienceS: number }): Whole | undefined;
  dispose(): void;
}

/** The solver of linear programs, loaded once. */
export type LpSolver = (rows: readonly MasterRow[]) => Master;

/**
 * Loads the solver (HiGHS in WebAssembly: 55–80 ms, once). In a browser `wasmUrl` says where its binary lies. Rejects where WebAssembly
 * can't be had.
 */
export async function loadLp(wasmUrl?: string): Promise<LpSolver> {
  const highs = await loadHighs(wasmUrl === undefined ? {} : { locateFile: () => wasmUrl });
  return (rows) => masterOf(highs, rows);
}

const INTEGER = 1;
const CONTINUOUS = 0;
/** The solver's numbers for the dual and the primal simplex method. */
const DUAL = 1;
const PRIMAL = 4;
/** Longer than anybody waits: the solver takes no infinite limit. */
const ALWAYS = 1e9;

interface Columns {
  readonly cost: number[];
  readonly upper: number[];
  /** Where each column's entries begin, and where the last one's end. */
  readonly starts: number[];
  readonly indices: number[];
  readonly values: number[];
}

const noColumns = (): Columns => ({ cost: [], upper: [], starts: [0], indices: [], values: [] });

function masterOf(highs: Highs, rows: readonly MasterRow[]): Master {
  const model = highs.createModel();
  // No gap is small enough: prices and values may be large numbers that differ little.
  model.options.set({ output_flag: false, random_seed: 1, mip_rel_gap: 0 });
  if (rows.length > 0)
    model.addRows({
      lower: Float64Array.from(rows, ({ lower }) => lower),
      upper: Float64Array.from(rows, ({ upper }) => upper),
      matrix: {
        format: 'csr',
        numRows: rows.length,
        numCols: 0,
        starts: new Int32Array(rows.length + 1),
        indices: new Int32Array(0),
        values: new Float64Array(0),
      },
    });
  const { optimal } = highs.constants.modelStatus;
  let columns = 0;
  let method: typeof DUAL | typeof PRIMAL = DUAL;
  /** Columns that the solver has not been given yet: it takes many at once far quicker than one by one. */
  let waiting = noColumns();
  const give = (): void => {
    const { cost, upper, starts, indices, values } = waiting;
    if (cost.length === 0) return;
    model.addCols({
      cost: Float64Array.from(cost),
      lower: new Float64Array(cost.length),
      upper: Float64Array.from(upper),
      matrix: {
        format: 'csc',
        numRows: rows.length,
        numCols: cost.length,
        starts: Int32Array.from(starts),
        indices: Int32Array.from(indices),
        values: Float64Array.from(values),
      },
    });
    waiting = noColumns();
  };
  const setAll = (type: typeof INTEGER | typeof CONTINUOUS): void => {
    for (let i = 0; i < columns; i += 1) model.changeColIntegrality(i, type);
  };
  return {
    addColumn(cost, indices, values, upper = Number.POSITIVE_INFINITY) {
      waiting.cost.push(cost);
      waiting.upper.push(upper);
      waiting.indices.push(...indices);
      waiting.values.push(...values);
      waiting.starts.push(waiting.indices.length);
      columns += 1;
      return columns - 1;
    },
    setRow(row, lower, upper) {
      model.changeRowBounds(row, lower, upper);
      method = DUAL;
    },
    setUpper(column, upper) {
      give();
      model.changeColBounds(column, 0, upper);
      method = DUAL;
    },
    setCosts(costs) {
      give();
      // The last basis stays feasible, so the method stays too.
      if (columns > 0) model.changeColsCost({ kind: 'range', from: 0, to: columns - 1 }, costs);
    },
    relax() {
      give();
      // New columns leave the last basis feasible, new limits leave it optimal in the dual: each has its method. Nothing to presolve then.
      model.options.set({ presolve: 'off', simplex_strategy: method });
      method = PRIMAL;
      model.run();
      if (model.getModelStatus() !== optimal) return undefined;
      const { rowDual, colValue } = model.getSolution();
      return { cost: model.getObjectiveValue(), duals: rowDual, amounts: colValue };
    },
    whole({ nodes, patienceS }) {
      give();
      setAll(INTEGER);
      model.options.set({
        presolve: 'choose',
        simplex_strategy: DUAL,
        mip_max_nodes: nodes,
        time_limit: model.getRunTime() + patienceS,
      });
      model.run();
      const found = Number(model.info.get('primal_solution_status')) === 2;
      const answer = found
        ? {
            cost: model.getObjectiveValue(),
            amounts: Array.from(model.getSolution().colValue, Math.round),
            bound: Number(model.info.get('mip_dual_bound')),
          }
        : undefined;
      setAll(CONTINUOUS);
      model.options.set({ time_limit: ALWAYS });
      return answer;
    },
    dispose: () => model.dispose(),
  };
}
