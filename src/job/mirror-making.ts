import type { JoinMark, Unit } from '../vocabulary/job';
import type { BayCount } from './mirror';

/**
 * Joins, openings and bays of the unit in a mirror. `across` gives the image of x in a run (0 = first), measured from the left end of
 * the image. A mark at a corner belongs to the run on the corner's left, so in the mirror it is the next one's.
 */
export function mirroredMaking(
  { plan, joins, openings, bays }: Unit,
  across: (run: number, x: number) => number,
  bayCount?: BayCount,
): Pick<Unit, 'joins' | 'openings' | 'bays'> {
  const count = plan.runs.length;
  const other = (run: number): number => count + 1 - run;
  const mark = ({ run, x }: JoinMark): JoinMark =>
    x === undefined ? { run: count - run } : { run: other(run), x: imageIn(run, x) };
  // What is said of a run that the plan has not stays where it is: nothing is made of it.
  const known = (run: number): boolean => run >= 1 && run <= count;
  const imageIn = (run: number, x: number): number => (known(run) ? across(run - 1, x) : x);
  const placeOf = (run: number): number => (known(run) ? other(run) : run);
  const bayIn = (run: number, bay: number): number => {
    if (!known(run)) return bay;
    if (!bayCount) throw new Error(`bay ${bay} of run ${run} is decided on: its number of bays is needed to mirror it`);
    const bays = bayCount(run - 1);
    return bay <= bays ? bays + 1 - bay : bay;
  };
  return {
    joins: joins.by === 'hand' ? { by: 'hand', at: joins.at.map((m) => (m.run > count ? m : mark(m))) } : joins,
    openings: openings.map((o) => ({ ...o, run: placeOf(o.run), x: imageIn(o.run, o.x) })),
    bays: bays.map((b) => ({ ...b, run: placeOf(b.run), bay: bayIn(b.run, b.bay) })),
  };
}
