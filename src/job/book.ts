import type { Cutter, StockItem } from '../vocabulary/book';
import type { Job } from '../vocabulary/job';
import type { Book } from '../vocabulary/room';

/** The job's stock book with its look-ups, also of items whose kind doesn't matter. */
export interface JobBook extends Book {
  any(material: string): StockItem;
}

/** Look-ups into a job's stock book. Each throws on an unknown id: a job that passed the schema holds none. */
export function bookOf(job: Job): JobBook {
  const items = new Map(job.stock.items.map((item) => [item.id, item]));
  const cutters = new Map(job.tools.cutters.map((cutter) => [cutter.id, cutter]));
  const find = (id: string): StockItem => {
    const item = items.get(id);
    if (!item)
      throw new Error(`The stock book has no item ${JSON.stringify(id)}; it has ${[...items.keys()].join(', ')}.`);
    return item;
  };
  return {
    item<K extends StockItem['kind']>(kind: K, id: string) {
      const item = find(id);
      if (item.kind !== kind) throw new Error(`${id} is ${item.kind} stock; ${kind} is wanted.`);
      return item as Extract<StockItem, { kind: K }>;
    },
    cutter: (id: string): Cutter | undefined => cutters.get(id),
    any: find,
  };
}
