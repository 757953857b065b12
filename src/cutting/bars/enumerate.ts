import type { Proof } from './generate';
import type { Times } from './knapsack';
import type { Rest } from './pack';
import type { Pattern, Task } from './task';

/** Steps of the search between two pauses. */
const PAUSE = 60_000;

/** Cells of the table of what the kinds from one on are worth in a room: 8 bytes each. */
const MOST_CELLS = 3_000_000;

/** What a list of patterns may take. */
export interface ListLimits {
  readonly patterns: number;
  readonly steps: number;
}

/**
 * All patterns that can lie in a way of cutting that costs no more than `over` above the proof's bound: by its prices each bar may lose that
 * much at the most. Where size says what fits, only full ones, in which nothing more that is wanted does. Undefined when the limits don't do.
 */
export function* allPatterns(
  task: Task,
  { left, stock }: Rest,
  { values, rents }: Proof,
  over: number,
  limits: ListLimits,
): Generator<void, readonly Pattern[] | undefined> {
  const kinds = task.kinds.flatMap((_, kind) => (left[kind] > 0 ? [kind] : []));
  const size = kinds.map((kind) => task.kinds[kind].least);
  const value = kinds.map((kind) => values[kind]);
  const wanted = kinds.map((kind) => left[kind]);
  const roomiest = task.sources.reduce((most, source, s) => (stock[s] < 1 ? most : Math.max(most, source.most)), 0);
  const worth = yield* worths(size, value, wanted, roomiest);
  const m = kinds.length;
  const now = new Int32Array(m);
  const rooms = new Float64Array(m + 1);
  const sums = new Float64Array(m + 1);
  const patterns: Pattern[] = [];
  let steps = 0;
  for (let source = 0; source < task.sources.length; source++) {
    if (stock[source] < 1) continue;
    const price = task.sources[source].price;
    const need = price - rents[source] - over - 1e-9 * (1 + price);
    rooms[0] = task.sources[source].most;
    const top = (i: number): number => Math.min(wanted[i], Math.floor(rooms[i] / size[i]));
    // Of each kind in turn, from as many as can be down to none.
    let i = 0;
    now[0] = m > 0 ? top(0) : 0;
    while (i >= 0 && m > 0) {
      if (++steps % PAUSE === 0) yield;
      if (steps > limits.steps || patterns.length > limits.patterns) return undefined;
      if (now[i] < 0) {
        i--;
        if (i >= 0) now[i]--;
        continue;
      }
      const room = rooms[i] - now[i] * size[i];
      const sum = sums[i] + now[i] * value[i];
      if (sum + worth(i + 1, room) < need) now[i]--;
      else if (i === m - 1) {
        // Where size alone doesn't say what fits, less may be the most that does: then all are listed that truly fit.
        if (!task.plain || isFull(now, wanted, size, room)) {
          const pattern = { source, times: timesOf(now, kinds) };
          if (pattern.times.length > 0 && task.holds(pattern)) patterns.push(pattern);
        }
        now[i]--;
      } else {
        i++;
        rooms[i] = room;
        sums[i] = sum;
        now[i] = top(i);
      }
    }
  }
  return patterns;
}

/** What the kinds from one on are worth in a room, at the most: by table where there is space for one, else as if pieces could be parted. */
function* worths(
  size: readonly number[],
  value: readonly number[],
  wanted: readonly number[],
  roomiest: number,
): Generator<void, (from: number, room: number) => number> {
  const m = size.length;
  const width = roomiest + 1;
  if ((m + 1) * width > MOST_CELLS) {
    const dense = new Float64Array(m + 1);
    for (let i = m - 1; i >= 0; i--) dense[i] = Math.max(dense[i + 1], value[i] / size[i]);
    return (from, room) => room * dense[from];
  }
  const table = new Float64Array((m + 1) * width);
  for (let i = m - 1; i >= 0; i--) {
    const at = i * width;
    table.copyWithin(at, at + width, at + 2 * width);
    for (let n = Math.min(wanted[i], Math.floor(roomiest / size[i])); n > 0; n--)
      for (let c = roomiest; c >= size[i]; c--)
        table[at + c] = Math.max(table[at + c], table[at + c - size[i]] + value[i]);
    if (i % 32 === 0) yield;
  }
  return (from, room) => table[from * width + room];
}

const isFull = (now: Int32Array, wanted: readonly number[], size: readonly number[], room: number): boolean =>
  size.every((one, i) => now[i] >= wanted[i] || one > room);

const timesOf = (now: Int32Array, kinds: readonly number[]): Times =>
  kinds.flatMap((kind, i) => (now[i] > 0 ? [[kind, now[i]] as const] : []));
