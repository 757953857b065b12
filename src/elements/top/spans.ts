/** A closed stretch along the run, mm. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Noise of the last digits, mm. */
export const NOISE = 1e-9;

/** More than the halving and the rounding of a mirrored join leave uncertain, mm, and far less than a rule shows. */
export const LAST_DIGITS = 1e-4;

/** Whether a length from `least` to `most` leads from one of the stretches to the end. */
export const closes = (at: readonly Span[], to: number, least: number, most: number): boolean =>
  least <= most + NOISE && at.some((s) => s.from <= to - least + NOISE && s.to >= to - most - NOISE);

/** What can be reached from the stretches by a length from `least` to `most`, within the places. */
export function stretched(at: readonly Span[], least: number, most: number, places: readonly Span[]): readonly Span[] {
  if (least > most + NOISE) return [];
  const found: Span[] = [];
  for (const s of at)
    for (const p of places) {
      if (p.from > s.to + most + NOISE) break;
      const from = Math.max(s.from + least, p.from);
      const to = Math.min(s.to + most, p.to);
      if (from <= to + NOISE) found.push({ from, to: Math.max(from, to) });
    }
  return merged(found);
}

function merged(spans: Span[]): readonly Span[] {
  spans.sort((a, b) => a.from - b.from);
  const out: Span[] = [];
  for (const s of spans) {
    const last = out[out.length - 1];
    if (last && s.from <= last.to) out[out.length - 1] = { from: last.from, to: Math.max(last.to, s.to) };
    else out.push(s);
  }
  return out;
}
