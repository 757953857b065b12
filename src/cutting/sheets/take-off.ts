import type { Books } from './books';
import { ACROSS, FIRST, LEFT, LENGTH, NEXT, NONE, PARENT, PREVIOUS, REST, SHIFT, WHAT, WIDTH } from './fields';

/** Takes off all pieces in a node and gathers what is left over around it. */
export function takingOff({ memory: M, set, free, joinLefts, leaveLefts, displace }: Books): (node: number) => void {
  /** What is left over, in no list yet, takes up the rest next to it; when nothing else is in the parent, all of that is left over. */
  function settle(from: number): void {
    let node = from;
    for (;;) {
      const p = node << SHIFT;
      const parent = M[p + PARENT];
      if (parent === NONE) break;
      const up = parent << SHIFT;
      const rest = M[up + REST];
      set(up + REST, node);
      if (rest === NONE) break;
      leaveLefts(rest);
      const q = rest << SHIFT;
      const size = M[up + WHAT] === ACROSS ? LENGTH : WIDTH;
      set(p + size, M[p + size] + M[q + size]);
      const before = M[q + PREVIOUS];
      const after = M[q + NEXT];
      set(before === NONE ? up + FIRST : (before << SHIFT) + NEXT, after);
      if (after !== NONE) set((after << SHIFT) + PREVIOUS, before);
      free(rest);
      if (M[up + FIRST] !== node || M[p + NEXT] !== NONE) break;
      free(node);
      set(up + FIRST, NONE);
      set(up + WHAT, LEFT);
      node = parent;
    }
    joinLefts(node);
  }

  /** Takes a node out of its list, and frees all below it. */
  function fell(node: number): void {
    const p = node << SHIFT;
    const what = M[p + WHAT];
    if (what >= 0) displace(node);
    else if (what === LEFT) leaveLefts(node);
    else {
      let part = M[p + FIRST];
      while (part !== NONE) {
        const next = M[(part << SHIFT) + NEXT];
        fell(part);
        free(part);
        part = next;
      }
      set(p + FIRST, NONE);
    }
  }

  return (node) => {
    fell(node);
    set((node << SHIFT) + WHAT, LEFT);
    settle(node);
  };
}
