/**
 * Which of several things laid end to end an item belongs to: `starts` are the rising first items of each thing.
 * A thing without items (its start equals the next one's) is never found.
 * @returns the thing's index, or -1 when the item lies before the first or at or beyond `total`
 */
export function indexAt(starts: ArrayLike<number>, total: number, item: number): number {
  if (!(item >= 0 && item < total)) return -1;
  let low = 0;
  let high = starts.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (starts[middle]! <= item) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
