import type { LpSolver } from '../lp';
import { takeFrom } from './columns';
import { allPatterns } from './enumerate';
import { exactChoice } from './exact';
import type { Generated } from './generate';
import type { Ledger } from './ledger';
import { allOf } from './pack';
import type { Task } from './task';

/** For each pattern that may be listed, steps to find it. */
const STEPS = 300;

/**
 * Closes the gap between the best and the bound: every pattern that can lie in something better is listed, and the best choice among them
 * sought, for as long as it takes. What that proves holds for all ways of cutting. Returns false at once where they are more than `most`.
 */
export function* close(
  task: Task,
  ledger: Ledger,
  lp: LpSolver,
  { proof, bound }: Generated,
  most: number,
): Generator<void, boolean> {
  const rest = allOf(task);
  const over = ledger.below() - bound;
  const patterns = yield* allPatterns(task, rest, proof, over, { patterns: most, steps: most * STEPS });
  if (!patterns) return false;
  const isWhole = yield* exactChoice(task, rest, patterns, ledger, lp, (chosen) => {
    const left = [...rest.left];
    const bars = chosen.flatMap(({ source, times }) => {
      const taken = takeFrom(task, left, times);
      return taken.length > 0 ? [{ source, times: taken }] : [];
    });
    ledger.offer({ bars, missing: left });
  });
  if (isWhole) ledger.prove(ledger.cost);
  return true;
}
