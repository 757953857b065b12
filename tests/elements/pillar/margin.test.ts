import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { findingOf, jobOf, rulesOf } from '../job-of';

/** A new job's pillars: flutes of (140 − 2 · 20 − 4 · 5)/5 = 16, a margin of 20 wished. */
const corner = (cornerWidth: number) =>
  design(
    jobOf({ runs: [{ length: 2400, deflectionDeg: 90 }, { length: 2400 }], elements: { pillar: { cornerWidth } } }),
  );

describe('a corner board too narrow for the flutes’ margin', () => {
  test('keeps less, down to a quarter of its face, and that is said once: (40 − 16)/2 = 12', () => {
    const said = corner(40).findings.filter((f) => f.rule === 'flute-margin-less');
    expect(said).toMatchObject([{ severity: 'note', value: 12, limit: 20 }]);
    expect(said[0].message).toContain('a margin of 20 mm is wished; the boards are narrow, and 12 mm is left');
  });
  test('is not said where there is as much: (56 − 16)/2 = 20', () => {
    expect(rulesOf(corner(56))).not.toContain('flute-margin-less');
    expect(findingOf(corner(55.9), 'flute-margin-less').value).toBeCloseTo(19.95, 9);
    // 30 · 3/4 = 22.5 of face would take one of 16: (30 − 16)/2 = 7 is less than 7.5, so none is run.
    expect(rulesOf(corner(30))).not.toContain('flute-margin-less');
  });
});
