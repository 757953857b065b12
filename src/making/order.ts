import type { Part } from '../vocabulary/part';
import { bodyOf } from './bodies';
import { MOST_GAP } from './contacts';
import type { Touching } from './touching';

/** Parts put on together. */
export type Batch = readonly Part[];

/** No more groups than this are put together in one go. */
const MOST_TOGETHER = 4;

/** The lowest point of a part, above the floor. */
export const lowestOf = (part: Part): number => bodyOf(part).box[2];

/**
 * Parts in groups, in the order in which they go on: what is there when framed first, run by run; then kind by kind from the frame
 * outward, as the register has them. Within a kind by code, in the order in which its room makes them.
 */
export function groupsOf(parts: readonly Part[], all: readonly Part[]): readonly Batch[] {
  const rank = (values: readonly string[]): ReadonlyMap<string, number> => {
    const ranks = new Map<string, number>();
    for (const value of values) if (!ranks.has(value)) ranks.set(value, ranks.size);
    return ranks;
  };
  const kinds = rank(all.map((p) => p.kind));
  const codes = rank(all.map((p) => `${p.kind} ${p.code}`));
  const runs = rank(all.map((p) => p.run));
  const keyOf = (p: Part): readonly number[] => {
    const framed = p.from === 'framed';
    return [framed ? 0 : 1, framed ? at(runs, p.run) : 0, at(kinds, p.kind), at(codes, `${p.kind} ${p.code}`)];
  };
  const groups = new Map<string, { readonly key: readonly number[]; readonly parts: Part[] }>();
  for (const part of parts) {
    const key = keyOf(part);
    const group = groups.get(key.join());
    if (group) group.parts.push(part);
    else groups.set(key.join(), { key, parts: [part] });
  }
  return [...groups.values()].sort((a, b) => compare(a.key, b.key)).map((group) => group.parts);
}

const at = (ranks: ReadonlyMap<string, number>, value: string): number => ranks.get(value) ?? 0;

function compare(a: readonly number[], b: readonly number[]): number {
  const k = a.findIndex((value, i) => value !== b[i]);
  return k < 0 ? 0 : a[k] - b[k];
}

/**
 * Puts groups on, one after the other, each part where it touches what is there already or comes with it. A group with parts that touch
 * nothing yet goes on together with the next ones, where those carry it; else its loose parts wait. `placed` are those that are there;
 * it grows. What never finds a hold comes back as `loose`.
 */
export function putOn(
  groups: readonly Batch[],
  placed: Set<string>,
  touching: Touching,
): { readonly batches: readonly Batch[]; readonly loose: Batch } {
  const batches: Batch[] = [];
  let waiting: Batch = [];
  for (let i = 0; i < groups.length; ) {
    const carry = together(groups, i, waiting, placed, touching);
    const batch = [...waiting, ...groups.slice(i, i + carry).flat()];
    const held = heldOf(batch, placed, touching);
    waiting = batch.filter((p) => !held.has(p.mark));
    const now = batch.filter((p) => held.has(p.mark));
    if (now.length > 0) batches.push(now);
    for (const { mark } of now) placed.add(mark);
    i += carry;
  }
  return { batches, loose: waiting };
}

/** How many groups go on in one go, so that none of their parts is left in the air: one, where more don't help. */
function together(
  groups: readonly Batch[],
  first: number,
  waiting: Batch,
  placed: ReadonlySet<string>,
  touching: Touching,
): number {
  for (let n = 1; n <= MOST_TOGETHER && first + n <= groups.length; n++) {
    const own = groups.slice(first, first + n).flat();
    const held = heldOf([...waiting, ...own], placed, touching);
    if (own.every((p) => held.has(p.mark))) return n;
  }
  return 1;
}

/** Which parts of a batch have a hold: on what is there, on the floor, or on one another from there. With nothing there, the first begins. */
function heldOf(batch: Batch, placed: ReadonlySet<string>, touching: Touching): ReadonlySet<string> {
  const marks = new Set(batch.map((p) => p.mark));
  const starts = batch.filter(
    (p, i) =>
      (placed.size === 0 && i === 0) ||
      lowestOf(p) < MOST_GAP ||
      touching.get(p.mark)?.some((other) => placed.has(other)),
  );
  const held = new Set(starts.map((p) => p.mark));
  const open = [...held];
  for (let mark = open.pop(); mark !== undefined; mark = open.pop()) {
    for (const other of touching.get(mark) ?? []) {
      if (!marks.has(other) || held.has(other)) continue;
      held.add(other);
      open.push(other);
    }
  }
  return held;
}
