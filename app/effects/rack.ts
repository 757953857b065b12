import type { Offcut } from '../../src/vocabulary/cut-plan';

/** What is taken out of the rack, by its marks, and what is put in; an offcut without a mark gets the next free one. */
export interface Exchange {
  readonly out?: readonly string[];
  readonly in?: readonly (Omit<Offcut, 'mark'> & { readonly mark?: string })[];
}

export interface Exchanged {
  /** As they lay there. A mark that was not there is left out. */
  readonly out: readonly Offcut[];
  /** As they lie there now, in the order in which they were handed in. */
  readonly in: readonly Offcut[];
}

/** The number in a mark of the rack's own, O1, O2 …; 0 for a mark of another kind. */
const numberOf = (mark: string): number => Number(/^O([1-9]\d{0,5})$/.exec(mark)?.[1] ?? 0);

/** O1 before O2 before O10; marks of one's own after them, by the alphabet. */
export const byMark = (a: Pick<Offcut, 'mark'>, b: Pick<Offcut, 'mark'>): number =>
  (numberOf(a.mark) || Number.MAX_SAFE_INTEGER) - (numberOf(b.mark) || Number.MAX_SAFE_INTEGER) ||
  a.mark.localeCompare(b.mark);

/**
 * An exchange worked out for what lies in the rack. What leaves keeps its number for the time being: nobody should find two of one
 * mark on the bench.
 */
export function exchanged(there: readonly Offcut[], { out = [], in: given = [] }: Exchange): Exchanged {
  let last = Math.max(0, ...[...there, ...given].map(({ mark = '' }) => numberOf(mark)));
  return {
    out: there.filter(({ mark }) => out.includes(mark)),
    in: given.map((offcut): Offcut => {
      if (offcut.mark !== undefined) return { ...offcut, mark: offcut.mark };
      last += 1;
      return { ...offcut, mark: `O${last}` };
    }),
  };
}

/** What puts everything back as it was. */
export const inverse = (done: Exchanged): Exchange => ({ out: done.in.map(({ mark }) => mark), in: done.out });
