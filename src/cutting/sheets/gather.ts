import type { Chance } from './chance';
import { forestOf } from './forest';
import { goOn, type Known, takeFrom } from './known';
import { NOISE } from './merits';
import { offcutIn } from './offcut';
import { plantCells } from './plant-cells';
import { type Aim, walkOf } from './walk';

/** Weights beside the area of the largest offcut, in parts of a sheet. */
const MISSING = 10;
const GATHERED = 0.1;

/** Looks for a larger offcut at the same cost. Returns its step. */
export function gathering(known: Known, chance: Chance): () => void {
  const { scaled } = known;
  const forest = forestOf(scaled);
  const walk = walkOf(forest, chance);
  const { tally, memory: M, at } = forest;
  const unit = Math.max(1, ...scaled.sheets.map(({ length, width }) => length * width));
  const offcut = (): number => {
    let most = 0;
    for (let i = 0; i < M[at.lefts]; i++) {
      const length = M[at.lengths + i];
      const width = M[at.widths + i];
      if (length * width > most) most = Math.max(most, offcutIn(scaled, length, width));
    }
    return most;
  };
  const aim: Aim = {
    budget: 0,
    value: () => (MISSING * tally.missing - offcut()) / unit - GATHERED * tally.gathered,
    mostMissing: (value) => ((value + 1 + GATHERED * M[at.roots]) * unit) / MISSING,
  };
  let goal = { missing: Number.POSITIVE_INFINITY, cost: 0 };
  return () => {
    const { missing, cost } = known.merits;
    if (missing > 0) return;
    if (missing < goal.missing || cost < goal.cost - NOISE) {
      goal = known.merits;
      plantCells(forest, known.best);
      aim.budget = cost + NOISE;
      walk.begin(aim);
    }
    goOn(walk, () => tally.missing === 0 && offcut() > known.merits.offcut && takeFrom(forest, walk, known));
  };
}
