import type { LpSolver } from '../../lp';
import { chanceOf } from '../chance';
import type { Ledger } from '../ledger';
import type { Pattern, Task } from '../task';
import { fillTable } from './fill-table';
import { type Fill, fillsWithin, listFills, suffices } from './fills';
import { NEARLY } from './nearly';
import { type Relaxed, relaxedChoice } from './relaxed';

/** Where a bar holds more pieces than this on average, full bars are too many to be listed, and easily found otherwise. */
const MOST_PER_BAR = 4;

/** With more kinds a single answer of the solver can take seconds. */
const MOST_KINDS = 500;

/** Units of length in a bar, at most: tables have a place for each. */
const MOST_CAPACITY = 1_000_000;

/** Fills listed, and places looked at. */
const MOST_LISTED = 200_000;
const MOST_PLACES = 100;

/** Of the bars cut on a way that came to nothing, how many are cut again so on the next. */
const KEPT = 0.75;

/** A place on the way: what is cut already, and what is still to be cut. */
interface Place {
  readonly fixed: readonly Fill[];
  readonly left: readonly number[];
  /** All that can still be, and perhaps some that can no longer. */
  readonly listed: Uint16Array;
  readonly known: readonly Fill[];
}

/**
 * Looks for a way of cutting without any waste, where pieces and bars come out even: then every bar must be full to the end. Bars that three pieces
 * fill so are few, and where pieces are hardly more than three times the bars, nearly all are such; so they are listed, with those of four, and a
 * relaxed choice among them that leaves no piece out is rounded bit by bit. Where that comes to nothing, some of it is undone by chance and it goes
 * on from there (large neighbourhood search, Shaw 1998). Made for instances such as those called AI (Delorme, Iori & Martello 2016). What it tells
 * needs no other proof than that nothing is wasted; when it finds nothing, that proves nothing.
 */
export function* fullBars(task: Task, ledger: Ledger, lp: LpSolver, seed: number): Generator<void> {
  const bars = evenBars(task);
  if (bars === undefined || bars * task.sources[0].price > ledger.below()) return;
  const sizes = task.kinds.map(({ size }) => size);
  const left = task.kinds.map(({ copies }) => copies.length);
  const { capacity } = task.sources[0];
  const table = fillTable(sizes, capacity);
  const chance = chanceOf(seed);
  const all = yield* listFills(sizes, left, capacity, MOST_LISTED);
  let start: Place = { fixed: [], left, listed: all, known: [] };
  let place = start;
  for (let n = 0; n < MOST_PLACES; n++) {
    const listed = fillsWithin(place.listed, place.left);
    const relaxed = yield* relaxedChoice(lp, { left: place.left, listed, table, known: place.known });
    if (!relaxed) {
      if (place.fixed.length === 0) return;
      const kept = place.fixed.filter(() => chance() < KEPT);
      place = cutFrom(start, kept);
      continue;
    }
    if (n === 0) start = { ...start, known: relaxed.fills };
    const nearest = nearestIn(relaxed);
    place = cutFrom({ ...place, listed, known: relaxed.fills }, [...wholeIn(relaxed), ...(nearest ? [nearest] : [])]);
    if (place.left.every((n) => n === 0)) {
      ledger.offer({ bars: place.fixed.map(patternOf), missing: left.map(() => 0) });
      return;
    }
  }
}

/** How many bars it takes when all are full; undefined where that can't be, or is not what to look for. */
function evenBars({ kinds, sources, plain }: Task): number | undefined {
  if (!plain || sources.length !== 1) return undefined;
  const [{ capacity, most, count }] = sources;
  let size = 0;
  let pieces = 0;
  for (const kind of kinds) {
    if (kind.size !== kind.least) return undefined;
    size += kind.size * kind.copies.length;
    pieces += kind.copies.length;
  }
  const bars = size / capacity;
  const isEven = capacity === most && capacity <= MOST_CAPACITY && Number.isInteger(bars) && bars <= count;
  return isEven && pieces <= MOST_PER_BAR * bars && kinds.length <= MOST_KINDS ? bars : undefined;
}

/** Fills that are chosen wholly, as often as they are. */
const wholeIn = ({ fills, amounts }: Relaxed): readonly Fill[] =>
  fills.flatMap((fill, i) => Array.from({ length: Math.floor(amounts[i] + NEARLY) }, () => fill));

/** The fill that is nearest to being chosen wholly, or once more; undefined when all are. */
function nearestIn({ fills, amounts }: Relaxed): Fill | undefined {
  let nearest = -1;
  for (let i = 0; i < amounts.length; i++) {
    const part = amounts[i] % 1;
    if (part > NEARLY && part < 1 - NEARLY && (nearest < 0 || part > amounts[nearest] % 1)) nearest = i;
  }
  return fills[nearest];
}

/** The place where these are cut too, one after the other as long as there is enough left for them: what is chosen in parts need not go together. */
function cutFrom(place: Place, chosen: readonly Fill[]): Place {
  const left = [...place.left];
  const fixed = [...place.fixed];
  for (const fill of chosen) {
    if (!suffices(fill, left)) continue;
    for (const kind of fill) left[kind]--;
    fixed.push(fill);
  }
  return { ...place, fixed, left, known: place.known.filter((fill) => suffices(fill, left)) };
}

function patternOf(fill: Fill): Pattern {
  const times = new Map<number, number>();
  for (const kind of fill) times.set(kind, (times.get(kind) ?? 0) + 1);
  return { source: 0, times: [...times] };
}
