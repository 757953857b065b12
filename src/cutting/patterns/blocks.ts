import type { Lengthwise } from './lengthwise';

/** Pieces one above the other in a strip, as places in the list of variants. The first gives the width. */
export interface Block {
  readonly along: number;
  readonly stack: readonly number[];
  readonly worth: number;
}

/** What is still wanted of each kind, and what one of it is worth. Changed by those who take from it. */
export interface Wanted {
  readonly left: Int32Array;
  readonly worths: ArrayLike<number>;
}

/**
 * The stack led by a variant in a strip of this height: as many of it as stand there, and what may lie on them, the dearest first. Takes
 * nothing away. Undefined where it does not fit or is not wanted.
 */
export function blockLedBy(side: Lengthwise, lead: number, high: number, { left, worths }: Wanted): Block | undefined {
  const { variants, ways } = side;
  const v = variants[lead];
  if (v.high > high || left[v.kind] <= 0) return undefined;
  if (!ways.trimStrips && v.high !== high) return undefined;
  const copies = ways.stacks ? Math.min(left[v.kind], Math.floor(high / v.high)) : 1;
  const stack = new Array<number>(copies).fill(lead);
  let worth = copies * worths[v.kind];
  let room = high - copies * v.high;
  if (!ways.stacks || room < side.heights[0]) return { along: v.along, stack, worth };
  const used = new Map([[v.kind, copies]]);
  for (;;) {
    let best = -1;
    for (let n = 0; n < variants.length; n += 1) {
      const t = variants[n];
      if (t.high > room || !(t.along === v.along || (ways.trimStacks && t.along < v.along))) continue;
      if (left[t.kind] - (used.get(t.kind) ?? 0) <= 0) continue;
      if (best < 0 || worths[t.kind] > worths[variants[best].kind]) best = n;
    }
    if (best < 0) break;
    const { kind, high: h } = variants[best];
    stack.push(best);
    used.set(kind, (used.get(kind) ?? 0) + 1);
    worth += worths[kind];
    room -= h;
  }
  return { along: v.along, stack, worth };
}
