import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { reachOf } from '../../properties/measure';
import { findingOf, jobOf, partsOf, rulesOf, runOf } from '../job-of';

describe('skirting', () => {
  test('fits between the blocks of each bay', () => {
    const made = design(jobOf({}));
    const blocks = partsOf(made, 'BK').map((p) => reachOf(runOf(made), p));
    const lengths = partsOf(made, 'SK').map((p) => reachOf(runOf(made), p));
    expect(lengths).toHaveLength(blocks.length - 1);
    for (const [i, { from, to }] of lengths.entries()) expect([from, to]).toEqual([blocks[i].to, blocks[i + 1].from]);
  });

  test('has a noggin behind its fixings, 30 below its upper edge', () => {
    const made = design(jobOf({ elements: { skirting: { moulding: 'skirting-torus-145' } } }));
    const behind = made.framing[0].noggins.filter((n) => n.reasons.includes('skirting'));
    expect(behind.length).toBeGreaterThan(0);
    for (const { low, high } of behind) expect(low + 6 <= 115 && 115 <= high - 6).toBe(true);
  });

  test('thicker than the blocks is said, with both', () => {
    const made = design(jobOf({ elements: { plinth: { sheet: 'mdf-15' } } }));
    expect(findingOf(made, 'skirting-proud')).toMatchObject({ severity: 'warn', value: 18, limit: 15 });
  });

  test('between blocks that overlap has no room, and by how much', () => {
    const made = design(
      jobOf({
        runs: [{ length: 700 }],
        elements: { pillar: { rhythm: 'count', bays: 4 }, plinth: { overhang: 50 }, skirting: {} },
      }),
    );
    // 700 less five pillars of 140 leaves no bays at all: two end pillars stay, 420 apart.
    expect(findingOf(made, 'bays-too-narrow').value).toBe(0);
    const tight = design(
      jobOf({ runs: [{ length: 780 }], elements: { pillar: { rhythm: 'count', bays: 4 }, plinth: { overhang: 50 } } }),
    );
    // (780 − 5 · 140)/4 = 20 between pillars, 100 of it wanted by the blocks.
    expect(findingOf(tight, 'blocks-overlap')).toMatchObject({ severity: 'stop', limit: 0 });
    expect(findingOf(tight, 'blocks-overlap').value).toBeCloseTo(20 - 100, 9);
    expect(partsOf(tight, 'SK')).toEqual([]);
  });

  test('that would run past the mitre of a sharp corner is left out, with how far', () => {
    const elements = {
      cladding: { sheet: 'mdf-18' },
      pillar: { cornerWidth: 60, width: 81, rhythm: 'count', bays: 1, flutes: 0 },
      plinth: { overhang: 5 },
    };
    const made = design(
      jobOf({ runs: [{ length: 3000, deflectionDeg: 149.5 }, { length: 3000 }], depth: 300, elements }),
    );
    // On the skin, 18 out, the mitre is 18·tan(74.75°) past the corner; the board, seen 36 out, begins 60 before its own, the block 5 before that.
    const tan = Math.tan((74.75 * Math.PI) / 180);
    expect(findingOf(made, 'skirting-past-mitre').value).toBeCloseTo(36 * tan - 60 - 5 - 18 * tan, 9);
    expect(made.parts.some((p) => p.code === 'SK')).toBe(false);
  });

  test('higher than the blocks it shows its ends, and is said', () => {
    const made = design(jobOf({ elements: { plinth: { height: 100 } } }));
    expect(findingOf(made, 'skirting-above-block')).toMatchObject({ severity: 'warn', value: 120, limit: 100 });
    expect(rulesOf(design(jobOf({ elements: { plinth: { height: 120 } } })))).not.toContain('skirting-above-block');
  });
});
