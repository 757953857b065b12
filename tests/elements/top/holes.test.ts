import { describe, expect, test } from 'vitest';
import { areaOf } from '../../../src/base/outline';
import { holesIn, holeWork, outlineOf } from '../../../src/elements/top/holes';
import type { Vec2 } from '../../../src/vocabulary/geometry';
import type { PlacedOpening } from '../../../src/vocabulary/opening';

const opening = (said: Partial<PlacedOpening>): PlacedOpening => ({
  index: 0,
  name: 'tap',
  run: 'A',
  through: 'top',
  use: 'socket',
  round: false,
  from: 400,
  to: 500,
  low: 100,
  high: 160,
  ...said,
});
const pipe = (x: number, y: number, across: number, said: Partial<PlacedOpening> = {}): PlacedOpening =>
  opening({
    use: 'pipe',
    round: true,
    from: x - across / 2,
    to: x + across / 2,
    low: y - across / 2,
    high: y + across / 2,
    ...said,
  });
const box = (from: number, to: number, depth = 400): readonly Vec2[] => [
  [from, 0],
  [to, 0],
  [to, depth],
  [from, depth],
];

describe('a hole in the top', () => {
  test('keeps 50 mm of stuff to each edge: 50 is enough, 49 is refused with the nearest place', () => {
    expect(holesIn([opening({ low: 50, high: 110 })], [box(0, 1000)])).toMatchObject({ findings: [] });
    const { holes, findings } = holesIn([opening({ low: 49, high: 109 })], [box(0, 1000)]);
    expect(holes).toEqual([[]]);
    expect(findings).toMatchObject([
      { severity: 'stop', rule: 'top-opening-near-edge', value: 49, limit: 50, subject: { path: '/unit/openings/0' } },
    ]);
    expect(findings[0].remedy).toBe(
      'Move its middle to 450 mm along, 80 mm back from the front edge. No hole is made.',
    );
  });

  test('keeps it to a mitre, measured square to it: a round one by its radius', () => {
    // Right end from (1000, 0) to (600, 400): 45°. A pipe of 60 at (x, 200): the line is at x = 800 there, (800 − x)/√2 away.
    const mitred: readonly Vec2[] = [
      [0, 0],
      [1000, 0],
      [600, 400],
      [0, 400],
    ];
    const just = 800 - 80 * Math.SQRT2;
    expect(holesIn([pipe(just - 0.01, 200, 60)], [mitred]).findings).toEqual([]);
    const { findings } = holesIn([pipe(just + 10, 200, 60)], [mitred]);
    expect(findings[0].value).toBeCloseTo(50 - 10 / Math.SQRT2, 9);
    // The nearest is square to the mitre: 5 back along it and 5 forward.
    expect(findings[0].message).toContain(`${(Math.round((just + 5) * 10) / 10).toString()} mm along, 195 mm back`);
    // A square one of the same size reaches further to a slanting line: 30·(1 + 1)/√2.
    const square = opening({ from: just - 30, to: just + 30, low: 170, high: 230 });
    expect(holesIn([square], [mitred]).findings[0].value).toBeCloseTo(80 - 60 / Math.SQRT2, 9);
  });

  test('keeps it to a joint, and goes into the length it lies in', () => {
    const lengths = [box(0, 1000), box(1000, 2000)];
    expect(holesIn([pipe(1200, 200, 60)], lengths).holes).toMatchObject([[], [{ use: 'pipe' }]]);
    expect(holesIn([pipe(1000, 200, 60)], lengths).findings).toMatchObject([
      { value: -30, message: expect.stringContaining('runs out over') },
    ]);
  });

  test('has no place in a top that is too narrow', () => {
    const { findings } = holesIn([opening({ low: 30, high: 90 })], [box(0, 1000, 120)]);
    expect(findings[0].message).toContain('No length of this top has room for it.');
  });

  test('keeps 20 mm to the next', () => {
    expect(holesIn([pipe(400, 200, 60), pipe(480, 200, 60)], [box(0, 1000)]).findings).toEqual([]);
    const { holes, findings } = holesIn([pipe(400, 200, 60), pipe(479, 200, 60, { index: 1 })], [box(0, 1000)]);
    expect(holes[0].length).toBe(1);
    expect(findings).toMatchObject([{ rule: 'top-openings-near', value: 19, subject: { path: '/unit/openings/1' } }]);
  });

  test('is cut as it is said', () => {
    const round = outlineOf(pipe(450, 130, 60), 200);
    expect(areaOf(round)).toBeCloseTo(Math.PI * 900, 6);
    expect(round.start).toEqual([280, 130]);
    expect(areaOf(outlineOf(opening({}), 200))).toBe(6000);
    expect(outlineOf(opening({}), 200).start).toEqual([200, 100]);
    expect(holeWork(opening({}), 200)).toBe(
      'hole 100 × 60 for “tap”, its middle 250 from the left end and 130 back from the front edge',
    );
  });
});
