import { boundsInRoom } from '../base/solid/extent';
import type { StockItem } from '../vocabulary/book';
import type { MaterialTotal, Totals } from '../vocabulary/design';
import type { Part } from '../vocabulary/part';

/**
 * What the parts come to: weight, number, each material's net amount (metres of timber and mouldings by exact lengths, square
 * metres of sheets and hardwood by length × width), and the box they stand in, along the first run (x), across it, and up. Materials in the order in which they first appear. No parts: all zero.
 */
export function totalsOf(parts: readonly Part[], itemOf: (material: string) => StockItem): Totals {
  const materials = new Map<string, Summed<MaterialTotal>>();
  let weightKg = 0;
  for (const part of parts) {
    const item = itemOf(part.material);
    const byLength = item.kind === 'timber' || item.kind === 'moulding';
    const amount = byLength ? part.size.length / 1000 : (part.size.length * part.size.width) / 1e6;
    let total = materials.get(part.material);
    if (!total) {
      total = {
        material: part.material,
        name: item.name,
        unit: byLength ? 'm' : 'm²',
        amount: 0,
        parts: 0,
        weightKg: 0,
      };
      materials.set(part.material, total);
    }
    total.amount += amount;
    total.parts++;
    total.weightKg += part.weightKg;
    weightKg += part.weightKg;
  }
  return { weightKg, parts: parts.length, materials: [...materials.values()], overall: overallOf(parts) };
}

/** A total that is still being summed. */
type Summed<T> = { -readonly [K in keyof T]: T[K] };

function overallOf(parts: readonly Part[]): Totals['overall'] {
  if (parts.length === 0) return { length: 0, depth: 0, height: 0 };
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const part of parts) {
    const { min, max } = boundsInRoom(part);
    for (let k = 0; k < 3; k++) {
      if (min[k] < low[k]) low[k] = min[k];
      if (max[k] > high[k]) high[k] = max[k];
    }
  }
  return { length: high[0] - low[0], depth: high[1] - low[1], height: high[2] - low[2] };
}
