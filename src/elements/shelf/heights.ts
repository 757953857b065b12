/** Float noise must not cost a shelf or a hole. */
const NOISE = 1e-6;

/** Clear height between neighbours when `count` shelves divide `clear` equally: (H − n·t) / (n + 1). mm. */
export const equalGap = (clear: number, count: number, thickness: number): number =>
  (clear - count * thickness) / (count + 1);

/** The most shelves that keep at least `least` clear between, below and above them: (H − g) / (t + g), whole ones. */
export const mostShelves = (clear: number, thickness: number, least: number): number =>
  Math.max(0, Math.floor((clear - least) / (thickness + least) + NOISE));

/** Undersides of equally spaced shelves, above the lower end of the clear height. mm. */
export const equalUndersides = (clear: number, count: number, thickness: number): readonly number[] => {
  const gap = equalGap(clear, count, thickness);
  return Array.from({ length: count }, (_, k) => gap + k * (gap + thickness));
};

/** A row of holes up a lining: how many, and the middle of the first above the lining's lower end. mm. */
export interface HoleRow {
  readonly count: number;
  readonly first: number;
  readonly pitch: number;
}

/** As many holes as the pitch allows between the margins, what is left over divided equally. None where the margins meet. */
export function holeRow(height: number, pitch: number, margin: number): HoleRow {
  const between = height - 2 * margin;
  if (between < 0) return { count: 0, first: 0, pitch };
  const steps = Math.floor(between / pitch + NOISE);
  return { count: steps + 1, first: (height - steps * pitch) / 2, pitch };
}

/** Number of the hole nearest to a height, the lower of two as near; from 0. */
const nearestHole = ({ count, first, pitch }: HoleRow, height: number): number =>
  Math.min(count - 1, Math.max(0, Math.ceil((height - first) / pitch - 0.5 - NOISE)));

/**
 * Undersides of shelves that lie on pins in the holes nearest to where equal spacing would have them. A pin fills its hole, so a shelf lies
 * half a hole above the hole's middle. Undefined where two shelves would want the same room, or one doesn't clear the ends.
 */
export function pinnedUndersides(
  row: HoleRow,
  wanted: readonly number[],
  shelf: { readonly height: number; readonly thickness: number; readonly hole: number },
): readonly number[] | undefined {
  if (row.count === 0) return undefined;
  const at = wanted.map((u) => row.first + row.pitch * nearestHole(row, u - shelf.hole / 2) + shelf.hole / 2);
  const tops = [0, ...at.map((u) => u + shelf.thickness)];
  return [...at, shelf.height].every((low, k) => low - tops[k] > 0) ? at : undefined;
}
