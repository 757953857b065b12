import { tenth } from '../base/tenth';
import { SAME_LENGTH } from '../base/tolerance';
import type { Block, Ground } from './opening-ground';
import { boxOf, type Hit, type Wished } from './opening-places';

/** Places are said in tenths: an opening may lie so much further from a thing than it must, mm. */
const TENTH = 0.1;

/** What an opening meets, in words, with the number found and the number allowed. */
export interface Meeting {
  readonly words: string;
  readonly value: number;
  readonly limit: number;
}

type Place = Pick<Wished, 'x' | 'z'>;

/** The one way in which something is moved; undefined where it is moved both ways, or not at all. */
type Way = 'left' | 'right' | 'up' | 'down' | undefined;

function wayTo(from: Place, to: Place): Way {
  const [dx, dz] = [to.x - from.x, to.z - from.z].map((d) => (Math.abs(d) <= SAME_LENGTH ? 0 : d));
  if (dx !== 0 && dz !== 0) return undefined;
  if (dx !== 0) return dx < 0 ? 'left' : 'right';
  return dz < 0 ? 'down' : dz > 0 ? 'up' : undefined;
}

/** How far something would be moved that way until it is clear of a block; negative when it lies past it by more than nothing. */
const untilClear = (box: Omit<Block, 'what' | 'clear'>, block: Block, way: NonNullable<Way>): number =>
  ({
    left: box.to - block.from,
    right: block.to - box.from,
    up: block.high - box.low,
    down: box.high - block.low,
  })[way];

/**
 * How far a wished opening reaches into what it meets, apart from what is kept clear of that: seen in the way in which it is to be moved,
 * so that the two figures agree; where that is more than its own size, or there is no such way, the least way out of it.
 */
export function meetingOf(wished: Wished, { what, by, block }: Hit, place?: Place): Meeting {
  // What is everywhere can't be measured.
  if (by === Infinity) return { words: `meets ${what}`, value: wished.height, limit: 0 };
  const clear = block?.clear ?? 0;
  const way = place && wayTo(wished, place);
  const seen = way && block ? untilClear(boxOf(wished), block, way) - clear : Infinity;
  const own = way === 'left' || way === 'right' ? wished.width : wished.height;
  const deep = seen <= own + SAME_LENGTH ? seen : by - clear;
  if (deep > SAME_LENGTH) return { words: `meets ${what} by ${tenth(deep)} mm`, value: deep, limit: 0 };
  const near = deep > -SAME_LENGTH ? `touches ${what}` : `comes within ${tenth(-deep)} mm of ${what}`;
  return { words: `${near}; ${tenth(clear)} mm stays clear`, value: -deep, limit: clear };
}

/**
 * What an opening lies against in its new place, when it is moved one way: ", which leaves 5 mm clear", with the name of the thing where
 * it isn't the one that it met. Empty where it touches what it met, or lies against an end of the run.
 */
export function against(ground: Ground, wished: Wished, place: Place, met: string): string {
  const way = wayTo(wished, place);
  if (!way) return '';
  const there = boxOf({ ...wished, ...place });
  const beside = ground.blocks
    .filter((b) =>
      way === 'left' || way === 'right'
        ? b.low < there.high - SAME_LENGTH && b.high > there.low + SAME_LENGTH
        : b.from < there.to - SAME_LENGTH && b.to > there.from + SAME_LENGTH,
    )
    .map((b) => ({ ...b, past: -untilClear(there, b, way) }))
    .filter(({ past }) => past >= -SAME_LENGTH && past < TENTH);
  const one = beside.find((b) => b.what === met) ?? beside.find((b) => b.clear) ?? beside[0];
  if (!one) return '';
  const of = one.what === met ? '' : ` of ${one.what}`;
  if (one.clear) return `, which leaves ${tenth(one.clear + one.past)} mm clear${of}`;
  return of && `, just clear${of}`;
}
