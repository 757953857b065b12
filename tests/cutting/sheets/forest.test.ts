import { describe, expect, it } from 'vitest';
import type { Cell } from '../../../src/cutting/sheets/cell';
import { cellsOf } from '../../../src/cutting/sheets/cells-of';
import { chanceOf } from '../../../src/cutting/sheets/chance';
import { felling } from '../../../src/cutting/sheets/fell';
import { fitOf } from '../../../src/cutting/sheets/fit';
import { type Forest, forestOf } from '../../../src/cutting/sheets/forest';
import { meritsOf } from '../../../src/cutting/sheets/merits';
import { plantOf } from '../../../src/cutting/sheets/plant';
import { plantCells } from '../../../src/cutting/sheets/plant-cells';
import { scaled } from '../../../src/cutting/sheets/scaled';
import { piece, sheetProblem } from './problems';

const PROBLEM = sheetProblem(
  [
    piece(30, 20, 4, { turnable: true }),
    piece(45, 17, 3),
    piece(12, 9, 8, { turnable: true }),
    piece(60, 33, 2),
    piece(25, 25, 3, { together: 'a' }),
  ],
  {
    stock: [
      { length: 100, width: 60, price: 10 },
      { length: 70, width: 50, price: 5, count: 2 },
    ],
  },
);
const TO = scaled(PROBLEM);

/** What a cell says wrongly of itself. */
function faults(cell: Cell, within?: string): string[] {
  if (cell.kind === 'left') return cell.length > 0 && cell.width > 0 ? [] : ['nothing left over'];
  if (cell.kind === 'piece') {
    const { length, width } = TO.kinds[cell.piece];
    const fits = cell.turned
      ? cell.length === width && cell.width === length
      : cell.length === length && cell.width === width;
    return fits ? [] : ['a piece of another size'];
  }
  const across = cell.way === 'across';
  const sides = cell.parts.map((part) => (across ? part.length : part.width));
  const spans = cell.parts.every((part) => (across ? part.width === cell.width : part.length === cell.length));
  return [
    ...(within === cell.way ? ['the same way twice'] : []),
    ...(sides.reduce((a, b) => a + b, 0) === (across ? cell.length : cell.width) ? [] : ['parts do not fill']),
    ...(spans ? [] : ['a part does not span']),
    ...(cell.parts.length > 1 ? [] : ['one part']),
    ...(cell.parts.filter((part) => part.kind === 'left').length > 1 ? ['left over twice'] : []),
    ...cell.parts.flatMap((part) => faults(part, cell.way)),
  ];
}

/** What a forest says of itself, and whether it is so. */
function check(forest: Forest): void {
  const cells = cellsOf(forest);
  expect(cells.flatMap(({ cell }) => faults(cell))).toEqual([]);
  const { missing, cost } = meritsOf(TO, cells);
  expect(forest.tally).toMatchObject({ missing });
  expect(forest.tally.cost).toBeCloseTo(cost, 9);
  const left = cells.flatMap(({ cell }) => leftIn(cell));
  const all = cells.reduce((sum, { sheet }) => sum + TO.sheets[sheet].length * TO.sheets[sheet].width, 0);
  const placed = TO.kinds.reduce((sum, k) => sum + k.quantity * k.length * k.width, 0) - missing;
  expect(left.reduce((sum, [length, width]) => sum + length * width, 0)).toBe(all - placed);
  expect(forest.tally.gathered).toBeCloseTo(
    left.reduce((sum, [length, width]) => sum + ((length * width) / 6000) ** 2, 0),
    9,
  );
  // In the list is what may hold a piece – none is narrower than 9 – or be kept, which is from 20 × 10.
  const { memory: M, at } = forest;
  const listed = Array.from(M.subarray(at.lengths, at.lengths + M[at.lefts]), (l, i) => [l, M[at.widths + i]]);
  expect(listed.sort(byBoth)).toEqual(left.filter(([length, width]) => length >= 9 && width >= 9).sort(byBoth));
}

const byBoth = (a: readonly number[], b: readonly number[]): number => a[0] - b[0] || a[1] - b[1];
const leftIn = (cell: Cell): (readonly [number, number])[] =>
  cell.kind === 'left' ? [[cell.length, cell.width]] : cell.kind === 'cut' ? cell.parts.flatMap(leftIn) : [];

describe('trees in one block of memory', () => {
  const chance = chanceOf(7);
  const forest = forestOf(TO);
  const fit = fitOf(forest, chance);
  const plant = plantOf(forest, fit, chance);
  const fell = felling(forest, chance);
  const how = {
    criterion: 'squares',
    blink: 0.1,
    flip: 0.2,
    choice: 'chance',
    budget: Number.POSITIVE_INFINITY,
  } as const;

  it('stay in order however pieces come and go, and all can be taken back', () => {
    plant({ ...how, order: 'area' });
    check(forest);
    for (let i = 0; i < 90; i++) {
      const before = forest.memory.slice();
      const tally = { ...forest.tally };
      forest.mark();
      fell();
      if (i % 3 > 0) plant({ ...how, order: i % 2 ? 'chance' : 'long', budget: 40 });
      check(forest);
      if (i % 2) continue;
      forest.takeBack();
      // What a freed node held is of no account, but it is taken back too.
      expect(forest.memory.every((value, place) => value === before[place])).toBe(true);
      expect(forest.tally).toEqual(tally);
    }
  });

  it('can be read, and planted again as read', () => {
    plant({ ...how, order: 'area' });
    const cells = cellsOf(forest);
    const other = forestOf(TO);
    plantCells(other, cells);
    check(other);
    expect(meritsOf(TO, cellsOf(other))).toEqual(meritsOf(TO, cells));
    plantCells(other, cells.slice(1));
    check(other);
  });

  it('come back to what was saved', () => {
    const saved = forest.save();
    const cells = cellsOf(forest);
    for (let i = 0; i < 5; i++) fell();
    expect(cellsOf(forest)).not.toEqual(cells);
    forest.restore(saved);
    expect(cellsOf(forest)).toEqual(cells);
    check(forest);
  });
});
