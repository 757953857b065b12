import { describe, expect, test } from 'vitest';
import { design } from '../../src/flow';
import type { Design } from '../../src/vocabulary/design';
import type { Opening } from '../../src/vocabulary/job';
import { behindJob, openingOf } from './behind-job';
import { findingOf, jobOf, type Said } from './job-of';

/*
 * What stands right below the top where it overhangs the frame, here by 300: cladding of 12 and pillar boards of 18 on it lie from 288 to
 * 300 and from 270 to 288 behind its front edge. Pillars of 100 on 0–100, 1150–1250, 2300–2400.
 */

const pipe = (said: Partial<Opening>) =>
  openingOf({ through: 'top', use: 'pipe', x: 700, z: 235, width: 60, height: 60, ...said });
const over = (x: number, z: number, elements: Said['elements'] = {}): Design =>
  design(
    jobOf({
      depth: 600,
      elements: {
        ...elements,
        top: { overhang: 300 },
        pillar: { rhythm: 'count', bays: 2, width: 100, flutes: 0, ...elements.pillar },
      },
      openings: [pipe({ x, z })],
    }),
  );
const met = (made: Design): string => {
  expect(made.openings).toEqual([]);
  return findingOf(made, 'opening-refused').message;
};

describe('an opening through the top in front of the frame', () => {
  test('keeps 5 clear of the cladding: 288 − 5 − 30 = 253', () => {
    expect(over(700, 253).openings).toHaveLength(1);
    expect(met(over(700, 260))).toContain('the cladding below');
  });
  test('and of a pillar board: 270 − 5 − 30 = 235 before it, and 5 beside it, from 1085 on', () => {
    expect(over(1200, 235).openings).toHaveLength(1);
    expect(met(over(1200, 240))).toContain('pillar 2');
    // 1150 − 5 − 30 = 1115.
    expect(over(1115, 250).openings).toHaveLength(1);
    expect(met(over(1120, 250))).toContain('pillar 2');
  });
  test('and of a cap, which is thicker, 25, and stands 12 wider: 288 − 25 − 35 = 228, 1150 − 12 − 35 = 1103', () => {
    const capped = { pillar: { capHeight: 60, capOverhang: 12, capSheet: 'mdf-25' } };
    expect(over(1200, 228, capped).openings).toHaveLength(1);
    expect(met(over(1200, 232, capped))).toContain('cap of pillar 2');
    expect(over(1103, 250, capped).openings).toHaveLength(1);
    expect(met(over(1108, 250, capped))).toContain('cap of pillar 2');
  });
  test('and of a moulding under the top, 18 thick: 288 − 18 − 35 = 235', () => {
    const under = { undertop: { moulding: 'undertop-scotia-25' } };
    expect(over(700, 235, under).openings).toHaveLength(1);
    expect(met(over(700, 240, under))).toContain('moulding under the top in bay 1');
  });
});

test('behind a sink without a rear rail lies one more bearer, which an opening clears too', () => {
  // It lies from d = −487 to −525, so 562 to 600 behind the front edge: 562 − 5 − 20 = 537.
  const behind = (z: number): Design =>
    design(
      behindJob([{ purpose: 'sink', width: 500, height: 200, depth: 350 }], {
        elements: { carcass: { rearRail: false } },
        openings: [pipe({ x: 500, z, width: 40 })],
      }),
    );
  expect(behind(537).openings).toHaveLength(1);
  expect(met(behind(545))).toContain('sink bearer of bay 1');
});
