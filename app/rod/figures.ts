import type { RodRun } from '../../src/vocabulary/rod';
import { place, type Wanted, type Written } from './placing';
import type { Strip, Stroke } from './strips';

/** Rows of figures under the lanes. */
export const ROWS = 2;

/** A running figure as it is written. */
export type Figure = Written & { readonly text: string };

/** A place that has to be written out whatever the crowd: the picked part's ends, the mark in hand. */
export interface Wish {
  readonly x: number;
  readonly rank: number;
}

const RANK: Readonly<Record<Strip['lane'], number>> = { front: 4, skin: 5, timber: 6, behind: 7 };
/** The ends of the frame line come before all marks, and after what has been picked out. */
const END_RANK = 3;

/** The running figures of a run: its ends, its marks, and what is wished for; as many as find room. */
export function figuresOf(
  run: Pick<RodRun, 'length'>,
  strokes: readonly Stroke[],
  wishes: readonly Wish[],
  at: (mm: number) => number,
  format: (mm: number) => string,
  widthOf: (text: string) => number,
  width: number,
): readonly Figure[] {
  const ranked = [
    // What runs off the board has no place under it.
    ...wishes.filter(({ x }) => at(x) >= 0 && at(x) <= width),
    { x: 0, rank: END_RANK },
    { x: run.length, rank: END_RANK },
    ...strokes.map((stroke) => ({ x: stroke.x, rank: RANK[stroke.lane] })),
  ].sort((a, b) => a.rank - b.rank);
  // The same figure at the same place is written once, by the most important reason for it.
  const byPlace = new Map<string, Wanted & { text: string }>();
  for (const { x, rank } of ranked) {
    const text = format(x);
    const id = `${text}@${Math.round(at(x))}`;
    if (!byPlace.has(id)) byPlace.set(id, { id, x: at(x), width: widthOf(text), rank, text });
  }
  return place([...byPlace.values()], ROWS, 0, width).map((written) => ({
    ...written,
    text: byPlace.get(written.id)!.text,
  }));
}
