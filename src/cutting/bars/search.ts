import type { LpSolver } from '../lp';
import { close } from './close';
import { columnsOf } from './columns';
import { divesFrom } from './dive';
import { fullBars } from './full/index';
import { generate } from './generate';
import type { Ledger } from './ledger';
import { allOf } from './pack';
import { pricingOf } from './pricing';
import { seedPatterns } from './seeds';
import type { Task } from './task';
import { correctValues } from './values';

/** Rounds of generating at the root; usual jobs need some dozens. */
const MOST_ROUNDS = 2000;

/** Rounds of full bars before the first relaxation; and where kinds are many but their table small, so that a round costs less than a relaxation. */
const SEED_ROUNDS = 6;
const MANY_SEED_ROUNDS = 40;
const MANY_KINDS = 100;
const SMALL_TABLE = 4_000_000;

/** Rounds of correcting values, without a solver. */
const CORRECTIONS = 80;

/** Turns of diving and closing, and what each may take: the more, the longer it goes on. */
const TURNS = 10;
const FIRST_PLACES = 30;
/** Where patterns are too many to be listed, there are dives only. */
const UNLISTED_PLACES = 60;
const FIRST_NODES = 150;
const FIRST_PATTERNS = 3000;

/** The whole search, a step at a time. */
export function* search(task: Task, ledger: Ledger, lp: LpSolver | undefined, seed: number): Generator<void> {
  if (ledger.done()) return;
  if (!lp) {
    yield* correctValues(task, ledger, CORRECTIONS);
    return;
  }
  yield* fullBars(task, ledger, lp, seed);
  if (ledger.done()) return;
  const rest = allOf(task);
  const pricing = pricingOf(task);
  const columns = columnsOf(task, lp, rest);
  const dives = divesFrom({ task, lp, columns, pricing, ledger }, rest);
  let closing: Generator<void, boolean> | undefined;
  try {
    yield* proved(lp);
  } finally {
    closing?.return(false);
    dives.dispose();
    columns.dispose();
  }

  /** Generates, dives, and closes the gap by branching, in turns. */
  function* proved(solver: LpSolver): Generator<void> {
    for (const pattern of ledger.best.bars) columns.add(pattern);
    yield* seedPatterns(task, columns, pricing, rest, seedRounds(task), seed);
    const root = yield* generate(task, columns, pricing, rest, {
      enough: (bound, cost) => ledger.roundUp(bound) >= ledger.roundUp(cost - ledger.fuzz),
      mostRounds: MOST_ROUNDS,
      byLength: true,
    });
    if (root) ledger.prove(root.bound);
    let more = root !== undefined;
    for (let turn = 0; turn < TURNS && !ledger.done() && (more || closing || turn < 2); turn++) {
      if (more) more = yield* dives.dive((turn > 0 && !closing ? UNLISTED_PLACES : FIRST_PLACES) * 2 ** turn);
      if (ledger.done()) break;
      columns.setRest(rest);
      const sharp = closing
        ? undefined
        : yield* generate(task, columns, pricing, rest, {
            enough: (bound, cost) => bound >= cost - ledger.fuzz,
            mostRounds: MOST_ROUNDS,
            byLength: false,
          });
      if (sharp) closing = close(task, ledger, solver, sharp, FIRST_PATTERNS * 2 ** Math.min(turn, 5));
      for (let n = 0; closing && n < FIRST_NODES * 2 ** turn; n++) {
        const { done, value } = closing.next();
        if (done) {
          closing = undefined;
          if (value) more = false;
          break;
        }
        yield;
      }
    }
  }
}

function seedRounds({ kinds, sources }: Task): number {
  const cells = kinds.length * sources.reduce((longest, { most }) => Math.max(longest, most), 0);
  return kinds.length >= MANY_KINDS && cells <= SMALL_TABLE ? MANY_SEED_ROUNDS : SEED_ROUNDS;
}
