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
 * Makes the stack led by a variant in a strip of a height, from what is left of each kind: as many of it as stand there, and what may lie on them, the
 * dearest first. Takes nothing away. Undefined where it does not fit or is not wanted.
 */
export type Stacker = (lead: number, high: number, left: Int32Array) => Block | undefined;

/** Makes stacks for as long as pieces are worth so much. */
export function stacker({ variants, ways, heights }: Lengthwise, worths: ArrayLike<number>): Stacker {
  /** The dearest first; of those worth the same the lowest. */
  const order = variants.map((_, n) => n).sort((a, b) => worths[variants[b].kind] - worths[variants[a].kind] || a - b);
  /** What may lie on a variant, in that order, and the height of the lowest of it; made when it is asked for. */
  const onTop: (readonly number[] | undefined)[] = new Array(variants.length).fill(undefined);
  const lowest = new Float64Array(variants.length);
  const onTopOf = (lead: number): readonly number[] => {
    const { along } = variants[lead];
    const those = order.filter((n) => (ways.trimStacks ? variants[n].along <= along : variants[n].along === along));
    onTop[lead] = those;
    lowest[lead] = Math.min(...those.map((n) => variants[n].high));
    return those;
  };

  return (lead, high, left) => {
    const v = variants[lead];
    if (v.high > high || left[v.kind] <= 0) return undefined;
    if (!ways.trimStrips && v.high !== high) return undefined;
    const copies = ways.stacks ? Math.min(left[v.kind], Math.floor(high / v.high)) : 1;
    const stack: number[] = [];
    for (let c = 0; c < copies; c += 1) stack.push(lead);
    let worth = copies * worths[v.kind];
    let room = high - copies * v.high;
    if (!ways.stacks || room < heights[0]) return { along: v.along, stack, worth };
    const those = onTop[lead] ?? onTopOf(lead);
    const least = lowest[lead];
    // What does not fit, or is used up, stays so: one look at each is enough.
    for (let i = 0; i < those.length && room >= least; i += 1) {
      const n = those[i];
      const { kind, high: h } = variants[n];
      if (h > room || left[kind] <= 0) continue;
      let most = left[kind];
      for (const other of stack) if (variants[other].kind === kind) most -= 1;
      for (; most > 0 && h <= room; most -= 1) {
        stack.push(n);
        worth += worths[kind];
        room -= h;
      }
    }
    return { along: v.along, stack, worth };
  };
}
