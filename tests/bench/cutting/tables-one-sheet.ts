import { guillotineTable } from '../../../src/cutting/patterns/guillotine-table';
import { twoStages } from '../../../src/cutting/patterns/two-stages';
import { lyings } from '../../../src/cutting/patterns/valued';
import { rowsOf } from './data';
import { mean, plain, seconds, type Table } from './print';
import type { Bench } from './solve';

/** What was found on one sheet, and what is known. */
interface Found {
  readonly id: string;
  readonly what: string;
  readonly value: number;
  readonly optimum: number;
  readonly ms: number;
}

/** The most value from one sheet in two stages. */
export function twoStageValue({ folder, lp }: Bench): Table | undefined {
  const rows = rowsOf(folder, 'knap2d_2stage.json');
  if (!rows) return undefined;
  const found = rows.flatMap(({ id, W, H, items, opt }) => {
    const pieces = items.map(([length, width, most, value]) => ({ length, width, most, value }));
    const sheet = { length: W, width: H, pieces };
    return [
      timed(id, 'along first', opt.first_cut_horizontal, () => twoStages(sheet, 'along', lp).value),
      timed(id, 'across first', opt.first_cut_vertical, () => twoStages(sheet, 'across', lp).value),
    ];
  });
  return tableOf('One sheet, two stages, limited numbers', 'knap2d_2stage.json: proven optima', found);
}

/** The most value from one sheet, any stages, any number of each piece. */
export function anyStageValue({ folder }: Bench): Table | undefined {
  const rows = rowsOf(folder, 'knap2d_unconstrained_gcut.json');
  if (!rows) return undefined;
  const found = rows.flatMap(({ id, W, H, items, opt }) =>
    (['oriented', 'rotated'] as const).map((way) => {
      const pieces = items.map(([length, width, value]) => ({ length, width, value, turnable: way === 'rotated' }));
      const sheet = { length: W, width: H, pieces };
      const values = pieces.map(({ value }) => value);
      return timed(id, way, opt[way], () => guillotineTable(sheet, lyings(sheet), pieces.length).fill(values));
    }),
  );
  return tableOf('One sheet, any stages, any numbers', 'knap2d_unconstrained_gcut.json: Beasley; proven optima', found);
}

function timed(id: string, what: string, optimum: number, work: () => number): Found {
  const from = performance.now();
  const value = work();
  return { id, what, value, optimum, ms: performance.now() - from };
}

function tableOf(heading: string, origin: string, found: readonly Found[]): Table {
  const reached = found.filter(({ value, optimum }) => value === optimum).length;
  return {
    heading,
    origin,
    rows: [
      ['problem', 'way', 'value', 'optimum', 'time'],
      ...found.map(({ id, what, value, optimum, ms }) => [id, what, plain(value), plain(optimum), seconds(ms)]),
      ['all', '', '', '', `${seconds(mean(found.map(({ ms }) => ms)))} on average`],
    ],
    holds: [{ what: 'optimum reached', found: reached, bound: found.length, way: 'least', unit: 'problems' }],
  };
}
