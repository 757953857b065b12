import type { SheetPiece, SheetProblem } from '../../vocabulary/cut-problem';
import { MOST } from '../most';
import { type Found, flagOf, groupOf, listOf, maybe, numberOf, textOf } from './fields';
import { ALLOWANCE, QUANTITY, SIZE, STAGES } from './limits';
import { stockOf, withPrices } from './stock';

const KNOWN = ['kind', 'kerf', 'trim', 'stages', 'trimsFree', 'longestCut', 'stock', 'pieces', 'leastOffcut'];

/** Sheets as a file has them, and whether they have prices. Worth nothing if something was refused: see the issues. */
export function sheetsOf(file: Found): { readonly problem: SheetProblem; readonly priced: boolean } {
  const given = groupOf(file, KNOWN);
  const { stock, priced } = withPrices(
    listOf(given('stock'), { most: MOST.stocks, of: 'stocks' }, sheetOf),
    ({ length, width }) => length * width,
  );
  const problem: SheetProblem = {
    kind: 'sheets',
    kerf: maybe(given('kerf'), (kerf) => numberOf(kerf, ALLOWANCE)) ?? 0,
    trim: maybe(given('trim'), (trim) => numberOf(trim, ALLOWANCE)) ?? 0,
    stages: maybe(given('stages'), (stages) => numberOf(stages, STAGES)),
    trimsFree: maybe(given('trimsFree'), flagOf),
    longestCut: maybe(given('longestCut'), (length) => numberOf(length, SIZE)),
    stock,
    pieces: listOf(given('pieces'), { most: MOST.pieces, of: 'pieces' }, pieceOf),
    leastOffcut: maybe(given('leastOffcut'), (least) => sidesOf(groupOf(least, ['length', 'width']), ALLOWANCE)),
  };
  return { problem, priced };
}

const sidesOf = (given: (key: string) => Found, range = SIZE) => ({
  length: numberOf(given('length'), range),
  width: numberOf(given('width'), range),
});

function sheetOf(found: Found) {
  const given = groupOf(found, ['name', 'length', 'width', 'price', 'count', 'trim', 'offcut']);
  return { ...sidesOf(given), ...stockOf(given) };
}

function pieceOf(found: Found): SheetPiece {
  const given = groupOf(found, ['name', 'length', 'width', 'quantity', 'turnable', 'together']);
  return {
    ...sidesOf(given),
    name: maybe(given('name'), textOf),
    quantity: maybe(given('quantity'), (quantity) => numberOf(quantity, QUANTITY)) ?? 1,
    turnable: maybe(given('turnable'), flagOf),
    together: maybe(given('together'), textOf),
  };
}
