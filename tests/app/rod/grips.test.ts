import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Box, gripsOf, smallestLast } from '../../../app/rod/grips';

const box = (left: number, top: number, right: number, bottom: number): Box => ({ left, top, right, bottom });
const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right - 1e-9 && b.left < a.right - 1e-9 && a.top < b.bottom - 1e-9 && b.top < a.bottom - 1e-9;

test('a small thing is made large enough to be taken hold of, a large one is taken where it is drawn', () => {
  // 6 × 4 grows by (16 - 6) / 2 and (16 - 4) / 2.
  expect(gripsOf([box(100, 20, 106, 24)])).toEqual([box(95, 14, 111, 30)]);
  expect(gripsOf([box(0, 0, 40, 20)])).toEqual([box(0, 0, 40, 20)]);
});

test('two things near each other share the gap between them', () => {
  const [a, b] = gripsOf([box(0, 0, 40, 5), box(0, 9, 40, 14)]);
  expect([a!.bottom, b!.top]).toEqual([7, 7]);
  // Away from each other they grow as they would alone: (16 - 5) / 2.
  expect([a!.top, b!.bottom]).toEqual([-5.5, 19.5]);
  const [c, d] = gripsOf([box(0, 0, 6, 16), box(8, 0, 14, 16)]);
  expect([c!.right, d!.left]).toEqual([7, 7]);
});

test('whatever the crowd, a grip covers what it is of, and reaches into no other that lies beside it', () => {
  const drawn = fc
    .tuple(fc.nat(200), fc.nat(60), fc.integer({ min: 5, max: 50 }), fc.integer({ min: 5, max: 30 }))
    .map(([x, y, w, h]) => box(x, y, x + w, y + h));
  fc.assert(
    fc.property(fc.array(drawn, { minLength: 1, maxLength: 12 }), (boxes) => {
      const grips = gripsOf(boxes);
      boxes.forEach((a, i) => {
        const grip = grips[i]!;
        expect(grip.left <= a.left && grip.top <= a.top && grip.right >= a.right && grip.bottom >= a.bottom).toBe(true);
        boxes.forEach((b, k) => {
          if (k !== i && !overlap(a, b)) expect(overlap(grip, b)).toBe(false);
        });
      });
    }),
  );
});

test('the smaller of two lies on the greater, whichever comes first', () => {
  const great = { from: 0, to: 600, low: 300, high: 700 };
  const small = { from: 100, to: 160, low: 400, high: 460 };
  expect(smallestLast([small, great])).toEqual([great, small]);
  expect(smallestLast([great, small])).toEqual([great, small]);
});
