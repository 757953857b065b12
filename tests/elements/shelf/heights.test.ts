import { describe, expect, test } from 'vitest';
import { equalGap, equalUndersides, holeRow, mostShelves, pinnedUndersides } from '../../../src/elements/shelf/heights';

describe('heights of shelves', () => {
  test('equal spacing shares what the boards leave', () => {
    // 700 less 2 · 20 is 660, in three.
    expect(equalGap(700, 2, 20)).toBe(220);
    expect(equalUndersides(700, 2, 20)).toEqual([220, 460]);
  });

  test('the most shelves that keep the least clear height', () => {
    // (700 − 120)/(20 + 120) = 4.14; the fifth would leave (700 − 100)/6 = 100.
    expect(mostShelves(700, 20, 120)).toBe(4);
    expect(mostShelves(119, 20, 120)).toBe(0);
    // Exactly: 4 · 20 + 5 · 120 = 680.
    expect(mostShelves(680, 20, 120)).toBe(4);
  });

  test('a row of holes has what is left over at both ends', () => {
    // 700 less 2 · 60 is 580: 18 steps of 32 are 576. (700 − 576)/2 = 62.
    expect(holeRow(700, 32, 60)).toEqual({ count: 19, first: 62, pitch: 32 });
    expect(holeRow(120, 32, 60)).toEqual({ count: 1, first: 60, pitch: 32 });
    expect(holeRow(119, 32, 60).count).toBe(0);
  });

  test('shelves go to the nearest hole and lie half a hole above its middle', () => {
    const row = holeRow(700, 32, 60);
    // 220 − 2.5 − 62 = 155.5, 4.86 steps: the fifth. 62 + 160 + 2.5. 460 − 64.5 = 395.5, 12.36: the twelfth. 62 + 384 + 2.5.
    expect(pinnedUndersides(row, [220, 460], { height: 700, thickness: 20, hole: 5 })).toEqual([224.5, 448.5]);
    // Halfway between two holes it is the lower.
    expect(pinnedUndersides(row, [62 + 16 + 2.5], { height: 700, thickness: 20, hole: 5 })).toEqual([64.5]);
  });

  test('two shelves in one hole, or one through the end, are none', () => {
    const row = holeRow(700, 200, 60);
    expect(pinnedUndersides(row, [220, 240], { height: 700, thickness: 20, hole: 5 })).toBeUndefined();
    // Holes at 150, 350 and 550: on the last a shelf reaches 550 + 2.5 + 20.
    expect(pinnedUndersides(row, [540], { height: 572, thickness: 20, hole: 5 })).toBeUndefined();
    expect(pinnedUndersides(row, [540], { height: 573, thickness: 20, hole: 5 })).toEqual([552.5]);
    expect(
      pinnedUndersides({ count: 0, first: 0, pitch: 32 }, [10], { height: 50, thickness: 5, hole: 5 }),
    ).toBeUndefined();
  });
});
