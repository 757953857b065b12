import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { findingOf, jobOf, partOf, rulesOf, type Said } from '../job-of';

describe('a flap’s hinges', () => {
  const hung = (width: number) =>
    design(
      jobOf({
        runs: [{ length: 2000, flap: { width, hinge: 'left', gate: false } }, { length: 1500 }],
        depth: 500,
      }),
    );
  test('are three where it is heavy, though no deeper than 500: over 15 kg of oak at 710 kg/m³', () => {
    // 1.045 · 0.5 · 0.04 · 710 = 14.8 kg; 1.095 of it 15.5 kg.
    expect(partOf(hung(1050), 'LF').hardware?.[0]).toMatchObject({ count: 2 });
    expect(partOf(hung(1100), 'LF').hardware?.[0]).toMatchObject({ count: 3 });
  });
});

describe('a butted top beside a gap', () => {
  /**
   * B turns after 300 and the next run goes through. Mitred, its back edge begins at the corner’s own line, 300 − 325 · tan 22.5° = 165 short of
   * the gap. Butted it runs on to B’s front edge, 75 out: its back edge lies there at 300 − 325 · √2 − 75 = −235, in the gap.
   */
  const turned = (deflectionDeg: number, corner: string, more: object = {}) => {
    const said: Said = {
      runs: [
        { length: 2000, flap: { width: 800, hinge: 'left', gate: false } },
        { length: 300, deflectionDeg, through: 'next' },
        { length: 1500 },
      ],
      elements: { top: { corner, ...more } },
    };
    return design(jobOf(said));
  };
  test('reaches as far as it goes, from 45° on; a mitred one does not', () => {
    expect(findingOf(turned(45, 'butted'), 'flap-meets-run').severity).toBe('stop');
    expect(rulesOf(turned(44.9, 'butted'))).not.toContain('flap-meets-run');
    expect(rulesOf(turned(45, 'mitred'))).not.toContain('flap-meets-run');
  });
});
