import { booksOf, type Tally } from './books';
import type { Cell } from './cell';
import { LEFT, NONE, ON, ROOT, ROOT_PLACE, SHEET, SHIFT } from './fields';
import type { Places } from './ground';
import { puttingIn } from './put-in';
import type { Scaled } from './scaled';
import { takingOff } from './take-off';

/** A state of a forest, to come back to. */
export interface Saved extends Readonly<Tally> {
  readonly memory: Int32Array;
}

/** Cut trees of sheets. */
export interface Forest {
  readonly scaled: Scaled;
  readonly memory: Int32Array;
  readonly at: Places;
  readonly tally: Readonly<Tally>;
  /** A new sheet, all left over: its root. */
  open(sheet: number): number;
  /** A new sheet cut as a tidied cell says. */
  plant(sheet: number, cell: Cell): void;
  /** Puts a piece into what is left over, the first cut of that way; it must fit. */
  insert(node: number, kind: number, turned: boolean, first: number): void;
  /** Takes off all pieces in a node and gathers what is left over around it. A sheet without pieces goes. */
  clear(node: number): void;
  /** From here on all can be taken back. */
  mark(): void;
  takeBack(): void;
  /** Nothing can be taken back until the next mark. */
  unmarked(): void;
  save(): Saved;
  restore(saved: Saved): void;
}

/** Room for the trees of a problem, none planted yet. */
export function forestOf(scaled: Scaled): Forest {
  const books = booksOf(scaled);
  const { memory: M, at, tally, set, grow, free, join, leave, joinLefts, leaveLefts } = books;
  const { insert, grown } = puttingIn(books);
  const takeOff = takingOff(books);
  const { sheets } = scaled;
  const marked: Tally = { ...tally };

  /** A new root, in no list of what is in it. */
  function begin(sheet: number): number {
    const { length, width, price } = sheets[sheet];
    const root = grow(NONE, length, width, LEFT);
    const p = root << SHIFT;
    set(p + SHEET, sheet);
    set(p + ON, 0);
    join(at.roots, root, ROOT_PLACE);
    set(at.used + sheet, M[at.used + sheet] + 1);
    tally.cost += price;
    return root;
  }

  function close(root: number): void {
    leaveLefts(root);
    leave(at.roots, root, ROOT_PLACE);
    const sheet = M[(root << SHIFT) + SHEET];
    set(at.used + sheet, M[at.used + sheet] - 1);
    tally.cost -= sheets[sheet].price;
    free(root);
  }

  return {
    scaled,
    memory: M,
    at,
    tally,
    insert,
    open(sheet) {
      const root = begin(sheet);
      joinLefts(root);
      return root;
    },
    plant: (sheet, cell) => grown(begin(sheet), cell),
    clear(node) {
      const root = M[(node << SHIFT) + ROOT];
      takeOff(node);
      if (M[(root << SHIFT) + ON] === 0) close(root);
    },
    mark() {
      books.keep(true);
      marked.missing = tally.missing;
      marked.cost = tally.cost;
      marked.gathered = tally.gathered;
    },
    takeBack() {
      books.takeBack();
      tally.missing = marked.missing;
      tally.cost = marked.cost;
      tally.gathered = marked.gathered;
    },
    unmarked: () => books.keep(false),
    save: () => ({ memory: M.slice(), ...tally }),
    restore(saved) {
      M.set(saved.memory);
      tally.missing = saved.missing;
      tally.cost = saved.cost;
      tally.gathered = saved.gathered;
      books.keep(false);
    },
  };
}
