import { tenth } from '../base/tenth';
import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Part } from '../vocabulary/part';
import type { Rod } from '../vocabulary/rod';
import type { Join } from '../vocabulary/section';
import { Beside, type InTheWay, sidesOf } from './beside-bolts';

/** Washers by the bolt's diameter: how wide, mm (ISO 7089, from memory). */
const WASHERS: Readonly<Record<number, number>> = { 6: 12, 8: 16, 10: 20, 12: 24 };
/** Room round a washer for the spanner, mm (common practice, no source). */
const SPANNER = 10;

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
