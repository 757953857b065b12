import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BarProblem, SheetProblem } from '../../../src/vocabulary/cut-problem';

/** Where the data lie if no other folder is named; the bench is run from the project's folder. */
export const FOLDER = join('..', 'shared', 'cutting-data');

/** What a file holds, by its name. A quantity of −1 is as many as one likes. */
export interface Files {
  'bpp1d.json': {
    readonly id: string;
    readonly set: string;
    readonly C: number;
    readonly w: readonly number[];
    readonly d: readonly number[];
    readonly lb: number;
    readonly ub: number;
  };
  'bar_jobs.json': {
    readonly id: string;
    readonly kerf: number;
    readonly trim: number;
    readonly stock: readonly { readonly L: number; readonly price: number; readonly qty: number }[];
    readonly items: readonly { readonly l: number; readonly q: number }[];
    readonly reference?: {
      readonly lower_bound: number;
      readonly best_known: number;
      readonly proven_optimal: boolean;
    };
  };
  'sheet_jobs.json': {
    readonly id: string;
    readonly kerf: number;
    readonly trim: number;
    readonly sheets: readonly SheetOf[];
    readonly items: readonly { readonly l: number; readonly w: number; readonly q: number; readonly rot: 0 | 1 }[];
    readonly reference: {
      readonly lower_bound: number;
      readonly naive_guillotine_best_area_fit: number;
      readonly best_known: number;
    };
  };
  'bp2d_classes.json': {
    readonly id: string;
    readonly cls: number;
    readonly W: number;
    readonly H: number;
    readonly items: readonly Sides[];
    readonly best: { readonly '3stage_oriented': number; readonly '3stage_rotated': number };
    readonly lb: { readonly oriented: number; readonly rotated: number };
  };
  'hopper_t_perfect.json': {
    readonly id: string;
    readonly W: number;
    readonly H: number;
    readonly items: readonly Sides[];
  };
  'knap2d_2stage.json': {
    readonly id: string;
    readonly W: number;
    readonly H: number;
    readonly items: readonly (readonly [length: number, width: number, most: number, value: number])[];
    readonly opt: { readonly first_cut_horizontal: number; readonly first_cut_vertical: number };
  };
  'knap2d_unconstrained_gcut.json': {
    readonly id: string;
    readonly W: number;
    readonly H: number;
    readonly items: readonly (readonly [length: number, width: number, value: number])[];
    readonly opt: { readonly oriented: number; readonly rotated: number };
  };
  'vsbp2d_cintra.json': {
    readonly id: string;
    readonly sheets: readonly SheetOf[];
    readonly items: readonly Counted[];
    readonly best: { readonly '2stage_firstHoriz_oriented': number; readonly '2stage_firstHoriz_rotated': number };
    readonly bound: { readonly oriented: number; readonly rotated: number };
  };
  'vsbp2d_hopper_M.json': {
    readonly id: string;
    readonly sheets: readonly SheetOf[];
    readonly items: readonly Counted[];
    readonly itemArea: number;
  };
}

type Sides = readonly [length: number, width: number];
type Counted = readonly [length: number, width: number, quantity: number];
interface SheetOf {
  readonly L: number;
  readonly W: number;
  readonly price: number;
  readonly qty: number;
}

/** What a file holds; undefined where there is none. */
export function rowsOf<Name extends keyof Files>(folder: string, name: Name): readonly Files[Name][] | undefined {
  const file = join(folder, name);
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as readonly Files[Name][]) : undefined;
}

const countOf = (quantity: number): number | undefined => (quantity < 0 ? undefined : quantity);

export const binsOf = ({ C, w, d }: Files['bpp1d.json']): BarProblem => ({
  kind: 'bars',
  kerf: 0,
  trim: 0,
  stock: [{ length: C, price: 1 }],
  pieces: w.map((length, i) => ({ length, quantity: d[i] })),
});

export const barsOf = ({ kerf, trim, stock, items }: Files['bar_jobs.json']): BarProblem => ({
  kind: 'bars',
  kerf,
  trim,
  stock: stock.map(({ L, price, qty }) => ({ length: L, price, count: countOf(qty) })),
  pieces: items.map(({ l, q }) => ({ length: l, quantity: q })),
});

export const sheetsOf = ({ kerf, trim, sheets, items }: Files['sheet_jobs.json']): SheetProblem => ({
  kind: 'sheets',
  kerf,
  trim,
  stock: sheets.map(stockOf),
  pieces: items.map(({ l, w, q, rot }) => ({ length: l, width: w, quantity: q, turnable: rot === 1 })),
});

const stockOf = ({ L, W, price, qty }: SheetOf) => ({ length: L, width: W, price, count: countOf(qty) });

/** Sheets of one size at a price of 1. */
export const oneSize = (
  { W, H, items }: { readonly W: number; readonly H: number; readonly items: readonly Sides[] },
  turnable: boolean,
): SheetProblem => ({
  kind: 'sheets',
  kerf: 0,
  trim: 0,
  stock: [{ length: W, width: H, price: 1 }],
  pieces: items.map(([length, width]) => ({ length, width, quantity: 1, turnable })),
});

/** Sheets of several sizes. */
export const severalSizes = (
  { sheets, items }: { readonly sheets: readonly SheetOf[]; readonly items: readonly Counted[] },
  turnable: boolean,
): SheetProblem => ({
  kind: 'sheets',
  kerf: 0,
  trim: 0,
  stock: sheets.map(stockOf),
  pieces: items.map(([length, width, quantity]) => ({ length, width, quantity, turnable })),
});
