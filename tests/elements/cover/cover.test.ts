import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { cornersIn } from '../../properties/measure';
import { openingOf } from '../behind-job';
import { findingOf, jobOf, partOf, partsOf, rulesOf, runOf } from '../job-of';

/** Pillars 0–100, 1150–1250, 2300–2400; blocks 5 wider on each side and 150 high, skirting 120; under the top 960. */
const pillar = { rhythm: 'count', bays: 2, width: 100, flutes: 0 };
const joinAt = (x: number) => ({ by: 'hand' as const, at: [{ run: 1, x }] });
const madeWith = (x: number, elements: object = {}, more: object = {}) =>
  design(jobOf({ height: 1000, elements: { pillar, ...elements }, joins: joinAt(x), ...more }));

function boxOf(made: ReturnType<typeof design>) {
  const corners = cornersIn(runOf(made), partOf(made, 'CV'));
  const span = (of: (c: (typeof corners)[number]) => number) =>
    [Math.min(...corners.map(of)), Math.max(...corners.map(of))].map((n) => Number(n.toFixed(6)));
  return { x: span((c) => c.x), d: span((c) => c.d), z: span((c) => c.z) };
}

describe('a strip over a join', () => {
  test('covers it from the skirting to the top, round the block beside it', () => {
    const made = madeWith(1270);
    expect(findingOf(made, 'join-under-strip').subject).toEqual({ run: 'A', path: '/unit/joins/at/0' });
    expect(boxOf(made)).toEqual({ x: [1250, 1290], d: [12, 18], z: [120, 960] });
    const strip = partOf(made, 'CV');
    expect(strip.size).toEqual({ length: 840, width: 40, thickness: 6 });
    // The block takes 5 of its width up to 150: 30 of its length.
    expect(strip.volumeMm3).toBeCloseTo((40 * 840 - 5 * 30) * 6, 6);
    expect(strip.work).toEqual(['5 taken off the left edge from 0 to 30 from its lower end']);
    expect(strip.fitted).toBe('site');
  });

  test('at the right of a bay is the mirror image', () => {
    const made = madeWith(1130);
    expect(boxOf(made)).toEqual({ x: [1110, 1150], d: [12, 18], z: [120, 960] });
    expect(partOf(made, 'CV').work).toEqual(['5 taken off the right edge from 0 to 30 from its lower end']);
  });

  test('is site-fitted even where the join lies on its edge', () => {
    expect(partOf(madeWith(1290), 'CV').fitted).toBe('site');
  });

  test('is said, with the nearest pillar', () => {
    const made = madeWith(1270);
    expect(findingOf(made, 'join-under-strip')).toMatchObject({ severity: 'warn', value: 1270, limit: 1200 });
    expect(rulesOf(madeWith(12700))).not.toContain('join-under-strip');
    expect(partsOf(madeWith(12700), 'CV')).toEqual([]);
  });

  test('stands on a plinth that runs through, and ends under a moulding', () => {
    const made = madeWith(1270, {
      plinth: { style: 'plain', height: 110 },
      undertop: { moulding: 'undertop-ovolo-20' },
    });
    expect(boxOf(made).z).toEqual([110, 940]);
    expect(partOf(made, 'CV').work).toBeUndefined();
  });

  test('is scribed round base and cap, and stands on a block that leaves nothing of it', () => {
    const cap = madeWith(1270, { pillar: { ...pillar, capHeight: 60, capOverhang: 12 } });
    expect(partOf(cap, 'CV').work).toContain('12 taken off the left edge from 780 to 840 from its lower end');
    const wide = madeWith(1270, { plinth: { overhang: 35 } });
    expect(boxOf(wide).z).toEqual([150, 960]);
  });

  test('is in the way of an opening', () => {
    const socket = openingOf({ x: 1330, z: 500, width: 90, height: 60 });
    const made = madeWith(1270, { panel: { rows: 0 } }, { openings: [socket] });
    // From 1285 on; the strip reaches 1290.
    expect(made.openings).toEqual([]);
  });
});
