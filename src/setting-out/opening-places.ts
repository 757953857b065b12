import { SAME_LENGTH } from '../base/tolerance';
import type { Block, Ground } from './opening-ground';

/** An opening as wished: its middle and its size, mm. A round one is as high as it is wide, and stays so. */
export interface Wished {
  readonly x: number;
  readonly z: number;
  readonly width: number;
  readonly height: number;
  readonly round: boolean;
}

/** What a wished opening would cut. */
export const boxOf = ({ x, z, width, height }: Omit<Wished, 'round'>): Omit<Block, 'what' | 'clear'> => ({
  from: x - width / 2,
  to: x + width / 2,
  low: z - height / 2,
  high: z + height / 2,
});

/** A thing that is in the way, and by how much: the least way, along or up, that would free the opening of it. No block: an end of the run. */
export interface Hit {
  readonly what: string;
  readonly by: number;
  readonly block?: Block;
}

/** What an opening meets, the worst first; none: it is in a good place. */
export function hitsOf(ground: Ground, wished: Wished): readonly Hit[] {
  const box = boxOf(wished);
  const [from, to] = ground.ends(box.low, box.high);
  const ends: readonly Hit[] = [
    { what: 'the left end of the run', by: from - box.from },
    { what: 'the right end of the run', by: box.to - to },
  ];
  const met = ground.blocks.map(
    (b): Hit => ({
      what: b.what,
      block: b,
      by: Math.min(b.to - box.from, box.to - b.from, b.high - box.low, box.high - b.low),
    }),
  );
  return [...ends, ...met].filter((hit) => hit.by > SAME_LENGTH).sort((a, b) => b.by - a.by);
}

/** The same ground, what is in the way in order from the left. */
const inOrder = (ground: Ground): Ground => ({ ...ground, blocks: [...ground.blocks].sort((a, b) => a.from - b.from) });

/** Clear lengths between all that stands in the way of something that reaches from `low` to `high`. The ground is in order. */
function clearLengths(ground: Ground, low: number, high: number): readonly (readonly [number, number])[] {
  const [start, end] = ground.ends(low, high);
  const inTheWay = ground.blocks.filter((b) => b.low < high - SAME_LENGTH && b.high > low + SAME_LENGTH);
  const found: (readonly [number, number])[] = [];
  let at = start;
  for (const { from, to } of inTheWay) {
    if (Math.min(from, end) > at) found.push([at, Math.min(from, end)]);
    at = Math.max(at, to);
  }
  if (end > at) found.push([at, end]);
  return found;
}

const tenthUp = (mm: number): number => Math.ceil(mm * 10 - 1e-6) / 10;
/** Down to a tenth: of a size, what surely fits. */
export const tenthDown = (mm: number): number => Math.floor(mm * 10 + 1e-6) / 10;

/** Nearest to `at` within a clear length for something `size` long; to a tenth, as one would set it out, where there is one. */
function middleIn([from, to]: readonly [number, number], size: number, at: number): number | undefined {
  const [least, most] = [from + size / 2, to - size / 2];
  if (least > most + SAME_LENGTH) return undefined;
  if (at >= least - SAME_LENGTH && at <= most + SAME_LENGTH) return at;
  const tenth = at < least ? tenthUp(least) : tenthDown(most);
  const exact = at < least ? least : Math.max(least, most);
  return tenth >= least - SAME_LENGTH && tenth <= most + SAME_LENGTH ? tenth : exact;
}

const nearest = (places: readonly number[], to: number): number | undefined =>
  [...places].sort((a, b) => Math.abs(a - to) - Math.abs(b - to))[0];

const finite = (heights: readonly number[]): number[] => [...new Set(heights.filter(Number.isFinite))];

/**
 * The good place nearest to where an opening is wished, moved along or up or down, whichever is less; moved both ways where nothing
 * else will do. Undefined: there is none in this run. A wish that is in a good place stays.
 */
export function nearestPlace(all: Ground, wished: Wished): { readonly x: number; readonly z: number } | undefined {
  const ground = inOrder(all);
  const { x, z, width, height } = wished;
  const along = (middle: number): number | undefined => {
    const lengths = clearLengths(ground, middle - height / 2, middle + height / 2);
    return nearest(
      lengths.flatMap((length) => middleIn(length, width, x) ?? []),
      x,
    );
  };
  // A place moved up or down lies hard against something, above it or below it: to a tenth where that will do.
  const above = finite(ground.blocks.map((b) => b.high + height / 2)).map((m) => [tenthUp(m), m]);
  const below = finite(ground.blocks.map((b) => b.low - height / 2)).map((m) => [tenthDown(m), m]);
  const places = [[z], ...above, ...below].flatMap((ways) => {
    for (const at of ways) {
      const there = along(at);
      if (there !== undefined) return [{ x: there, z: at, dx: Math.abs(there - x), dz: Math.abs(at - z) }];
    }
    return [];
  });
  const oneWay = places.filter((p) => p.dx <= SAME_LENGTH || p.dz <= SAME_LENGTH);
  const best = [...(oneWay.length > 0 ? oneWay : places)].sort((a, b) => a.dx + a.dz - (b.dx + b.dz))[0];
  return best && { x: best.x, z: best.z };
}

/** The clear field that an opening comes nearest to fitting in, and the largest of its kind that does. */
export interface Largest {
  readonly width: number;
  readonly height: number;
  readonly field: readonly [number, number];
  readonly x: number;
  readonly z: number;
}

/** An opening smaller than this is none, mm: the least that may be asked for. */
const LEAST_OPENING = 5;

/** What a clear length leaves of a size, in tenths. */
const shrunk = (size: number, clear: number): number => (size <= clear ? size : tenthDown(clear));

/** For an opening that has no place: a smaller one that has, losing and moving the least, all millimetres alike. */
export function largestPlace(all: Ground, { x, z, width, height, round }: Wished): Largest | undefined {
  const ground = inOrder(all);
  const heights = finite(ground.blocks.flatMap((b) => [b.low, b.high])).sort((a, b) => a - b);
  const found: (Largest & { readonly lost: number })[] = [];
  heights.forEach((low, i) => {
    for (const high of heights.slice(i + 1)) {
      if (high - low < LEAST_OPENING) continue;
      for (const length of clearLengths(ground, low, high)) {
        const clear = [length[1] - length[0], high - low] as const;
        const [wide, tall] = [shrunk(width, clear[0]), shrunk(height, clear[1])];
        const [w, h] = round ? [Math.min(wide, tall), Math.min(wide, tall)] : [wide, tall];
        const [atX, atZ] = [middleIn(length, w, x), middleIn([low, high], h, z)];
        if (Math.min(w, h) < LEAST_OPENING || atX === undefined || atZ === undefined) continue;
        const lost = width - w + height - h + Math.abs(atX - x) + Math.abs(atZ - z);
        found.push({ width: w, height: h, field: clear, x: atX, z: atZ, lost });
      }
    }
  });
  return found.sort((a, b) => a.lost - b.lost)[0];
}
