import type { Design } from '../vocabulary/design';
import type { Drawing } from '../vocabulary/drawing';
import type { Job } from '../vocabulary/job';
import { fitsSmallest, type SheetInfo, sheetSvg } from './svg';

/** The elevations of a run that make one set, in the order of a job's sheets. */
const ELEVATIONS = ['front', 'framing'] as const;
type OfSet = (typeof ELEVATIONS)[number];

/** A sheet that small workshops can still print: all of a job's sheets are at least this when one can't be smaller. */
const USUAL = 'A3';

/** What the title block says of a job. */
const sheetInfo = ({ name, unit, units, client, maker }: Job): SheetInfo => ({
  job: name,
  unit: unit.name,
  units,
  client: client.name,
  owner: maker.name,
  creator: maker.name,
});

type Drawable = Pick<Design, 'job' | 'rod'>;

/**
 * One elevation on its sheet, numbered among all elevations of the job (run by run, front before framing), so that sheets exported
 * one at a time make one set. `draw` is the flow's `elevation`. Throws when the unit has no such run.
 */
export function elevationSheet<D extends Drawable>(
  made: D,
  run: string,
  kind: OfSet,
  draw: (made: D, run: string, kind: OfSet) => Drawing,
): string {
  const set = made.rod.runs.flatMap(({ id }) => ELEVATIONS.map((one) => draw(made, id, one)));
  return oneOf(set, draw(made, run, kind), made.job);
}

/** The rod of one run, or the run from behind, on its sheet: numbered among those of all runs. `draw` is the flow's. */
export function runSheet<D extends Drawable>(made: D, run: string, draw: (made: D, run: string) => Drawing): string {
  const set = made.rod.runs.map(({ id }) => draw(made, id));
  return oneOf(set, draw(made, run), made.job);
}

function oneOf(set: readonly Drawing[], drawing: Drawing, job: Job): string {
  const number = set.findIndex(({ id }) => id === drawing.id) + 1;
  const least = set.every(fitsSmallest) ? undefined : USUAL;
  return sheetSvg(drawing, { ...sheetInfo(job), sheetNumber: `${number} of ${set.length}` }, least);
}
