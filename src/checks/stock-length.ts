import { tenth } from '../base/tenth';
import { SAME_LENGTH } from '../base/tolerance';
import type { StockItem } from '../vocabulary/book';
import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Part } from '../vocabulary/part';

/** A stick longer, with what is left on it, than any length it is sold in must be jointed. Sheets and tops are checked where they are divided. */
export function longestStock({
  job,
  parts,
}: {
  readonly job: Job;
  readonly parts: readonly Part[];
}): readonly Finding[] {
  const timber = new Set(job.stock.items.filter((item) => item.kind === 'timber').map((item) => item.id));
  const longest = new Map(
    job.stock.items.flatMap((item) =>
      soldByLength(item) ? [[item.id, Math.max(...item.lengths.map((l) => l.length))] as const] : [],
    ),
  );
  return parts.flatMap((part): Finding[] => {
    const limit = longest.get(part.material);
    const leftOn = (part.oversize ?? []).reduce((sum, o) => sum + (o.on === 'length' ? o.amount : 0), 0);
    const value = part.size.length + leftOn;
    if (limit === undefined || value <= limit + SAME_LENGTH) return [];
    return [
      {
        severity: 'warn',
        rule: 'longer-than-stock',
        subject: { part: part.mark, run: part.run },
        value,
        limit,
        message: `${part.mark} (${part.name}, ${part.where}) is ${tenth(value)} mm long${leftOn > 0 ? ` with the ${tenth(leftOn)} mm left on` : ''}; the longest stock is ${tenth(limit)} mm.`,
        source: 'stock lengths from the stock book',
        remedy: `Make it in ${Math.ceil(value / limit)} lengths, ${timber.has(part.material) ? 'halved over each other on a stud' : 'scarfed over solid backing'}, or add a longer length to the stock book.`,
      },
    ];
  });
}

const soldByLength = (item: StockItem): item is Extract<StockItem, { lengths: unknown }> =>
  item.kind === 'timber' || item.kind === 'moulding';
