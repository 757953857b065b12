import { chanceOf } from '../../../src/cutting/bars/chance';
import type { BarProblem } from '../../../src/vocabulary/cut-problem';

/**
 * So many bars, each cut up without waste: into a piece longer than half of it and two more; the first few into one more piece than that. Then
 * nobody says which pieces came from one bar.
 */
export function evenBars(seed: number, bars: number, capacity: number, fours: number): BarProblem {
  const chance = chanceOf(seed);
  const lengths = new Map<number, number>();
  for (let bar = 0; bar < bars; bar++) {
    let room = capacity;
    const cut = (length: number): void => {
      room -= length;
      lengths.set(length, (lengths.get(length) ?? 0) + 1);
    };
    cut(Math.floor(capacity * (0.5 + 0.4 * chance())) + 1);
    for (let n = bar < fours ? 2 : 1; n > 0; n--) cut(1 + Math.floor((room - n - 1) * chance()));
    cut(room);
  }
  const pieces = [...lengths].sort((a, b) => b[0] - a[0]).map(([length, quantity]) => ({ length, quantity }));
  return { kind: 'bars', kerf: 0, trim: 0, stock: [{ length: capacity, price: 1 }], pieces };
}
