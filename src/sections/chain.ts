import { hull } from '../base/polygon';
import { cornersInPlan, extentOf } from '../base/solid/extent';
import type { Vec2 } from '../vocabulary/geometry';
import type { JoinMark } from '../vocabulary/job';
import type { Part } from '../vocabulary/part';
import type { Rod, RodRun, RunJoin } from '../vocabulary/rod';
import { alongRun } from './assign';

/** A place where the unit could be taken apart, as it comes along the runs from left to right. */
export interface Spot {
  readonly mark?: JoinMark;
  readonly kind: 'pillar' | 'strip' | 'corner' | 'flap' | 'end';
  readonly run: string;
  readonly x: number;
  /** What a section that ends here has more than its share of what lies across: its own stud, its own cross frame; on its left and right. kg. */
  readonly moreLeft: number;
  readonly moreRight: number;
}

/** What lies between two neighbouring spots: its weight without what lies across its ends, and the corners of the box it stands in, in plan. */
export interface Atom {
  readonly weightKg: number;
  readonly height: readonly [number, number];
  readonly points: readonly Vec2[];
  readonly runs: readonly { readonly run: RodRun; readonly length: number }[];
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
}

/** A place for a join in a run, as the setting-out has it. */
export type Places = (run: RodRun) => readonly Omit<RunJoin, 'id'>[];

/** A unit laid out along its runs, made without joins: where it could be parted, and what lies between. */
export function chainOf(rod: Rod, parts: readonly Part[], places: Places): Chain {
  const byRun = new Map<string, Part[]>();
  for (const part of parts) {
    if (part.fit === 'site') continue;
    const mine = byRun.get(part.run);
    if (mine) mine.push(part);
    else byRun.set(part.run, [part]);
  }
  const sound = rod.runs.filter((run) => run.sound);
  const spots: Spot[] = [];
  const atoms: Atom[] = [];
  const spans = new Map<number, Span[]>();
  sound.forEach((run, i) => {
    const mine = (byRun.get(run.id) ?? []).map((part) => lyingIn(part, run));
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
    for (const lying of mine.flatMap((l) => inPieces(l, lines))) {
      const reach = reachOf(lying, lines, corners);
      if (reach.from === reach.to) single.push(lying);
      else {
        const list = spans.get(first + reach.from) ?? [];
        list.push({ last: first + reach.to, atom: atomOf(run, [lying], -Infinity, Infinity, true) });
        spans.set(first + reach.from, list);
      }
    }
    const edges = [-Infinity, ...lines, Infinity];
    // Beside a corner pieces are mitred, so that the box of an L is told by their corners, not by the run's rectangle.
    const mitred = (k: number): boolean =>
      (k === 1 && run.left.kind === 'corner') || (k === edges.length - 1 && run.right.kind === 'corner');
    for (let k = 1; k < edges.length; k++) atoms.push(atomOf(run, single, edges[k - 1], edges[k], mitred(k)));
    spots.push(...here, last);
  });
  return { spots, atoms, spans };
}

/** A part that is divided at joins and mitred with a neighbour: its piece at the corner waits for the neighbour, the others don't. */
function inPieces(lying: Lying, lines: readonly number[]): readonly Lying[] {
  if (!divides(lying) || !lying.meets) return [lying];
  const edges = [lying.from, ...lines.filter((x) => x > lying.from && x < lying.to), lying.to];
  return edges.slice(1).map((to, k): Lying => {
    const from = edges[k];
    const meets = { left: k === 0 && lying.meets !== 'right', right: k === edges.length - 2 && lying.meets !== 'left' };
    return {
      ...lying,
      from,
      to,
      whole: true,
      weightKg: (lying.weightKg * (to - from)) / (lying.to - lying.from),
      meets: meets.left && meets.right ? 'both' : meets.left ? 'left' : meets.right ? 'right' : undefined,
    };
  });
}

/** The atoms, counted from the run's first, that a stretch must hold to hold the whole of this: one more beyond a corner where it is mitred. */
function reachOf(
  lying: Lying,
  lines: readonly number[],
  corners: { readonly left: boolean; readonly right: boolean },
): { readonly from: number; readonly to: number } {
  const middle = lines.filter((x) => x <= (lying.from + lying.to) / 2).length;
  const [from, to] = divides(lying)
    ? [middle, middle]
    : [lines.filter((x) => x <= lying.from).length, lines.filter((x) => x < lying.to).length];
  const meets = (side: 'left' | 'right'): number =>
    Number(corners[side] && (lying.meets === side || lying.meets === 'both'));
  return { from: from - meets('left'), to: to + meets('right') };
}

const NOTHING = { moreLeft: 0, moreRight: 0 } as const;

interface Lying {
  readonly part: Part;
  readonly weightKg: number;
  readonly from: number;
  readonly to: number;
  readonly d: readonly [number, number];
  readonly z: readonly [number, number];
  readonly meets: Part['meets'];
  /** Not divided where a join is made. */
  readonly whole: boolean;
}

function lyingIn(part: Part, run: RodRun): Lying {
  const [from, to] = alongRun(part, run);
  const [x, y] = run.front;
  return {
    part,
    weightKg: part.weightKg,
    from,
    to,
    d: extentOf(part, [x, y, 0]),
    z: extentOf(part, [0, 0, 1]),
    meets: part.meets,
    whole: !(part.dividesAtJoins ?? part.from !== 'finished'),
  };
}

const divides = ({ whole }: Lying): boolean => !whole;

/** How much of a part lies between two lines, 0 to 1. */
const share = ({ from, to }: Lying, low: number, high: number): number =>
  Math.max(0, Math.min(to, high) - Math.max(from, low)) / (to - from);

function spotAt(
  run: RodRun,
  place: Omit<RunJoin, 'id'>,
  number: number,
  parts: readonly Lying[],
  narrow: number,
): Spot {
  const { x } = place;
  let [moreLeft, moreRight] = [0, 0];
  for (const lying of parts) {
    if (lying.from >= x || lying.to <= x) continue;
    const { weightKg } = lying;
    if (divides(lying) && lying.to - lying.from <= narrow) {
      // A stud or cross frame here becomes two, one for each section.
      moreLeft += weightKg * share(lying, x, Infinity);
      moreRight += weightKg * share(lying, -Infinity, x);
    }
  }
  return {
    kind: place.behind === 'pillar' ? 'pillar' : 'strip',
    mark: { run: number, x },
    run: run.id,
    x,
    moreLeft,
    moreRight,
  };
}

function atomOf(run: RodRun, parts: readonly Lying[], from: number, to: number, mitred: boolean): Atom {
  const corners: Vec2[] = [];
  let weightKg = 0;
  let [x0, x1, d0, d1, z0, z1] = [Infinity, -Infinity, Infinity, -Infinity, Infinity, -Infinity];
  for (const lying of parts) {
    if (lying.to <= from || lying.from >= to) continue;
    if (lying.from < from || lying.to > to) {
      if (!divides(lying)) continue;
      weightKg += lying.weightKg * share(lying, from, to);
    } else weightKg += lying.weightKg;
    if (mitred) corners.push(...within(lying, run, from, to));
    x0 = Math.min(x0, Math.max(from, lying.from));
    x1 = Math.max(x1, Math.min(to, lying.to));
    d0 = Math.min(d0, lying.d[0]);
    d1 = Math.max(d1, lying.d[1]);
    z0 = Math.min(z0, lying.z[0]);
    z1 = Math.max(z1, lying.z[1]);
  }
  if (x0 > x1) return { weightKg: 0, height: [0, 0], points: [], runs: [] };
  return {
    weightKg,
    height: [z0, z1],
    points: mitred ? hull(corners) : rectangle(run, x0, x1, d0, d1),
    runs: [{ run, length: x1 - x0 }],
  };
}

/** Corners in plan of as much of a part as lies between two lines across its run. */
function within(lying: Lying, run: RodRun, from: number, to: number): readonly Vec2[] {
  const at = run.origin[0] * run.along[0] + run.origin[1] * run.along[1];
  const inside = cornersInPlan(lying.part).filter(([x, y]) => {
    const along = x * run.along[0] + y * run.along[1] - at;
    return along >= from && along <= to;
  });
  const cut = [from, to].filter((x) => x > lying.from && x < lying.to);
  return [...inside, ...cut.flatMap((x) => rectangle(run, x, x, lying.d[0], lying.d[1]).slice(1, 3))];
}

/** Offsets in the room's plan are measured across the run, but not from its own line. */
function rectangle(run: RodRun, x0: number, x1: number, d0: number, d1: number): readonly Vec2[] {
  const at = run.origin[0] * run.front[0] + run.origin[1] * run.front[1];
  const corner = (x: number, d: number): Vec2 => [
    run.origin[0] + run.along[0] * x + run.front[0] * (d - at),
    run.origin[1] + run.along[1] * x + run.front[1] * (d - at),
  ];
  return [corner(x0, d0), corner(x1, d0), corner(x1, d1), corner(x0, d1)];
}
