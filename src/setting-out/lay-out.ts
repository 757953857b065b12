import type { Backing } from '../vocabulary/backing';
import type { Design } from '../vocabulary/design';
import type { Job } from '../vocabulary/job';
import type { Obstacle, PlacedOpening } from '../vocabulary/opening';
import type { PartDraft } from '../vocabulary/part';
import type { Rod } from '../vocabulary/rod';
import type { Book, Made, Room } from '../vocabulary/room';
import { frameRound } from './frame-round';

/** A rod with its openings placed and its frames up. */
export type FramedUp = Pick<Design, 'rod' | 'openings' | 'framing' | 'findings'>;

/** What a room says and makes: once for every way of joining where it doesn't mind joins. */
interface Said {
  readonly obstacles: readonly Obstacle[];
  readonly backing: readonly Backing[];
  readonly made: Made;
}

/** A unit laid out: all that is made, not yet measured. */
export interface Laid extends FramedUp {
  readonly drafts: readonly PartDraft[];
  /** In the rooms' order. */
  readonly said: readonly Said[];
}

/** Whom it asks, and about what: the rooms' decisions are the job's. */
interface Order {
  readonly rooms: readonly Room[];
  readonly job: Job;
  readonly book: Book;
}

/** One way through the stages from the rod to what the rooms make. `before`: the same unit laid out with other joins. */
export function layOut(order: Order, rod: Rod, before?: Laid): Laid {
  const { rooms, job, book } = order;
  const again = before && rooms.map((room, i) => (minds(room, job, before.rod, rod) ? undefined : before.said[i]));
  const { framed, obstacles, backing } = frame(order, rod, again);
  const bench = { rod, framing: framed.framing, book, openings: framed.openings };
  const same = before !== undefined && sameOpenings(before.openings, framed.openings);
  const said = rooms.map(
    (room, i): Said => ({
      obstacles: obstacles[i],
      backing: backing[i],
      made: (same && again?.[i]?.made) || room.parts(job.unit.elements[room.kind], bench),
    }),
  );
  return {
    rod,
    openings: framed.openings,
    framing: framed.framing,
    drafts: said.flatMap(({ made }) => made.drafts),
    findings: [...framed.findings, ...said.flatMap(({ made }) => made.findings)],
    said,
  };
}

/** The stages before any part is made. */
export const frameUpFor = (order: Order, rod: Rod): FramedUp => frame(order, rod, undefined).framed;

function frame(
  { rooms, job, book }: Order,
  rod: Rod,
  again: readonly (Said | undefined)[] | undefined,
): {
  readonly framed: FramedUp;
  readonly obstacles: readonly (readonly Obstacle[])[];
  readonly backing: readonly (readonly Backing[])[];
} {
  const { elements, openings: wished } = job.unit;
  const obstacles = rooms.map(
    (room, i) => again?.[i]?.obstacles ?? room.obstacles?.(elements[room.kind], { rod, book }) ?? NOTHING,
  );
  let backing: readonly (readonly Backing[])[] = [];
  const { openings, framing, findings } = frameRound(rod, wished, obstacles.flat(), (placed) => {
    backing = rooms.map(
      (room, i) => again?.[i]?.backing ?? room.backing(elements[room.kind], { rod, book, openings: placed }),
    );
    return backing.flat();
  });
  return { framed: { rod, openings, framing, findings: [...rod.findings, ...findings] }, obstacles, backing };
}

const NOTHING: readonly never[] = [];

const minds = ({ mindsJoins, kind }: Room, { unit }: Job, ...rods: readonly Rod[]): boolean =>
  !mindsJoins || rods.some((rod) => mindsJoins(unit.elements[kind], rod));

/** Whether the same openings have the same places. */
const sameOpenings = (a: readonly PlacedOpening[], b: readonly PlacedOpening[]): boolean =>
  a.length === b.length &&
  a.every((one, i) => {
    const { index, run, from, to, low, high } = b[i];
    return (
      one.index === index &&
      one.run === run &&
      one.from === from &&
      one.to === to &&
      one.low === low &&
      one.high === high
    );
  });
