import fc from 'fast-check';
import { expect, test } from 'vitest';
import { place, type Wanted } from '../../../app/rod/placing';

const want = (id: string, x: number, rank = 0, width = 30): Wanted => ({ id, x, width, rank });

test('figures with room stand in the first row, right under their place', () => {
  const written = place([want('a', 100), want('b', 200)], 3, 0, 400);
  expect(written.map(({ id, row, middle }) => [id, row, middle])).toEqual([
    ['a', 0, 100],
    ['b', 0, 200],
  ]);
});

test('a crowded figure goes a row down, and is left out when there is no row', () => {
  const crowd = [want('a', 100, 0), want('b', 121, 1), want('c', 110, 2)];
  const rows = new Map(place(crowd, 3, 0, 400).map(({ id, row }) => [id, row]));
  expect(rows.get('a')).toBe(0);
  expect(rows.get('b')).toBe(1);
  expect(rows.has('c')).toBe(false);
});

test('the more important figure is kept', () => {
  expect(place([want('dull', 100, 5), want('picked', 101, 0)], 1, 0, 400).map((w) => w.id)).toEqual(['picked']);
});

test('figures at the ends are kept on the board', () => {
  const [left, right] = place([want('l', 0), want('r', 400)], 1, 0, 400);
  expect(left!.middle).toBe(15);
  expect(right!.middle).toBe(385);
});

test('no figure ever runs into another, nor over the leader of one below it', () => {
  const figure = fc.record({
    x: fc.double({ min: 0, max: 600, noNaN: true }),
    width: fc.integer({ min: 8, max: 60 }),
    rank: fc.nat(6),
  });
  fc.assert(
    fc.property(fc.array(figure, { maxLength: 60 }), fc.integer({ min: 1, max: 4 }), (figures, rows) => {
      const written = place(
        figures.map((f, i) => ({ ...f, id: `${i}` })),
        rows,
        0,
        600,
      );
      if (figures.length > 0) expect(written.length).toBeGreaterThan(0);
      for (const a of written) {
        expect(a.row).toBeLessThan(rows);
        expect(a.middle - a.width / 2).toBeGreaterThanOrEqual(0);
        expect(a.middle + a.width / 2).toBeLessThanOrEqual(600);
        for (const b of written) {
          if (a === b) continue;
          const [from, to] = [a.middle - a.width / 2, a.middle + a.width / 2];
          if (a.row === b.row) expect(from >= b.middle + b.width / 2 || to <= b.middle - b.width / 2).toBe(true);
          if (b.row > a.row) expect(b.x <= from || b.x >= to).toBe(true);
        }
      }
    }),
  );
});
