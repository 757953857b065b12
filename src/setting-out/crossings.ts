import { add2, cross2, scale2, sub2 } from '../base/vec';
import type { Vec2 } from '../vocabulary/geometry';
import type { Finding } from '../vocabulary/finding';
import type { RodRun } from '../vocabulary/rod';

/** A plan that folds on itself: two runs, not neighbours, whose frame lines cross. */
export function crossings(runs: readonly RodRun[]): readonly Finding[] {
  const findings: Finding[] = [];
  for (let i = 0; i < runs.length; i++)
    for (let j = i + 2; j < runs.length; j++) if (cross(runs[i], runs[j])) findings.push(folded(runs[i].id, runs[j].id));
  return findings;
}

function cross(a: RodRun, b: RodRun): boolean {
  const [a0, a1] = endsOf(a);
  const [b0, b1] = endsOf(b);
  const side = (p: Vec2, q: Vec2, r: Vec2): number => cross2(sub2(q, p), sub2(r, p));
  return side(a0, a1, b0) * side(a0, a1, b1) < 0 && side(b0, b1, a0) * side(b0, b1, a1) < 0;
}

const endsOf = (run: RodRun): readonly [Vec2, Vec2] => [run.origin, add2(run.origin, scale2(run.along, run.length))];

const folded = (a: string, b: string): Finding => ({
  severity: 'stop',
  rule: 'plan-folds',
  subject: { run: b, path: '/unit/plan/runs' },
  message: `The plan folds on itself: runs ${a} and ${b} cross.`,
  source: 'geometry of the setting-out',
  remedy: 'Change the deflections or lengths so that the front does not meet itself.',
});
