export type Sides = readonly [length: number, width: number];

/** A rectangle cut from edge to edge: its largest part again and again, each time at a share of one of its sides, if both parts are wide enough. */
export function cutUp(rectangle: Sides, shares: readonly number[], least: number): readonly Sides[] {
  const parts: Sides[] = [rectangle];
  for (const [i, share] of shares.entries()) {
    parts.sort(([a, b], [c, d]) => c * d - a * b);
    const [l, w] = parts[0];
    const along = i % 3 === 0 ? l < w : l >= w;
    const at = Math.round((along ? l : w) * share);
    if (Math.min(at, (along ? l : w) - at) < least) continue;
    if (along) parts.splice(0, 1, [at, w], [l - at, w]);
    else parts.splice(0, 1, [l, at], [l, w - at]);
  }
  return parts;
}
