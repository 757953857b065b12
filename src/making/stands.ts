import { bodyOf } from './bodies';
import { MOST_GAP } from './contacts';
import type { Batch } from './order';
import type { Touching } from './touching';

/**
 * Groups in their order, but none before what its parts stand on: a board whose lower end rests on a block comes after the block. Framed
 * timber is put together on the bench in one go and stays as it is. Where groups stand on one another in turn, the order stays.
 */
export function afterWhatTheyStandOn(groups: readonly Batch[], touching: Touching): readonly Batch[] {
  const group = new Map(groups.flatMap((batch) => batch.map((p) => [p.mark, batch] as const)));
  const parts = new Map(groups.flatMap((batch) => batch.map((p) => [p.mark, p] as const)));
  const under = (batch: Batch): ReadonlySet<Batch> =>
    new Set(
      batch.flatMap((part) =>
        (touching.get(part.mark) ?? []).flatMap((mark) => {
          const [other, its] = [parts.get(mark), group.get(mark)];
          return other && its && its !== batch && standsOn(part, other) ? [its] : [];
        }),
      ),
    );
  const waitsFor = new Map(groups.map((batch) => [batch, under(batch)]));
  const left = [...groups];
  const ordered: Batch[] = [];
  while (left.length > 0) {
    const free = left.findIndex((batch) => !left.some((other) => waitsFor.get(batch)?.has(other)));
    ordered.push(...left.splice(Math.max(0, free), 1));
  }
  return ordered;
}

/** Whether a part that is put on the frame rests on another one's upper face, where they touch. */
export const standsOn = (part: Batch[number], other: Batch[number]): boolean =>
  part.from !== 'framed' && other.from !== 'framed' && Math.abs(bodyOf(part).box[2] - bodyOf(other).box[5]) <= MOST_GAP;
