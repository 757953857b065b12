import type { Books } from './books';
import type { Cell } from './cell';
import { ACROSS, ALONG, FIRST, LEFT, LENGTH, NONE, PARENT, REST, SHIFT, WHAT, WIDTH, WITHIN } from './fields';

/** How pieces come into trees. */
export interface PuttingIn {
  /** Puts a piece into what is left over, the first cut of that way; it must fit. */
  insert(node: number, kind: number, turned: boolean, first: number): void;
  /** Makes a node, which is in no list, what a tidied cell says. */
  grown(node: number, cell: Cell): void;
}

export function puttingIn({ scaled: { kinds }, memory: M, set, grow, joinLefts, leaveLefts, place }: Books): PuttingIn {
  /** Cuts a node, which is in no list: a part of that size, which is returned and in no list, and the rest left over. */
  function cut(node: number, way: number, size: number): number {
    const p = node << SHIFT;
    const length = M[p + LENGTH];
    const width = M[p + WIDTH];
    set(p + WHAT, way);
    set(p + FIRST, NONE);
    const across = way === ACROSS;
    const rest = grow(node, across ? length - size : length, across ? width : width - size, LEFT);
    joinLefts(rest);
    set(p + REST, rest);
    return grow(node, across ? size : length, across ? width : size, LEFT);
  }

  function noRest(parent: number): void {
    if (parent !== NONE) set((parent << SHIFT) + REST, NONE);
  }

  function grown(node: number, cell: Cell): void {
    if (cell.kind === 'left') joinLefts(node);
    else if (cell.kind === 'piece') place(node, cell.piece, cell.turned);
    else {
      const p = node << SHIFT;
      const across = cell.way === 'across';
      set(p + WHAT, across ? ACROSS : ALONG);
      set(p + REST, NONE);
      let rest = across ? cell.length : cell.width;
      for (const part of cell.parts) {
        if (part.kind === 'left') continue;
        grown(grow(node, part.length, part.width, LEFT), part);
        rest -= across ? part.length : part.width;
      }
      if (rest === 0) return;
      const left = across ? grow(node, rest, cell.width, LEFT) : grow(node, cell.length, rest, LEFT);
      joinLefts(left);
      set(p + REST, left);
    }
  }

  return {
    grown,
    insert(node, kind, turned, first) {
      const p = node << SHIFT;
      const { length, width } = kinds[kind];
      const a = turned ? width : length;
      const b = turned ? length : width;
      const overLength = M[p + LENGTH] - a;
      const overWidth = M[p + WIDTH] - b;
      const way = (first === ACROSS ? overLength : overWidth) > 0 ? first : first === ACROSS ? ALONG : ACROSS;
      const across = way === ACROSS;
      const over = across ? overLength : overWidth;
      const parent = M[p + PARENT];
      leaveLefts(node);
      if (over === 0) {
        noRest(parent);
        place(node, kind, turned);
        return;
      }
      let part: number;
      if (way === M[p + WITHIN]) {
        part = grow(parent, across ? a : M[p + LENGTH], across ? M[p + WIDTH] : b, LEFT);
        set(p + (across ? LENGTH : WIDTH), over);
        joinLefts(node);
      } else {
        noRest(parent);
        part = cut(node, way, across ? a : b);
      }
      if ((across ? overWidth : overLength) > 0) part = cut(part, across ? ALONG : ACROSS, across ? b : a);
      place(part, kind, turned);
    },
  };
}
