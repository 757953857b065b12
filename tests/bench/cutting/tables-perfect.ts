import { chanceOf } from '../../../src/cutting/sheets/chance';
import { cutUp } from '../../cutting/sheets/cut-up';
import { type Files, oneSize, rowsOf } from './data';
import { mean, seconds, type Table } from './print';
import { type Bench, type Solved, solve } from './solve';
import { WAYS, type Way } from './tables-sheets';

type Row = Files['hopper_t_perfect.json'];

/** Sets of up to so many pieces are counted: larger ones have too many blocks. */
const UP_TO = 49;

interface Done {
  readonly way: Way;
  readonly row: Row;
  readonly solved: Solved;
}

const solveAll = (rows: readonly Row[], bench: Bench): readonly Done[] =>
  WAYS.flatMap((way) =>
    rows.map((row) => ({ way, row, solved: solve(`${row.id} ${way}`, oneSize(row, way === 'rotated'), bench) })),
  );

const onOne = ({ solved }: Done): boolean => solved.plan.cost === 1;
/** The least number of sheets is known. */
const exact = ({ solved }: Done): boolean => solved.plan.proven;

/** Sheets that some way of cutting fills without waste: whether from edge to edge is told by the search. */
export function perfect(bench: Bench): Table | undefined {
  const rows = rowsOf(bench.folder, 'hopper_t_perfect.json');
  if (!rows) return undefined;
  const done = solveAll(rows, bench);
  return {
    heading: 'Sheets that are filled without waste',
    origin:
      'hopper_t_perfect.json: Hopper & Turton. Called guillotine there; where it is proven that no plan with cuts from edge to edge fills the sheet, the optimum is two',
    rows: rowsFor(done),
    holds: WAYS.map((way) => shareOf(`least number of sheets proven, up to ${UP_TO} pieces, ${way}`, done, way, exact)),
  };
}

/** Sheets cut up here by chance, from edge to edge: that all goes on one is known. */
export function cutUpHere(bench: Bench): Table {
  const chance = chanceOf(1);
  const rows = [17, 25, 29, UP_TO].flatMap((pieces) =>
    Array.from({ length: 5 }, (_, i): Row => {
      const shares = Array.from({ length: pieces - 1 }, () => 0.15 + 0.7 * chance.part());
      return { id: `cut up ${pieces} ${i}`, W: 200, H: 200, items: cutUp([200, 200], shares, 3) };
    }),
  );
  const done = solveAll(rows, bench);
  return {
    heading: 'Sheets of 200 × 200 cut up by chance, to be filled again without waste',
    origin: 'made here: the largest part is cut again and again',
    rows: rowsFor(done),
    holds: WAYS.map((way) => shareOf(`all on one sheet, up to ${UP_TO} pieces, ${way}`, done, way, onOne)),
  };
}

function rowsFor(done: readonly Done[]): Table['rows'] {
  const sizes = [...new Set(done.map(({ row }) => row.items.length))].sort((a, b) => a - b);
  return [
    ['pieces', 'way', 'number', 'on one sheet', 'proven that none is', 'mean time'],
    ...WAYS.flatMap((way) =>
      sizes.map((pieces) => {
        const some = done.filter((one) => one.way === way && one.row.items.length === pieces);
        return [
          String(pieces),
          way,
          String(some.length),
          String(some.filter(onOne).length),
          String(some.filter((one) => exact(one) && !onOne(one)).length),
          seconds(mean(some.map(({ solved }) => solved.ended))),
        ];
      }),
    ),
  ];
}

function shareOf(what: string, done: readonly Done[], way: Way, good: (one: Done) => boolean): Table['holds'][number] {
  const some = done.filter((one) => one.way === way && one.row.items.length <= UP_TO);
  return { what, found: (100 * some.filter(good).length) / some.length, bound: 80, way: 'least', unit: '%' };
}
