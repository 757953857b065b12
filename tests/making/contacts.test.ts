import { describe, expect, it } from 'vitest';
import { rectangle } from '../../src/base/outline';
import { placeOf } from '../../src/base/place';
import { straight } from '../../src/base/stuff';
import { contactsOf } from '../../src/making/contacts';
import type { Vec2, Vec3 } from '../../src/vocabulary/geometry';
import type { Part } from '../../src/vocabulary/part';
import { block, boardOf, partOf, stickOf } from './parts';

const touch = (a: Part, b: Part): boolean => contactsOf([a, b]).length === 1;
const A = block('A', [0, 0, 0], [100, 40, 40]);
const square = (side: number): readonly Vec2[] => [
  [0, 0],
  [side, 0],
  [side, side],
  [0, side],
];
/** A half-diagonal turn in plan. */
const H = Math.SQRT1_2;

describe('parts that touch', () => {
  it('are those whose faces meet, or are no more than half a millimetre apart; the gap is told', () => {
    expect(contactsOf([A, block('B', [100, 0, 0], [50, 40, 40])])).toEqual([{ a: 'A', b: 'B', gap: 0 }]);
    const [{ gap }] = contactsOf([A, block('B', [100.4, 10, 10], [50, 40, 40])]);
    expect(gap).toBeCloseTo(0.4, 9);
    expect(touch(A, block('B', [100.5, 0, 0], [50, 40, 40]))).toBe(true);
    expect(touch(A, block('B', [100.6, 0, 0], [50, 40, 40]))).toBe(false);
    expect(touch(A, block('B', [101, 0, 0], [50, 40, 40]))).toBe(false);
  });

  it('are not those of which only an arris or a corner grazes the other', () => {
    expect(touch(A, block('B', [100, 40, 0], [50, 40, 40]))).toBe(false);
    expect(touch(A, block('B', [100, 40, 40], [50, 40, 40]))).toBe(false);
    // A hair over one another is no better than nothing; a millimetre is.
    expect(touch(A, block('B', [100, 40 - 1e-6, 0], [50, 40, 40]))).toBe(false);
    expect(touch(A, block('B', [100, 39, 0], [50, 40, 40]))).toBe(true);
  });

  it('may be turned: an end against the face of a piece at 45°', () => {
    // Its face runs through (100, 0) at 45°; A is cut to it: 1 further along per mm across.
    const cut = partOf(
      { shape: stickOf(rectangle(40, 40), 100, { end: { at: 100, perAcross: 1, perOut: 0 } }), place: A.place },
      'A',
    );
    // Its across axis is out × along = (−H, H, 0), to the left: so it is laid on the other side.
    const turned = (away: number): Part =>
      partOf(
        {
          shape: stickOf(rectangle(30, 40), 80),
          place: placeOf([100 + 80 * H + away, 80 * H, 0], [-H, -H, 0], [0, 0, 1]),
        },
        'B',
      );
    expect(touch(cut, turned(0))).toBe(true);
    expect(touch(cut, turned(0.5))).toBe(true);
    expect(touch(cut, turned(2))).toBe(false);
  });

  it('may be mitred boards that meet in their mitre', () => {
    // Two strips of 18 × 100 round a square corner: each reaches 18 further at its face.
    const strip = (mark: string, origin: Vec3, along: Vec3, out: Vec3, mitre: 'start' | 'end'): Part => {
      const plane = { at: mitre === 'end' ? 300 : 0, perAcross: 0, perOut: mitre === 'end' ? 1 : -1 };
      return partOf(
        { shape: stickOf(rectangle(100, 18), 300, { [mitre]: plane }), place: placeOf(origin, along, out) },
        mark,
      );
    };
    const one = strip('A', [0, 0, 0], [1, 0, 0], [0, -1, 0], 'end');
    const next = (away: number): Part => strip('B', [300 + away, 0, 0], [0, 1, 0], [1, 0, 0], 'start');
    expect(touch(one, next(0))).toBe(true);
    // Moved 0.6 along the first, the mitres are 0.6 / √2 = 0.42 apart; moved 1.4, 0.99.
    expect(contactsOf([one, next(0.6)])[0]?.gap).toBeCloseTo(0.6 * H, 6);
    expect(touch(one, next(1.4))).toBe(false);
  });

  it('may touch along a round: a rail on a flat bracket', () => {
    const round = {
      start: [50, 25] as const,
      segments: [
        { to: [0, 25] as const, radius: 25 },
        { to: [50, 25] as const, radius: 25 },
      ],
    };
    const rail = (z: number): Part =>
      partOf({ shape: stickOf(round, 400), place: placeOf([-100, 0, z], [1, 0, 0], [0, 0, 1]) }, 'R');
    const bracket = block('B', [0, 5, -20], [40, 40, 20]);
    expect(touch(bracket, rail(0))).toBe(true);
    expect(touch(bracket, rail(1))).toBe(false);
  });

  it('do not meet in a hole or in the hollow of an L', () => {
    const board = partOf(
      { shape: boardOf(square(200), 12, [straight(square(60).map(([x, y]) => [x + 70, y + 70] as const))]) },
      'A',
    );
    // The hole is from 70 to 130: a pipe of 40 from 80 stands clear, one from 70 touches its side.
    expect(touch(board, block('B', [80, 80, -50], [40, 40, 100]))).toBe(false);
    expect(touch(board, block('B', [70, 80, -50], [40, 40, 100]))).toBe(true);
    const L: readonly Vec2[] = [
      [0, 0],
      [200, 0],
      [200, 50],
      [50, 50],
      [50, 200],
      [0, 200],
    ];
    const notched = partOf({ shape: boardOf(L, 12) }, 'A');
    expect(touch(notched, block('B', [60, 60, 0], [40, 40, 40]))).toBe(false);
    expect(touch(notched, block('B', [50, 60, 0], [40, 40, 40]))).toBe(true);
  });

  it('are told once each, in the order of the parts; nobody touches himself', () => {
    const row = ['A', 'B', 'C'].map((mark, i) => block(mark, [100 * i, 0, 0], [100, 40, 40]));
    expect(contactsOf([row[2], row[0], row[1]]).map(({ a, b }) => `${a}${b}`)).toEqual(['CB', 'AB']);
    expect(contactsOf([A])).toEqual([]);
    expect(contactsOf([])).toEqual([]);
  });
});
