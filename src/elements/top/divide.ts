import { SAME_LENGTH } from '../../base/tolerance';
import { closes, LAST_DIGITS, NOISE, type Span, stretched } from './spans';

export type { Span } from './spans';

/** What the lengths of a top must keep to, mm. */
export interface Limits {
  /** The longest length that can be had, with what is left on it. */
  readonly longest: number;
  /** Left on beyond the finished end of the first and of the last length, to be scribed. */
  readonly leftOn: number;
  readonly rightOn: number;
  /** Two joints stand at least this far apart. */
  readonly apart: number;
}

/** Halvings by which the longest and the shortest length are found: 30 m comes down to less than a millionth of a millimetre. */
const HALVINGS = 36;

/** A top to be divided, from end to end, and where it may be. `places` from left to right, none touching the next. */
interface Task {
  readonly from: number;
  readonly to: number;
  readonly places: readonly Span[];
  readonly limits: Limits;
}

/**
 * Where a top from `from` to `to` is jointed: the fewest lengths first, then the longest of them as short as can be, then the shortest
 * as long as can be. Each joint lies in one of `places`. Undefined when the places don't allow it. mm along the run.
 *
 * The joints that i lengths can reach are a union of stretches: the last one's, each stretched by the least and the greatest length,
 * as far as they are places. Both bounds are found by halving, for what a greater bound allows a lesser one may not.
 */
export function divide(
  from: number,
  to: number,
  places: readonly Span[],
  limits: Limits,
): readonly number[] | undefined {
  const task: Task = { from, to, places, limits };
  const lengths = fewest(task);
  if (lengths === undefined) return undefined;
  const mean = (to - from) / lengths;
  const even = Array.from({ length: lengths - 1 }, (_, i) => from + mean * (i + 1));
  const allowed = even.every((x) => places.some((p) => x >= p.from && x <= p.to));
  if (allowed && mean <= limits.longest - Math.max(limits.leftOn, limits.rightOn) && mean >= limits.apart) return even;
  const { least, most } = boundsOf(task, lengths);
  const joints = walkBack(task, lengths, least, most);
  // Of places as good but for their last digits the same is taken always, though those digits shut one of them out.
  const alike = placesOf(
    task,
    walkBack(task, lengths, Math.max(limits.apart, least - LAST_DIGITS), most + LAST_DIGITS),
  );
  if (alike.join() === placesOf(task, joints).join()) return joints;
  const there: Task = { ...task, places: places.filter((_, i) => alike.includes(i)) };
  const bounds = boundsOf(there, lengths);
  return walkBack(there, lengths, bounds.least, bounds.most);
}

/** How short the longest of so many lengths can be, and then how long the shortest. */
function boundsOf(task: Task, lengths: number): { readonly least: number; readonly most: number } {
  const { from, to, limits } = task;
  const mean = (to - from) / lengths;
  let [low, high] = [mean, limits.longest];
  for (let i = 0; i < HALVINGS; i++) {
    const most = (low + high) / 2;
    if (reach(task, lengths, limits.apart, most)) high = most;
    else low = most;
  }
  const most = high + NOISE;
  let [least, tooMuch] = [limits.apart, Math.max(limits.apart, mean)];
  for (let i = 0; i < HALVINGS; i++) {
    const tried = (least + tooMuch) / 2;
    if (reach(task, lengths, tried, most)) least = tried;
    else tooMuch = tried;
  }
  return { least, most };
}

/** In which of the places the joints lie. */
const placesOf = ({ places }: Task, joints: readonly number[]): readonly number[] =>
  joints.map((x) => places.findIndex((p) => x <= p.to + LAST_DIGITS));

/** Whether it can be divided so at all. */
export const divides = (from: number, to: number, places: readonly Span[], limits: Limits): boolean =>
  fewest({ from, to, places, limits }) !== undefined;

/** How many lengths it takes at least; undefined when it can't be done. */
function fewest(task: Task): number | undefined {
  const { from, to, places, limits } = task;
  const all = to - from + limits.leftOn + limits.rightOn;
  if (all <= limits.longest) return 1;
  // Of the fewest lengths no two neighbours could be one.
  const bound = Math.ceil((2 * all) / Math.max(1, limits.longest - limits.leftOn - limits.rightOn)) + 1;
  let at: readonly Span[] = [{ from, to: from }];
  for (let lengths = 2; lengths <= bound; lengths++) {
    at = stretched(at, limits.apart, limits.longest - (lengths === 2 ? limits.leftOn : 0), places);
    if (at.length === 0) return undefined;
    if (closes(at, to, limits.apart, limits.longest - limits.rightOn)) return lengths;
  }
  return undefined;
}

/** The places of each joint in turn when every length is from `least` to `most` long; undefined when the last length doesn't come out. */
function reach(task: Task, lengths: number, least: number, most: number): readonly (readonly Span[])[] | undefined {
  const { from, to, places, limits } = task;
  let at: readonly Span[] = [{ from, to: from }];
  const joints: (readonly Span[])[] = [];
  for (let i = 1; i < lengths; i++) {
    at = stretched(at, least, capped(most, limits, i === 1 ? limits.leftOn : 0), places);
    if (at.length === 0) return undefined;
    joints.push(at);
  }
  return closes(at, to, least, capped(most, limits, limits.rightOn)) ? joints : undefined;
}

const capped = (most: number, { longest }: Limits, leftOn: number): number => Math.min(most, longest - leftOn);

/** Takes the joints from the last to the first, each as near as can be to where it would divide evenly what is left of it. */
function walkBack(task: Task, lengths: number, least: number, most: number): readonly number[] {
  const { from, to, limits } = task;
  const reached = reach(task, lengths, least, most) ?? [];
  const joints: number[] = [];
  let after = to;
  for (let i = reached.length - 1; i >= 0; i--) {
    const low = after - capped(most, limits, i === reached.length - 1 ? limits.rightOn : 0);
    const high = after - least;
    const wanted = from + ((after - from) * (i + 1)) / (i + 2);
    const nearest = reached[i]
      .filter((s) => s.from <= high + NOISE && s.to >= low - NOISE)
      .map((s) => Math.min(Math.max(wanted, low, s.from), Math.max(s.from, Math.min(high, s.to))))
      // Of two as near the left one: as near is nearer than a rule shows, for the halving leaves the last digits to chance.
      .reduce(
        (best: number | undefined, x) =>
          best === undefined || Math.abs(x - wanted) < Math.abs(best - wanted) - SAME_LENGTH ? x : best,
        undefined,
      );
    after = nearest ?? wanted;
    joints.unshift(after);
  }
  return joints;
}
