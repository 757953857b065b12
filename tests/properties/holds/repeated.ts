import { design } from '../../../src/flow';
import { setRun } from '../../../src/job/edits';
import type { Design } from '../../../src/vocabulary/design';
import type { Job, JoinMark } from '../../../src/vocabulary/job';
import type { Part } from '../../../src/vocabulary/part';
import type { Found } from '../sample';

/** The same decisions, in another object, give the same parts, findings and totals, word for word. */
export function repeated(made: Design): Found {
  const again = design(structuredClone(made.job));
  const same = (['rod', 'framing', 'parts', 'marks', 'findings', 'totals'] as const).filter(
    (key) => JSON.stringify(again[key]) !== JSON.stringify(made[key]),
  );
  return { wrong: same.map((key) => `${key} came out otherwise the second time`), looked: made.parts.length };
}

/**
 * Lengthening one run leaves every part of a run that doesn't touch it as it was: mark, size, ends and weight. Its neighbours share
 * a corner with it, so they aren't asked; a butted top ends on its neighbour's edges, and so stays too.
 */
export function untouched(made: Design): Found {
  // With the fewest sections one run's length decides about the joins in all: here they stay where they are.
  const before = made.job.unit.joins.by === 'least' ? design(joinedByHand(made)) : made;
  const index = made.job.unit.plan.runs.length - 1;
  const longer = design(setRun(before.job, index, { length: made.job.unit.plan.runs[index].length + 137.3 }));
  // A run that comes to lie across another, or whose foot rail does, or into its flap's gap, touches it after all, and says so.
  if ([before, longer].some(({ findings }) => findings.some((f) => TOUCHING.has(f.rule))))
    return { wrong: [], looked: 0 };
  const ids = made.rod.runs.map((r) => r.id);
  const changed = ids.indexOf(made.rod.runs.find((r) => r.jobIndex === index)?.id ?? '');
  const far = new Set(ids.filter((_, i) => Math.abs(i - changed) > 1));
  const wrong: string[] = [];
  let looked = 0;
  for (const id of far) {
    const [was, after] = [of(before, id), of(longer, id)];
    looked += was.length;
    if (was.length !== after.length) wrong.push(`run ${id}: ${was.length} parts became ${after.length}`);
    was.forEach((part, i) => {
      if (card(part) !== card(after[i])) wrong.push(`${card(part)} became ${card(after[i])}`);
    });
  }
  return { wrong, looked };
}

const TOUCHING = new Set(['plan-folds', 'foot-rail-crossed', 'flap-meets-run']);

/** The job with the joins of its design marked by hand. */
export function joinedByHand({ job, rod }: Design): Job {
  const at = rod.runs.flatMap(({ jobIndex, joins, joinAtRight, right }): JoinMark[] => {
    const run = (jobIndex ?? -1) + 1;
    return [...joins.map(({ x }) => ({ run, x })), ...(joinAtRight && !right.flap ? [{ run }] : [])];
  });
  return { ...job, unit: { ...job.unit, joins: { by: 'hand', at } } };
}

const of = (made: Design, run: string): readonly Part[] => made.parts.filter((p) => p.run === run);

const card = (part: Part | undefined): string =>
  part
    ? `${part.mark} ${part.name} ${part.where} ${JSON.stringify([round(part.size.length), round(part.size.width), round(part.size.thickness), round(part.weightKg), part.ends])}`
    : 'nothing';

const round = (n: number): number => Number(n.toFixed(6));
