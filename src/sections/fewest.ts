import type { Carry, JoinMark } from '../vocabulary/job';
import type { Breach } from '../vocabulary/section';
import { type Chain, isJoin, type Spot } from './chain';
import { breachesOf, type Load, WEIGHT } from './limits';
import { loadOfAtom, loadOfStretch, type Shorter } from './stretch';

/** One way of parting a unit: spots by number, and for each stretch its key in `known`. */
export interface Parting {
  readonly marks: readonly JoinMark[];
  readonly keys: readonly string[];
  /** Stretches that break a limit, as far as is known. */
  readonly over: number;
}

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
 * @param shorter what the setting-out knows of a shorter frame.
 */
export function fewest(
  chain: Chain,
  carry: Carry,
  trueTo: number,
  known: ReadonlyMap<string, Load>,
  apart: number,
  shorter: Shorter,
): Parting {
  const { spots } = chain;
  const single = chain.atoms.map((atom) => breachesOf(loadOfAtom(atom, chain.compass), carry));
  // A breach that each of the smallest pieces has too, and that no cutting cures.
  const unavoidable = ({ what, byCutting }: Breach, from: number, to: number): boolean =>
    !byCutting && single.slice(from, to).every((breaches) => breaches.some((b) => b.what === what));
  const n = spots.length - 1;
  const stations = spots.flatMap((s, i) => (i === 0 || i === n || s.mark || s.kind === 'flap' ? [i] : []));
  const best: (Step | undefined)[] = [{ cost: [0, 0, 0, 0], back: -1 }];
  for (let b = 1; b < stations.length; b++) {
    for (let a = b - 1; a >= 0; a--) {
      const [from, to] = [stations[a], stations[b]];
      const before = best[a];
      if (before && farApart(spots[from], spots[to], apart)) {
        const load = known.get(keyOf(spots, from, to));
        const estimate = loadOfStretch(chain, from, to, shorter);
        const judged = load ?? { ...estimate, weightKg: estimate.weightKg * (1 - trueTo) };
        const broken = breachesOf(judged, carry).filter((breach) => !unavoidable(breach, from, to));
        const over = broken.length > 0;
        if (over && divisible(spots, stations, a, b, apart)) {
          // Longer stretches only get heavier; but one may lie along another run, and be less deep.
          if (!load && broken.some((breach) => breach.what === WEIGHT)) break;
          continue;
        }
        const weight = (load ?? estimate).weightKg;
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
