import { begun, type Setting } from './underway';
import { after, movesFor, type Needs, UNSET, type Work } from './work';

/** What a setting promises where the saw now stands. */
export interface Prospect {
  /** Dials to be moved for it. */
  readonly moves: number;
  /** Tasks that will need it once more: 0, and it need never be set again. */
  readonly blocked: number;
  readonly ready: number;
}

/** Settings are chosen by these in turn, smaller is better. */
export type Rule = (of: Prospect) => readonly number[];

/** Once through all the work. */
export interface Run {
  readonly order: readonly number[];
  /** Numbers of the settings in turn, and where another one might have done better: the best of those, in order. */
  readonly chosen: readonly number[];
  readonly others: readonly (readonly number[])[];
}

/** No more other settings than this are named at each turn. */
const OTHERS = 4;

/**
 * Does all the work, everything that the saw is set for before it is set anew: first with the settings that are given (one of which that can't be used
 * ends the giving), then greedily by a rule.
 */
export function run(work: Work, rule: Rule, given: readonly number[] = []): Run {
  const underway = begun(work);
  const chosen: number[] = [];
  const others: (readonly number[])[] = [];
  let standing = UNSET;
  let last: Needs | undefined;
  let follows = true;
  const weighed = (setting: Setting): Weighed => {
    const { needs, ready, left } = setting;
    const moves = movesFor(needs, standing);
    const blocked = moves === 0 || ready.size === left ? 0 : left - underway.reach(setting);
    const rank = moves === 0 ? [-1] : [...rule({ moves, blocked, ready: ready.size })];
    rank.push(last && sameDials(needs, last) ? 0 : 1, -sizeOf(needs, standing));
    return { setting, sure: moves === 0 || (moves === 1 && blocked === 0), rank };
  };
  for (;;) {
    const all: Weighed[] = [];
    for (const setting of underway.settings) if (setting.ready.size > 0) all.push(weighed(setting));
    if (all.length === 0) break;
    const first = all.reduce((a, b) => (compared(b.rank, a.rank) < 0 ? b : a));
    const wanted = follows ? all.find(({ setting }) => setting.number === given[chosen.length]) : undefined;
    if (!wanted) follows = false;
    const now = wanted ?? first;
    others.push(first.sure ? [] : othersOf(all, now));
    chosen.push(now.setting.number);
    last = now.setting.needs;
    standing = after(last, standing);
    underway.work(now.setting);
  }
  return { order: underway.order, chosen, others };
}

/** A setting in comparison with others. */
interface Weighed {
  readonly setting: Setting;
  /** Nothing can do better than to choose it, if it is the first. */
  readonly sure: boolean;
  readonly rank: readonly number[];
}

const othersOf = (all: readonly Weighed[], now: Weighed): readonly number[] =>
  all
    .filter((one) => one !== now)
    .sort((a, b) => compared(a.rank, b.rank))
    .slice(0, OTHERS)
    .map(({ setting }) => setting.number);

/** All that is set anew, added up: larger pieces come first. */
function sizeOf(needs: Needs, standing: Needs): number {
  let size = 0;
  needs.forEach((value, i) => {
    if (value !== undefined && value !== standing[i]) size += Math.abs(value);
  });
  return size;
}

const sameDials = (a: Needs, b: Needs): boolean =>
  a.every((value, i) => (value === undefined) === (b[i] === undefined));

function compared(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < Math.min(a.length, b.length); i++) if (a[i] !== b[i]) return a[i] - b[i];
  return 0;
}
