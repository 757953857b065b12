import { describe, expect, test } from 'vitest';
import { design } from '../../src/flow';
import type { Design } from '../../src/vocabulary/design';
import { jobOf, partsOf, runOf } from '../elements/job-of';
import { producedTo } from '../properties/measure';

// Plane geometry: stuff of width w that meets at a corner θ is longer (outside) or shorter (inside) on its face by w / tan(θ/2)
// at each mitred end: the half-angle rule of any carpentry textbook. Worked by hand for stuff 18 thick, as skirting is.

/** From the left end block to the right: on their backs, on the skin, and on their faces. 12 mm skin, blocks 18 thick on it. */
function lengths(made: Design, run: string): { readonly back: number; readonly face: number } {
  const at = (d: number): number => {
    const extents = partsOf(made, 'BK', run).flatMap((p) => producedTo(runOf(made, run), p, 12, 30, d) ?? []);
    return Math.max(...extents.map((e) => e.to)) - Math.min(...extents.map((e) => e.from));
  };
  return { back: at(12), face: at(30) };
}

const elements = { cladding: { sheet: 'mdf-12' }, plinth: { sheet: 'mdf-18' }, pillar: { pitch: 900 } };
const over = (length: number, deflectionDeg: number) => ({ length, over: 'cladding', deflectionDeg });

describe('an L-shaped counter, faces 2400, 1800 and a return of 600, outside corners of 90°', () => {
  const made = design(
    jobOf({
      runs: [over(2400, 90), over(1800, 90), over(600, 0)],
      rightEnd: { kind: 'free' },
      // The blocks alone are measured: nothing turns the free end.
      elements: { ...elements, plinth: { ...elements.plinth, endReturn: false } },
    }),
  );

  test.each([
    ['A', 2400, 2418],
    ['B', 1800, 1836],
    ['C', 600, 618],
  ])('run %s: back %d, long point %d', (run, back, longPoint) => {
    expect(lengths(made, run).back).toBeCloseTo(back, 9);
    expect(lengths(made, run).face).toBeCloseTo(longPoint, 9);
  });

  test('the long points come to 72 mm more than the backs: four mitres of 18', () => {
    const sum = (side: 'back' | 'face') => ['A', 'B', 'C'].reduce((all, run) => all + lengths(made, run)[side], 0);
    expect(sum('back')).toBeCloseTo(4800, 9);
    expect(sum('face')).toBeCloseTo(4872, 9);
  });

  test('the corner blocks are cut at 45°', () => {
    const mitres = made.parts
      .filter((p) => p.name === 'corner plinth block')
      .flatMap((p) => p.ends.filter((e) => e.kind !== 'square'));
    expect(mitres).toHaveLength(4);
    for (const { sawDeg, tiltDeg } of mitres) expect([sawDeg, tiltDeg]).toEqual([0, expect.closeTo(45, 9)]);
  });
});

describe('an inside corner of 90°, faces 1500 and 2200', () => {
  const made = design(jobOf({ runs: [over(1500, -90), over(2200, 0)], elements }));

  test.each([
    ['A', 1500, 1482],
    ['B', 2200, 2182],
  ])('run %s: back %d, short point %d', (run, back, shortPoint) => {
    expect(lengths(made, run).back).toBeCloseTo(back, 9);
    expect(lengths(made, run).face).toBeCloseTo(shortPoint, 9);
  });
});

// Offset ÷ w = 1 / tan(θ/2), w = 18, printed to 2 decimals: θ is the angle between the faces, 180° less the turn.
describe('any outside corner, stuff 18 thick', () => {
  test.each([
    [60, 31.18],
    [90, 18],
    [108, 13.08],
    [112.5, 12.03],
    [120, 10.39],
    [135, 7.46],
    [144, 5.85],
    [150, 4.82],
    [157.5, 3.58],
    [165, 2.37],
  ])('of %d°: %d longer', (theta, offset) => {
    const made = design(
      jobOf({
        runs: [over(2400, 180 - theta), over(2400, 0)],
        elements: { ...elements, pillar: { cornerWidth: 200 } },
      }),
    );
    const { back, face } = lengths(made, 'A');
    expect(Math.abs(face - back - offset)).toBeLessThanOrEqual(0.005 + 1e-9);
    const skin = partsOf(made, 'CL').at(-1);
    expect(skin?.ends[1]).toMatchObject({ kind: 'bevel', sawDeg: 0, longSide: 'face' });
    expect(skin?.ends[1].tiltDeg).toBeCloseTo((180 - theta) / 2, 9);
  });
});

// Mitre 180/n: "180º divided by the number of sides equals the mitre" (a published saw instruction handbook, second-hand). Side =
// AF·tan(180/n) from across flats: plane geometry, printed to 2 decimals for AF 500. Here eight times the size, so that they can be framed.
describe('regular polygons of n equal runs', () => {
  test.each([
    [4, 45, 500],
    [5, 36, 363.27],
    [6, 30, 288.68],
    [7, 25.714, 240.79],
    [8, 22.5, 207.11],
    [9, 20, 181.99],
    [10, 18, 162.46],
    [12, 15, 133.97],
    [16, 11.25, 99.46],
  ])('n = %d: mitre %d°, side %d for 500 across the flats', (n, mitre, side) => {
    // The last side is left open: the way into the bar.
    const runs = Array.from({ length: n - 1 }, () => ({ length: side * 8, deflectionDeg: 360 / n }));
    // One top a run: no joint but at the corners, hardwood long enough.
    const made = design(
      jobOf({
        runs,
        depth: 300,
        elements: { top: { corner: 'mitred', longest: 10_000 } },
        stock: { 'oak-40': { maxLength: 10_000 } },
      }),
    );
    const tops = made.parts.filter((p) => p.kind === 'top');
    expect(tops).toHaveLength(n - 1);
    for (const [i, top] of tops.entries()) {
      const corners = top.ends.filter((_, end) => (end === 0 ? i > 0 : i < n - 2));
      for (const { sawDeg } of corners) expect(sawDeg).toBeCloseTo(mitre, 3);
    }
    const [first] = made.rod.runs;
    const centre = [first.length / 2, 0].map((x, k) => (k === 0 ? x : -first.front[1] * 250 * 8));
    for (const run of made.rod.runs) {
      const apothem = (run.origin[0] - centre[0]) * run.front[0] + (run.origin[1] - centre[1]) * run.front[1];
      // Sides are printed to 0.01, which is 0.08 here, and the error adds up round the ring.
      expect(Math.abs(apothem - 2000)).toBeLessThan(0.05 * n);
    }
  });
});
