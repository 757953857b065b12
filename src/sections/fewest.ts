import type { Carry, JoinMark } from '../vocabulary/job';
import type { RodRun } from '../vocabulary/rod';
import type { Breach } from '../vocabulary/section';
import type { Atom } from './atoms';
import type { Chain, Spot } from './chain';
import { breachesOf, type Load, WEIGHT } from './limits';

/** One way of parting a unit: spots by number, and for each stretch its key in `known`. */
export interface Parting {
  readonly marks: readonly JoinMark[];
  readonly keys: readonly string[];
  /** Stretches that break a limit, as far as is known. */
  readonly over: number;
}

/** How many studs stand by the centres only in a frame from–to, between its ends and those needed (their middles). mm. */
export type Studs = (from: number, to: number, needed: readonly number[]) => number;

/** Stretches over a limit, sections, joins under strips, sum of squared weights: in this order. */
type Cost = readonly [number, number, number, number];

/** The best way to a station: what it costs, and the station before. */
interface Step {
  readonly cost: Cost;
  readonly back: number;
}

/**
 * The fewest sections that keep the limits: then the fewest joins under strips, then the most even weights. A stretch between two neighbouring
 * spots is allowed whatever it weighs, for it can't be divided.
 * @param trueTo how much lighter than estimated a stretch may turn out, as a part of its weight: one that is over the limit by less is allowed.
 * @param known loads of stretches that have been made, by key; they count instead of the estimate.
 * @param apart how far two joins of one run must be from one another, mm.
 * @param studs how many studs stand by the centres only in a frame from–to with the studs needed.
 */
export function fewest(
  { spots, atoms, spans }: Chain,
  carry: Carry,
  trueTo: number,
  known: ReadonlyMap<string, Load>,
  apart: number,
  studs: Studs,
): Parting {
  const n = spots.length - 1;
  const stations = spots.flatMap((s, i) => (i === 0 || i === n || s.mark || s.kind === 'flap' ? [i] : []));
  const best: (Step | undefined)[] = [{ cost: [0, 0, 0, 0], back: -1 }];
  for (let b = 1; b < stations.length; b++) {
    const stretch = new Stretch(spots, atoms, spans, studs, stations[b]);
    for (let a = b - 1; a >= 0; a--) {
      const [from, to] = [stations[a], stations[b]];
      stretch.reachBackTo(from);
      const before = best[a];
      if (before && farApart(spots[from], spots[to], apart)) {
        const load = known.get(keyOf(spots, from, to));
        const judged = load ?? stretch.lightest(trueTo);
        const broken = breachesOf(judged, carry).filter((breach) => !stretch.unavoidable(breach, carry));
        const over = broken.length > 0;
        if (over && divisible(spots, stations, a, b, apart)) {
          // Longer stretches only get heavier; but one may lie along another run, and be less deep.
          if (!load && broken.some((breach) => breach.what === WEIGHT)) break;
          continue;
        }
        const weight = (load ?? stretch.load()).weightKg;
        const { cost } = before;
        const now: Cost = [
          cost[0] + Number(over),
          cost[1] + 1,
          cost[2] + Number(spots[to].kind === 'strip'),
          cost[3] + weight * weight,
        ];
        const old = best[b];
        if (!old || less(now, old.cost)) best[b] = { cost: now, back: a };
      }
      if (spots[from].kind === 'flap') break;
    }
  }
  return traced(spots, stations, best);
}

const less = (a: Cost, b: Cost): boolean => {
  for (let k = 0; k < 3; k++) if (a[k] !== b[k]) return a[k] < b[k];
  return a[3] < b[3] - 1e-6;
};

/** Whether a join could stand between two stations. */
const divisible = (spots: readonly Spot[], stations: readonly number[], a: number, b: number, apart: number): boolean =>
  stations
    .slice(a + 1, b)
    .some((k) => farApart(spots[stations[a]], spots[k], apart) && farApart(spots[k], spots[stations[b]], apart));

/** Two joins of one run must not crowd each other; places near its ends are none already. */
const farApart = (a: Spot, b: Spot, apart: number): boolean =>
  a.run !== b.run || !isJoin(a) || !isJoin(b) || b.x - a.x >= apart;

const isJoin = ({ kind }: Spot): boolean => kind === 'pillar' || kind === 'strip';

const keyOf = (spots: readonly Spot[], from: number, to: number): string =>
  `${spots[from].run} ${spots[from].x} – ${spots[to].run} ${spots[to].x}`;

function traced(spots: readonly Spot[], stations: readonly number[], best: readonly (Step | undefined)[]): Parting {
  const marks: JoinMark[] = [];
  const keys: string[] = [];
  let at = stations.length - 1;
  const over = best[at]?.cost[0] ?? 0;
  while (at > 0) {
    const back = best[at]?.back ?? 0;
    keys.unshift(keyOf(spots, stations[back], stations[at]));
    const { mark, kind } = spots[stations[back]];
    if (back > 0 && mark && kind !== 'flap') marks.unshift(mark);
    at = back;
  }
  return { marks, keys, over };
}

/** A growing stretch that ends at one spot and reaches further and further back. */
class Stretch {
  private from: number;
  private weight = 0;
  private byCentres = 0;
  private studKg = 0;
  /** Of each run: from where to where the stretch's frame goes, and the studs that something needs in it. */
  private readonly frames = new Map<RodRun, { from: number; to: number; needed: number[] }>();
  private low = Infinity;
  private high = -Infinity;
  private readonly points: (readonly [number, number])[] = [];
  private readonly lengths = new Map<RodRun, number>();
  private readonly loads: Load[] = [];

  constructor(
    private readonly spots: readonly Spot[],
    private readonly atoms: readonly Atom[],
    private readonly spans: Chain['spans'],
    private readonly studs: Studs,
    private readonly to: number,
  ) {
    this.from = to;
  }

  reachBackTo(from: number): void {
    while (this.from > from) {
      this.from--;
      const atom = this.atoms[this.from];
      this.add(atom);
      for (const span of this.spans.get(this.from) ?? []) if (span.last < this.to) this.add(span.atom);
      for (const { run, length } of atom.runs) {
        this.lengths.set(run, (this.lengths.get(run) ?? 0) + length);
        const left = this.spots[this.from];
        const right = this.spots[this.from + 1];
        const frame = this.frames.get(run) ?? { from: 0, to: isJoin(right) ? right.x : run.right.frameAt, needed: [] };
        frame.from = isJoin(left) ? left.x : run.left.frameAt;
        frame.needed.push(...atom.needed);
        this.frames.set(run, frame);
      }
      this.loads.push(loadOf(atom.points, atom.height, atom.runs[0]?.run, atom.weightKg));
    }
  }

  private add(atom: Atom): void {
    if (atom.points.length === 0) return;
    this.weight += atom.weightKg;
    this.byCentres += atom.byCentresKg;
    this.studKg = Math.max(this.studKg, atom.studKg);
    this.low = Math.min(this.low, atom.height[0]);
    this.high = Math.max(this.high, atom.height[1]);
    this.points.push(...atom.points);
  }

  load(): Load {
    const longest = [...this.lengths].sort((a, b) => b[1] - a[1])[0]?.[0];
    let studs = 0;
    for (const { from, to, needed } of this.frames.values()) studs += this.studs(from, to, needed);
    const ends = this.spots[this.from].moreRight + this.spots[this.to].moreLeft - this.waiting();
    const weight = this.weight - this.byCentres + studs * this.studKg + ends;
    return loadOf(this.points, [this.low, this.high], longest, weight);
  }

  /** What is mitred with a neighbour at a corner where the stretch begins or ends: it waits for the neighbour, kg. */
  private waiting(): number {
    const { spots, atoms, from, to } = this;
    let waits = 0;
    for (let k = from; k < to && spots[from].kind === 'corner' && spots[k + 1].run === spots[from + 1].run; k++)
      waits += atoms[k].waitsLeft;
    for (let k = to - 1; k >= from && spots[to].kind === 'corner' && spots[k + 1].run === spots[to].run; k--)
      waits += atoms[k].waitsRight;
    return waits;
  }

  /** The least that it may turn out to weigh. */
  lightest(trueTo: number): Load {
    const load = this.load();
    return { ...load, weightKg: load.weightKg * (1 - trueTo) };
  }

  /** A breach that each of its smallest pieces has too, and that no cutting cures. */
  unavoidable({ what, byCutting }: Breach, carry: Carry): boolean {
    return !byCutting && this.loads.every((load) => breachesOf(load, carry).some((b) => b.what === what));
  }
}

function loadOf(
  points: readonly (readonly [number, number])[],
  [low, high]: readonly [number, number],
  run: RodRun | undefined,
  weightKg: number,
): Load {
  if (!run || points.length === 0) return { length: 0, depth: 0, height: 0, weightKg: 0 };
  const reach = ([x, y]: readonly [number, number]): number => {
    let [least, most] = [Infinity, -Infinity];
    for (const p of points) {
      const at = p[0] * x + p[1] * y;
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
    return most - least;
  };
  return { length: reach(run.along), depth: reach(run.front), height: high - low, weightKg };
}
