import type { CutSearch, SheetPlan } from '../../vocabulary/cut-plan';
import type { SheetProblem } from '../../vocabulary/cut-problem';
import type { LpSolver } from '../lp';
import { type PatternSearch, startPatterns } from '../patterns/index';
import { boundOf } from './bound';
import type { Cell, Cells } from './cell';
import { NOISE } from './merits';
import { startRuin } from './ruin';
import { type Scaled, scaled } from './scaled';
import { toPlan } from './to-plan';
import { startWasteFree } from './waste-free';

export interface SheetMeans {
  readonly seed: number;
  /** With it, patterns are generated beside the search by chance, which gives better bounds and now and then cheaper plans. */
  readonly lp?: LpSolver;
}

/** Steps of ruin and recreate before patterns are begun. */
const ALONE = 8;
/**
 * Steps of the patterns in so many (measured on jobs and on the published instances): chance is quick to find what is cheap where hardly two
 * pieces are alike, and patterns go on where it ends; with some pieces of a kind patterns are the better ones from the beginning, and with
 * many of a kind, where many sheets are alike too, they are better by far.
 */
const TURNS = { atFirst: 1 / 4, later: 1 / 2, some: 2 / 3, alike: 9 / 10 };
/** Steps after which it is later: about three seconds. */
const FIRST_STEPS = 300;
/** Copies of a kind, on the average, from which on there are some of a kind, and from which on pieces are called alike. */
const SOME = 1.5;
const ALIKE = 8;
/** Steps of the patterns between two times that they are shown the sheets at which ruin and recreate stands. */
const SHOWN = 10;

/** A plan at once, and better ones as long as it is asked. */
export function startSheets(problem: SheetProblem, { seed, lp }: SheetMeans): CutSearch<SheetPlan> {
  const to = scaled(problem);
  const ruin = startRuin(to, { seed });
  /** For all pieces. */
  let bound = boundOf(to);
  ruin.stopAt(bound);
  let wasteFree = startWasteFree(to, bound);
  let patterns: PatternSearch | undefined;
  let open = lp !== undefined && to.kinds.length > 0;
  const pieces = to.kinds.reduce((sum, { quantity }) => sum + quantity, 0);
  const copies = pieces / to.kinds.length;
  let steps = 0;
  let turns = 0;
  let shows = 0;
  let shown = ruin.best;
  let shownBound = bound;
  let best = planOf(to, ruin.best, bound);

  /** A step towards knowing whether a sheet can be cut without waste; false when it is not the turn of that. */
  function byNoWaste(): boolean {
    if (!wasteFree || steps % 4 === 0) return false;
    if (!wasteFree.step()) {
      bound = Math.max(bound, wasteFree.bound);
      ruin.stopAt(bound);
      if (wasteFree.found) ruin.offer(wasteFree.found);
      wasteFree = undefined;
    }
    return true;
  }

  /** A step of the patterns; false when it is not their turn. */
  function byPatterns(): boolean {
    if (!lp || !open || steps <= ALONE || ruin.merits.missing > 0) return false;
    turns +=
      copies >= ALIKE ? TURNS.alike : copies >= SOME ? TURNS.some : steps > FIRST_STEPS ? TURNS.later : TURNS.atFirst;
    if (turns < 1) return false;
    turns -= 1;
    patterns ??= startPatterns(to, { lp, seed });
    if (++shows % SHOWN === 0) patterns.offer(ruin.current());
    if (ruin.merits.cost < patterns.cost - NOISE) patterns.offer(ruin.best);
    open = patterns.step();
    if (patterns.best && patterns.cost < ruin.merits.cost - NOISE) ruin.offer(patterns.best);
    bound = Math.max(bound, patterns.bound);
    ruin.stopAt(bound);
    if (!open) patterns.dispose();
    return true;
  }

  return {
    get best() {
      return best;
    },
    step() {
      steps++;
      const more = byNoWaste() || byPatterns() || ruin.step() || (open && ruin.merits.missing === 0);
      if (ruin.best !== shown || bound !== shownBound) {
        shown = ruin.best;
        shownBound = bound;
        best = planOf(to, shown, bound);
      }
      return more;
    },
    dispose: () => patterns?.dispose(),
  };
}

/** The plan of a way to cut; `bound` holds for all pieces. */
export function planOf(to: Scaled, cells: Cells, bound: number): SheetPlan {
  const missing = Int32Array.from(to.kinds, ({ quantity }) => quantity);
  const look = (cell: Cell): void => {
    if (cell.kind === 'piece') missing[cell.piece]--;
    else if (cell.kind === 'cut') cell.parts.forEach(look);
  };
  for (const { cell } of cells) look(cell);
  return toPlan(to, cells, missing.some((quantity) => quantity > 0) ? boundOf(to, missing) : bound);
}
