import { bareName } from '../../src/base/bare-name';
import type { StockItem } from '../../src/vocabulary/book';

/** A stuff of the stock book, as the rack knows it. */
export interface Stuff {
  readonly id: string;
  readonly name: string;
  /** An offcut of it has a width: sheets, and blanks of hardwood. */
  readonly wide: boolean;
}

/** What offcuts can be of: sheets of one stuff once, everything else by itself. */
export function stuffsOf(items: readonly StockItem[]): readonly Stuff[] {
  const stuffs = new Map<string, Stuff>();
  for (const item of items) {
    const id = item.kind === 'sheet' ? (item.stuff ?? item.id) : item.id;
    if (stuffs.has(id)) continue;
    stuffs.set(id, { id, name: bareName(item), wide: item.kind === 'sheet' || item.kind === 'hardwood' });
  }
  return [...stuffs.values()];
}

/** What a stuff is called; one that this job's stock book doesn't have is called by its id. */
export function stuffName(id: string, items: readonly StockItem[]): string {
  const item = items.find((one) => one.id === id) ?? items.find((one) => one.kind === 'sheet' && one.stuff === id);
  return item ? bareName(item) : id;
}
