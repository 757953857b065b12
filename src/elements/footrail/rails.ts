/** Two places that differ by less than this are as near, mm. */
const AS_NEAR = 1e-6;

/**
 * Where a rail that is longer than its stock is joined: over brackets, in the fewest and most even lengths. None where that can't be.
 * Of two brackets as near the one towards the datum end is taken, so that a mirrored unit is cut alike.
 */
export function joinsOver(
  { from, to }: { readonly from: number; readonly to: number },
  brackets: readonly number[],
  longest: number,
  datum: 'left' | 'right',
): readonly number[] {
  if (datum === 'right') {
    const turned = (x: number): number => from + to - x;
    return joinsOver({ from, to }, brackets.map(turned).reverse(), longest, 'left').map(turned).reverse();
  }
  const least = Math.max(1, Math.ceil((to - from) / longest - AS_NEAR));
  for (let pieces = least; pieces <= brackets.length + 1; pieces++) {
    const joins = Array.from({ length: pieces - 1 }, (_, k) =>
      nearest(brackets, from + ((to - from) * (k + 1)) / pieces),
    );
    const lines = [from, ...joins, to];
    const lengths = lines.slice(1).map((end, i) => end - lines[i]);
    if (lengths.every((l) => l > 0 && l <= longest)) return joins;
  }
  return [];
}

const nearest = (places: readonly number[], x: number): number =>
  places.reduce((best, p) => (Math.abs(p - x) < Math.abs(best - x) - AS_NEAR ? p : best));
