import { alongFace } from '../base/along';
import { UP } from '../base/place';
import { extentOf } from '../base/solid/extent';
import { SAME_LENGTH } from '../base/tolerance';
import type { PartDraft } from '../vocabulary/part';
import type { Rod, RodRun } from '../vocabulary/rod';

/** A part, or a piece of one, as it lies along its run: from–to along, offsets and heights. */
export interface Lying {
  readonly part: PartDraft;
  readonly weightKg: number;
  readonly from: number;
  readonly to: number;
  readonly d: readonly [number, number];
  readonly z: readonly [number, number];
  readonly meets: PartDraft['meets'];
  /** Not divided where a join is made. */
  readonly whole: boolean;
  /** Behind the front frame: it stands there only where there is room for a carcass. */
  readonly behind: boolean;
}

export type LyingByRun = ReadonlyMap<string, readonly Lying[]>;

/** All that may leave the workshop on a section, by run. */
export function layAlong(
  { runs, timber }: Pick<Rod, 'runs' | 'timber'>,
  drafts: readonly PartDraft[],
  weigh: (draft: PartDraft) => number,
): LyingByRun {
  const of = new Map(runs.map((run) => [run.id, { run, lying: [] as Lying[] }]));
  for (const draft of drafts) {
    const there = draft.fit === 'site' ? undefined : of.get(draft.run);
    there?.lying.push(lyingIn(draft, weigh(draft), there.run, timber.depth));
  }
  return new Map([...of].map(([id, { lying }]) => [id, lying]));
}

/**
 * Without what may be made otherwise once there are joins: lengths of a top that leave on their sections, for where it is jointed depends on
 * every join under it; a worktop that runs on into a corner, over a join where no cross frame stands; and what is put in behind, where only
 * joins divide the space there. Undefined where there is none of it.
 */
export function withoutMadeAnew(lying: LyingByRun, runs: readonly RodRun[]): LyingByRun | undefined {
  const dividedByBays = runs.some((run) => run.crossLines.some(({ why }) => why === 'bay'));
  const anew = ({ part, behind, meets }: Lying): boolean =>
    part.dividesAtJoins === false || (behind && (meets !== undefined || (!dividedByBays && part.from !== 'framed')));
  if (![...lying.values()].some((own) => own.some(anew))) return undefined;
  return new Map([...lying].map(([run, own]) => [run, own.filter((one) => !anew(one))]));
}

/** Parts sorted into the stretches between lines across their run; one that lies across a line is in both. */
export function inStretches(parts: readonly Lying[], lines: readonly number[]): readonly (readonly Lying[])[] {
  const stretches: Lying[][] = Array.from({ length: lines.length + 1 }, () => []);
  for (const lying of parts) {
    let k = 0;
    while (k < lines.length && lines[k] <= lying.from) k++;
    for (stretches[k].push(lying); k < lines.length && lines[k] < lying.to; ) stretches[++k].push(lying);
  }
  return stretches;
}

function lyingIn(part: PartDraft, weightKg: number, run: RodRun, frameDepth: number): Lying {
  const along = alongFace(part, run);
  const d = alongFace(part, { origin: run.origin, along: run.front });
  return {
    part,
    weightKg,
    from: along[0],
    to: along[1],
    d,
    z: extentOf(part, UP),
    meets: part.meets,
    whole: !(part.dividesAtJoins ?? part.from !== 'finished'),
    behind: d[1] <= -frameDepth + SAME_LENGTH,
  };
}

/** Whether it is mitred or joined with a neighbour's at that end of its run. */
export const meetsAt = ({ meets }: Pick<PartDraft, 'meets'>, side: 'left' | 'right'): boolean =>
  meets === side || meets === 'both';

/** Whether it is divided where a join is made. */
export const divides = ({ whole }: Lying): boolean => !whole;

/** How much of a part lies between two lines, 0 to 1. */
export const share = ({ from, to }: Lying, low: number, high: number): number =>
  Math.max(0, Math.min(to, high) - Math.max(from, low)) / (to - from);

/** The atoms, counted from the run's first, that a stretch must hold to hold the whole of this: one more beyond a corner where it is mitred. What is divided at joins spans nothing. */
export function reachOf(
  lying: Lying,
  lines: readonly number[],
  corners: { readonly left: boolean; readonly right: boolean },
): { readonly from: number; readonly to: number } {
  if (divides(lying)) return { from: 0, to: 0 };
  // From left to right, so the lines before an end are the first ones.
  let from = 0;
  while (from < lines.length && lines[from] <= lying.from) from++;
  let to = from;
  while (to < lines.length && lines[to] < lying.to) to++;
  const meets = (side: 'left' | 'right'): boolean => corners[side] && meetsAt(lying, side);
  // It may end short of the corner and yet be joined to the neighbour's: a butted top.
  return { from: meets('left') ? -1 : from, to: meets('right') ? lines.length + 1 : to };
}
