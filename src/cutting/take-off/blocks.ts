import type { Part } from '../../vocabulary/part';
import { fits, hundredth, leftOn } from './sawn';

/** What a strip of several blocks is longer than they are with a saw cut after each: its ends need not be true then. mm (common practice, no source). */
const SPARE = 10;

/** A strip of moulded stuff: the blocks that are cut from it in order, and how long it is with the saw cuts and what is spare. mm. */
export interface MouldedStrip {
  readonly blocks: readonly Part[];
  readonly length: number;
}

/** Whether a part is moulded along its length, so that it is run as a strip before it is cut to length. */
export const isMoulded = ({ shape, edges }: Part): boolean =>
  shape.kind === 'stick' && edges.some(({ work }) => work === 'moulded');

/**
 * Blocks joined into strips no longer than `longest`: those of one section together, the longest first, each into the first strip that has
 * room for it (first fit decreasing; Johnson, 1973). A block longer than that is a strip by itself. Ends are mitred when the blocks are cut
 * apart, each between two square cuts, so that between neighbours there is one kerf; the last is cut off at its stop too.
 */
export function stripsOf(blocks: readonly Part[], kerf: number, longest: number): readonly MouldedStrip[] {
  const sections = new Map<string, Part[]>();
  for (const block of blocks) {
    const key = sectionKey(block);
    const alike = sections.get(key);
    if (alike) alike.push(block);
    else sections.set(key, [block]);
  }
  return [...sections.values()].flatMap((alike) => {
    const strips: { blocks: Part[]; length: number }[] = [];
    const lengths = alike.map((block) => ({ block, length: hundredth(block.size.length + leftOn(block).length) }));
    for (const { block, length } of [...lengths].sort((a, b) => b.length - a.length)) {
      const strip = strips.find((one) => fits(one.length + kerf + length + kerf + SPARE, longest));
      if (strip) {
        strip.blocks.push(block);
        strip.length += kerf + length;
      } else strips.push({ blocks: [block], length });
    }
    return strips.map(({ blocks: own, length }) => ({
      blocks: own,
      length: hundredth(own.length > 1 ? length + kerf + SPARE : length),
    }));
  });
}

/** What two blocks share that can be cut from one strip: the section, its moulding, and what is left on its width. */
function sectionKey(block: Part): string {
  const { shape, edges } = block;
  const section = shape.kind === 'stick' ? shape.section : undefined;
  const width = leftOn(block).width;
  return JSON.stringify([section, edges, width], (_, value) => (typeof value === 'number' ? hundredth(value) : value));
}
