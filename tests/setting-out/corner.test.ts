import { describe, expect, test } from 'vitest';
import { frameCorner, growth } from '../../src/setting-out/corner';

const tan = (deg: number): number => Math.tan((deg * Math.PI) / 180);
const sin = (deg: number): number => Math.sin((deg * Math.PI) / 180);
const cos = (deg: number): number => Math.cos((deg * Math.PI) / 180);

describe('the corner rule', () => {
  test.each([
    [90, 1],
    [-90, -1],
    [0, 0],
    [60, 0.57735],
    [-60, -0.57735],
    [120, 1.73205],
    [150, 3.73205],
  ])('a turn of %d°: tan of half of it, %d', (turn, gain) => {
    expect(growth(turn)).toBeCloseTo(gain, 5);
  });

  test('square corners are square to the last bit', () => {
    expect([growth(90), growth(-90)]).toEqual([1, -1]);
  });
});

describe('two square-cut frames, 63 deep', () => {
  const D = 63;
  const at = (turn: number) => frameCorner(turn, D);

  test('straight on: both run to the vertex', () => {
    expect(at(0)).toEqual({ through: 0, butting: 0, wedges: [], packing: 0 });
  });

  test('square, outside: the butting frame stops at the back of the through frame, no wedge', () => {
    expect(at(90)).toEqual({ through: 0, butting: -D, wedges: [], packing: 0 });
  });

  test('outside, 45°: the through frame runs to the vertex, the butting one is left a wedge of half the square', () => {
    const { through, butting, wedges } = at(45);
    expect(through).toBe(0);
    expect(butting).toBeCloseTo(-D * sin(45), 9);
    expect(wedges).toHaveLength(1);
    expect(wedges[0].holder).toBe('butting');
    expect(wedges[0].points[2][0]).toBeCloseTo(D * sin(45), 9);
    expect(wedges[0].points[2][1]).toBeCloseTo(-D * cos(45), 9);
  });

  test('outside past square, 120°: both stop short, and each holds a wedge of the same section', () => {
    const { through, butting, wedges } = at(120);
    expect(through).toBeCloseTo(-D / tan(60), 9);
    expect(butting).toBeCloseTo(-D * tan(60), 9);
    expect(wedges.map((w) => w.holder)).toEqual(['through', 'butting']);
    const legs = wedges.map(({ points: [a, b, c] }) => [b[0] - a[0], c[1] - b[1]]);
    for (const [along, back] of legs) {
      expect(along).toBeCloseTo(D / tan(60), 9);
      expect(back).toBeCloseTo(-D, 9);
    }
    expect(wedges[1].points[1][0]).toBeCloseTo(-butting, 9);
  });

  test('square, inside: the butting frame stands on the through frame’s face, which covers its end', () => {
    expect(at(-90)).toEqual({ through: D, butting: -0, wedges: [], packing: 0 });
  });

  test('inside, a little less than square: the butting frame’s back corner touches first, and the wedge in front is filled', () => {
    const { through, butting, wedges } = at(-82);
    expect(through).toBeCloseTo(D / sin(82), 9);
    expect(butting).toBeCloseTo(-D / tan(82), 9);
    expect(wedges.map((w) => w.holder)).toEqual(['butting']);
    expect(wedges[0].points[1][0]).toBeCloseTo(D / tan(82), 9);
  });

  test('inside, a little more than square: the butting frame’s front corner touches, and the through end is covered', () => {
    const { through, butting, wedges } = at(-95);
    expect(through).toBeCloseTo(D * sin(95), 9);
    expect(butting).toBe(0);
    expect(wedges).toEqual([]);
  });

  test.each([-45, -120])('inside, %d°: both run to the vertex, and the open wedge behind is filled', (turn) => {
    const { through, butting, wedges } = at(turn);
    expect([through, butting]).toEqual([0, 0]);
    expect(wedges.map((w) => w.holder)).toEqual(['through']);
    const [, a, b] = wedges[0].points;
    expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeCloseTo(2 * D * sin(Math.abs(turn) / 2), 9);
  });

  // Less than 5 mm thick a wedge is packing.
  test.each([
    [4.5, 4.9, 0],
    [4.6, 5.1, 1],
    [-4.5, 4.9, 0],
    [-4.6, 5.1, 1],
    [85.5, 4.9, 0],
    [85.4, 5.1, 1],
    [-85.5, 4.9, 0],
    [-85.4, 5.1, 1],
    [94.5, 4.9, 0],
    [94.6, 5.1, 2],
  ])('%d°: a wedge about %d mm thick makes %d parts', (turn, _, count) => {
    expect(at(turn).wedges).toHaveLength(count);
  });
});
