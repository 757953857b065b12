import type { Sheet, StockItem } from '../vocabulary/book';
import type { Issue } from '../vocabulary/result';
import { pointer } from './words';

/** Sheets that are cut together are of one thickness and all have a grain or none; and no sheet is the stuff of something that is no sheet. */
export function stuffIssues(items: readonly StockItem[]): Issue[] {
  const others = new Set(items.flatMap((item) => (item.kind === 'sheet' ? [] : [item.id])));
  const first = new Map<string, Sheet>();
  return items.flatMap((item, i): Issue[] => {
    if (item.kind !== 'sheet') return [];
    const stuff = item.stuff ?? item.id;
    const path = pointer(['stock', 'items', i, 'stuff']);
    if (others.has(stuff)) return [{ path, message: `found ${JSON.stringify(stuff)}, which is no sheet` }];
    const before = first.get(stuff);
    if (!before) {
      first.set(stuff, item);
      return [];
    }
    const and = `is cut together with ${JSON.stringify(before.id)}`;
    if (before.thickness !== item.thickness)
      return [{ path, message: `${and}, which is ${before.thickness} mm thick; this is ${item.thickness}` }];
    if ((before.grain ?? false) !== (item.grain ?? false))
      return [{ path, message: `${and}; either both have a grain, or neither` }];
    return [];
  });
}
