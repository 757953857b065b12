import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { divide, type Limits, type Span } from '../../../src/elements/top/divide';
import { SEED } from '../../base/seed';

const limits = (said: Partial<Limits> = {}): Limits => ({ longest: 3000, leftOn: 0, rightOn: 0, apart: 0, ...said });
const anywhere = (from: number, to: number): readonly Span[] => [{ from, to }];

describe('a top is divided', () => {
  test('not at all while it is no longer than the longest, what is left on at its ends included', () => {
    expect(divide(0, 3000, anywhere(0, 3000), limits())).toEqual([]);
    // 2980 + 15 + 15 = 3010.
    expect(divide(0, 2980, anywhere(0, 2980), limits({ leftOn: 15, rightOn: 15 }))).toEqual([1490]);
    expect(divide(0, 2970, anywhere(0, 2970), limits({ leftOn: 15, rightOn: 15 }))).toEqual([]);
  });

  test('evenly where nothing is in the way', () => {
    expect(divide(0, 7000, anywhere(200, 6800), limits())).toEqual([7000 / 3, 14000 / 3]);
  });

  test('beside what is in the way of the even place, on the side that leaves the shorter longest length', () => {
    // 5000 in two: even at 2500. From 2400 to 2700 it may not be: 2400 leaves 2600, 2700 leaves 2700.
    const places = [
      { from: 200, to: 2400 },
      { from: 2700, to: 4800 },
    ];
    expect(divide(0, 5000, places, limits())?.map((x) => Number(x.toFixed(6)))).toEqual([2400]);
  });

  test('in more lengths where the fewest would need a joint in the wrong place', () => {
    // 5800 in two has its joint between 2800 and 3000; only 2000–2500 and 3500–4000 are free: three lengths.
    const places = [
      { from: 2000, to: 2500 },
      { from: 3500, to: 4000 },
    ];
    // The first joint is at 2000 at least, so the longest is 2000; the rest, 3800, is halved: 3900 is free.
    expect(divide(0, 5800, places, limits())?.map((x) => Number(x.toFixed(6)))).toEqual([2000, 3900]);
  });

  test('of two places as near the even one, at the left one, whatever the last digits are', () => {
    // 3600.4 in two: even at 1800.2, which a join takes; 289.9 clear of it on either side are 1510.3 and 2090.1.
    for (const from of [0, -3600.4, 1e-9]) {
      const places = [
        { from: from + 289.9, to: from + 1800.2 - 289.9 },
        { from: from + 1800.2 + 289.9, to: from + 3600.4 - 289.9 },
      ];
      const [joint] = divide(from, from + 3600.4, places, limits({ longest: 3020.5, apart: 289.9 })) ?? [];
      expect(joint - from, `from ${from}`).toBeCloseTo(1510.3, 5);
    }
    const places = [
      { from: 289.9, to: 1510.3000000001 },
      { from: 2090.0999999999, to: 3310.5 },
    ];
    expect(divide(0, 3600.4, places, limits({ longest: 3020.5, apart: 289.9 }))?.[0]).toBeCloseTo(1510.3, 5);
    // A join kept to a millionth in the job file lies that much off the middle: the right-hand place is the better by half of it.
    const off = [
      { from: 289.9, to: 1510.2999995 },
      { from: 2090.0999995, to: 3310.5 },
    ];
    expect(divide(0, 3600.4, off, limits({ longest: 3020.5, apart: 289.9 }))?.[0]).toBeCloseTo(1510.3, 5);
  });

  test('not where it can’t be', () => {
    expect(divide(0, 5000, [], limits())).toBeUndefined();
    expect(divide(0, 9000, [{ from: 200, to: 2000 }], limits())).toBeUndefined();
    // Two joints are needed, and 800 mm of places don't hold them 1000 apart.
    expect(divide(0, 6600, [{ from: 2900, to: 3700 }], limits({ apart: 1000 }))).toBeUndefined();
  });
});

/** The best joints on a grid, by trying every one: fewest lengths, then the shortest longest, then the longest shortest. */
function byTrying(
  to: number,
  step: number,
  places: readonly Span[],
  { longest, leftOn, rightOn, apart }: Limits,
): { readonly lengths: number; readonly most: number; readonly least: number } | undefined {
  const grid: number[] = [];
  for (let x = 0; x <= to; x += step) if (places.some((p) => x >= p.from && x <= p.to)) grid.push(x);
  let best: { lengths: number; most: number; least: number } | undefined;
  const better = (a: NonNullable<typeof best>): boolean =>
    !best ||
    a.lengths < best.lengths ||
    (a.lengths === best.lengths && (a.most < best.most || (a.most === best.most && a.least > best.least)));
  const go = (at: number, lengths: number, most: number, least: number): void => {
    const rest = to - at;
    const on = (lengths === 0 ? leftOn : 0) + rightOn;
    const single = lengths === 0;
    if (rest + on <= longest && (single || rest >= apart)) {
      const done = { lengths: lengths + 1, most: Math.max(most, rest), least: Math.min(least, rest) };
      if (better(done)) best = done;
    }
    if (best && lengths + 2 > best.lengths) return;
    if (lengths > 4) return;
    for (const x of grid) {
      const long = x - at;
      if (long < Math.max(apart, step) || long + (lengths === 0 ? leftOn : 0) > longest) continue;
      go(x, lengths + 1, Math.max(most, long), Math.min(least, long));
    }
  };
  go(0, 0, 0, Infinity);
  return best;
}

describe(`against every division on a grid (seed ${SEED})`, () => {
  // Ends of places lie on the grid, whole hundreds; a longest or shortest length that is optimal off it is found better by the program.
  const STEP = 100;
  const task = fc.record({
    to: fc.integer({ min: 10, max: 60 }).map((n) => n * STEP),
    cuts: fc.uniqueArray(fc.integer({ min: 1, max: 59 }), { minLength: 0, maxLength: 6 }),
    longest: fc.integer({ min: 12, max: 30 }).map((n) => n * STEP),
    leftOn: fc.constantFrom(0, 100),
    rightOn: fc.constantFrom(0, 100),
    apart: fc.constantFrom(0, 200, 300),
  });

  test('never more lengths, never a longer longest, never an impossible place', () => {
    let divided = 0;
    fc.assert(
      fc.property(task, ({ to, cuts, longest, leftOn, rightOn, apart }) => {
        const lines = [...cuts].sort((a, b) => a - b).map((n) => n * STEP);
        const places = lines.flatMap((from, i): Span[] =>
          i % 2 === 0 && lines[i + 1] !== undefined && lines[i + 1] < to ? [{ from, to: lines[i + 1] }] : [],
        );
        const asked = limits({ longest, leftOn, rightOn, apart });
        const found = divide(0, to, places, asked);
        const tried = byTrying(to, STEP, places, asked);
        if (!tried) {
          // On the grid it can't be done; off it perhaps: then it must be right all the same.
          if (!found) return;
        } else expect(found).toBeDefined();
        if (!found) return;
        const ends = [0, ...found, to];
        const lengths = ends.slice(1).map((x, i) => x - ends[i]);
        for (const x of found) expect(places.some((p) => x >= p.from - 1e-6 && x <= p.to + 1e-6)).toBe(true);
        lengths.forEach((long, i) => {
          const on = (i === 0 ? leftOn : 0) + (i === lengths.length - 1 ? rightOn : 0);
          expect(long + on).toBeLessThanOrEqual(longest + 1e-6);
          if (lengths.length > 1) expect(long).toBeGreaterThanOrEqual(apart - 1e-6);
        });
        if (!tried) return;
        if (found.length > 0) divided++;
        expect(lengths.length).toBeLessThanOrEqual(tried.lengths);
        if (lengths.length < tried.lengths) return;
        expect(Math.max(...lengths)).toBeLessThanOrEqual(tried.most + 1e-6);
        if (Math.max(...lengths) > tried.most - 1e-6)
          expect(Math.min(...lengths)).toBeGreaterThanOrEqual(tried.least - 1e-6);
      }),
      { seed: SEED, numRuns: 1500 },
    );
    expect(divided).toBeGreaterThan(100);
  });
});
