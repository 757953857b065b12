import { largeEnough } from '../least-offcut';
import { LENGTH, NONE, ON, PLACE, ROOT, SHIFT, TURNED, WHAT, WIDTH } from './fields';
import { type Ground, groundOf } from './ground';
import type { Scaled } from './scaled';

/** What is planted, as sums. */
export interface Tally {
  /** Area of the pieces that are not placed, scaled. */
  missing: number;
  /** Of the sheets used. */
  cost: number;
  /** Sum over all that is left over of its area's square, in parts of the largest sheet's: the more gathered it is, the greater. */
  gathered: number;
}

/** Trees with the lists and sums that are kept of them. */
export interface Books extends Ground {
  readonly scaled: Scaled;
  readonly tally: Tally;
  joinLefts(node: number): void;
  leaveLefts(node: number): void;
  /** Makes a node, which is in no list, a piece. */
  place(node: number, kind: number, turned: boolean): void;
  /** The reverse: the piece is in no list then. */
  displace(node: number): void;
}

export function booksOf(scaled: Scaled): Books {
  const { kinds, sheets } = scaled;
  const ground = groundOf(scaled);
  const { memory: M, at, set, join, leave } = ground;
  const area = Float64Array.from(kinds, ({ length, width }) => length * width);
  const largest = sheets.reduce((most, { length, width }) => Math.max(most, length * width), 1);
  const missing = kinds.reduce((sum, { quantity }, k) => sum + quantity * area[k], 0);
  const tally: Tally = { missing, cost: 0, gathered: 0 };

  /** The least that any piece takes up along and across, however it lies. */
  const leastLength = Math.min(...kinds.map(({ length, width, turns }) => (turns ? Math.min(length, width) : length)));
  const leastWidth = Math.min(...kinds.map(({ length, width, turns }) => (turns ? Math.min(length, width) : width)));

  /** Whether what is left over may hold a piece, or is an offcut to keep: only such is in the list, for the list is looked through all the time. */
  function isOfUse(length: number, width: number): boolean {
    return (length >= leastLength && width >= leastWidth) || largeEnough(length, width, scaled.leastOffcut);
  }

  function shareSquared(p: number): number {
    const share = (M[p + LENGTH] * M[p + WIDTH]) / largest;
    return share * share;
  }

  function joinLefts(node: number): void {
    const p = node << SHIFT;
    tally.gathered += shareSquared(p);
    if (!isOfUse(M[p + LENGTH], M[p + WIDTH])) {
      set(p + PLACE, NONE);
      return;
    }
    const count = M[at.lefts];
    set(at.lengths + count, M[p + LENGTH]);
    set(at.widths + count, M[p + WIDTH]);
    join(at.lefts, node, PLACE);
  }

  function leaveLefts(node: number): void {
    const p = node << SHIFT;
    tally.gathered -= shareSquared(p);
    const place = M[p + PLACE];
    if (place === NONE) return;
    leave(at.lefts, node, PLACE);
    const last = M[at.lefts];
    set(at.lengths + place, M[at.lengths + last]);
    set(at.widths + place, M[at.widths + last]);
  }

  /** Of a kind one more or less lies on a sheet. */
  function count(kind: number, root: number, more: 1 | -1): void {
    set(at.missing + kind, M[at.missing + kind] - more);
    tally.missing -= more * area[kind];
    const on = (root << SHIFT) + ON;
    set(on, M[on] + more);
    const group = kinds[kind].set;
    if (group < 0) return;
    set(at.setOn + group, M[at.setOn + group] + more);
    set(at.setRoot + group, M[at.setOn + group] === 0 ? NONE : root);
  }

  return {
    ...ground,
    scaled,
    tally,
    joinLefts,
    leaveLefts,
    place(node, kind, turned) {
      const p = node << SHIFT;
      set(p + WHAT, kind);
      set(p + TURNED, turned ? 1 : 0);
      join(at.pieces, node, PLACE);
      count(kind, M[p + ROOT], 1);
    },
    displace(node) {
      const p = node << SHIFT;
      leave(at.pieces, node, PLACE);
      count(M[p + WHAT], M[p + ROOT], -1);
    },
  };
}
