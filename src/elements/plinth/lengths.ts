import type { StripEnd } from '../../base/returned';
import { stripEnd } from '../../base/returned';
import { SAME_LENGTH } from '../../base/tolerance';
import type { RodRun } from '../../vocabulary/rod';
import { type Ends, reach, type Strip } from './strip';

/** One length of a strip along a run, and which ends of the run it lies at. */
export interface Length {
  readonly ends: Ends;
  readonly at: readonly ('left' | 'right')[];
}

/** A strip along a whole run in its lengths, and where it is jointed for want of a longer sheet; undefined: it can't be. */
export interface Lengths {
  readonly lengths: readonly Length[];
  readonly joints: readonly number[] | undefined;
}

/**
 * Divides a strip that runs from end to end: at every join, and behind the middle of pillars where a length would be longer than the sheet,
 * as few as will do, counted from the datum end. Where there is no pillar in reach the length is left whole.
 */
export function lengthsOf(
  run: RodRun,
  strip: Strip,
  how: { readonly left: StripEnd['how']; readonly right: StripEnd['how'] },
  longest: number,
  datum: 'left' | 'right',
): Lengths {
  const whole = {
    left: stripEnd(run, 'left', strip.inner, how.left),
    right: stripEnd(run, 'right', strip.inner, how.right),
  };
  const [first, last] = reach(whole, strip);
  const joins = run.joins.map((j) => j.x);
  const centres = run.pillars.filter((p) => p.where === 'between').map((p) => p.centre);
  // What is left on for a wall must come out of the same sheet.
  const lines = [first - run.left.scribe, ...joins, last + run.right.scribe];
  const found = lines.slice(1).map((to, i) => jointsIn(lines[i], to, centres, longest, datum));
  const joints = found.every((f) => f !== undefined) ? found.flat() : undefined;
  const cuts = [...joins, ...found.flatMap((f) => f ?? [])].sort((a, b) => a - b);
  const square = (x: number): StripEnd => ({ x, perOut: 0, how: 'square' });
  const lengths = Array.from({ length: cuts.length + 1 }, (_, i): Length => {
    const isFirst = i === 0;
    const isLast = i === cuts.length;
    return {
      ends: { left: isFirst ? whole.left : square(cuts[i - 1]), right: isLast ? whole.right : square(cuts[i]) },
      at: [...(isFirst ? (['left'] as const) : []), ...(isLast ? (['right'] as const) : [])],
    };
  });
  return { lengths, joints };
}

/** Joints between two lines: each time the furthest place in reach. Undefined when there is none. */
function jointsIn(
  from: number,
  to: number,
  places: readonly number[],
  longest: number,
  datum: 'left' | 'right',
): readonly number[] | undefined {
  if (datum === 'right') {
    // Seen in a mirror, so that a unit and its mirror image are cut alike.
    const turned = jointsIn(
      -to,
      -from,
      places.map((x) => -x),
      longest,
      'left',
    );
    return turned?.map((x) => -x);
  }
  const joints: number[] = [];
  let start = from;
  while (to - start > longest + SAME_LENGTH) {
    const next = Math.max(...places.filter((x) => x > start && x < to && x - start <= longest + SAME_LENGTH));
    if (!(next > start)) return undefined;
    joints.push(next);
    start = next;
  }
  return joints;
}
