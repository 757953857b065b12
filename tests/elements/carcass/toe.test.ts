import { describe, expect, it } from 'vitest';
import { design } from '../../../src/flow';
import { findingOf, jobOf, partsOf, rulesOf } from '../job-of';

const made = (toeHeight: number) =>
  design(jobOf({ runs: [{ length: 1800 }], depth: 600, elements: { carcass: { build: true, toeHeight } } }));

describe('a recess for toes', () => {
  it('too low for toes is left out and said', () => {
    const low = made(12);
    expect(findingOf(low, 'toe-recess-too-low')).toMatchObject({ value: 12, limit: 30, severity: 'note' });
    expect(low.rod.carcass?.low).toBe(0);
    expect(partsOf(low, 'FP')).toEqual([]);
  });
  it('has its feet from 30 mm up', () => {
    expect(partsOf(made(30), 'FP').length).toBeGreaterThan(0);
    expect(rulesOf(made(30))).not.toContain('toe-recess-too-low');
    expect(rulesOf(made(0))).not.toContain('toe-recess-too-low');
  });
});
