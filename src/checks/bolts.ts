import { alongFace } from '../base/along';
import { UP } from '../base/place';
import { extentOf } from '../base/solid/extent';
import { tenth } from '../base/tenth';
import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Part } from '../vocabulary/part';
import type { Rod, RodRun } from '../vocabulary/rod';
import type { Join } from '../vocabulary/section';

/** Washers by the bolt's diameter: how wide, mm (ISO 7089, from memory). */
const WASHERS: Readonly<Record<number, number>> = { 6: 12, 8: 16, 10: 20, 12: 24 };
/** Room round a washer for the spanner, mm (common practice, no source). */
const SPANNER = 10;
/** How far from the stud's side nut, washer and spanner need that room, mm (common practice, no source). */
const BESIDE = 30;

/** Timber that ends at a bolted stud, where the nut would be. */
interface InTheWay {
  readonly join: string;
  readonly run: string;
  readonly name: string;
  readonly low: number;
  readonly high: number;
}

/** Bolts at joins whose nut or head comes against a noggin, or a rail, that ends at the same stud. */
export function boltRoom({
  job,
  rod,
  parts,
  joins = [],
}: {
  readonly job: Job;
  readonly rod: Rod;
  readonly parts: readonly Part[];
  readonly joins?: readonly Join[];
}): readonly Finding[] {
  if (!joins.some((join) => join.bolts.length > 0)) return [];
  const room = washerOf(job) / 2 + SPANNER;
  const beside = new Beside(rod, parts, room);
  const all = joins.flatMap((join) => sidesOf(join, rod).flatMap((side) => beside.of(join, side)));
  const heights = [...new Set(joins.flatMap((join) => join.bolts))].sort((a, b) => a - b);
  return heights.flatMap((z): Finding[] => {
    const hit = all.filter(({ low, high }) => z > low - room && z < high + room);
    if (hit.length === 0) return [];
    const [nearest] = [...hit].sort((a, b) => apart(a, z) - apart(b, z));
    const free = nearestFree(z, all, room, rod);
    return [
      {
        severity: 'warn',
        rule: 'bolt-at-noggin',
        subject: { run: nearest.run, path: '/fit/bolts' },
        value: apart(nearest, z),
        limit: room,
        message: `The bolts ${tenth(z)} mm above the floor come ${inWords(nearest, z)} where the nut and its washer go, at ${listOf([...new Set(hit.map((h) => h.join))])}; ${tenth(room)} mm must be clear above and below them.`,
        source: 'washers ISO 7089, room for a spanner common practice; from memory',
        remedy:
          free === undefined
            ? 'No height is free at every join: make fewer rows of noggins, or bore each join where it is free.'
            : `Bore them ${tenth(free)} mm above the floor, the nearest height that is free at every join; or make the rows of noggins elsewhere.`,
      },
    ];
  });
}

const apart = ({ low, high }: InTheWay, z: number): number => Math.max(0, low - z, z - high);

const inWords = (hit: InTheWay, z: number): string => {
  const { name, low, high } = hit;
  const gap = apart(hit, z);
  return `${gap === 0 ? 'against' : `within ${tenth(gap)} mm of`} a ${name} (${tenth(low)} to ${tenth(high)})`;
};

const listOf = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`;

/** Of the widest bolt in the book; M8 where it has none. */
const washerOf = ({ stock }: Job): number => {
  const widest = Math.max(0, ...stock.fixings.filter((f) => f.kind === 'bolt').map((f) => f.diameter)) || 8;
  return WASHERS[Math.round(widest)] ?? 2 * widest;
};

/** A stud's side on which a nut or a head lies: x along the run, and towards which end its bay lies. */
interface Side {
  readonly run: RodRun;
  readonly x: number;
  readonly way: -1 | 1;
}

/**
 * Both studs' sides at a join within a run. At a corner the bolt goes from the bay of the run that stops there through its end stud, and
 * comes out in front of or behind the other's, where no noggin ends.
 */
function sidesOf({ run: id, at, x }: Join, { runs, timber: { face } }: Rod): readonly Side[] {
  const run = runs.find((r) => r.id === id);
  if (!run || at === 'flap') return [];
  if (at === 'run')
    return [
      { run, x: x - face, way: -1 },
      { run, x: x + face, way: 1 },
    ];
  if (!run.right.through) return [{ run, x: run.right.frameAt - face, way: -1 }];
  const next = runs.find((r) => r.id === run.right.neighbour);
  return next ? [{ run: next, x: next.left.frameAt + face, way: 1 }] : [];
}

/** Framed timber that lies level: from where to where along its run, and its heights. */
interface Level {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

/** Framed timber that lies level, run by run: looked up once for all joins. */
class Beside {
  private readonly known = new Map<string, readonly Level[]>();

  constructor(
    private readonly rod: Rod,
    private readonly parts: readonly Part[],
    private readonly room: number,
  ) {}

  of({ id }: Join, { run, x, way }: Side): readonly InTheWay[] {
    const [from, to] = way < 0 ? [x - BESIDE, x] : [x, x + BESIDE];
    return this.levelIn(run)
      .filter((part) => part.from < to - TOUCH && part.to > from + TOUCH)
      .map(({ name, low, high }) => ({ join: id, run: run.id, name, low, high }));
  }

  private levelIn(run: RodRun) {
    const known = this.known.get(run.id);
    if (known) return known;
    const middle = -this.rod.timber.depth / 2;
    const found: Level[] = [];
    for (const part of this.parts) {
      if (part.run !== run.id || part.from !== 'framed' || Math.abs(part.place.along[2]) >= 0.5) continue;
      const [back, front] = alongFace(part, { origin: run.origin, along: run.front });
      if (back > middle + this.room || front < middle - this.room) continue;
      const [from, to] = alongFace(part, run);
      const [low, high] = extentOf(part, UP);
      found.push({ name: part.name, from, to, low, high });
    }
    this.known.set(run.id, found);
    return found;
  }
}

const TOUCH = 0.1;

/** The height nearest to z, in whole mm, that is clear of everything; undefined where there is none between the plates. */
function nearestFree(
  z: number,
  all: readonly InTheWay[],
  room: number,
  { frameLow, frameHeight, timber: { face } }: Rod,
): number | undefined {
  const free = (at: number): boolean =>
    at >= frameLow + face + room &&
    at <= frameHeight - face - room &&
    all.every(({ low, high }) => at <= low - room || at >= high + room);
  return all
    .flatMap(({ low, high }) => [Math.floor(low - room), Math.ceil(high + room)])
    .filter(free)
    .sort((a, b) => Math.abs(a - z) - Math.abs(b - z))[0];
}
