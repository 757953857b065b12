import { describe, expect, it } from 'vitest';
import { newJob } from '../../src/flow';
import { longestRound, teamKg } from '../../src/sections/limits';

describe('the longest piece round a corner', () => {
  // Thin ladder (w = 0): L = (a^(2/3) + b^(2/3))^(3/2); a calculus textbook problem, values in many of them.
  it.each([
    [1, 1, 2.8284],
    [2, 3, 7.0235],
    [2, 4, 8.3239],
    [900, 900, 2545.6],
    [900, 1200, 2959.7],
    [1000, 1200, 3107.0],
    [1200, 1500, 3810.5],
    [1500, 1500, 4242.6],
  ])('a ladder from a corridor of %s into one of %s: %s', (a, b, length) => {
    expect(longestRound(a, b, 0)).toBeCloseTo(length, length < 10 ? 4 : 1);
  });

  // Rectangle L × w: min over φ of (a cos φ + b sin φ − w)/(sin φ cos φ), computed for these tables by other means.
  it.each([
    [900, 1200, 300, 2355.9],
    [900, 1200, 400, 2153.9],
    [900, 1200, 600, 1747.4],
    [900, 1200, 800, 1331.2],
    [1000, 1200, 500, 2103.7],
    [1000, 1200, 650, 1801.5],
    [1200, 1500, 600, 2604.7],
    // Equal corridors: L = 2√2·a − 2w.
    [900, 900, 600, 1345.6],
    [1200, 1200, 600, 2194.1],
    [1500, 1500, 800, 2642.6],
  ])('corridors of %s and %s, a piece %s wide: %s', (a, b, width, length) => {
    expect(longestRound(a, b, width)).toBeCloseTo(length, 1);
  });

  it('a short wide piece is shoved sideways without turning: 900 of it, where turning allows 845.6', () => {
    expect(2 * Math.SQRT2 * 900 - 2 * 850).toBeCloseTo(845.6, 1);
    expect(longestRound(900, 900, 850)).toBe(900);
  });
});

describe('what a team may lift', () => {
  // HSE L23 paragraph 120: two people two thirds, three people half of the sum of what each may lift.
  it.each([
    [1, 25, 25],
    [2, 25, 33.33],
    [3, 25, 37.5],
    [2, 16, 21.33],
    [3, 16, 24],
    // More than three are not counted for more: "unlikely to be successful" beyond four.
    [4, 25, 37.5],
  ])('%s people of %s kg lift %s kg', (people, liftKg, kg) => {
    expect(teamKg({ people, liftKg })).toBeCloseTo(kg, 2);
  });

  it('a new job’s door on the way is that of a 762 leaf: 762 + 3 − 13 − 35 = 717, 1970 high', () => {
    const { carry } = newJob('x');
    expect(carry.routeDoorWidth).toBe(762 + 3 - 13 - 35);
    expect(carry.routeDoorHeight).toBe(1970);
  });
});
