import { describe, expect, it } from 'vitest';
import { beadFrom, PVA_G_PER_M2, tubOf } from '../../src/making/adhesives';
import { alongLength } from '../../src/making/fixing-counts';
import { boltFor, chosenFor } from '../../src/making/fixing-sizes';
import type { Fixing } from '../../src/vocabulary/book';
import type { Hold } from '../../src/vocabulary/part';

const fixing = (kind: Fixing['kind'], diameter: number, length: number): Fixing => ({
  id: `${kind}-${diameter}x${length}`,
  name: `${kind} ${diameter} × ${length}`,
  kind,
  diameter,
  length,
  pack: 100,
  pricePence: 100,
});

/** A well-stocked shelf: what is sold, so that the rule decides and not the shelf. */
const SHELF: readonly Fixing[] = [
  ...[16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 75].map((length) => fixing('screw', 4, length)),
  ...[50, 60, 65, 70, 75, 80, 90, 100, 120].map((length) => fixing('screw', 5, length)),
  ...[20, 25, 32, 38, 45, 50, 64].map((length) => fixing('brad', 1.2, length)),
  ...[70, 80, 90, 100, 120].map((length) => fixing('bolt', 8, length)),
];

const held = (by: Hold['by'], through: number, endGrain = false): Hold => ({
  by,
  through,
  where: { at: 'ends', each: 2 },
  endGrain,
  rule: 'as the test says',
});
const lengthOf = (hold: Hold, beyond?: number): number | undefined => chosenFor(hold, beyond, SHELF).item?.length;

describe('screws by thickness held (joinery textbooks, from memory, high confidence)', () => {
  it.each([10, 12, 15, 18, 22, 25, 30])(
    'through %d mm are 2 to 2.5 times as long, so half is in the base',
    (through) => {
      const length = lengthOf(held('screw', through)) ?? 0;
      expect(length).toBeGreaterThanOrEqual(2 * through);
      expect(length).toBeLessThanOrEqual(2.5 * through);
      expect(length - through).toBeGreaterThanOrEqual(length / 2);
    },
  );

  // Trade, from memory, medium confidence.
  it.each([
    [12, 30, 35],
    [18, 40, 45],
    [25, 50, 60],
  ])('MDF of %d on studs takes %d to %d', (thickness, least, most) => {
    const length = lengthOf(held('screw', thickness), 63) ?? 0;
    expect(length).toBeGreaterThanOrEqual(least);
    expect(length).toBeLessThanOrEqual(most);
  });

  // Trade, from memory, medium confidence: 5.0 × 100, for plates of 38 to 45. By the rule 2.5 × 38 = 95, so 100; 45 would take 112.5.
  it('a stud through its plate of 38 takes 5 × 100', () => {
    expect(chosenFor(held('screw', 38, true), undefined, SHELF).item).toMatchObject({ diameter: 5, length: 100 });
  });

  // Trade, from memory, medium confidence: 5.0 × 65–75. Askew it goes through about 25 mm of the noggin first.
  it('a skewed noggin screw from a usual book takes 5 × 65', () => {
    const usual = SHELF.filter((f) => [40, 65, 100].includes(f.length));
    expect(chosenFor(held('screw', 25), undefined, usual).item).toMatchObject({ diameter: 5, length: 65 });
  });
});

describe('brads (trade, from memory, medium confidence)', () => {
  it.each([10, 12, 15, 18])('through %d mm are 2.5 to 3 times as long, within 20 to 64', (through) => {
    const length = lengthOf(held('brad', through)) ?? 0;
    expect(length).toBeGreaterThanOrEqual(2.5 * through);
    expect(length).toBeLessThanOrEqual(3 * through);
  });
});

describe('bolts of a join (trade, from memory, low confidence: M8 or M10 through both studs)', () => {
  it('two studs of 38 take M8 × 90', () => {
    // 76 of timber, nut 6.8 (ISO 4032), two washers of 1.6 (ISO 7089), a thread proud 1.25: 87.25.
    expect(boltFor(76, SHELF).item).toMatchObject({ diameter: 8, length: 90 });
  });
});

describe('centres (trade, from memory, medium confidence)', () => {
  it('a skirting of 2400 at 400 takes 7: 50 mm are taken by its ends, 2350 make 6 spaces', () => {
    expect(alongLength(2400, 400)).toBe(7);
  });
});

describe('adhesives', () => {
  it('310 ml in a bead of 6 mm is about 11 m (computed: 310 000 / (π · 9) = 10 964 mm)', () => {
    expect(beadFrom(310)).toBeCloseTo(10.964, 3);
    expect(Math.round(beadFrom(310))).toBe(11);
  });

  it('PVA goes on at 120 to 200 g/m² (data sheets’ practice, from memory, high confidence)', () => {
    expect(PVA_G_PER_M2).toBeGreaterThanOrEqual(120);
    expect(PVA_G_PER_M2).toBeLessThanOrEqual(200);
  });

  it('a litre of PVA at 150 g/m² does about 7 m² (from memory, medium confidence, and computed)', () => {
    const litre: Fixing = { ...fixing('adhesive', 0, 0), id: 'pva-1l', name: 'PVA wood glue, 1 l', pack: 1 };
    expect((tubOf('pva', [litre])?.holds ?? 0) / PVA_G_PER_M2).toBeCloseTo(7, 0);
  });
});
