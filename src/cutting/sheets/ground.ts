import { DEPTH, FIRST, LENGTH, NEXT, NONE, PARENT, PREVIOUS, ROOT, SHIFT, WHAT, WIDTH, WITHIN } from './fields';
import type { Scaled } from './scaled';

/** Places in memory after the nodes. A list is its length, and then what is in it. */
export interface Places {
  /** List of what is left over; from the two other places on, the lengths and widths of what is in it. */
  readonly lefts: number;
  readonly lengths: number;
  readonly widths: number;
  /** List of the pieces placed. */
  readonly pieces: number;
  /** List of the roots. */
  readonly roots: number;
  /** Pieces of each kind not placed yet. */
  readonly missing: number;
  /** Sheets of each that are used. */
  readonly used: number;
  /** Root on which pieces of each set lie, and how many. */
  readonly setRoot: number;
  readonly setOn: number;
}

/** Memory in which trees stand, every write of which can be taken back. */
export interface Ground {
  readonly memory: Int32Array;
  readonly at: Places;
  set(place: number, value: number): void;
  /** A new first part of a node, or a root (parent: none), in no list. */
  grow(parent: number, length: number, width: number, what: number): number;
  free(node: number): void;
  /** Enters a node in a list, its place there kept in that field. */
  join(list: number, node: number, field: number): void;
  leave(list: number, node: number, field: number): void;
  /** Keeps account from here on (again, from nothing), or no longer. */
  keep(on: boolean): void;
  /** All writes since the account was begun. */
  takeBack(): void;
}

/** Room in the account for each piece; one is taken off and put in with about a hundred writes. */
const WRITES = 400;

export function groundOf({ kinds, sheets, sets }: Scaled): Ground {
  const total = kinds.reduce((sum, { quantity }) => sum + quantity, 0);
  // A piece adds four nodes at most, and there are no more sheets than pieces.
  const nodes = 5 * total + 8;
  let end = nodes << SHIFT;
  const room = (size: number): number => {
    end += size;
    return end - size;
  };
  const spare = room(nodes + 1);
  const at: Places = {
    lefts: room(nodes + 1),
    lengths: room(nodes + 1),
    widths: room(nodes + 1),
    pieces: room(total + 1),
    roots: room(total + 2),
    missing: room(kinds.length),
    used: room(sheets.length),
    setRoot: room(sets.length),
    setOn: room(sets.length),
  };
  const M = new Int32Array(end);
  const account = new Int32Array(2 * WRITES * (total + 8));
  let kept = -1;

  M[spare] = nodes;
  for (let i = 0; i < nodes; i++) M[spare + 1 + i] = nodes - 1 - i;
  for (let k = 0; k < kinds.length; k++) M[at.missing + k] = kinds[k].quantity;
  M.fill(NONE, at.setRoot, at.setRoot + sets.length);

  function set(place: number, value: number): void {
    if (kept >= 0) {
      account[kept] = place;
      account[kept + 1] = M[place];
      kept += 2;
    }
    M[place] = value;
  }

  return {
    memory: M,
    at,
    set,
    grow(parent, length, width, what) {
      const top = M[spare];
      const node = M[spare + top];
      set(spare, top - 1);
      const p = node << SHIFT;
      set(p + PARENT, parent);
      set(p + FIRST, NONE);
      set(p + LENGTH, length);
      set(p + WIDTH, width);
      set(p + WHAT, what);
      set(p + PREVIOUS, NONE);
      if (parent === NONE) {
        set(p + ROOT, node);
        set(p + DEPTH, 0);
        set(p + WITHIN, NONE);
        set(p + NEXT, NONE);
        return node;
      }
      const up = parent << SHIFT;
      set(p + ROOT, M[up + ROOT]);
      set(p + DEPTH, M[up + DEPTH] + 1);
      set(p + WITHIN, M[up + WHAT]);
      const next = M[up + FIRST];
      set(p + NEXT, next);
      if (next !== NONE) set((next << SHIFT) + PREVIOUS, node);
      set(up + FIRST, node);
      return node;
    },
    free(node) {
      const top = M[spare] + 1;
      set(spare, top);
      set(spare + top, node);
    },
    join(list, node, field) {
      const count = M[list];
      set(list + 1 + count, node);
      set((node << SHIFT) + field, count);
      set(list, count + 1);
    },
    leave(list, node, field) {
      const count = M[list] - 1;
      const place = M[(node << SHIFT) + field];
      const last = M[list + 1 + count];
      set(list + 1 + place, last);
      set((last << SHIFT) + field, place);
      set(list, count);
    },
    keep(on) {
      kept = on ? 0 : -1;
    },
    takeBack() {
      for (let i = kept - 2; i >= 0; i -= 2) M[account[i]] = account[i + 1];
      kept = 0;
    },
  };
}
