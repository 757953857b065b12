import type { PlacedOpening } from '../../vocabulary/opening';

/** Less stuff than this beside, below or above a hole breaks out, mm (common practice, no source). */
export const LEAST_LEFT = 15;

/** What one opening, or several that lie close together, take out of a piece of skirting. x along the run, heights above the floor. */
export interface Cut {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly round: boolean;
  readonly names: readonly string[];
  /** Its place, or the place of the first of them, in the job's list of openings. */
  readonly first: number;
}

/** A piece of skirting between two openings that go down to the floor, with the holes and notches that stay within it. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly cuts: readonly Cut[];
}

/** The openings that reach a piece from `from` to `to` below `height`; those too close for stuff to stand between them are cut as one. */
export function cutsIn(
  openings: readonly PlacedOpening[],
  { from, to, height }: { readonly from: number; readonly to: number; readonly height: number },
): readonly Cut[] {
  const there = openings
    .filter((o) => o.from < to && o.to > from && o.low < height && o.high > 0)
    .sort((a, b) => a.from - b.from || a.to - b.to);
  const cuts: Cut[] = [];
  for (const { from: left, to: right, low, high, round, name, index } of there) {
    const last = cuts.at(-1);
    const own = { from: left, to: right, low, high, round, names: [name || `opening ${index + 1}`], first: index };
    if (!last || left - last.to >= LEAST_LEFT) cuts.push(own);
    else cuts[cuts.length - 1] = together(last, own);
  }
  return cuts;
}

const together = (a: Cut, b: Cut): Cut => ({
  from: Math.min(a.from, b.from),
  to: Math.max(a.to, b.to),
  low: Math.min(a.low, b.low),
  high: Math.max(a.high, b.high),
  round: false,
  names: [...a.names, ...b.names],
  first: a.first,
});

/**
 * Divides a piece at the openings that leave too little of it below them or beside them: there it is cut off at the opening's sides.
 * `clearFrom` and `clearTo`: where its shorter face begins and ends.
 */
export function divide(
  { from, to, clearFrom, clearTo }: Record<'from' | 'to' | 'clearFrom' | 'clearTo', number>,
  cuts: readonly Cut[],
): { readonly stretches: readonly Stretch[]; readonly gaps: readonly Cut[] } {
  const isGap = (c: Cut): boolean =>
    c.low < LEAST_LEFT || c.from - clearFrom < LEAST_LEFT || clearTo - c.to < LEAST_LEFT;
  const gaps = cuts.filter(isGap);
  const starts = [from, ...gaps.map((g) => g.to)];
  const stops = [...gaps.map((g) => g.from), to];
  const stretches = starts.map((start, i) => ({
    from: start,
    to: stops[i],
    cuts: cuts.filter((c) => !isGap(c) && c.from >= start && c.to <= stops[i]),
  }));
  return { stretches, gaps };
}
