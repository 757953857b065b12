import { barsOf, binsOf, type Files, rowsOf } from './data';
import { above, mean, percent, plain, seconds, sum, type Table } from './print';
import { type Bench, type Solved, solve } from './solve';

/** Costs that are the same. */
export const equal = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

/** One dimension, one stock, by set. */
export function bins(bench: Bench): Table | undefined {
  const rows = rowsOf(bench.folder, 'bpp1d.json');
  if (!rows) return undefined;
  const done = rows.map((row) => ({ row, solved: solve(row.id, binsOf(row), bench) }));
  const sets = [...new Set(rows.map(({ set }) => set))];
  const gaps = done.map(({ row, solved }) => above(solved.plan.cost, row.ub));
  const reached = done.filter(({ row, solved }) => solved.plan.cost <= row.ub);
  return {
    heading: 'One dimension, by set',
    origin:
      'bpp1d.json: classic sets from the public collection BPPLIB (Delorme, Iori & Martello); known optimum or best',
    rows: [
      ['set', 'number', 'reached', 'proven', 'mean gap', 'mean time', 'longest', 'longest step', 'missed'],
      ...sets.map((set) => [set, ...setCells(done.filter(({ row }) => row.set === set))]),
      ['all', ...setCells(done)],
    ],
    holds: [
      { what: 'reached', found: (100 * reached.length) / rows.length, bound: 99, way: 'least', unit: '%' },
      { what: 'mean gap', found: mean(gaps), bound: 0.02, way: 'most', unit: '%' },
    ],
  };
}

const MOST_NAMED = 4;

function setCells(done: readonly { readonly row: Files['bpp1d.json']; readonly solved: Solved }[]): readonly string[] {
  const times = done.map(({ solved }) => solved.ended);
  const missed = done.filter(({ row, solved }) => solved.plan.cost > row.ub).map(({ row }) => row.id);
  return [
    String(done.length),
    String(done.length - missed.length),
    String(done.filter(({ solved }) => solved.plan.proven).length),
    percent(mean(done.map(({ row, solved }) => above(solved.plan.cost, row.ub)))),
    seconds(mean(times)),
    seconds(Math.max(...times)),
    `${Math.round(Math.max(...done.map(({ solved }) => solved.longestStep)))} ms`,
    missed.slice(0, MOST_NAMED).join(' ') + (missed.length > MOST_NAMED ? ' …' : ''),
  ];
}

/** Jobs of bars in several lengths at their prices. */
export function barJobs(bench: Bench): Table | undefined {
  const rows = rowsOf(bench.folder, 'bar_jobs.json');
  if (!rows) return undefined;
  const done = rows.map((row) => ({ row, solved: solve(row.id, barsOf(row), bench) }));
  const known = done.filter(({ row }) => row.reference?.proven_optimal);
  return {
    heading: 'Jobs of bars',
    origin: 'bar_jobs.json: stud and moulding jobs, generated; proven optimum where it was computed',
    rows: [
      ['job', 'cost', 'bound', 'proven', 'optimum', 'found after', 'ended after', 'steps'],
      ...done.map(({ row, solved: { plan, found, ended, steps } }) => [
        row.id,
        plain(plan.cost),
        plain(plan.bound),
        plan.proven ? 'yes' : 'no',
        row.reference ? plain(row.reference.best_known) : '–',
        seconds(found),
        seconds(ended),
        String(steps),
      ]),
      [
        'all',
        plain(sum(done.map(({ solved }) => solved.plan.cost))),
        plain(sum(done.map(({ solved }) => solved.plan.bound))),
      ],
    ],
    holds: [
      {
        what: 'optimum reached, where it is known',
        found: known.filter(({ row, solved }) => equal(solved.plan.cost, row.reference?.best_known ?? 0)).length,
        bound: known.length,
        way: 'least',
        unit: 'jobs',
      },
    ],
  };
}
