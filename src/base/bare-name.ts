import type { StockItem } from '../vocabulary/book';

/** A sheet's name without the size in which it is sold, where it ends with that: what is cut of it, or left, has another. */
export function bareName(item: StockItem): string {
  if (item.kind !== 'sheet') return item.name;
  const size = `${item.length} × ${item.width}`;
  return item.name.endsWith(size)
    ? item.name.slice(0, -size.length).replace(/[\s,;:–-]+$/, '') || item.name
    : item.name;
}
