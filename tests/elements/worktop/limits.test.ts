import { describe, expect, it } from 'vitest';
import { design } from '../../../src/flow';
import type { Design } from '../../../src/vocabulary/design';
import type { Decision } from '../../../src/vocabulary/field';
import { findingOf, jobOf, partOf, rulesOf, type Said } from '../job-of';

/* As in worktop.test.ts: oak of 32 at 900; notches round posts from 159 to 200 behind the front frame where it is 200 deep. */
const made = (worktop: Readonly<Record<string, Decision>>, said: Said = {}): Design =>
  design(
    jobOf({
      runs: [{ length: 2400, rhythm: { by: 'count', count: 3 } }],
      ...said,
      elements: { worktop: { height: 900, ...worktop }, carcass: { build: true } },
    }),
  );

describe('a worktop', () => {
  it('with what is left on is not longer than its stuff: 2985 + 2 · 15 = 3015 of ash 3000 long', () => {
    const long = (length: number): Design =>
      made({ depth: 500, hardwood: 'ash-32' }, { runs: [{ length }], fit: { scribe: 15 } });
    expect(findingOf(long(2985), 'worktop-longer-than-stock')).toMatchObject({ value: 3015, limit: 3000 });
    expect(findingOf(long(2985), 'worktop-longer-than-stock').message).toContain('3015 mm long with the 30 mm left on');
    expect(rulesOf(long(2970))).not.toContain('worktop-longer-than-stock');
  });
  it('of sheet is not deeper than the sheet is wide', () => {
    const wide = (width: number): Design => made({ depth: 500, of: 'sheet', sheet: 'mdf-25' }, { stock: { 'mdf-25': { width } } }); // biome-ignore format: one line
    expect(findingOf(wide(499), 'worktop-deeper-than-stock')).toMatchObject({
      severity: 'warn',
      value: 500,
      limit: 499,
    });
    expect(rulesOf(wide(500))).not.toContain('worktop-deeper-than-stock');
  });
  it('has two screws through each cross rail: four frames, eight', () =>
    expect(partOf(made({ depth: 500 }), 'WT').holds).toMatchObject([{ where: { at: 'all', each: 8 } }]));
  it('keeps a tongue of 30 beside the first post, and none narrower', () => {
    // The frame stands clear of the wall by the tolerance, the worktop goes up to it.
    const corners = (tolerance: number): readonly (readonly number[])[] => {
      const { shape } = partOf(made({ depth: 200 }, { fit: { tolerance } }), 'WT');
      return shape.kind === 'board' ? shape.outline.filter(([x]) => Math.abs(x) < 1e-9) : [];
    };
    expect(corners(30).map(([, y]) => y)).toEqual([200, 0].sort((a, b) => a - b));
    expect(corners(29.9).map(([, y]) => Math.round(y)).sort((a, b) => a - b)).toEqual([0, 159]); // biome-ignore format: one line
  });
});
