import { UP } from '../base/place';
import { lengthOf, nothing } from '../base/reach';
import { widenBy } from '../base/solid/extent';
import type { StockItem } from '../vocabulary/book';
import type { MaterialTotal, Totals } from '../vocabulary/design';
import type { Vec3 } from '../vocabulary/geometry';
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
  const [x, y, z] = [nothing(), nothing(), nothing()];
  for (const part of parts) {
    widenBy(x, part, X);
    widenBy(y, part, Y);
    widenBy(z, part, UP);
  }
  return { length: lengthOf(x), depth: lengthOf(y), height: lengthOf(z) };
}

const X: Vec3 = [1, 0, 0];
const Y: Vec3 = [0, 1, 0];
