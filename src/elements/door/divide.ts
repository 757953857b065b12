/** Size of each of `count` fronts in `length`, with a gap between neighbours: (L − (n − 1)·g) / n. mm. */
export const eachOf = (length: number, count: number, gap: number): number => (length - (count - 1) * gap) / count;

/** The most fronts of at least `least` that `length` holds. */
export const mostOf = (length: number, gap: number, least: number): number =>
  Math.max(0, Math.floor((length + gap) / (least + gap) + 1e-6));

/** From where to where each of them lies, from `from` on. */
export function dividedBy(
  from: number,
  length: number,
  count: number,
  gap: number,
): readonly { readonly from: number; readonly to: number }[] {
  const each = eachOf(length, count, gap);
  return Array.from({ length: count }, (_, k) => {
    const start = from + k * (each + gap);
    return { from: start, to: start + each };
  });
}

/** Hinges of a door by its height, mm: 2 up to 900, 3 up to 1600, then one more for each 500 (common practice, no source). */
export const hingesFor = (height: number): number =>
  height <= 900 ? 2 : height <= 1600 ? 3 : 3 + Math.ceil((height - 1600) / 500);
