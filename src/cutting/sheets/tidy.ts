import type { Cell, CutCell } from './cell';
import type { Scaled } from './scaled';

type Way = CutCell['way'];

/** The side of a cell that cuts of this way part. */
export const sideParted = ({ length, width }: Cell, way: Way): number => (way === 'across' ? length : width);
const left = (length: number, width: number): Cell => ({ kind: 'left', length, width });

/**
 * The same way of cutting, in order: every piece in a cell of its own size, the direction changing from each cut to the cuts within, what is
 * left of a cell in one part and last, parts of equal size next to one another, what is no more than a kerf not mentioned, and no cuts in
 * what holds no piece.
 */
export function tidied(cell: Cell, to: Scaled, within?: Way): Cell {
  if (cell.kind === 'left') return cell;
  if (cell.kind === 'piece') return trimmedOut(cell, to, within);
  const { length, width, way } = cell;
  const parts: Cell[] = cell.parts
    .map((part) => tidied(part, to, way))
    .flatMap((part) => (part.kind === 'cut' && part.way === way ? part.parts : [part]))
    .filter((part) => part.kind !== 'left');
  if (parts.length === 0) return left(length, width);
  const used = parts.reduce((sum, part) => sum + sideParted(part, way), 0);
  const rest = sideParted(cell, way) - used;
  if (rest === 0 && parts.length === 1) return parts[0];
  parts.sort((a, b) => sideParted(b, way) - sideParted(a, way) || pieceOf(a) - pieceOf(b));
  if (rest > to.kerf) parts.push(way === 'across' ? left(rest, width) : left(length, rest));
  return { kind: 'cut', way, length, width, parts };
}

const pieceOf = (cell: Cell): number => (cell.kind === 'piece' ? cell.piece : -1);

/** A piece cut out of a larger cell: first in the way of the cuts it lies within, or else such that the larger rest stays in one. */
function trimmedOut(cell: Cell & { kind: 'piece' }, to: Scaled, within?: Way): Cell {
  const { length, width, piece, turned } = cell;
  const kind = to.kinds[piece];
  const [a, b] = turned ? [kind.width, kind.length] : [kind.length, kind.width];
  const alone: Cell = { kind: 'piece', length: a, width: b, piece, turned };
  if (a === length && b === width) return alone;
  const by = (way: Way, of: Cell, l: number, w: number): Cell => {
    const rest = way === 'across' ? l - of.length : w - of.width;
    if (rest === 0) return of;
    const parts = rest > to.kerf ? [of, way === 'across' ? left(rest, w) : left(l, rest)] : [of];
    return { kind: 'cut', way, length: l, width: w, parts };
  };
  const acrossFirst = firstAcross(length, width, a, b, to.longestCut, within);
  return acrossFirst
    ? by('across', by('along', alone, a, width), length, width)
    : by('along', by('across', alone, length, b), length, width);
}

function firstAcross(l: number, w: number, a: number, b: number, longest: number, within?: Way): boolean {
  if (l > longest && b < w) return true;
  if (w > longest && a < l) return false;
  if (within !== undefined) return within === 'across';
  return Math.max((l - a) * w, a * (w - b)) >= Math.max(l * (w - b), (l - a) * b);
}

/** How often the direction of cutting changes in a tidied cell, counting the first. */
export function stagesOf(cell: Cell, trimsFree: boolean): number {
  if (cell.kind !== 'cut') return 0;
  if (trimsFree && cell.parts.every((part, i) => part.kind === (i === 0 ? 'piece' : 'left'))) return 0;
  return 1 + Math.max(...cell.parts.map((part) => stagesOf(part, trimsFree)));
}
