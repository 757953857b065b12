import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { extentAt } from '../../properties/measure';
import { findingOf, jobOf, partsOf, rulesOf, runOf } from '../job-of';

/** Cladding 12, skirting 18: its back lies 12 out, its face 30. */
const elements = { cladding: { sheet: 'mdf-12' }, pillar: { atCorners: false, rhythm: 'count', bays: 2 } };
const cornerOf = (deflectionDeg: number) => [{ length: 2000, deflectionDeg }, { length: 1600 }];

describe('skirting at a corner without pillar', () => {
  test('is mitred: at 90° it gains what it stands out', () => {
    const made = design(jobOf({ runs: cornerOf(90), elements }));
    const last = partsOf(made, 'SK').at(-1);
    const [first] = partsOf(made, 'SK', 'B');
    if (!last) throw new Error('no skirting');
    expect(extentAt(runOf(made), last, 12)?.to).toBeCloseTo(2000 + 12, 9);
    expect(extentAt(runOf(made), last, 30)?.to).toBeCloseTo(2000 + 30, 9);
    expect(extentAt(runOf(made, 'B'), first, 12)?.from).toBeCloseTo(-12, 9);
    expect(extentAt(runOf(made, 'B'), first, 30)?.from).toBeCloseTo(-30, 9);
    expect(last.ends.map((e) => e.kind)).toEqual(['square', 'bevel']);
    expect(last.ends[1]).toMatchObject({ tiltDeg: 45, longSide: 'face' });
    expect([last.meets, first.meets]).toEqual(['right', 'left']);
  });

  test('loses it at an inside corner, and by the tangent of half the turn', () => {
    const made = design(jobOf({ runs: cornerOf(-45), elements }));
    const last = partsOf(made, 'SK').at(-1);
    if (!last) throw new Error('no skirting');
    // tan 22.5° = 0.41421.
    expect(extentAt(runOf(made), last, 12)?.to).toBeCloseTo(2000 - 12 * 0.41421356, 6);
    expect(extentAt(runOf(made), last, 30)?.to).toBeCloseTo(2000 - 30 * 0.41421356, 6);
    expect(last.ends[1].longSide).toBe('back');
  });

  test('is fitted on site where the unit is taken apart at that corner', () => {
    const joins = { by: 'hand' as const, at: [{ run: 1 }] };
    const made = design(jobOf({ runs: cornerOf(90), elements, joins }));
    expect(partsOf(made, 'SK').map((p) => p.fitted)).toEqual(['workshop', 'site']);
    expect(partsOf(made, 'SK', 'B').map((p) => p.fitted)).toEqual(['site', 'workshop']);
  });

  test('of a bay so short that the mitre leaves next to nothing is left out, with what there would be', () => {
    const made = design(
      jobOf({
        runs: [
          { length: 2000, deflectionDeg: -90 },
          { length: 1600, rhythm: { by: 'marks', marks: [120] } },
        ],
        elements: { ...elements, pillar: { ...elements.pillar, width: 100 }, plinth: { overhang: 25 } },
      }),
    );
    // The pillar begins at 70, its block at 45; the skirting's face at 30 from the corner: 15. 20 is the least.
    expect(findingOf(made, 'skirting-no-length')).toMatchObject({ severity: 'stop', limit: 20 });
    expect(findingOf(made, 'skirting-no-length').value).toBeCloseTo(15, 9);
    expect(partsOf(made, 'SK', 'B').map((p) => p.where)).toEqual(['bay 2']);
  });
});

describe('where a plinth runs along the whole foot', () => {
  test.each([['plain'], ['kicked']])('%s: no skirting is made, and nothing asks for it', (style) => {
    const made = design(jobOf({ elements: { plinth: { style, height: 110 } } }));
    expect(partsOf(made, 'SK')).toEqual([]);
    expect(made.framing[0].noggins.flatMap((n) => n.reasons)).not.toContain('skirting');
    expect(rulesOf(made).filter((r) => r.startsWith('skirting'))).toEqual([]);
  });
});
