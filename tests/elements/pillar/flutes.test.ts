import { describe, expect, test } from 'vitest';
import { canStop, fewer, flutedFace, fluteWidth, grooves } from '../../../src/elements/pillar/flutes';

describe('the width of a flute', () => {
  test('is what margins and fillets leave', () => expect(fluteWidth(140, 18, 5, 20, 5, 5)).toBe(16));
  test('a single flute takes all between the margins', () => expect(fluteWidth(140, 18, 1, 40, 5, 5)).toBe(60));
  test.each([
    [fluteWidth(140, 18, 7, 20, 20, 5), /7 flutes with margins of 20 and fillets of 20 mm leave nothing for each/],
    [fluteWidth(140, 18, 5, 20, 5, 8.1), /16 mm wide can't be 8.1 mm deep/],
    [fluteWidth(140, 9, 5, 20, 5, 6.5), /leave less than 3 mm of a board 9 mm thick/],
  ])('or a reason, with the numbers', (reason, said) => expect(reason).toMatch(said));
});

describe('the same flutes on a narrower face', () => {
  const fluting = { count: 5, width: 16, spacing: 5, depth: 5, stop: 0 };
  test('as many as leave the margin', () => {
    expect(fewer(140, 20, fluting)?.count).toBe(5);
    expect(fewer(139, 20, fluting)?.count).toBe(3);
    expect(fewer(60, 20, fluting)?.count).toBe(1);
  });
  test('none where not one goes', () => expect(fewer(55, 20, fluting)).toBeUndefined());
});

describe('setting out', () => {
  const cut = grooves(140, { count: 5, width: 16, spacing: 5, depth: 5, stop: 0 });
  test('is centred on the face, from its left edge', () =>
    expect(cut.map((g) => g.centre)).toEqual([28, 49, 70, 91, 112]));
  test('each flute is a hollow of its width and depth', () => {
    const [near, far] = flutedFace(140, 18, cut);
    expect([near.to, far.to]).toEqual([
      [120, 18],
      [104, 18],
    ]);
    const radius = -(far.radius ?? 0);
    // The versine of the chord is the depth.
    expect(radius - Math.sqrt(radius * radius - 64)).toBeCloseTo(5, 9);
  });
});

describe('stopped flutes', () => {
  const fluting = { count: 5, width: 16, spacing: 5, depth: 5, stop: 40 };
  test('say how far they stop short of both ends', () =>
    expect(grooves(140, fluting).map((g) => g.stops)).toEqual(Array(5).fill([40, 40])));
  test('are at least as long as they are wide', () => {
    expect(canStop(96, fluting)).toBe(true);
    expect(canStop(95.9, fluting)).toBe(false);
    expect(canStop(10, { ...fluting, stop: 0 })).toBe(true);
  });
});
