import { alongFace } from '../base/along';
import { SAME_LENGTH } from '../base/tolerance';
import type { Part, PartDraft } from '../vocabulary/part';
import type { RodRun } from '../vocabulary/rod';
import { meetsAt } from './lying';

/**
 * Says of each draft when it is fitted: on site when its room says so, when it crosses a join, or when it is mitred with a neighbour
 * across one; else in the workshop, on the section in whose part of the run it lies.
 */
export function fittings(runs: readonly RodRun[]): (draft: PartDraft) => Pick<Part, 'fitted' | 'inSection'> {
  const of = new Map(runs.map((run, i) => [run.id, { run, before: runs[i - 1] }]));
  return (draft) => {
    const there = of.get(draft.run);
    if (!there || draft.fit === 'site' || meetsJoin(draft, there.run, there.before)) return ON_SITE;
    const { joins, sections } = there.run;
    if (joins.length === 0) return { fitted: 'workshop', inSection: sections[0] };
    const [from, to] = alongFace(draft, there.run);
    if (joins.some(({ x }) => from < x - SAME_LENGTH && to > x + SAME_LENGTH)) return ON_SITE;
    const middle = (from + to) / 2;
    return { fitted: 'workshop', inSection: sections[joins.filter((j) => j.x < middle).length] };
  };
}

const ON_SITE = { fitted: 'site' } as const;

function meetsJoin(draft: PartDraft, run: RodRun, before: RodRun | undefined): boolean {
  const left = run.left.kind === 'corner' && before?.joinAtRight !== undefined;
  const right = run.right.kind === 'corner' && run.joinAtRight !== undefined;
  return (left && meetsAt(draft, 'left')) || (right && meetsAt(draft, 'right'));
}
