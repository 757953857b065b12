/** What fills a bar to the end: kinds in ascending order, each as often as it lies there. */
export type Fill = readonly number[];

/** Pieces in a listed fill, at the most. */
export const WIDTH = 4;

/** Stands for no piece, after the last one of a fill: more than there are kinds. */
export const NONE = 4095;

/** Pieces looked up between two pauses. */
const PAUSE = 400_000;

/**
 * Every way to fill a bar to the end with up to four pieces, one after the other, each as `WIDTH` kinds, with `NONE` for those it has fewer. Sizes
 * are whole and fall from kind to kind, so the last piece is known by the room that is left. With more than `most` fills, those of four pieces are
 * left out.
 */
export function* listFills(
  sizes: readonly number[],
  left: readonly number[],
  capacity: number,
  most: number,
): Generator<void, Uint16Array> {
  const kindOf = new Int32Array(capacity + 1).fill(-1);
  sizes.forEach((size, kind) => {
    if (size <= capacity && left[kind] > 0) kindOf[size] = kind;
  });
  const fills: number[] = [];
  let looked = 0;
  // The last piece: as large as the room that is left, and no larger than the one before it.
  const lastIn = (room: number, before: number): number => (room > 0 && room <= sizes[before] ? kindOf[room] : -1);
  const put = (...kinds: readonly number[]): void => {
    if (kinds[kinds.length - 1] < 0 || !suffices(kinds, left)) return;
    for (let i = 0; i < WIDTH; i++) fills.push(kinds[i] ?? NONE);
  };
  for (let a = 0; a < sizes.length; a++) {
    if (sizes[a] === capacity) put(a);
    put(a, lastIn(capacity - sizes[a], a));
    for (let b = a; b < sizes.length; b++) put(a, b, lastIn(capacity - sizes[a] - sizes[b], b));
    looked += sizes.length - a;
    if (looked > PAUSE) {
      looked = 0;
      yield;
    }
  }
  const short = fills.length;
  for (let a = 0; a < sizes.length; a++)
    for (let b = a; b < sizes.length; b++) {
      const room = capacity - sizes[a] - sizes[b];
      if (room <= 0) continue;
      // The third is at least half of what is left, for the fourth is no larger.
      for (let c = b; c < sizes.length && 2 * sizes[c] >= room; c++) {
        looked++;
        const last = lastIn(room - sizes[c], c);
        if (last >= 0) put(a, b, c, last);
      }
      if (fills.length > most * WIDTH) return Uint16Array.from(fills.slice(0, short));
      if (looked > PAUSE) {
        looked = 0;
        yield;
      }
    }
  return Uint16Array.from(fills);
}

/** Whether there is enough left for a fill: kinds in ascending order. */
export function suffices(kinds: ArrayLike<number>, left: ArrayLike<number>, from = 0, to = kinds.length): boolean {
  let same = 1;
  for (let i = from; i < to && kinds[i] !== NONE; i++) {
    same = i > from && kinds[i] === kinds[i - 1] ? same + 1 : 1;
    if (left[kinds[i]] < same) return false;
  }
  return true;
}

/** The fill that begins there. */
export function fillAt(listed: Uint16Array, at: number): Fill {
  const fill: number[] = [];
  for (let i = at; i < at + WIDTH && listed[i] !== NONE; i++) fill.push(listed[i]);
  return fill;
}

/** Those for which there is enough left. */
export function fillsWithin(listed: Uint16Array, left: readonly number[]): Uint16Array {
  const kept = new Uint16Array(listed.length);
  let n = 0;
  for (let at = 0; at < listed.length; at += WIDTH) {
    if (!suffices(listed, left, at, at + WIDTH)) continue;
    for (let i = 0; i < WIDTH; i++) kept[n++] = listed[at + i];
  }
  return kept.slice(0, n);
}
