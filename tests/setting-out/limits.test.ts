import { describe, expect, test } from 'vitest';
import { design } from '../../src/flow';
import { frameRound } from '../../src/setting-out/frame-round';
import { groundOf } from '../../src/setting-out/opening-ground';
import { placeOpenings } from '../../src/setting-out/openings';
import type { Backing } from '../../src/vocabulary/backing';
import type { BayWish } from '../../src/vocabulary/job';
import type { Obstacle } from '../../src/vocabulary/opening';
import { openingOf, wishOf } from '../elements/behind-job';
import { findingOf, jobOf, rulesOf, runOf } from '../elements/job-of';

/** 3000 of frame, pillars of 140 in 4 bays: bays of 575, pillars between on 785, 1500, 2215; 1060 to the underside of the top. */
const FOUR = [{ length: 3000, rhythm: { by: 'count', count: 4 } as const }];

describe('a join', () => {
  const joined = (x: number) => design(jobOf({ runs: FOUR, joins: { by: 'hand', at: [{ run: 1, x }] } }));
  test('has 10 of its pillar on each side: that on 1500 reaches from 1430 to 1570', () => {
    for (const x of [1440, 1560]) expect(runOf(joined(x)).joins.map((j) => j.behind)).toEqual(['pillar']);
    for (const x of [1439.9, 1560.1]) {
      expect(findingOf(joined(x), 'join-uncovered')).toMatchObject({ value: x, limit: 1500 });
      expect(runOf(joined(x)).joins).toEqual([]);
    }
  });
});

describe('a space behind several bays', () => {
  const behind = (wishes: readonly BayWish[]) =>
    runOf(design(jobOf({ runs: FOUR, bays: wishes, elements: { carcass: { build: true, lines: 'ends' } } }))).backBays;
  test('goes to the one that is to hold something, however far from its middle', () => {
    expect(behind([wishOf({ bay: 1, purpose: 'doors' })]).map((b) => b.bay)).toEqual([0]);
    expect(behind([wishOf({ bay: 4, purpose: 'doors' })]).map((b) => b.bay)).toEqual([3]);
  });
  test('else to the nearest to its middle, of two alike the one towards the datum', () => {
    expect(behind([]).map((b) => b.bay)).toEqual([1]);
    expect(behind([wishOf({ bay: 4, purpose: 'open' })]).map((b) => b.bay)).toEqual([1]);
  });
});

describe('an opening in the front keeps clear of the end of the run', () => {
  const { rod } = design(jobOf({ runs: FOUR }));
  const end = (frameAt: number): number => {
    const run = { ...runOf({ rod } as ReturnType<typeof design>), pillars: [] };
    return groundOf(rod, { ...run, right: { ...run.right, frameAt } }, 'front', []).ends(0, 0)[1];
  };
  test('by the stud there and 5: 38 + 5, where the frame ends short by as much more', () => {
    expect(end(3000)).toBe(2957);
    expect(end(2990)).toBe(2947);
  });
  test('where it runs on past a corner, by the stud of the skin, and by its own as far as that reaches in', () => {
    // Run on by 63 its own stud lies beyond the end; by 20 it reaches 18 in, before the skin's.
    expect(end(3063)).toBe(2957);
    expect(end(3020)).toBe(3000 - 18 - 38 - 5);
  });
});

describe('an opening that has no place', () => {
  const { rod } = design(jobOf({ runs: FOUR }));
  const board = (from: number, to: number): Obstacle => ({
    ...{ run: 'A', through: 'front', from, to, low: 0, high: 1060, what: 'board' },
  });
  const slit = (width: number) =>
    placeOpenings(rod, [openingOf({})], [board(0, 400), board(400 + width, 3000)]).findings;
  test('is told of a smaller one of 5, and of none smaller', () => {
    expect(slit(5)).toMatchObject([{ rule: 'opening-too-large', limit: 5 }]);
    expect(slit(5)[0].remedy).toContain('Make it 5 × 85 mm at most');
    expect(slit(4.9)).toMatchObject([{ rule: 'opening-refused', remedy: expect.stringContaining('another run') }]);
  });
});

test('openings are refused turn by turn, until every stud that is needed has its place', () => {
  const { rod } = design(jobOf({ runs: FOUR }));
  const openings = [openingOf({ x: 430, width: 100 }), openingOf({ x: 1140, width: 100 })];
  // A stud is wanted in the first; where that is given up, in the second.
  const backing = (x: number): Backing => ({ kind: 'stud', run: 'A', x, centred: true, reason: 'bracket' });
  const made = frameRound(rod, openings, [], (placed) => [
    backing(placed.some((o) => o.index === 0) ? 430 : 1140),
    ...placed.map((o): Backing => ({ ...o, kind: 'keep-out', reason: `opening ${o.index + 1}`, opening: o.index })),
  ]);
  expect(made.openings).toEqual([]);
  expect(made.findings.filter((f) => f.rule === 'opening-refused').map((f) => f.subject.path)).toEqual([
    '/unit/openings/0',
    '/unit/openings/1',
  ]);
  expect(made.kept).toEqual([]);
});

test('what leaves nothing is said so, not as a length below nothing', () => {
  // Pillars of 400 in 8 bays: (3000 − 2 · 400 − 7 · 400)/8 is −75.
  const tight = design(jobOf({ runs: [{ length: 3000, rhythm: { by: 'count', count: 8 } }], elements: { pillar: { width: 400 } } })); // biome-ignore format: one line
  const { message, value } = findingOf(tight, 'bays-too-narrow');
  expect(value).toBe(-75);
  expect(message).toContain('leave nothing between pillars of 400 mm: they would overlap by 75 mm');
  expect(rulesOf(tight)).not.toContain('run-too-short');
});
