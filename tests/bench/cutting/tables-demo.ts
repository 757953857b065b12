import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cutBatches, design, readJob } from '../../../src/flow';
import { plain, seconds, sum, type Table } from './print';
import { type Bench, solve } from './solve';

/** It is run from the project's folder. */
const DEMO = join(process.cwd(), 'public', 'examples', 'corner-return.job.json');

/** A whole job, as it is planned on the screen. */
export function demo(bench: Bench): Table | undefined {
  const read = readJob(readFileSync(DEMO, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const from = performance.now();
  const { batches } = cutBatches(design(read.value));
  const taken = performance.now() - from;
  const done = batches.map((batch) => ({ batch, solved: solve(batch.id, batch.problem, bench) }));
  const first = sum(done.map(({ solved }) => solved.first));
  return {
    heading: 'The demo job',
    origin: `public/examples/corner-return.job.json: designed and taken off in ${seconds(taken)}`,
    rows: [
      ['stuff', 'pieces', 'cost', 'bound', 'proven', 'first plan', 'found after', 'ended after', 'longest step'],
      ...done.map(({ batch: { name, problem }, solved: { plan, first, found, ended, longestStep } }) => [
        name,
        String(sum(problem.pieces.map(({ quantity }) => quantity))),
        plain(plan.cost),
        plain(plan.bound),
        plan.proven ? 'yes' : 'no',
        seconds(first),
        seconds(found),
        seconds(ended),
        `${Math.round(longestStep)} ms`,
      ]),
    ],
    holds: [
      { what: 'first plan of every stuff, in all', found: first, bound: 200 * batches.length, way: 'most', unit: 'ms' },
      {
        what: 'first plan of a stuff, at the longest',
        found: Math.max(...done.map(({ solved }) => solved.first)),
        bound: 200,
        way: 'most',
        unit: 'ms',
      },
    ],
  };
}
