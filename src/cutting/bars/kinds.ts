import type { Unplaced } from '../../vocabulary/cut-plan';
import type { BarProblem } from '../../vocabulary/cut-problem';
import { FUZZ, type Layout } from './layout';
import type { Kind, Source } from './task';
import type { Unit } from './units';

/** Like pieces and sets, the largest first; and what fits no stock. */
export function kindsOf(
  problem: BarProblem,
  layout: Layout,
  unit: Unit,
  sources: readonly Source[],
): { readonly kinds: readonly Kind[]; readonly unplaced: readonly Unplaced[] } {
  const { pieces } = problem;
  const longest = sources.reduce((most, { from }) => Math.max(most, ...from.map(({ stock }) => layout.room(stock))), 0);
  const roomiest = sources.reduce((most, { capacity }) => Math.max(most, capacity), 0);
  const sizesOf = (own: readonly number[]): { readonly size: number; readonly least: number } => {
    const { classes, classOf } = layout.ends;
    const takes = own.reduce((sum, piece) => sum + pieces[piece].length + classes[classOf[piece]].share, 0);
    const least = Math.max(1, unit.exact ? unit.up(takes) : unit.down(takes));
    return { least, size: layout.square ? Math.max(1, unit.up(takes)) : least };
  };
  const fits = (own: readonly number[]): boolean =>
    layout.needed(own) <= longest + FUZZ && sizesOf(own).size <= roomiest;
  const kinds = new Map<
    string,
    { readonly key: string; readonly size: number; readonly least: number; readonly copies: (readonly number[])[] }
  >();
  const misfits = new Map<number, Unplaced>();
  for (const own of copiesOf(problem)) {
    if (!fits(own)) {
      // Of a set with a piece too long, the others are not.
      for (const piece of own) {
        const quantity = (misfits.get(piece)?.quantity ?? 0) + 1;
        misfits.set(piece, { piece, quantity, why: fits([piece]) ? 'its set fits no stock' : 'larger than any stock' });
      }
      continue;
    }
    const { size, least } = sizesOf(own);
    // Where all is square only the size counts; else what ends there are, and on what lengths.
    const key = layout.square
      ? ''
      : own
          .map((piece) => keyOf(problem, piece))
          .sort()
          .join();
    const id = `${size}:${least}:${key}`;
    const kind = kinds.get(id);
    if (kind) kind.copies.push(own);
    else kinds.set(id, { key, size, least, copies: [own] });
  }
  const sorted = [...kinds.values()].sort((a, b) => b.size - a.size || b.least - a.least || (a.key < b.key ? -1 : 1));
  return { kinds: sorted, unplaced: [...misfits.values()].sort((a, b) => a.piece - b.piece) };
}

/** What there is to know of a piece by itself, whatever its place in the list. */
const keyOf = ({ pieces }: BarProblem, piece: number): string =>
  `${pieces[piece].length}/${(pieces[piece].ends ?? []).flat().join('/')}`;

/** Every single piece, and every set. */
function copiesOf({ pieces }: BarProblem): readonly (readonly number[])[] {
  const copies: number[][] = [];
  const sets = new Map<string, number[]>();
  for (let piece = 0; piece < pieces.length; piece++) {
    const { quantity, together } = pieces[piece];
    for (let n = 0; n < quantity; n++) {
      if (together === undefined) copies.push([piece]);
      else {
        const set = sets.get(together);
        if (set) set.push(piece);
        else {
          const first = [piece];
          sets.set(together, first);
          copies.push(first);
        }
      }
    }
  }
  return copies;
}
