import type { Chance } from './chance';
import { type Means, sheetChooser } from './choose-sheet';
import type { Fit, Look } from './fit';
import type { Forest } from './forest';
import { clearSet } from './sets';
import { type Order, sizesOf } from './sizes';

export interface Planting extends Means, Look {
  readonly order: Order;
  /** Given up when the pieces that go nowhere have more area than this together. */
  readonly most?: number;
  /** Sets (1) of which nothing is put in. */
  readonly without?: Uint8Array;
}

/** Puts in all pieces that are missing, as far as they go; false when it was given up. */
export type Plant = (how: Planting) => boolean;

/** The recreating half of "ruin and recreate"; from nothing, a constructive heuristic. */
export function plantOf(forest: Forest, fit: Fit, chance: Chance): Plant {
  const { scaled, memory: M, at } = forest;
  const { kinds, sets, sheets } = scaled;
  const sizes = sizesOf(scaled);
  const order = new Int32Array(kinds.length);
  const size = new Float64Array(kinds.length);
  const chooser = sheetChooser(forest, chance);
  /** Sets that were tried in this planting. */
  const tried = new Uint8Array(sets.length);

  /** Kinds of which pieces are missing, in order; returns how many. */
  function sorted(by: Order): number {
    let count = 0;
    const fixed = by === 'chance' ? undefined : sizes[by];
    for (let k = 0; k < kinds.length; k++) {
      if (M[at.missing + k] === 0) continue;
      const value = fixed ? fixed[k] : chance.part();
      let i = count++;
      while (i > 0 && size[i - 1] < value) {
        size[i] = size[i - 1];
        order[i] = order[i - 1];
        i--;
      }
      size[i] = value;
      order[i] = k;
    }
    return count;
  }

  function putIn(kind: number): void {
    forest.insert(fit.node, kind, fit.turned, fit.first);
  }

  /** Puts one more of a kind on a new sheet. */
  function putOn(kind: number, sheet: number, how: Planting): boolean {
    const root = forest.open(sheet);
    const from = M[at.lefts] - 1;
    // It must not be overlooked.
    if (fit.find(kind, how, from) || fit.find(kind, how, from)) {
      putIn(kind);
      return true;
    }
    forest.clear(root);
    return false;
  }

  /** Puts one more of a kind in, on a new sheet if it must be; one that others of its set lie on is kept to. */
  function put(kind: number, how: Planting): boolean {
    if (fit.find(kind, how)) {
      putIn(kind);
      return true;
    }
    const { set } = kinds[kind];
    if (set >= 0 && M[at.setOn + set] > 0) return false;
    const sheet = chooser.next(kind, how);
    return sheet >= 0 && putOn(kind, sheet, how);
  }

  /** Puts in all that is missing of a set of which something lies on a sheet. */
  function complete(set: number, how: Planting): boolean {
    for (const kind of sets[set])
      for (let left = M[at.missing + kind]; left > 0; left--) if (!put(kind, how)) return false;
    return true;
  }

  /** Puts in a set: where its first piece fits best, or else on a new sheet of any number; all of it or, if nothing of it was in, none. */
  function putSet(set: number, how: Planting): void {
    const begun = M[at.setOn + set] > 0;
    if (complete(set, how) || begun) return;
    clearSet(forest, set);
    const [first] = sets[set];
    for (let sheet = 0; sheet < sheets.length; sheet++) {
      if (!chooser.may(first, sheet, how) || !putOn(first, sheet, how)) continue;
      if (complete(set, how)) return;
      clearSet(forest, set);
    }
  }

  return (how) => {
    const { most = Number.POSITIVE_INFINITY, without } = how;
    const count = sorted(how.order);
    if (sets.length > 0) tried.fill(0);
    let lost = 0;
    for (let i = 0; i < count; i++) {
      const kind = order[i];
      const { length, width, set } = kinds[kind];
      if (set >= 0) {
        if (without && without[set] === 1) continue;
        if (tried[set] === 0) putSet(set, how);
        tried[set] = 1;
      }
      for (let left = M[at.missing + kind]; left > 0; left--) {
        if (set < 0 && put(kind, how)) continue;
        lost += left * length * width;
        if (lost > most) return false;
        break;
      }
    }
    return true;
  };
}
