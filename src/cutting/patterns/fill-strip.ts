import type { Block, Stacker } from './blocks';
import { knapsack } from './knapsack';
import type { Lengthwise } from './lengthwise';
import { settled } from './settled';

export interface FilledStrip {
  readonly high: number;
  readonly blocks: readonly Block[];
  readonly worth: number;
}

/** Blocks that may stand in a strip, each with how often; those worth most for their length first. */
export interface Offers {
  readonly high: number;
  readonly blocks: readonly Block[];
  readonly often: readonly number[];
  /** What they can be worth at most, could the last be taken in part (Dantzig's bound). */
  readonly bound: number;
}

/** What is worth something is offered, and of each no more than is wanted, but for the last stack of it. */
export function offersFor(
  side: Lengthwise,
  high: number,
  left: Int32Array,
  worths: ArrayLike<number>,
  stack: Stacker,
): Offers {
  const { variants, long } = side;
  const blocks: Block[] = [];
  for (let n = 0; n < variants.length && variants[n].high <= high; n += 1) {
    if (!(worths[variants[n].kind] > 0)) continue;
    const block = stack(n, high, left);
    if (block) blocks.push(block);
  }
  blocks.sort((a, b) => b.worth * a.along - a.worth * b.along);
  const often = blocks.map((block) => {
    const [lead] = block.stack;
    let leads = 1;
    while (leads < block.stack.length && block.stack[leads] === lead) leads += 1;
    return Math.min(Math.ceil(left[variants[lead].kind] / leads), Math.floor(long / block.along));
  });
  let room = long;
  let bound = 0;
  for (let i = 0; i < blocks.length && room > 0; i += 1) {
    const { along, worth } = blocks[i];
    const part = Math.min(often[i], room / along);
    bound += part * worth;
    room -= part * along;
  }
  return { high, blocks, often, bound };
}

/**
 * Blocks for a strip by a bounded knapsack along its length. That both ways of turning a kind, and what lies on top of others, draw from the
 * same number wanted is put right afterwards, and what room that leaves is filled again: good, not always the best.
 */
export function filledStrip(
  side: Lengthwise,
  { high, blocks, often }: Offers,
  left: Int32Array,
  stack: Stacker,
): FilledStrip {
  const items = { sizes: blocks.map(({ along }) => along), worths: blocks.map(({ worth }) => worth), most: often };
  const { counts } = knapsack(items, side.long);
  const chosen = blocks.flatMap((block, i) => new Array<Block>(counts[i]).fill(block));
  return settled(side, high, chosen, left, stack);
}
