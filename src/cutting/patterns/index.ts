import type { LpSolver } from '../lp';
import type { Cells } from '../sheets/cell';
import type { Scaled } from '../sheets/scaled';
import { cheaper } from './cheaper';
import type { Pause } from './generate';
import { lpBound } from './lp-bound';
import { patternOf } from './pattern';
import { emptyPool, type Pool } from './pool';
import { areaBound, weightBound } from './quick-bound';
import { cellsOf, holdsAll } from './whole';

/**
 * A search among patterns, step by step, with a bound. Keeps what it was offered or found itself that costs least. Where sets must stay on one
 * sheet, where only one stage is allowed, or with very many kinds it makes no patterns of its own: then it brings the bound alone.
 */
export interface PatternSearch {
  /** No way of cutting all kinds, whatever its stages, costs less. Infinity: there are not enough sheets by far. */
  readonly bound: number;
  /** Holds every piece of every kind. A new object when it has become cheaper. */
  readonly best: Cells | undefined;
  /** Of the best; Infinity without one. */
  readonly cost: number;
  /** About 10 ms of work. False when nothing is left to do: the bound is met, or no way of going on is known. */
  step(): boolean;
  /** Takes sheets as patterns, and the whole as the best where it holds everything and costs less. */
  offer(cells: Cells): void;
  /** Frees what the solver holds; no step after that. */
  dispose(): void;
}

export interface PatternMeans {
  readonly lp: LpSolver;
  readonly seed: number;
}

/** Prices that differ by less are the same. */
const NOISE = 1e-9;
/** One step in so many is spent on the bound: before the first way of cutting has been worked out from patterns, and after. By trial. */
const BOUND_EVERY = { atFirst: 12, later: 5 };

/** Pauses of the search for cheaper ways in one step: of few kinds they lie close together. By trial. */
const pausesFor = (kinds: number): number => Math.max(1, Math.min(25, Math.round(750 / kinds)));

/** What the two halves of the search share. */
export interface Known {
  readonly pool: Pool;
  readonly patterns: Pool['patterns'];
  bound: number;
  cost: number;
  best: Cells | undefined;
  /** Patterns have once been put together to a whole, or it was seen that they can't be for less. */
  dived: boolean;
}

export function startPatterns(scaled: Scaled, { lp, seed }: PatternMeans): PatternSearch {
  const pool = emptyPool();
  const known: Known = {
    pool,
    patterns: pool.patterns,
    bound: areaBound(scaled),
    cost: Number.POSITIVE_INFINITY,
    best: undefined,
    dived: false,
  };
  const finding = cheaper(scaled, lp, seed, known);
  const bounding = bounds(scaled, lp, known);
  const pauses = pausesFor(scaled.kinds.length);
  let steps = 0;
  let found = false;
  let bounded = false;

  const resume = (run: Generator<Pause, void>, times: number): boolean => {
    for (let i = 0; i < times; i += 1) if (run.next().done === true) return true;
    return false;
  };
  return {
    get bound() {
      return Math.min(known.bound, known.cost);
    },
    get best() {
      return known.best;
    },
    get cost() {
      return known.cost;
    },
    step() {
      if (known.cost <= known.bound + NOISE || scaled.kinds.length === 0) return false;
      steps += 1;
      const every = known.dived ? BOUND_EVERY.later : BOUND_EVERY.atFirst;
      if (!bounded && (found || steps % every === 1)) bounded = resume(bounding, 1);
      else if (!found) found = resume(finding, pauses);
      return !(bounded && found) && known.cost > known.bound + NOISE;
    },
    offer(cells) {
      const patterns = cells.map(({ sheet, cell }) => patternOf(scaled, sheet, cell));
      for (const pattern of patterns) pool.add(pattern);
      const cost = patterns.reduce((sum, { price }) => sum + price, 0);
      if (cost < known.cost - NOISE && holdsAll(scaled, patterns)) {
        known.cost = cost;
        known.best = cellsOf(scaled, patterns);
      }
    },
    dispose() {
      finding.return();
      bounding.return();
    },
  };
}

function* bounds(scaled: Scaled, lp: LpSolver, known: Known): Generator<Pause, void> {
  yield* weightBound(scaled, known);
  yield* lpBound(scaled, lp, known);
}
