import { design as workOut } from '../../src/flow';
import { addOpening } from '../../src/job/edits-making';
import { openingFields } from '../../src/job/fields-making';
import type { Job, Opening } from '../../src/vocabulary/job';
import type { RodRun } from '../../src/vocabulary/rod';
import { design } from '../store/designs';
import { foundAt } from './found';

/** Heights at which a new opening is tried, as parts of the front's height: the middle first (by eye). */
const TRIED = [1 / 2, 1 / 3, 2 / 3, 2 / 5];

/** A name that no opening has yet. */
function freeName(openings: readonly Opening[]): string {
  let n = openings.length + 1;
  while (openings.some(({ name }) => name === `Opening ${n}`)) n += 1;
  return `Opening ${n}`;
}

/**
 * A new opening for a socket, in the middle of the run's first bay, at the first of some heights where nothing is in its way; at
 * the first of them where something always is: the finding then says what.
 */
export function newOpening(job: Job, run: RodRun | undefined): Opening {
  const { runs } = design(job).rod;
  const on = run?.jobIndex == null ? runs.find(({ jobIndex }) => jobIndex !== null) : run;
  const bay = on?.bays[0];
  const x = Math.round(bay ? (bay.from + bay.to) / 2 : (on?.length ?? 0) / 2);
  const at = (part: number): Opening => ({
    name: freeName(job.unit.openings),
    run: (on?.jobIndex ?? 0) + 1,
    through: openingFields.through.default,
    use: openingFields.use.default,
    x,
    z: Math.round(job.unit.height * part),
    width: openingFields.width.default,
    height: openingFields.height.default,
  });
  const path = `/unit/openings/${job.unit.openings.length}`;
  // Worked out past the store's memory: it keeps only a few designs, and tries would push out those of the jobs in hand.
  const clear = (opening: Opening): boolean =>
    !foundAt(workOut(addOpening(job, opening)).findings, path).some(({ severity }) => severity === 'stop');
  return TRIED.map(at).find(clear) ?? at(TRIED[0]!);
}
