import { type Fill, fillAt, NONE, WIDTH } from './fills';

/** A gain smaller than this is the solver's rounding. */
export const LEAST_GAIN = 1e-7;

/** For each kind the listed fill that gains most by prices of kinds; the most gainful first. `values` has a place for `NONE`, with 0. */
export function gainful(listed: Uint16Array, values: Float64Array): readonly Fill[] {
  const most = new Float64Array(values.length).fill(LEAST_GAIN);
  const where = new Int32Array(values.length).fill(-1);
  for (let at = 0; at < listed.length; at += WIDTH) {
    // Written out, for this is done for every fill in every round.
    const gain = values[listed[at]] + values[listed[at + 1]] + values[listed[at + 2]] + values[listed[at + 3]];
    if (gain <= LEAST_GAIN) continue;
    for (let i = at; i < at + WIDTH && listed[i] !== NONE; i++)
      if (gain > most[listed[i]]) {
        most[listed[i]] = gain;
        where[listed[i]] = at;
      }
  }
  const best = new Map<number, number>();
  where.forEach((at, kind) => {
    if (at >= 0) best.set(at, most[kind]);
  });
  return [...best].sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([at]) => fillAt(listed, at));
}
