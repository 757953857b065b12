import { describe, expect, it } from 'vitest';
import { type LpSolver, loadLp, startCutting } from '../../src/cut';
import type { CutProblem } from '../../src/vocabulary/cut-problem';

const BARS: CutProblem = {
  kind: 'bars',
  kerf: 3,
  trim: 10,
  stock: [
    { length: 2400, price: 5 },
    { length: 3600, price: 7 },
  ],
  pieces: [1411, 1321, 1306, 873, 631, 576, 509, 399, 363, 290].map((length) => ({ length, quantity: 7 })),
};

const SHEETS: CutProblem = {
  kind: 'sheets',
  kerf: 3,
  trim: 5,
  stock: [
    { length: 2440, width: 1220, price: 39 },
    { length: 3050, width: 1220, price: 48 },
  ],
  pieces: [732, 730, 497, 450, 408].map((length, i) => ({ length, width: 460 - 37 * i, quantity: 6, turnable: true })),
};

describe('a search', () => {
  it.each([BARS, SHEETS])('of $kind gives back what the solver holds, however early it is left', async (problem) => {
    const lp = await loadLp();
    for (const steps of [0, 1, 5, 10, 16]) {
      let held = 0;
      const counted: LpSolver = (rows) => {
        const master = lp(rows);
        held += 1;
        let open = true;
        return {
          ...master,
          dispose() {
            if (open) held -= 1;
            open = false;
            master.dispose();
          },
        };
      };
      const search = startCutting(problem, { seed: 1, lp: counted });
      for (let i = 0; i < steps && search.step(); i += 1);
      if (steps >= 10) expect(search.best.cost).toBeGreaterThan(0);
      search.dispose();
      expect(held, `after ${steps} steps`).toBe(0);
    }
  });
});
