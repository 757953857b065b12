import { describe, expect, test } from 'vitest';
import { design, elevation } from '../../../src/flow';
import { findingOf, jobOf, partsOf } from '../job-of';

/** Boards from 150 to 960: 810 high. */
const made = (pillar: Readonly<Record<string, string | number>>) =>
  design(jobOf({ height: 1000, elements: { plinth: { height: 150 }, pillar } }));
const stopped = (fluteStop: number) => made({ fluteEnds: 'stopped', fluteStop });

describe('stopped flutes', () => {
  test('exist between the stops only, and the groove says where they end', () => {
    for (const board of partsOf(stopped(40), 'PI')) {
      expect(board.grooves.map((g) => g.stops)).toEqual(Array(5).fill([40, 40]));
      expect(board.shape).toMatchObject({ stopped: { from: 40, to: 770 } });
      expect(board.size).toMatchObject({ length: 810, width: 140, thickness: 18 });
    }
  });

  test('leave stuff that run-through flutes take away', () => {
    const [through] = partsOf(made({}), 'PI');
    const [board] = partsOf(stopped(40), 'PI');
    expect(through.grooves[0].stops).toBeUndefined();
    // A flute 16 wide and 5 deep: r = 256/40 + 2.5 = 8.9, a segment of r²/2·(θ − sin θ) with sin(θ/2) = 8/8.9; five of them, 80 long.
    const angle = 2 * Math.asin(8 / 8.9);
    const segment = ((8.9 * 8.9) / 2) * (angle - Math.sin(angle));
    const more = board.volumeMm3 - through.volumeMm3;
    expect(more).toBeLessThan(5 * 80 * segment);
    // Arcs are drawn with chords at most 0.03 mm off.
    expect(more).toBeGreaterThan(5 * 80 * (segment - 0.03 * 8.9 * angle));
  });

  test('are drawn as far as they go', () => {
    const { strokes } = elevation(stopped(40), 'A', 'front');
    const upright = strokes.filter(
      (s) => s.kind === 'line' && s.part === 'A-PI1' && Math.abs(s.points[0][0] - s.points[1][0]) < 1e-6,
    );
    const heights = upright.map((s) => ('points' in s ? s.points.map((p) => p[1]).sort((a, b) => a - b) : []));
    // Two edges to each of five flutes, from 150 + 40 to 960 − 40.
    expect(heights).toHaveLength(10);
    for (const [low, high] of heights) {
      expect(low).toBeCloseTo(190, 9);
      expect(high).toBeCloseTo(920, 9);
    }
  });

  test('that would be shorter than wide are left out, with what there is and what is needed', () => {
    // 2 · 398 + 16 = 812 of 810.
    const none = stopped(398);
    expect(findingOf(none, 'flutes-stopped-away')).toMatchObject({
      severity: 'stop',
      value: 810,
      limit: 812,
      subject: { path: '/unit/elements/pillar/fluteStop' },
    });
    expect(partsOf(none, 'PI').every((p) => p.grooves.length === 0)).toBe(true);
    expect(partsOf(stopped(397), 'PI')[0].grooves).toHaveLength(5);
  });
});
