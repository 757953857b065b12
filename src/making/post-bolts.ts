import type { Design } from '../vocabulary/design';
import type { Part } from '../vocabulary/part';
import type { Join } from '../vocabulary/section';
import { countOfHold } from './fixing-counts';
import { listOf, plural } from './step-words';
import type { Touching } from './touching';

/** What is bolted at each join beside the studs, by the join's id, in words: "2 through the rear posts". */
export type PostBolts = ReadonlyMap<string, string>;

/**
 * Bolts that parts say of themselves, a rear post to the next section's post: at the join of the two sections whose parts they draw
 * together. They are counted with the part; the join counts those through its studs only.
 */
export function postBolts(
  { joins, parts }: Pick<Design, 'joins' | 'parts'>,
  by: ReadonlyMap<string, Part>,
  touching: Touching,
): PostBolts {
  const bolted = parts.filter((part) => boltsOf(part) > 0);
  return new Map(
    joins.flatMap((join) => {
      const counts = new Map<string, number>();
      for (const part of bolted) {
        const mate = mateOf(part, join, by, touching);
        if (!mate) continue;
        const names =
          mate.name === part.name ? `the ${plural(part.name)}` : `the ${listOf([part.name, mate.name].sort())}`;
        counts.set(names, (counts.get(names) ?? 0) + boltsOf(part));
      }
      const words = listOf([...counts].map(([names, n]) => `${n} through ${names}`));
      return words ? [[join.id, words] as const] : [];
    }),
  );
}

const boltsOf = (part: Part): number =>
  (part.holds ?? [])
    .filter((hold) => hold.by === 'bolt')
    .reduce((sum, hold) => sum + countOfHold(hold, part, []).amount, 0);

/** What a part of one section touches in the other, across a join; like to like where there is. */
function mateOf(
  part: Part,
  { sections: [left, right] }: Join,
  by: ReadonlyMap<string, Part>,
  touching: Touching,
): Part | undefined {
  const other = part.inSection === left ? right : part.inSection === right ? left : undefined;
  if (other === undefined) return undefined;
  const across = (touching.get(part.mark) ?? []).flatMap((mark) => by.get(mark) ?? []);
  const there = across.filter((p) => p.inSection === other);
  return there.find((p) => p.name === part.name) ?? there[0];
}
