import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rectangle } from '../../src/base/outline';
import { SQUARE_EDGE } from '../../src/base/profiles';
import { toStep } from '../../src/base/round';
import { makeParts } from '../../src/parts/make';
import { totalsOf } from '../../src/parts/totals';
import type { StockItem } from '../../src/vocabulary/book';
import type { Board, Stick } from '../../src/vocabulary/shape';
import { SEED } from '../base/seed';
import { draft, plane } from './draft';

const bar = (length: number): Stick => ({
  kind: 'stick',
  section: rectangle(38, 63),
  start: plane(0),
  end: plane(length),
});
const sheet = (length: number, width: number): Board => ({
  kind: 'board',
  outline: [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ],
  holes: [],
  thickness: 12,
  edges: [SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE],
});
const items: Record<string, StockItem> = {
  'sawn-38x63': {
    kind: 'timber',
    id: 'sawn-38x63',
    name: 'Sawn 38 × 63',
    densityKgM3: 450,
    width: 63,
    thickness: 38,
    lengths: [],
  },
  'mdf-12': {
    kind: 'sheet',
    id: 'mdf-12',
    name: 'MDF 12',
    densityKgM3: 760,
    length: 2440,
    width: 1220,
    thickness: 12,
    pricePence: 0,
  },
};
const itemOf = (id: string) => items[id];
const densityOf = (id: string) => items[id].densityKgM3;

describe('parts from drafts', () => {
  test('marks count within run and code, in the order of the drafts', () => {
    const drafts = [
      draft(bar(900)),
      draft(bar(900), { run: 'B' }),
      draft(bar(2000), { code: 'PL' }),
      draft(bar(900)),
      draft(bar(900), { run: 'B' }),
    ];
    const marks = makeParts(drafts, densityOf, 0.5).map((part) => part.mark);
    expect(marks).toEqual(['A-ST1', 'B-ST1', 'A-PL1', 'A-ST2', 'B-ST2']);
  });
  test('the exact length stays beside the one for the shop', () => {
    const [part] = makeParts([draft(bar(924.26))], densityOf, 0.5);
    expect(part.size.length).toBe(924.26);
    expect(part.shopLength).toBe(924.5);
    expect(makeParts([draft(bar(924.24))], densityOf, 0.5)[0].shopLength).toBe(924);
    expect(makeParts([draft(bar(1200.15))], densityOf, 25.4 / 64)[0].shopLength).toBe(1200.15);
  });
  test('everything a room said is still there', () => {
    const given = draft(bar(900), {
      where: 'bay 2, top',
      finish: 'oil',
      grooves: [{ centre: 70, width: 12, depth: 5, radius: 6.1 }],
    });
    expect(makeParts([given], densityOf, 0.5)[0]).toMatchObject({ ...given });
  });
  test('a step or a density that is none is refused', () => {
    expect(() => makeParts([], densityOf, 0)).toThrow(/rounded to 0 mm/);
    expect(() => makeParts([draft(bar(900))], () => 0, 0.5)).toThrow(/sawn-38x63 has a density of 0/);
    expect(() => makeParts([draft(bar(900))], () => Number.NaN, 0.5)).toThrow(/density of NaN/);
  });
  test(`rounding goes to the nearest step, and twice is as good as once (seed ${SEED})`, () => {
    const step = fc.constantFrom(0.1, 0.5, 1, 25.4 / 64, 25.4 / 32);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20_000, noNaN: true }), step, (length, by) => {
        const once = toStep(length, by);
        expect(Math.abs(once - length)).toBeLessThanOrEqual(by / 2 + 1e-6);
        expect(toStep(once, by)).toBe(once);
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });
});

describe('totals', () => {
  const upright = { origin: [0, -50, 5], along: [0, 0, 1], across: [1, 0, 0], out: [0, 1, 0] } as const;
  const drafts = [
    draft(bar(2000)),
    draft(sheet(1000, 600), { material: 'mdf-12', code: 'CL', place: upright }),
    draft(bar(1500.25)),
  ];
  const parts = makeParts(drafts, densityOf, 0.5);
  const totals = totalsOf(
    parts.map((piece) => ({ ...piece, fitted: 'workshop' as const })),
    itemOf,
  );

  test('metres of timber by exact length, square metres of sheet', () => {
    expect(
      totals.materials.map(({ material, unit, amount, parts: n }) => [material, unit, Number(amount.toFixed(9)), n]),
    ).toEqual([
      ['sawn-38x63', 'm', 3.50025, 2],
      ['mdf-12', 'm²', 0.6, 1],
    ]);
    expect(totals.materials[0].name).toBe('Sawn 38 × 63');
  });
  test('weights of materials add up to the whole', () => {
    const sum = totals.materials.reduce((kg, material) => kg + material.weightKg, 0);
    expect(totals.weightKg).toBeCloseTo(sum, 12);
    expect(totals.weightKg).toBeCloseTo(0.038 * 0.063 * 3.50025 * 450 + 0.6 * 0.012 * 760, 9);
    expect(totals.parts).toBe(3);
  });
  test('the box they stand in', () => {
    expect(totals.overall).toEqual({ length: 2000, depth: 38 + 50, height: 1005 });
  });
  test('no parts: nothing', () => {
    expect(totalsOf([], itemOf)).toEqual({
      weightKg: 0,
      parts: 0,
      materials: [],
      overall: { length: 0, depth: 0, height: 0 },
    });
  });
});

test('a half step goes up', () => {
  expect(toStep(100.25, 0.5)).toBe(100.5);
  expect(toStep(100.2499, 0.5)).toBe(100);
});
