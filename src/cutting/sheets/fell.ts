import type { Chance } from './chance';
import { FIRST, LEFT, NEXT, NONE, PARENT, ROOT_PLACE, SHIFT, WHAT } from './fields';
import type { Forest } from './forest';
import { clearSet } from './sets';

/** Pieces that are taken off at once, at most. This and what follows was found by trial on the published classes of instances. */
const MOST = 10;
/** How often a whole sheet goes instead. */
const SHEET = 0.03;
/** How often pieces are taken off a few sheets only, and off how many at most. */
const FEW = 0.5;
const FEWEST = 3;
/** How often one stops on the way from a sheet to its pieces, and takes off what is below. */
const STOP = 0.3;
/** How often one climbs from a piece, and takes off what it lies in. */
const CLIMB = 0.3;

/** Takes pieces off by chance, alone or with what they were cut from: the ruin of "ruin and recreate". */
export function felling(forest: Forest, chance: Chance): () => void {
  const { memory: M, at, scaled } = forest;
  const inSet = scaled.sets.map((kinds) => kinds.reduce((sum, kind) => sum + scaled.kinds[kind].quantity, 0));
  const chosen = new Int32Array(FEWEST);

  const someRoot = (): number => M[at.roots + 1 + chance.below(M[at.roots])];
  const stands = (root: number): boolean => {
    const place = M[(root << SHIFT) + ROOT_PLACE];
    return place >= 0 && place < M[at.roots] && M[at.roots + 1 + place] === root;
  };

  /** A node below a root, chosen on the way down. */
  function below(root: number): number {
    let node = root;
    while (M[(node << SHIFT) + WHAT] < LEFT) {
      if (node !== root && chance.part() < STOP) break;
      let seen = 0;
      let to = NONE;
      for (let part = M[(node << SHIFT) + FIRST]; part !== NONE; part = M[(part << SHIFT) + NEXT]) {
        if (M[(part << SHIFT) + WHAT] !== LEFT && chance.below(++seen) === 0) to = part;
      }
      node = to;
    }
    return node;
  }

  /** A node around a piece, chosen on the way up. */
  function around(piece: number): number {
    let node = piece;
    while (chance.part() < CLIMB && M[(node << SHIFT) + PARENT] !== NONE) node = M[(node << SHIFT) + PARENT];
    return node;
  }

  function some(): void {
    if (chance.part() < SHEET) {
      forest.clear(someRoot());
      return;
    }
    const goal = Math.max(0, M[at.pieces] - 1 - chance.below(MOST));
    if (chance.part() >= FEW) {
      while (M[at.pieces] > goal) forest.clear(around(M[at.pieces + 1 + chance.below(M[at.pieces])]));
      return;
    }
    const few = 1 + chance.below(FEWEST);
    for (let i = 0; i < few; i++) chosen[i] = someRoot();
    for (let tries = 3 * MOST; tries > 0 && M[at.pieces] > goal; tries--) {
      const root = chosen[chance.below(few)];
      if (stands(root)) forest.clear(below(root));
    }
  }

  return () => {
    if (M[at.roots] === 0) return;
    some();
    // What must lie together is seldom moved piece by piece.
    for (let set = 0; set < scaled.sets.length; set++) {
      const on = M[at.setOn + set];
      if (on > 0 && on < inSet[set] && chance.below(2) === 0) clearSet(forest, set);
    }
  };
}
