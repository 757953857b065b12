import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import type { Design } from '../../../src/vocabulary/design';
import type { Opening } from '../../../src/vocabulary/job';
import { cornersIn } from '../../properties/measure';
import { openingOf } from '../behind-job';
import { findingOf, jobOf, partsOf, rulesOf, runOf, type Said } from '../job-of';

const grille = (said: Partial<Opening>) =>
  openingOf({ through: 'top', use: 'grille', x: 700, z: 300, width: 60, height: 60, ...said });
const made = (said: Said, top: object = {}): Design =>
  design(jobOf({ depth: 600, ...said, elements: { top: { overhang: 75, longest: 10_000, ...top } }, stock: { 'oak-40': { maxLength: 10_000 } } })); // biome-ignore format: one line
const holesOf = (d: Design): number =>
  d.parts.reduce(
    (sum, { kind, shape }) => sum + (kind === 'top' && shape.kind === 'board' ? shape.holes.length : 0),
    0,
  );

describe('an opening by a butted corner', () => {
  const runs = (through: 'this' | 'next') => [{ length: 3000, deflectionDeg: 90, through }, { length: 2500 }];
  test('in the length that stops against the other keeps 50 from that: 3000 + 75 − 600 − 50 = 2425', () => {
    const at = (x: number): Design => made({ runs: runs('next'), openings: [grille({ x })] }, { corner: 'butted' });
    expect(at(2395).openings).toHaveLength(1);
    const refused = at(2400);
    expect(refused.openings).toEqual([]);
    expect(findingOf(refused, 'opening-refused').message).toContain(
      'The nearest good place is 5 mm to the left, to 2395',
    );
    expect(rulesOf(refused)).not.toContain('top-opening-near-edge');
  });
  test('in the one that goes through may lie beyond where a mitre would be: up to 3000 + 75 − 50 = 3025', () => {
    const at = (x: number): Design => made({ runs: runs('this'), openings: [grille({ x })] }, { corner: 'butted' });
    expect(at(2995).openings).toHaveLength(1);
    expect(holesOf(at(2995))).toBe(1);
    expect(findingOf(at(3000), 'opening-refused').message).toContain('the right end of the run');
  });
  test('turned less than 45° is by a mitre', () => {
    const at = (deflectionDeg: number): number => {
      const said: Said = { runs: [{ length: 3000, deflectionDeg, through: 'this' }, { length: 2500 }], openings: [grille({ x: 2900 })] }; // biome-ignore format: one line
      return made(said, { corner: 'butted' }).openings.length;
    };
    expect([at(44.9), at(45)]).toEqual([0, 1]);
  });
});

describe('what has its place gets its hole, at every corner however it is made', () => {
  const cases = [-150, -97, -90, -60, -45, -30, 30, 44, 45, 60, 90, 128, 150].flatMap((deflectionDeg) =>
    (['this', 'next'] as const).flatMap((through) =>
      [{ corner: 'mitred' }, { corner: 'butted' }, { corner: 'butted', edge: 'ovolo-9' }].map((top) => ({
        deflectionDeg,
        through,
        top,
      })),
    ),
  );
  test.each(cases)('%o', ({ deflectionDeg, through, top }) => {
    const runs = [{ length: 3600, deflectionDeg, through }, { length: 3600 }];
    const openings = [1, 2].flatMap((run) =>
      [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].flatMap((i) => {
        const x = run === 1 ? 1500 + 260 * i : 2100 - 260 * i;
        return [200, 340, 480].map((z) => grille({ run, x, z, width: 90 }));
      }),
    );
    const d = made({ runs, openings }, top);
    expect(d.openings.length).toBeGreaterThan(8);
    expect(holesOf(d)).toBe(d.openings.length);
    expect(rulesOf(d)).not.toContain('top-opening-near-edge');
    // Nor is more refused than must be: none of those that lies wholly within a length by 50 and clear of all else is.
    for (const f of d.findings.filter((one) => one.rule === 'opening-refused'))
      if (f.message.includes('end of the run')) {
        const o = openings[Number(f.subject.path?.split('/').at(-1))];
        const [top1] = partsOf(d, 'TP', o.run === 1 ? 'A' : 'B');
        const outline = top1.shape.kind === 'board' ? top1.shape.outline : [];
        const left = Math.min(...cornersIn(runOf(d, top1.run), top1).map((c) => c.x));
        const within = outline.every(([ax, ay], i) => {
          const [bx, by] = outline[(i + 1) % outline.length];
          const long = Math.hypot(bx - ax, by - ay);
          const [nx, ny] = [(by - ay) / long, (ax - bx) / long];
          const reach = 45 * Math.abs(nx) + 30 * Math.abs(ny);
          return (ax + left - o.x) * nx + (ay - o.z) * ny - reach >= 50 + 1e-6;
        });
        expect(within).toBe(false);
      }
  });
});
