import type { Block, Stacker } from './blocks';
import type { FilledStrip } from './fill-strip';
import type { Lengthwise } from './lengthwise';

/** The blocks with no more pieces than are wanted, and the room that is left filled with the dearest that fit. */
export function settled(
  side: Lengthwise,
  high: number,
  chosen: readonly Block[],
  wanted: Int32Array,
  stack: Stacker,
): FilledStrip {
  const { variants, long } = side;
  const left = wanted.slice();
  const blocks: Block[] = [];
  let room = long;
  let worth = 0;
  const put = (block: Block): void => {
    blocks.push(block);
    for (const n of block.stack) left[variants[n].kind] -= 1;
    room -= block.along;
    worth += block.worth;
  };
  const spoilt: Block[] = [];
  for (const block of chosen) {
    if (enough(side, block, left)) put(block);
    else spoilt.push(block);
  }
  for (const block of spoilt) {
    const again = stack(block.stack[0], high, left);
    if (again && again.along <= room) put(again);
  }
  while (room >= side.shortest) {
    let best: Block | undefined;
    for (let n = 0; n < variants.length && variants[n].high <= high; n += 1) {
      const v = variants[n];
      if (v.along > room || left[v.kind] <= 0) continue;
      const block = stack(n, high, left);
      if (block && (!best || block.worth > best.worth)) best = block;
    }
    if (!best) break;
    put(best);
  }
  return { high, blocks, worth };
}

/** Whether so many of each are still wanted as stand in a block. */
function enough({ variants }: Lengthwise, { stack }: Block, left: Int32Array): boolean {
  for (let i = 0; i < stack.length; i += 1) {
    const { kind } = variants[stack[i]];
    let needed = 0;
    for (let j = i; j < stack.length; j += 1) if (variants[stack[j]].kind === kind) needed += 1;
    if (needed > left[kind]) return false;
  }
  return true;
}
