import { describe, expect, test } from 'vitest';
import { type Cut, chooseCuts } from '../../../src/elements/cladding/joints';

const field = (x: number): Cut => ({ x, behindPillar: false });
const pillar = (x: number): Cut => ({ x, behindPillar: true });
const cut = (length: number, longest: number, places: readonly Cut[]) =>
  chooseCuts(0, length, longest, places)?.map((c) => c.x);

describe('where a skin is cut', () => {
  test('nowhere when a sheet is long enough', () => expect(cut(2400, 2420, [pillar(1200)])).toEqual([]));
  test('behind a pillar rather than in a field, though more pieces come of it', () => {
    expect(cut(3000, 1600, [field(1500), pillar(800), pillar(2200)])).toEqual([800, 2200]);
  });
  test('in a field when no pillar is in reach', () =>
    expect(cut(3000, 1600, [field(1500), pillar(200)])).toEqual([1500]));
  test('as few joints as can be', () =>
    expect(cut(3000, 1600, [pillar(1000), pillar(1500), pillar(2000)])).toEqual([1500]));
  test('pieces as even as can be', () =>
    expect(cut(3000, 2000, [pillar(1100), pillar(1400), pillar(1900)])).toEqual([1400]));
  test('a piece exactly as long as the sheet is one piece', () => expect(cut(2420, 2420, [])).toEqual([]));
  test('not at all when the places don’t allow it', () => expect(cut(3000, 1000, [pillar(1500)])).toBeUndefined());
});
