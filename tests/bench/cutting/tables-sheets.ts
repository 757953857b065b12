import type { SheetProblem } from '../../../src/vocabulary/cut-problem';
import { type Files, oneSize, rowsOf, severalSizes, sheetsOf } from './data';
import { above, mean, percent, plain, seconds, sum, type Table } from './print';
import { type Bench, type Solved, solve } from './solve';

export type Way = 'oriented' | 'rotated';
export const WAYS: readonly Way[] = ['oriented', 'rotated'];
/** How far above the best known the totals may be, in percent. */
const CLASS_BOUND: Readonly<Record<Way, number>> = { oriented: 0.35, rotated: 0.5 };

/** One sheet size, by class, pieces as they lie and turnable. */
export function classes(bench: Bench): Table | undefined {
  const rows = rowsOf(bench.folder, 'bp2d_classes.json');
  if (!rows) return undefined;
  const done = WAYS.flatMap((way) =>
    rows.map((row) => ({ way, row, solved: solve(`${row.id} ${way}`, oneSize(row, way === 'rotated'), bench) })),
  );
  const bestOf = ({ way, row }: (typeof done)[number]): number => row.best[`3stage_${way}`];
  const cells = (some: typeof done): readonly string[] => {
    const [cost, best] = [sum(some.map(({ solved }) => solved.plan.cost)), sum(some.map(bestOf))];
    return [
      String(some.length),
      plain(cost),
      plain(best),
      percent(above(cost, best)),
      plain(sum(some.map(({ solved }) => solved.plan.bound))),
      plain(sum(some.map(({ way, row }) => row.lb[way]))),
      String(some.filter(({ solved }) => solved.plan.proven).length),
      seconds(mean(some.map(({ solved }) => solved.ended))),
    ];
  };
  const numbers = [...new Set(rows.map(({ cls }) => cls))].sort((a, b) => a - b);
  return {
    heading: 'Sheets of one size, by class',
    origin:
      'bp2d_classes.json: Berkey & Wang I–VI, Martello & Vigo VII–X; best known in three stages and lower bounds from public collections; ours: any stages',
    rows: [
      ['class', 'pieces', 'number', 'sheets', 'best known', 'above', 'bound', 'known bound', 'proven', 'mean time'],
      ...WAYS.flatMap((way) => [
        ...numbers.map((cls) => [
          String(cls),
          way,
          ...cells(done.filter((one) => one.way === way && one.row.cls === cls)),
        ]),
        ['all', way, ...cells(done.filter((one) => one.way === way))],
      ]),
    ],
    holds: WAYS.map((way) => {
      const some = done.filter((one) => one.way === way);
      const found = above(sum(some.map(({ solved }) => solved.plan.cost)), sum(some.map(bestOf)));
      return { what: `total above the best known, ${way}`, found, bound: CLASS_BOUND[way], way: 'most', unit: '%' };
    }),
  };
}

/** Jobs with kerf, trim, grain and several sheets, after a short time and after ten times as long. */
export function sheetJobs(bench: Bench): Table | undefined {
  const rows = rowsOf(bench.folder, 'sheet_jobs.json');
  if (!rows) return undefined;
  const times = [bench.seconds, 10 * bench.seconds];
  const done = rows.map((row) => ({ row, after: times.map((time) => solve(row.id, sheetsOf(row), bench, time)) }));
  const best = sum(rows.map(({ reference }) => reference.best_known));
  const total = (which: number): number => sum(done.map(({ after }) => after[which].plan.cost));
  const naive = done.filter(
    ({ row, after }) => after[0].plan.cost > row.reference.naive_guillotine_best_area_fit + 1e-6,
  );
  return {
    heading: 'Jobs of sheets',
    origin: 'sheet_jobs.json: generated; references from trials with research programs, the lower bound among them',
    rows: [
      [
        'job',
        ...times.map((time) => `after ${time} s`),
        'best known',
        'bound',
        'known bound',
        'naive',
        'first plan',
        'found after',
        'longest step',
      ],
      ...done.map(({ row: { id, reference }, after }) => jobCells(id, reference, after)),
      ['all', plain(total(0)), plain(total(1)), plain(best)],
    ],
    holds: [
      {
        what: `total above the best known after ${times[0]} s`,
        found: above(total(0), best),
        bound: 0.7,
        way: 'most',
        unit: '%',
      },
      {
        what: `total above the best known after ${times[1]} s`,
        found: above(total(1), best),
        bound: 0.3,
        way: 'most',
        unit: '%',
      },
      { what: 'dearer than the naive plan', found: naive.length, bound: 0, way: 'most', unit: 'jobs' },
      {
        what: 'first plan, at the longest',
        found: Math.max(...done.map(({ after }) => after[0].first)),
        bound: 200,
        way: 'most',
        unit: 'ms',
      },
    ],
  };
}

function jobCells(
  id: string,
  reference: Files['sheet_jobs.json']['reference'],
  after: readonly Solved[],
): readonly string[] {
  const [short, long] = [after[0], after[after.length - 1]];
  return [
    id,
    ...after.map(({ plan }) => `${plain(plan.cost)}${plan.proven ? ' proven' : ''}`),
    plain(reference.best_known),
    plain(long.plan.bound),
    plain(reference.lower_bound),
    plain(reference.naive_guillotine_best_area_fit),
    seconds(short.first),
    seconds(long.found),
    `${Math.round(long.longestStep)} ms`,
  ];
}

/** Sheets of several sizes in two stages. */
export function severalInTwoStages(bench: Bench): Table | undefined {
  const rows = rowsOf(bench.folder, 'vsbp2d_cintra.json');
  if (!rows) return undefined;
  const done = WAYS.flatMap((way) =>
    rows.map((row) => {
      const problem: SheetProblem = { ...severalSizes(row, way === 'rotated'), stages: 2, trimsFree: true };
      return {
        way,
        row,
        best: row.best[`2stage_firstHoriz_${way}`],
        solved: solve(`${row.id} ${way}`, problem, bench),
      };
    }),
  );
  return {
    heading: 'Sheets of several sizes, two stages',
    origin:
      'vsbp2d_cintra.json: Cintra et al. 2008; best known with the first cuts in one direction, and bounds. Ours: first cuts in either direction, a last cut to size free',
    rows: [
      ['problem', 'pieces', 'cost', 'best known', 'above', 'bound', 'known bound', 'found after'],
      ...done.map(({ way, row, best, solved: { plan, found } }) => [
        row.id,
        way,
        plain(plan.cost),
        plain(best),
        percent(above(plan.cost, best)),
        plain(plan.bound),
        plain(row.bound[way]),
        seconds(found),
      ]),
    ],
    holds: [],
  };
}

/** Sheets of several sizes, of each so many. */
export function severalOfFew(bench: Bench): Table | undefined {
  const rows = rowsOf(bench.folder, 'vsbp2d_hopper_M.json');
  if (!rows) return undefined;
  const done = rows.map((row) => ({ row, solved: solve(row.id, severalSizes(row, true), bench) }));
  return {
    heading: 'Sheets of several sizes, few of each',
    origin:
      'vsbp2d_hopper_M.json: Hopper & Turton M; the cost is the area of the sheets, no less than that of the pieces; pieces turnable',
    rows: [
      ['problem', 'cost', 'bound', 'area of pieces', 'filled', 'not placed', 'found after'],
      ...done.map(({ row, solved: { plan, found } }) => [
        row.id,
        plain(plan.cost),
        plain(plan.bound),
        plain(row.itemArea),
        percent((100 * row.itemArea) / plan.cost),
        String(sum(plan.unplaced.map(({ quantity }) => quantity))),
        seconds(found),
      ]),
    ],
    holds: [],
  };
}
