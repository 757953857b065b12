import { tenth } from '../base/tenth';
import { SAME_LENGTH } from '../base/tolerance';
import type { Backing } from '../vocabulary/backing';
import type { Finding } from '../vocabulary/finding';
import { type Cleared, inTheWay, type Kept } from './keep-outs';

export type StudWish = Extract<Backing, { kind: 'stud' }>;

/** What is said of it, once for each opening that the studs were in the way of. `x` gives a place as the run has it. */
export function clearedFindings(
  run: string,
  { bar, was, to, needed }: Cleared,
  { face, centres }: { readonly face: number; readonly centres: number },
  x: (at: number) => number,
): readonly Finding[] {
  const own = bar.of.filter((k) => was.some((centre) => inTheWay(centre, face, k)));
  const places = was
    .map((c) => tenth(x(c)))
    .sort((a, b) => a - b)
    .join(' and ');
  const studs = was.length > 1 ? `The studs on ${places} mm` : `The stud on ${places} mm`;
  const clear = bar.to - bar.from;
  return (own.length > 0 ? own : bar.of).map((k): Finding => {
    const said = {
      subject: { run, ...(k.opening === undefined ? {} : { path: `/unit/openings/${k.opening}` }) },
      value: x(was[0]),
      source: 'geometry of the frame',
    };
    if (needed)
      return {
        ...said,
        severity: 'stop',
        rule: 'stud-in-opening',
        message: `${studs} of run ${run} stands in ${k.reason}, and something else needs it there.`,
        remedy: 'Move the opening. No stud is cut.',
      };
    if (to !== undefined)
      return {
        ...said,
        severity: 'note',
        rule: 'stud-moved',
        limit: x(to),
        message: `${studs} of run ${run} would stand in ${k.reason}: it is moved ${tenth(Math.abs(to - was[0]))} mm to the ${x(to) < x(was[0]) ? 'left' : 'right'}, to ${tenth(x(to))} mm.`,
        remedy: 'Nothing to do; the centres are kept.',
      };
    const wide =
      clear + face > centres + SAME_LENGTH
        ? ` The studs at its sides are ${tenth(clear + face)} mm apart at least; the centres are ${tenth(centres)} mm.`
        : '';
    return {
      ...said,
      severity: 'note',
      rule: 'opening-trimmed',
      message: `${studs} of run ${run} would stand in ${k.reason}: a stud stands at each side instead, ${tenth(clear)} mm clear, with noggins over and under.${wide}`,
      remedy: wide
        ? 'Fix the sheet all along the noggins over and under it, or make the opening narrower.'
        : 'Nothing to do; fix the sheet to the trimming all round.',
    };
  });
}

/** An opening leaves no place for a stud that is needed. */
export const keptFinding = ({ run, x, reason, keepOut }: Kept): Finding => ({
  severity: 'stop',
  rule: 'stud-kept-out',
  subject: { run, ...(keepOut.opening === undefined ? {} : { path: `/unit/openings/${keepOut.opening}` }) },
  message: `A stud is wanted on ${tenth(x)} mm in run ${run} (${reason}), and ${keepOut.reason} is in its way.`,
  value: x,
  source: 'geometry of the setting-out',
  remedy: 'Move the opening. The stud is left out.',
});

/** Other studs leave no place for one that is needed. */
export const crowded = (run: string, wish: StudWish): Finding => ({
  severity: 'warn',
  rule: 'stud-crowded',
  subject: { run },
  message: `A stud is wanted on ${tenth(wish.x)} mm in run ${run} (${wish.reason}), but others stand too near.`,
  value: wish.x,
  source: 'geometry of the setting-out',
  remedy: 'Move the pillar or the joint, or fix a batten to the neighbouring stud.',
});
