import type { Cell } from '../sheets/cell';
import type { Scaled } from '../sheets/scaled';
import type { Wanted } from './blocks';

/** A piece as it may lie in what is left over. */
interface Lies {
  readonly piece: number;
  readonly turned: boolean;
  readonly length: number;
  readonly width: number;
}

/** What is left over anywhere in a tidied cell, filled with the dearest pieces still wanted; takes them away. */
export type Furnisher = (cell: Cell, wanted: Wanted) => Cell;

export function furnisher({ kinds, longestCut }: Scaled): Furnisher {
  const lies: Lies[] = kinds.flatMap(({ length, width, turns }, piece) => {
    const straight = { piece, turned: false, length, width };
    return turns ? [straight, { piece, turned: true, length: width, width: length }] : [straight];
  });

  const fill = (length: number, width: number, wanted: Wanted): Cell => {
    let best: Lies | undefined;
    let bestWorth = -1;
    if (Math.max(length, width) <= longestCut)
      for (const lie of lies) {
        if (lie.length > length || lie.width > width || wanted.left[lie.piece] <= 0) continue;
        // Of those worth nothing the largest.
        const worth = wanted.worths[lie.piece] + 1e-12 * lie.length * lie.width;
        if (worth > bestWorth) {
          best = lie;
          bestWorth = worth;
        }
      }
    if (!best) return { kind: 'left', length, width };
    wanted.left[best.piece] -= 1;
    const [l, w] = [best.length, best.width];
    const piece: Cell = { kind: 'piece', piece: best.piece, turned: best.turned, length: l, width: w };
    // The larger rest stays in one.
    const across = Math.max((length - l) * width, l * (width - w)) >= Math.max(length * (width - w), (length - l) * w);
    const beside = (of: Cell, way: 'across' | 'along', long: number, wide: number): Cell => {
      const [a, b] = way === 'across' ? [long - of.length, wide] : [long, wide - of.width];
      if (a === 0 || b === 0) return of;
      return { kind: 'cut', way, length: long, width: wide, parts: [of, fill(a, b, wanted)] };
    };
    return across
      ? beside(beside(piece, 'along', l, width), 'across', length, width)
      : beside(beside(piece, 'across', length, w), 'along', length, width);
  };

  const furnish: Furnisher = (cell, wanted) => {
    if (cell.kind === 'piece') return cell;
    if (cell.kind === 'left') return fill(cell.length, cell.width, wanted);
    return { ...cell, parts: cell.parts.map((part) => furnish(part, wanted)) };
  };
  return furnish;
}
