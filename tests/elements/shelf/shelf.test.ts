import { describe, expect, test } from 'vitest';
import { design, making } from '../../../src/flow';
import type { Design } from '../../../src/vocabulary/design';
import type { Part } from '../../../src/vocabulary/part';
import { cornersIn } from '../../properties/measure';
import { behindJob, openingOf } from '../behind-job';
import { findingOf, partsOf, rulesOf, runOf } from '../job-of';

/** The box of a part: x, d and z, each from and to, to a millionth. */
function boxOf(made: Design, part: Part) {
  const points = cornersIn(runOf(made), part);
  const reach = (of: (p: (typeof points)[0]) => number) =>
    [Math.min(...points.map(of)), Math.max(...points.map(of))].map((n) => Math.round(n * 1e6) / 1e6);
  return { x: reach((p) => p.x), d: reach((p) => p.d), z: reach((p) => p.z) };
}

const wish = { purpose: 'shelves', count: 2 } as const;

describe('fixed shelves', () => {
  const made = design(behindJob([{ ...wish, shelves: 'fixed' }]));

  test('divide the clear height equally and are 2 shorter than their bay', () => {
    // (934 − 2 · 18)/3 = 299 1/3: undersides 63 + 299 1/3 and 63 + 2 · 299 1/3 + 18. Half the clearance at the front frame too.
    const shelves = partsOf(made, 'SH');
    expect(shelves.map((p) => boxOf(made, p).z[0])).toEqual([362.333333, 679.666667]);
    expect(boxOf(made, shelves[0])).toMatchObject({ x: [39, 961], d: [-525, -64] });
    expect(shelves[0].size).toMatchObject({ length: 922, width: 461, thickness: 18 });
    expect(rulesOf(made).filter((r) => r.includes('shel'))).toEqual([]);
  });

  test('rest on three bearers each, on edge, the front one through', () => {
    const bearers = partsOf(made, 'SB')
      .slice(0, 3)
      .map((p) => boxOf(made, p));
    const z = [324.333333, 362.333333];
    expect(bearers).toEqual([
      { x: [38, 962], d: [-88, -63], z },
      { x: [38, 63], d: [-525, -88], z },
      { x: [937, 962], d: [-525, -88], z },
    ]);
  });

  test('have a noggin behind the middle of each bearer', () => {
    const behind = made.framing[0].noggins.filter((n) => n.reasons.includes('shelf'));
    for (const z of [362 + 1 / 3 - 19, 679 + 2 / 3 - 19])
      expect(behind.filter((n) => n.low + 6 <= z && z <= n.high - 6).length).toBeGreaterThan(0);
  });

  test('say how they are fixed', () => {
    for (const part of made.parts.filter((p) => p.kind === 'shelf')) expect(part.holds?.length).toBeGreaterThan(0);
  });
});

describe('shelves on pins in holes', () => {
  const made = design(behindJob([{ ...wish, shelves: 'holes' }]));

  test('lie between linings that are notched round the rails', () => {
    const linings = partsOf(made, 'LN');
    expect(linings.map((p) => boxOf(made, p))).toEqual([
      { x: [38, 56], d: [-525, -63], z: [10, 1060] },
      { x: [944, 962], d: [-525, -63], z: [10, 1060] },
    ]);
    // Ten off the floor; rails 63 high and 38 thick below and above.
    for (const { volumeMm3 } of linings) expect(volumeMm3).toBeCloseTo(18 * (1050 * 462 - 53 * 38 - 63 * 38), 3);
  });

  test('have holes from the arithmetic of their pitch', () => {
    // 934 − 2 · 60 = 814: 25 steps of 32 are 800. First (934 − 800)/2 = 67 above the rail, which is 53 above the lining's lower end.
    expect(partsOf(made, 'LN')[0].work).toContain(
      '2 rows of 26 holes 5, pitch 32, first 120 from the lower end, rows 37 from the front and rear edge',
    );
  });

  test('lie on the nearest holes, 4 pins each', () => {
    // Wanted 299.33: (299.33 − 2.5 − 67)/32 = 7.2: 67 + 7 · 32 + 2.5 = 293.5. Wanted 616.67: 17.1: 67 + 17 · 32 + 2.5 = 613.5. Over 63.
    const shelves = partsOf(made, 'SH');
    expect(shelves.map((p) => boxOf(made, p).z[0])).toEqual([356.5, 676.5]);
    // 924 − 2 · 18 − 2 · 0.4
    expect(shelves[0].size.length).toBeCloseTo(887.2, 9);
    for (const shelf of shelves) expect(shelf.hardware).toEqual([{ what: 'shelf pin for a 5 mm hole', count: 4 }]);
  });

  test('with a worktop before posts that go through, the linings give way to its bearer and rail', () => {
    // Worktop 25 at 900, 300 deep: underside 875, rear edge −363. Its rail from −363 to −325, 63 high; its bearer 38 thick on the front frame.
    const under = design(
      behindJob([{ ...wish, shelves: 'holes' }], {
        elements: { worktop: { height: 900, of: 'sheet', sheet: 'mdf-25', depth: 300 } },
      }),
    );
    const [lining] = partsOf(under, 'LN');
    expect(boxOf(under, lining).z).toEqual([10, 875]);
    // The upper rear notch goes from −525 to −325.
    expect(lining.volumeMm3).toBeCloseTo(18 * (865 * 462 - 53 * 38 - 63 * 200 - 63 * 38), 3);
  });
});

describe('shelves on standards', () => {
  test('are equally spaced, with two standards in each lining and four clips to a shelf', () => {
    const made = design(behindJob([{ ...wish, shelves: 'standards' }]));
    expect(partsOf(made, 'SH').map((p) => boxOf(made, p).z[0])).toEqual([362.333333, 679.666667]);
    expect(partsOf(made, 'LN').map((p) => p.hardware)).toEqual(
      Array(2).fill([{ what: 'slotted standard, 934 mm', count: 2 }]),
    );
    for (const shelf of partsOf(made, 'SH'))
      expect(shelf.hardware).toEqual([{ what: 'clip for a slotted standard', count: 4 }]);
  });
});

describe('what is carried in', () => {
  const fitted = (shelves: 'fixed' | 'holes' | 'standards', code: string): readonly string[] => [
    ...new Set(partsOf(design(behindJob([{ ...wish, shelves }])), code).map((p) => p.fitted)),
  ];
  test('loose shelves travel loose, their linings stay', () => {
    for (const shelves of ['holes', 'standards'] as const) {
      expect(fitted(shelves, 'SH')).toEqual(['site']);
      expect(fitted(shelves, 'LN')).toEqual(['workshop']);
    }
  });
  test('fixed shelves and their bearers stay', () => {
    expect(fitted('fixed', 'SH')).toEqual(['workshop']);
    expect(fitted('fixed', 'SB')).toEqual(['workshop']);
  });
  test('and are laid in when the unit stands', () => {
    const { steps } = making(design(behindJob([{ ...wish, shelves: 'holes' }])));
    const shelves = steps.filter(({ what, place }) => /\bshel/.test(what) && place !== 'dry fit');
    expect(shelves).toMatchObject([{ place: 'site', what: 'Lay 2 shelves on their supports.' }]);
  });
});

describe('shelves that can’t be made', () => {
  const none = (made: Design) => expect(made.parts.filter((p) => p.kind === 'shelf')).toEqual([]);

  test('too many: how close they would be, and the most that fit', () => {
    const made = design(behindJob([{ ...wish, count: 8 }]));
    const found = findingOf(made, 'shelves-too-close');
    expect(found.subject).toEqual({ run: 'A', path: '/unit/bays/0' });
    // (934 − 8 · 18)/9; the most: (934 − 120)/(18 + 120) = 5.9.
    expect(found.value).toBeCloseTo(790 / 9, 9);
    expect(found).toMatchObject({ severity: 'stop', limit: 120 });
    expect(found.remedy).toContain('The most that fit: 5.');
    none(made);
    expect(partsOf(design(behindJob([{ ...wish, count: 5 }])), 'SH')).toHaveLength(5);
  });

  test('a fixed shelf keeps clear of the bearer above it, whatever is decided', () => {
    const elements = { shelf: { least: 20, bearer: 'sawn-38x89' } };
    // (934 − 8 · 18)/9 = 87.8 is less than the bearer's 89.
    expect(findingOf(design(behindJob([{ ...wish, count: 8 }], { elements })), 'shelves-too-close').limit).toBe(89);
    const loose = design(behindJob([{ ...wish, count: 8, shelves: 'standards' }], { elements }));
    expect(partsOf(loose, 'SH')).toHaveLength(8);
  });

  test('no room for holes', () => {
    const made = design(behindJob([{ ...wish, shelves: 'holes' }], { elements: { shelf: { margin: 470 } } }));
    expect(findingOf(made, 'no-room-for-holes')).toMatchObject({ value: 934, limit: 940 });
    none(made);
  });

  test('holes that run together', () => {
    const elements = { shelf: { hole: 20, pitch: 20 } };
    const made = design(behindJob([{ ...wish, shelves: 'holes' }], { elements }));
    expect(findingOf(made, 'holes-run-together')).toMatchObject({ value: 20, limit: 20 });
    none(made);
  });

  test('fewer holes than shelves', () => {
    // 934 − 2 · 300 = 334: one step of 200, two holes.
    const elements = { shelf: { margin: 300, pitch: 200 } };
    const made = design(behindJob([{ ...wish, count: 3, shelves: 'holes' }], { elements }));
    expect(findingOf(made, 'shelves-off-holes')).toMatchObject({ value: 2, limit: 3 });
    none(made);
  });

  test('rows that would meet in the middle of the lining', () => {
    const made = design(behindJob([{ ...wish, shelves: 'holes' }], { elements: { shelf: { rows: 300 } } }));
    const found = findingOf(made, 'bay-too-small-for-shelves');
    // 462 − 0.4 deep; 2 · 300 + 5.
    expect(found.value).toBeCloseTo(461.6, 9);
    expect(found.limit).toBe(605);
    none(made);
  });

  test('longer than the sheet', () => {
    const made = design(behindJob([wish], { runs: [{ length: 3000 }] }));
    expect(findingOf(made, 'shelf-larger-than-sheet')).toMatchObject({ value: 3000 - 76 - 2, limit: 2440 });
    none(made);
  });

  test('nothing behind: the bay is said, and nothing else changes', () => {
    const made = design(behindJob([wish], { elements: { carcass: { build: false } } }));
    expect(rulesOf(made)).toContain('bay-without-space');
    none(made);
  });
});

test('an opening in the front does not come out in a bearer', () => {
  const at = (z: number) => openingOf({ name: 'tap', use: 'pipe', x: 500, z, width: 30, height: 30 });
  const placed = (z: number) => design(behindJob([wish], { openings: [at(z)] })).openings.length;
  // The lower shelf and its bearers lie from 324.3 to 380.3.
  expect(placed(350)).toBe(0);
  expect(placed(520)).toBe(1);
});
