import { type Block, blockLedBy, type Wanted } from './blocks';
import type { Lengthwise } from './lengthwise';
import { settled } from './settled';

/** Cells of the table at most: longer strips are measured in coarser steps, in which pieces are rounded up. */
const CELLS = 1300;

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

export function offersFor(side: Lengthwise, high: number, wanted: Wanted): Offers {
  const { variants, long } = side;
  const all: { block: Block; often: number }[] = [];
  for (let n = 0; n < variants.length && variants[n].high <= high; n += 1) {
    if (!(wanted.worths[variants[n].kind] > 0)) continue;
    const block = blockLedBy(side, n, high, wanted);
    if (!block) continue;
    let leads = 1;
    while (leads < block.stack.length && block.stack[leads] === n) leads += 1;
    const often = Math.min(Math.ceil(wanted.left[variants[n].kind] / leads), Math.floor(long / block.along));
    all.push({ block, often });
  }
  all.sort((a, b) => b.block.worth * a.block.along - a.block.worth * b.block.along);
  let room = long;
  let bound = 0;
  for (const { block, often } of all) {
    const part = Math.min(often, room / block.along);
    bound += part * block.worth;
    room -= part * block.along;
    if (room <= 0) break;
  }
  return { high, blocks: all.map(({ block }) => block), often: all.map((each) => each.often), bound };
}

/** Fills strips of one sheet parted one way; keeps its table between calls. */
export type StripFiller = (offers: Offers, wanted: Wanted) => FilledStrip;

/**
 * Blocks for a strip by a bounded knapsack along its length. That both ways of turning a kind, and what lies on top of others, draw from the
 * same number wanted is put right afterwards, and what room that leaves is filled again: good, not always the best.
 */
export function stripFiller(side: Lengthwise): StripFiller {
  const { long } = side;
  const step = Math.max(1, Math.ceil(long / CELLS));
  const across = Math.floor(long / step) + 1;
  const worth = new Float64Array(across);
  let taken = new Uint8Array(64 * across);

  return (offers, wanted) => {
    const { sure, open, room } = core(offers, long);
    const cells = Math.floor(room / step);
    if (taken.length < open.length * across) taken = new Uint8Array(2 * open.length * across);
    taken.fill(0, 0, open.length * across);
    worth.fill(0);
    let rest = open.reduce((sum, { along }) => sum + Math.ceil(along / step), 0);
    const reach = new Int32Array(open.length);
    for (let o = 0, sum = 0; o < open.length; o += 1) {
      const { along, worth: each } = open[o];
      const size = Math.ceil(along / step);
      const row = o * across;
      rest -= size;
      // What lies beyond all sizes so far is worth what they are worth together; what the rest of them can't reach is never asked for.
      const from = Math.min(cells, sum + size);
      const to = Math.max(size, Math.min(from, cells - rest));
      for (let x = sum + 1; x <= from; x += 1) worth[x] = worth[sum];
      for (let x = from; x >= to; x -= 1) {
        const better = worth[x - size] + each;
        if (better > worth[x]) {
          worth[x] = better;
          taken[row + x] = 1;
        }
      }
      sum = from;
      reach[o] = from;
    }
    const chosen = [...sure];
    for (let o = open.length - 1, x = cells; o >= 0; o -= 1) {
      x = Math.min(x, reach[o]);
      if (taken[o * across + x] === 0) continue;
      chosen.push(open[o]);
      x -= Math.ceil(open[o].along / step);
    }
    return settled(side, offers.high, chosen, wanted);
  };
}

/**
 * Of the offers those that every best choice takes, those that it may take or not, and the room for them: by Dantzig's bound against a greedy
 * choice (Ingargiola & Korsh, "Reduction algorithm for zero-one single knapsack problems", Management Science 20, 1973).
 */
function core({ blocks, often, bound }: Offers, long: number): { sure: Block[]; open: Block[]; room: number } {
  let filled = 0;
  let critical = 0;
  let greedy = 0;
  let free = long;
  for (let o = 0; o < blocks.length; o += 1) {
    const { along, worth } = blocks[o];
    if (filled < long) {
      filled += often[o] * along;
      critical = worth / along;
    }
    const fits = Math.min(often[o], Math.floor(free / along));
    greedy += fits * worth;
    free -= fits * along;
  }
  if (filled < long) critical = 0;
  const slack = (bound - greedy) * (1 + 1e-9) + 1e-9;
  const sure: Block[] = [];
  const open: Block[] = [];
  let room = long;
  for (let o = 0; o < blocks.length; o += 1) {
    const gain = blocks[o].worth - critical * blocks[o].along;
    if (-gain > slack) continue;
    for (let c = 0; c < often[o]; c += 1)
      if (gain > slack) {
        sure.push(blocks[o]);
        room -= blocks[o].along;
      } else open.push(blocks[o]);
  }
  return { sure, open, room };
}
