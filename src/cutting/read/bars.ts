import type { BarPiece, BarProblem, BarTurn, Slant } from '../../vocabulary/cut-problem';
import { MOST } from '../most';
import { type Found, groupOf, listOf, maybe, numberOf, oneOf, pairOf, refuse, textOf } from './fields';
import { ALLOWANCE, QUANTITY, SIZE, SLANT } from './limits';
import { stockOf, withPrices } from './stock';

const KNOWN = ['kind', 'kerf', 'trim', 'section', 'stock', 'pieces', 'leastOffcut'];
const TURNS: readonly BarTurn[] = ['rolled', 'swung', 'tumbled'];

/** Bars as a file has them, and whether they have prices. Worth nothing if something was refused: see the issues. */
export function barsOf(file: Found): { readonly problem: BarProblem; readonly priced: boolean } {
  const given = groupOf(file, KNOWN);
  const { stock, priced } = withPrices(
    listOf(given('stock'), { most: MOST.stocks, of: 'stocks' }, barOf),
    ({ length }) => length,
  );
  const pieces = listOf(given('pieces'), { most: MOST.pieces, of: 'pieces' }, pieceOf);
  const slanted = pieces.findIndex(({ ends }) => ends?.flat().some((per) => per !== 0));
  if (slanted >= 0 && given('section').value === undefined)
    refuse(given('section'), `the bar's section, for /pieces/${slanted} has slanted ends`);
  const problem: BarProblem = {
    kind: 'bars',
    kerf: maybe(given('kerf'), (kerf) => numberOf(kerf, ALLOWANCE)) ?? 0,
    trim: maybe(given('trim'), (trim) => numberOf(trim, ALLOWANCE)) ?? 0,
    section: maybe(given('section'), sectionOf),
    stock,
    pieces,
    leastOffcut: maybe(given('leastOffcut'), (length) => numberOf(length, ALLOWANCE)),
  };
  return { problem, priced };
}

function barOf(found: Found) {
  const given = groupOf(found, ['name', 'length', 'price', 'count', 'trim', 'offcut']);
  return { length: numberOf(given('length'), SIZE), ...stockOf(given) };
}

function pieceOf(found: Found): BarPiece {
  const given = groupOf(found, ['name', 'length', 'quantity', 'ends', 'together']);
  return {
    name: maybe(given('name'), textOf),
    length: numberOf(given('length'), SIZE),
    quantity: maybe(given('quantity'), (quantity) => numberOf(quantity, QUANTITY)) ?? 1,
    ends: maybe(given('ends'), (ends) => pairOf(ends, 'two ends, left and right', slantOf)),
    together: maybe(given('together'), textOf),
  };
}

const slantOf = (found: Found): Slant =>
  pairOf(found, 'two numbers, mm along per mm across and per mm out', (per) => numberOf(per, SLANT));

function sectionOf(found: Found): NonNullable<BarProblem['section']> {
  const given = groupOf(found, ['width', 'thickness', 'turns']);
  const turns = { least: 0, most: TURNS.length, of: 'turns' };
  return {
    width: numberOf(given('width'), SIZE),
    thickness: numberOf(given('thickness'), SIZE),
    turns: maybe(given('turns'), (list) => listOf(list, turns, (turn) => oneOf(turn, TURNS))) ?? [],
  };
}
