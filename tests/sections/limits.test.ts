import { describe, expect, it } from 'vitest';
import { design, newJob } from '../../src/flow';
import { liftingPoints } from '../../src/sections/lifting';
import { breachesOf, longestRound } from '../../src/sections/limits';
import { jobOf } from '../elements/job-of';

describe('round the turn of a corridor', () => {
  it('what is too wide to turn is shoved sideways through one leg and lengthwise through the other', () => {
    // 1000 wide does not go lengthwise through 900, but across it: 900 long at most. Then lengthwise through 1200.
    expect(longestRound(900, 1200, 1000)).toBe(900);
    expect(longestRound(1200, 900, 1000)).toBe(900);
    // Just as wide as the leg it goes through lengthwise.
    expect(longestRound(900, 1200, 1200)).toBe(900);
    expect(longestRound(1200, 900, 1200)).toBe(900);
    expect(longestRound(900, 1200, 1200.5)).toBe(0);
    expect(longestRound(1200, 900, 1200.5)).toBe(0);
  });

  it('a load that wide passes up to that length', () => {
    const carry = {
      ...newJob('way').carry,
      shopDoorWidth: 3000,
      shopDoorHeight: 3000,
      vanLength: 9000,
      vanWidth: 3000,
      vanHeight: 3000,
      routeDoorWidth: 3000,
      routeDoorHeight: 3000,
      corridorBefore: 900,
      corridorAfter: 1200,
    };
    const load = { length: 900, depth: 1000, height: 1100, weightKg: 1 };
    expect(breachesOf(load, carry)).toEqual([]);
    expect(breachesOf({ ...load, length: 901 }, carry)).toMatchObject([
      { what: 'length round the corridor’s turn', value: 901, limit: 900 },
    ]);
  });
});

describe('where a section is lifted', () => {
  it('is a fifth of its length from the end that is nearer to where it balances', () => {
    const made = design(
      jobOf({
        runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }],
        joins: { by: 'hand', at: [{ run: 1, x: 785 }] },
      }),
    );
    expect(made.sections).toHaveLength(2);
    for (const { pieces, liftingPoints: points } of made.sections) {
      const [{ from, to }] = pieces;
      const [a, b] = points.map((p) => p[0]);
      expect(Math.min(a - from, to - b)).toBeCloseTo((to - from) / 5, 6);
      expect(Math.max(a - from, to - b)).toBeGreaterThanOrEqual((to - from) / 5 - 1e-6);
    }
  });

  it('is half as near where it balances nearer to that end than a fifth', () => {
    const { rod } = design(jobOf({}));
    const xs = (balance: number) =>
      liftingPoints(rod, [{ run: 'A', from: 0, to: 1000 }], [balance, 0, 500]).map((p) => p[0]);
    expect(xs(500)).toEqual([200, 800]);
    expect(xs(350)).toEqual([200, 500]);
    expect(xs(700)).toEqual([600, 800]);
    expect(xs(150)).toEqual([75, 225]);
  });
});

describe('the bolts of a join', () => {
  const boltsAt = (bolts: readonly number[], elements = {}) => {
    const made = design(
      jobOf({
        runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }],
        joins: { by: 'hand', at: [{ run: 1, x: 785 }] },
        fit: { bolts },
        elements,
      }),
    );
    expect(made.joins).toHaveLength(1);
    return { bolts: made.joins[0].bolts, rod: made.rod };
  };

  it('stand between the plates: above the lower one’s top, below the upper one’s underside', () => {
    const { rod } = boltsAt([]);
    const [low, high] = [rod.timber.face, rod.frameHeight - rod.timber.face];
    expect(rod.frameLow).toBe(0);
    expect(low).toBe(38);
    expect(boltsAt([low - 1, low, low + 1, 500, high - 1, high, high + 1]).bolts).toEqual([low + 1, 500, high - 1]);
  });

  it('on a kick board count from where the frame starts', () => {
    const kicked = { plinth: { style: 'kicked', recess: 30, height: 100 } };
    expect(boltsAt([], kicked).rod.frameLow).toBe(100);
    // 100 + 38
    expect(boltsAt([39, 100, 138, 139, 500], kicked).bolts).toEqual([139, 500]);
  });
});
