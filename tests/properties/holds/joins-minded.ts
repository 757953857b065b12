import { design, rooms } from '../../../src/flow';
import { bookOf } from '../../../src/job/book';
import type { Design } from '../../../src/vocabulary/design';
import type { Found } from '../sample';

/** A unit that is parted within a run, and rooms that say it is nothing to them: what they say and make is the same in one piece. */
export function joinsNotMinded(made: Design): Found {
  const { job, openings } = made;
  const { unit } = job;
  if (made.rod.runs.every(({ joins }) => joins.length === 0)) return { wrong: [], looked: 0 };
  const whole = design({ ...job, unit: { ...unit, joins: { by: 'hand', at: [] } } });
  const book = bookOf(job);
  const wrong: string[] = [];
  let looked = 0;
  for (const room of rooms) {
    const decided = unit.elements[room.kind];
    if (!room.mindsJoins || [whole.rod, made.rod].some((rod) => room.mindsJoins?.(decided, rod))) continue;
    looked++;
    const [one, other] = [whole, made].map(({ rod, framing }) => ({
      obstacles: room.obstacles?.(decided, { rod, book }) ?? [],
      // It may not look at the openings here: they are placed after it is asked.
      backing: room.backing(decided, { rod, book, openings: rod === made.rod ? openings : [] }),
      made: room.parts(decided, { rod, book, framing, openings }),
    }));
    if (JSON.stringify(one) !== JSON.stringify(other))
      wrong.push(`${room.kind} says that joins are nothing to it; parted it is another than in one piece`);
  }
  return { wrong, looked };
}
