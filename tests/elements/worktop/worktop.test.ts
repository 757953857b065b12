import { describe, expect, it } from 'vitest';
import { design } from '../../../src/flow';
import type { Design } from '../../../src/vocabulary/design';
import type { Decision } from '../../../src/vocabulary/field';
import { cornersIn } from '../../properties/measure';
import { findingOf, jobOf, partOf, partsOf, rulesOf, runOf, type Said } from '../job-of';

/*
 * A new job: 1100 high under a 40 top, 400 deep, 75 over the face; timber 38 × 63. The front frame's back lies at d = −63, the top's back
 * edge at −325, and posts that carry it at −285. The worktop is 32 thick.
 */

const made = (worktop: Readonly<Record<string, Decision>>, said: Said = {}): Design =>
  design(jobOf({ runs: [{ length: 2400, rhythm: { by: 'count', count: 3 } }], ...said, elements: { worktop, carcass: { build: true, ...said.elements?.carcass } } })); // biome-ignore format: one line

const extent = (of: Design, code: string, k: 'x' | 'd' | 'z', run = 'A'): readonly (readonly number[])[] =>
  partsOf(of, code, run).map((part) => {
    const all = cornersIn(runOf(of, run), part).map((c) => Math.round(c[k] * 1000) / 1000 + 0);
    return [Math.min(...all), Math.max(...all)];
  });

/** Its outline, x along the run, y back from the front frame. */
const outlineOf = (of: Design, run = 'A'): readonly (readonly number[])[] => {
  const { shape, place } = partOf(of, 'WT', run);
  if (shape.kind !== 'board') throw new Error('no board');
  const { origin, along } = runOf(of, run);
  const left = (place.origin[0] - origin[0]) * along[0] + (place.origin[1] - origin[1]) * along[1];
  return shape.outline.map(([x, y]) => [x + left, y].map((n) => Math.round(n * 1000) / 1000 + 0));
};

describe('a worktop', () => {
  it('there is none at height 0', () => {
    expect(partsOf(made({}), 'WT')).toEqual([]);
  });

  it('that reaches further back than the top lies on posts that stop under it', () => {
    const one = made({ height: 900, depth: 500, behind: 10 });
    // Rear edge at −63 − 500 = −563, posts from −553; their tops at 900 − 32 = 868.
    expect(one.rod.carcass).toMatchObject({ back: -553, high: 868, worktop: { high: 900, thickness: 32, edge: -563 } });
    expect(extent(one, 'RP', 'z')[0]).toEqual([0, 868]);
    expect(extent(one, 'CR', 'z').slice(0, 2)).toEqual([
      [0, 63],
      [805, 868],
    ]);
    expect(extent(one, 'CR', 'd')[1]).toEqual([-490, -63]);
    expect(outlineOf(one)).toEqual([
      [0, 0],
      [2400, 0],
      [2400, 500],
      [0, 500],
    ]);
    expect(extent(one, 'WT', 'z')).toEqual([[868, 900]]);
    expect(partOf(one, 'WT')).toMatchObject({ material: 'oak-32', finish: 'oil', fitted: 'workshop' });
    expect(runOf(one).backBays[0]).toMatchObject({ low: 63, high: 805 });
  });

  it('under the top is notched round the posts that go through to it', () => {
    const one = made({ height: 900, depth: 200 });
    // Posts from −285 to −222; the worktop ends at −263, so notches are 41 deep, from 159 to 200 behind the front frame.
    expect(one.rod.carcass).toMatchObject({ back: -285, high: 1060, worktop: { edge: -263 } });
    // Three bays of (2400 − 4 · 140) / 3 = 613.333: pillars on 823.333 and 1576.667. Notches at the ends are open.
    expect(outlineOf(one)).toEqual([
      [0, 0],
      [2400, 0],
      [2400, 159],
      [2362, 159],
      [2362, 200],
      [1595.667, 200],
      [1595.667, 159],
      [1557.667, 159],
      [1557.667, 200],
      [842.333, 200],
      [842.333, 159],
      [804.333, 159],
      [804.333, 200],
      [38, 200],
      [38, 159],
      [0, 159],
    ]);
    expect(extent(one, 'CR', 'z').slice(0, 3)).toEqual([
      [0, 63],
      [805, 868],
      [997, 1060],
    ]);
    expect(extent(one, 'BE', 'd')[0]).toEqual([-101, -63]);
    expect(extent(one, 'BE', 'z')[0]).toEqual([805, 868]);
  });

  it('that ends before the posts is not notched; one as deep as the top moves the posts back to its edge', () => {
    expect(outlineOf(made({ height: 900, depth: 150 }))).toHaveLength(4);
    // −63 − 250 = −313 lies behind −285 and before −325: flush with the posts.
    expect(made({ height: 900, depth: 250 }).rod.carcass).toMatchObject({
      back: -313,
      high: 1060,
      worktop: { edge: -313 },
    });
  });

  it('of sheet comes from the sheet chosen, and says when it is too deep or too long for it', () => {
    const one = made({ height: 900, of: 'sheet', sheet: 'mdf-18', depth: 300 }, { runs: [{ length: 2600 }] });
    expect(partOf(one, 'WT')).toMatchObject({ material: 'mdf-18', finish: 'paint' });
    expect(findingOf(one, 'worktop-longer-than-stock')).toMatchObject({ value: 2600, limit: 2440 });
    expect(rulesOf(one)).not.toContain('worktop-deeper-than-stock');
  });

  it('is divided on the joins', () => {
    const one = made({ height: 900, depth: 500 }, { joins: { by: 'hand', at: [{ run: 1, x: 820 }] } });
    expect(extent(one, 'WT', 'x')).toEqual([
      [0, 820],
      [820, 2400],
    ]);
    expect(partsOf(one, 'WT').map((p) => p.inSection)).toEqual(['S1', 'S2']);
  });

  it('is mitred with the neighbour’s at an outside corner: at 90° each falls short by its offset', () => {
    const one = made({ height: 900, depth: 500 }, { runs: [{ length: 3000, deflectionDeg: 90 }, { length: 2800 }] });
    expect(outlineOf(one, 'A')).toEqual([
      [0, 0],
      [2937, 0],
      [2437, 500],
      [0, 500],
    ]);
    expect(outlineOf(one, 'B')).toEqual([
      [63, 0],
      [2800, 0],
      [2800, 500],
      [563, 500],
    ]);
    expect(partOf(one, 'WT', 'A')).toMatchObject({ meets: 'right' });
    // Bearers run on from the end frame, which ends at 3000 − 563, behind which the worktop’s rear edge meets its neighbour’s, to the mitre behind the front frame's: 3000 − 101.
    expect(extent(one, 'BE', 'x', 'A')).toContainEqual([2437, 2899]);
  });

  it('is left on at a wall, to be scribed', () => {
    const one = made({ height: 900, depth: 500 }, { fit: { scribe: 12, tolerance: 5 } });
    expect(outlineOf(one)[0]).toEqual([0, 0]);
    expect(partOf(one, 'WT').oversize).toMatchObject([
      { side: 'left end', amount: 12, on: 'length' },
      { side: 'right end', amount: 12, on: 'length' },
    ]);
  });
});

describe('where it can’t be made', () => {
  it('too high: under a narrow top 50 clear of its underside, else of the rails that carry it', () => {
    // 1060 − 50, and 1060 − 63 − 50.
    expect(findingOf(made({ height: 1011, depth: 500 }), 'worktop-too-high')).toMatchObject({
      value: 1011,
      limit: 1010,
    });
    const rails = made({ height: 948, depth: 200 });
    expect(findingOf(rails, 'worktop-too-high')).toMatchObject({ severity: 'warn', value: 948, limit: 947 });
    expect(partsOf(rails, 'WT')).toEqual([]);
    // The carcass is then built as if none were wished.
    expect(rails.rod.carcass).toMatchObject({ back: -285, high: 1060 });
    expect(partsOf(made({ height: 947, depth: 200 }), 'WT')).toHaveLength(1);
  });

  it('too low: rails of 63 at the bottom and under it, 100 between, its 32', () => {
    expect(findingOf(made({ height: 257 }), 'worktop-too-low')).toMatchObject({ value: 257, limit: 258 });
    expect(partsOf(made({ height: 258 }), 'WT')).toHaveLength(1);
  });

  it('without a carcass nothing carries it', () => {
    const one = made({ height: 900 }, { elements: { carcass: { build: false } } });
    expect(findingOf(one, 'worktop-uncarried')).toMatchObject({ severity: 'warn', value: 900 });
    expect(partsOf(one, 'WT')).toEqual([]);
  });
});
