import { SAME_LENGTH } from '../base/tolerance';
import type { Backing } from '../vocabulary/backing';
import { LEAST_CLEAR } from './centres';

export type KeepOut = Extract<Backing, { kind: 'keep-out' }>;

/** A stud while the frame is being set out. One that is `needed` stays where it is; the others only keep to the centres. */
export interface Standing {
  readonly centre: number;
  readonly reasons: string[];
  readonly needed: boolean;
}

/** Where no stud may stand: keep-outs too near to one another for a stud between them are one. x along the run. */
export interface Barred {
  readonly from: number;
  readonly to: number;
  readonly of: readonly KeepOut[];
}

/** A stud that is needed on the line x and that a keep-out leaves no place; `centre` is where it would stand. */
export interface Kept {
  readonly run: string;
  readonly x: number;
  readonly centre: number;
  readonly reason: string;
  readonly keepOut: KeepOut;
}

export function barred(keepOuts: readonly KeepOut[], face: number): readonly Barred[] {
  const found: { from: number; to: number; of: KeepOut[] }[] = [];
  for (const one of [...keepOuts].sort((a, b) => a.from - b.from)) {
    const last = found.at(-1);
    if (last && one.from - last.to < face - SAME_LENGTH) {
      last.to = Math.max(last.to, one.to);
      last.of.push(one);
    } else found.push({ from: one.from, to: one.to, of: [one] });
  }
  return found;
}

/** Whether a stud on that centre would stand in the way. */
export const inTheWay = (centre: number, face: number, { from, to }: Pick<Barred, 'from' | 'to'>): boolean =>
  centre - face / 2 < to - SAME_LENGTH && centre + face / 2 > from + SAME_LENGTH;

/** What was done about the studs in one barred length: `was` their centres; `to` where the one was moved to, if it was. */
export interface Cleared {
  readonly bar: Barred;
  readonly was: readonly number[];
  readonly to?: number;
  /** A stud that is needed stands there and stays. */
  readonly needed: boolean;
}

/**
 * Clears the barred lengths of studs, from left to right: one stud is moved to the nearer side, or to the other, while its neighbours stay
 * within the centres; else a stud stands at each side, and the opening is to be trimmed. A stud that is near enough serves as that stud.
 */
export function clearOf(
  bars: readonly Barred[],
  studs: readonly Standing[],
  frame: { readonly from: number; readonly to: number },
  { face, centres }: { readonly face: number; readonly centres: number },
): { readonly studs: readonly Standing[]; readonly cleared: readonly Cleared[] } {
  let standing: readonly Standing[] = studs;
  const trimming = new Set<Standing>();
  const cleared: Cleared[] = [];
  for (const bar of bars) {
    const met = standing.filter((s) => inTheWay(s.centre, face, bar));
    if (met.length === 0) continue;
    const was = met.map((s) => s.centre);
    if (met.some((s) => s.needed)) {
      cleared.push({ bar, was, needed: true });
      continue;
    }
    const others = standing.filter((s) => !met.includes(s));
    const sides = [bar.from - face / 2, bar.to + face / 2];
    const [one, second] = met;
    const nearer = [...sides].sort((a, b) => Math.abs(a - one.centre) - Math.abs(b - one.centre));
    const to = second ? undefined : nearer.find((c) => keepsCentres(c, others, frame, face, centres));
    if (to === undefined) {
      const serving = (c: number): Standing | undefined => others.find((s) => overlap(s.centre, c, face));
      const trimmers = sides.map((c) => serving(c) ?? { centre: c, reasons: ['trimmer'], needed: false });
      for (const trimmer of trimmers) trimming.add(trimmer);
      const all = [...others, ...trimmers.filter((s) => !others.includes(s))];
      standing = withoutSpare(inOrder(all), trimming, face, centres);
    } else standing = inOrder([...others, { ...one, centre: to }]);
    cleared.push({ bar, was, needed: false, ...(to === undefined ? {} : { to }) });
  }
  return { studs: standing, cleared };
}

const inOrder = (studs: readonly Standing[]): readonly Standing[] => [...studs].sort((a, b) => a.centre - b.centre);

/** Without the studs that only keep the centres and stand hard by one that trims, while the centres are kept. */
function withoutSpare(
  studs: readonly Standing[],
  trimming: ReadonlySet<Standing>,
  face: number,
  centres: number,
): readonly Standing[] {
  const kept = [...studs];
  for (let i = 1; i < kept.length - 1; ) {
    const [before, one, after] = [kept[i - 1], kept[i], kept[i + 1]];
    const hard = [before, after].some(
      (s) => trimming.has(s) && Math.abs(s.centre - one.centre) < face + LEAST_CLEAR - SAME_LENGTH,
    );
    const spare = !one.needed && !trimming.has(one) && after.centre - before.centre <= centres + SAME_LENGTH;
    if (hard && spare) kept.splice(i, 1);
    else i++;
  }
  return kept;
}

const overlap = (a: number, b: number, face: number): boolean => Math.abs(a - b) < face - SAME_LENGTH;

/** Whether a stud can stand there among the others, none of them further from the next than the centres. */
function keepsCentres(
  centre: number,
  others: readonly Standing[],
  frame: { readonly from: number; readonly to: number },
  face: number,
  centres: number,
): boolean {
  if (centre - face / 2 < frame.from - SAME_LENGTH || centre + face / 2 > frame.to + SAME_LENGTH) return false;
  if (others.some((s) => overlap(s.centre, centre, face))) return false;
  const left = Math.max(...others.map((s) => s.centre).filter((c) => c < centre));
  const right = Math.min(...others.map((s) => s.centre).filter((c) => c > centre));
  return centre - left <= centres + SAME_LENGTH && right - centre <= centres + SAME_LENGTH;
}
