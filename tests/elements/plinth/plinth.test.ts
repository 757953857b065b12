import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { findingOf, jobOf, partsOf, rulesOf } from '../job-of';

describe('plinth blocks', () => {
  test('are wider than their pillars on each side towards a bay', () => {
    const made = design(jobOf({ elements: { plinth: { overhang: 6, height: 160, sheet: 'mdf-25' } } }));
    const [first, second] = partsOf(made, 'BK');
    expect(first.size).toMatchObject({ length: 146, width: 160, thickness: 25 });
    expect(second.size.length).toBe(152);
    expect(second.edges).toEqual([{ edge: 'front upper arris', work: 'moulded', cutter: 'Ovolo 9' }]);
  });

  test('without a cutter are square, and heavier', () => {
    const [plain] = partsOf(design(jobOf({ elements: { plinth: { cutter: '' } } })), 'BK');
    const [moulded] = partsOf(design(jobOf({})), 'BK');
    expect(plain.edges).toEqual([]);
    expect(plain.weightKg).toBeGreaterThan(moulded.weightKg);
  });

  test('meet at corners on the line of their own layer', () => {
    const made = design(
      jobOf({
        runs: [{ deflectionDeg: 90 }, {}],
        elements: { cladding: { sheet: 'mdf-12' }, plinth: { sheet: 'mdf-25' }, pillar: { cornerWidth: 110 } },
      }),
    );
    const corner = made.parts.filter((p) => p.name === 'corner plinth block');
    expect(corner).toHaveLength(2);
    // Back: 110 less 18 for the pillar's own layer, plus the overhang of 5; the face is 25 longer.
    for (const block of corner) {
      expect(block.shortPoint).toBeCloseTo(110 - 18 + 5, 9);
      expect(block.size.length).toBeCloseTo(110 - 18 + 5 + 25, 9);
    }
  });

  test('with no length left at a sharp corner are left out, with what is left', () => {
    const made = design(
      jobOf({
        runs: [{ deflectionDeg: -150 }, { length: 2400 }],
        elements: {
          pillar: { cornerWidth: 30, sheet: 'mdf-9', fluteDepth: 3 },
          plinth: { sheet: 'mdf-30', overhang: 0 },
        },
      }),
    );
    expect(findingOf(made, 'block-too-short')).toMatchObject({ severity: 'stop', limit: 10 });
  });

  test('smaller than the cutter are left square, and said', () => {
    const made = design(jobOf({ elements: { plinth: { sheet: 'mdf-6', cutter: 'ovolo-9' } } }));
    expect(findingOf(made, 'cutter-does-not-fit')).toMatchObject({ value: 9, limit: 6 });
    expect(partsOf(made, 'BK')[0].edges).toEqual([]);
  });

  test('as thin as the moulding is deep are left square too: an undercut would part a strip of stuff from the rest', () => {
    // The torus of 12 stands 6 out: of a strip 6 thick nothing is left where it undercuts.
    const made = design(jobOf({ elements: { plinth: { sheet: 'mdf-6', cutter: 'torus-12' } } }));
    expect(findingOf(made, 'cutter-does-not-fit')).toMatchObject({ severity: 'stop', limit: 6 });
    expect(partsOf(made, 'BK').every((p) => p.edges.length === 0)).toBe(true);
    const thicker = design(jobOf({ elements: { plinth: { sheet: 'mdf-9', cutter: 'torus-12' } } }));
    expect(rulesOf(thicker)).not.toContain('cutter-does-not-fit');
  });
});
