import type { Offcut } from '../../src/vocabulary/cut-plan';

/**
 * What is taken out of the rack, by its marks, and what is put in. An offcut without a mark gets the next free one, and so does one whose mark
 * another offcut has; the very same offcut is not put in twice.
 */
export interface Exchange {
  readonly out?: readonly string[];
  readonly in?: readonly (Omit<Offcut, 'mark'> & { readonly mark?: string })[];
}

export interface Exchanged {
  /** As they lay there. A mark that was not there is left out. */
  readonly out: readonly Offcut[];
  /** As they lie there now, in the order in which they were handed in. */
  readonly in: readonly Offcut[];
  /** Those among them that came with a mark which another offcut has: which that was, and what they are marked now. */
  readonly anew: readonly { readonly was: string; readonly mark: string }[];
  /** Marks of those that lay there already, and were not put in. */
  readonly already: readonly string[];
}

/** The number in a mark of the rack's own, O1, O2 …; 0 for a mark of another kind. */
const numberOf = (mark: string): number => Number(/^O([1-9]\d{0,5})$/.exec(mark)?.[1] ?? 0);

/** O1 before O2 before O10; marks of one's own after them, by the alphabet. */
export const byMark = (a: Pick<Offcut, 'mark'>, b: Pick<Offcut, 'mark'>): number =>
  (numberOf(a.mark) || Number.MAX_SAFE_INTEGER) - (numberOf(b.mark) || Number.MAX_SAFE_INTEGER) ||
  a.mark.localeCompare(b.mark);

/** One and the same piece of stuff, as far as a list can tell. */
const isSame = (a: Offcut, b: Offcut): boolean =>
  a.mark === b.mark && a.material === b.material && a.length === b.length && a.width === b.width;

/**
 * An exchange worked out for what lies in the rack. What leaves keeps its number for the time being: nobody should find two of one
 * mark on the bench.
 */
export function exchanged(there: readonly Offcut[], { out = [], in: given = [] }: Exchange): Exchanged {
  let last = Math.max(0, ...[...there, ...given].map(({ mark = '' }) => numberOf(mark)));
  const byItsMark = new Map(there.filter(({ mark }) => !out.includes(mark)).map((offcut) => [offcut.mark, offcut]));
  const put: Offcut[] = [];
  const anew: { readonly was: string; readonly mark: string }[] = [];
  const already: string[] = [];
  for (const { mark: was, ...offcut } of given) {
    const other = was === undefined ? undefined : byItsMark.get(was);
    if (other && isSame(other, { ...offcut, mark: other.mark })) {
      already.push(other.mark);
      continue;
    }
    const mark = was === undefined || other ? `O${++last}` : was;
    if (was !== undefined && other) anew.push({ was, mark });
    const lies = { ...offcut, mark };
    byItsMark.set(mark, lies);
    put.push(lies);
  }
  return { out: there.filter(({ mark }) => out.includes(mark)), in: put, anew, already };
}

/** What puts everything back as it was. */
export const inverse = (done: Exchanged): Exchange => ({ out: done.in.map(({ mark }) => mark), in: done.out });
