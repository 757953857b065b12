import { type Block, blockLedBy, type Wanted } from './blocks';
import type { FilledStrip } from './fill-strip';
import type { Lengthwise } from './lengthwise';

/** The blocks with no more pieces than are wanted, and the room that is left filled with the dearest that fit. */
export function settled(
  side: Lengthwise,
  high: number,
  chosen: readonly Block[],
  { left, worths }: Wanted,
): FilledStrip {
  const { variants, long } = side;
  const wanted: Wanted = { left: left.slice(), worths };
  const blocks: Block[] = [];
  let room = long;
  let worth = 0;
  const put = (block: Block): void => {
    blocks.push(block);
    for (const n of block.stack) wanted.left[variants[n].kind] -= 1;
    room -= block.along;
    worth += block.worth;
  };
  const spoilt: Block[] = [];
  for (const block of [...chosen].sort((a, b) => b.worth / b.along - a.worth / a.along)) {
    if (enough(side, block, wanted.left)) put(block);
    else spoilt.push(block);
  }
  for (const { stack } of spoilt) {
    const again = blockLedBy(side, stack[0], high, wanted);
    if (again && again.along <= room) put(again);
  }
  for (;;) {
    let best: Block | undefined;
    for (let n = 0; n < variants.length && variants[n].high <= high; n += 1) {
      const v = variants[n];
      if (v.along > room || wanted.left[v.kind] <= 0) continue;
      const block = blockLedBy(side, n, high, wanted);
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
