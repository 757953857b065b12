/**
 * Moves points on a line apart so that neighbours are at least `pitch` from each other, each as near to where it was as that
 * allows (least squares: runs of neighbours that touch are pooled about their mean). `points` rise; so do the answers.
 */
export function spread(points: readonly number[], pitch: number): readonly number[] {
  // With i·pitch taken off, "at least a pitch apart" is "never falling", and the nearest such row is found by pooling.
  const pools: { sum: number; count: number }[] = [];
  points.forEach((x, i) => {
    let pool = { sum: x - i * pitch, count: 1 };
    for (let last = pools.at(-1); last && last.sum / last.count >= pool.sum / pool.count; last = pools.at(-1)) {
      pools.pop();
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
    }
    pools.push(pool);
  });
  const placed: number[] = [];
  for (const pool of pools)
    for (let i = 0; i < pool.count; i += 1) placed.push(pool.sum / pool.count + placed.length * pitch);
  return placed;
}
