import type { JoinMark } from '../vocabulary/job';
import type { Rod, RodRun, RunJoin } from '../vocabulary/rod';
import { type Atom, atomOf, waitsIn } from './atoms';
import { type Compass, compassOf } from './compass';
import { divides, inStretches, type Lying, type LyingByRun, reachOf, share } from './lying';

/** A place where the unit could be taken apart, as it comes along the runs from left to right. */
export interface Spot {
  readonly mark?: JoinMark;
  readonly kind: 'pillar' | 'strip' | 'corner' | 'flap' | 'end';
  readonly run: string;
  readonly x: number;
  /** What a section that ends here has more than its share of what lies across: its own stud, its own cross frame; on its left and right. kg. */
  readonly moreLeft: number;
  readonly moreRight: number;
  /** Of that, what lies behind the front frame. */
  readonly behindLeft: number;
  readonly behindRight: number;
}

/** A part that lies across spots and is not divided there: it belongs to a stretch that holds all the atoms it lies in, from first to last. */
export interface Span {
  readonly last: number;
  readonly atom: Atom;
}

export interface Chain {
  readonly spots: readonly Spot[];
  readonly atoms: readonly Atom[];
  /** By the first atom they lie in. */
  readonly spans: ReadonlyMap<number, readonly Span[]>;
  readonly compass: Compass;
}

/** A place for a join in a run, as the setting-out has it. */
export type Places = (run: RodRun) => readonly Omit<RunJoin, 'id'>[];

/** A unit laid out along its runs, made without joins: where it could be parted, and what lies between. */
export function chainOf(rod: Rod, lying: LyingByRun, places: Places): Chain {
  const sound = rod.runs.filter((run) => run.sound);
  const compass = compassOf(sound);
  const spots: Spot[] = [];
  const atoms: Atom[] = [];
  const spans = new Map<number, Span[]>();
  sound.forEach((run, i) => {
    const mine = lying.get(run.id) ?? [];
    const number = run.jobIndex === null ? (i === 0 ? 0 : undefined) : run.jobIndex + 1;
    if (i === 0) spots.push({ ...NOTHING, kind: 'end', run: run.id, x: run.left.frameAt });
    const here = (run.jobIndex === null ? [] : places(run)).map((p) =>
      spotAt(run, p, number ?? 0, mine, 2 * rod.timber.face),
    );
    const last: Spot = sound[i + 1]
      ? {
          ...NOTHING,
          ...(number === undefined ? {} : { mark: { run: number } }),
          kind: run.right.flap ? 'flap' : 'corner',
          run: run.id,
          x: run.length,
        }
      : { ...NOTHING, kind: 'end', run: run.id, x: run.right.frameAt };
    const lines = here.map((spot) => spot.x);
    const corners = {
      left: run.left.kind === 'corner' && i > 0,
      right: run.right.kind === 'corner' && i + 1 < sound.length,
    };
    const first = atoms.length;
    const single: Lying[] = [];
    for (const piece of mine) {
      const reach = reachOf(piece, lines, corners);
      if (reach.from === reach.to) single.push(piece);
      else {
        const list = spans.get(first + reach.from) ?? [];
        list.push({
          last: first + reach.to,
          atom: atomOf({ compass, run, parts: [piece], from: -Infinity, to: Infinity, mitred: true }),
        });
        spans.set(first + reach.from, list);
      }
    }
    const edges = [-Infinity, ...lines, Infinity];
    // Beside a corner pieces are mitred, so that the box of an L is told by their corners, not by the run's rectangle.
    const mitred = (k: number): boolean =>
      (k === 1 && run.left.kind === 'corner') || (k === edges.length - 1 && run.right.kind === 'corner');
    const between = inStretches(single, lines);
    const waits = waitsIn(mine);
    for (let k = 1; k < edges.length; k++) {
      const scribe = { left: k === 1, right: k === edges.length - 1 };
      const [from, to] = [edges[k - 1], edges[k]];
      atoms.push(atomOf({ compass, run, parts: between[k - 1], from, to, mitred: mitred(k), waits, scribe }));
    }
    spots.push(...here, last);
  });
  return { spots, atoms, spans, compass };
}

/** Whether a spot is a join within a run. */
export const isJoin = ({ kind }: Spot): boolean => kind === 'pillar' || kind === 'strip';

const NOTHING = { moreLeft: 0, moreRight: 0, behindLeft: 0, behindRight: 0 } as const;

function spotAt(
  run: RodRun,
  place: Omit<RunJoin, 'id'>,
  number: number,
  parts: readonly Lying[],
  narrow: number,
): Spot {
  const { x } = place;
  let [moreLeft, moreRight, behindLeft, behindRight] = [0, 0, 0, 0];
  for (const lying of parts) {
    if (lying.from >= x || lying.to <= x) continue;
    const { weightKg } = lying;
    if (divides(lying) && lying.to - lying.from <= narrow) {
      // A stud or cross frame here becomes two, one for each section.
      const [left, right] = [weightKg * share(lying, x, Infinity), weightKg * share(lying, -Infinity, x)];
      moreLeft += left;
      moreRight += right;
      if (lying.behind) {
        behindLeft += left;
        behindRight += right;
      }
    }
  }
  return {
    kind: place.behind === 'pillar' ? 'pillar' : 'strip',
    mark: { run: number, x },
    run: run.id,
    x,
    moreLeft,
    moreRight,
    behindLeft,
    behindRight,
  };
}
