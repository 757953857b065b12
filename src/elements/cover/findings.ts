import { tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';
import type { RodRun, RunJoin } from '../../vocabulary/rod';

/** A join that shows. */
export function underStrip(run: RodRun, join: RunJoin, thickness: number): Finding {
  const pillars = run.pillars.filter((p) => p.where === 'between');
  const nearest = [...pillars].sort((a, b) => Math.abs(a.centre - join.x) - Math.abs(b.centre - join.x))[0];
  const there = nearest
    ? `The nearest pillar's centre is at ${tenth(nearest.centre)} mm.`
    : 'No pillar stands between the ends.';
  return {
    severity: 'warn',
    rule: 'join-under-strip',
    subject: { run: run.id, path: join.path ?? '/unit/joins' },
    value: join.x,
    ...(nearest ? { limit: nearest.centre } : {}),
    message: `Join ${join.id} in run ${run.id}, at ${tenth(join.x)} mm, lies behind no pillar: a strip ${tenth(join.coverTo - join.coverFrom)} × ${tenth(thickness)} mm covers it, and shows. ${there}`,
    source: 'common practice, no source',
    remedy: nearest
      ? 'Join the run behind the pillar, or accept the strip.'
      : 'Divide the run into more bays and join it behind a pillar, or accept the strip.',
  };
}

export const noHeight = (run: string, join: RunJoin, low: number, high: number): Finding => ({
  severity: 'stop',
  rule: 'cover-no-height',
  subject: { run, path: join.path ?? '/unit/joins' },
  value: high - low,
  limit: 0,
  message: `The strip over join ${join.id} in run ${run} has no height: it would go from ${tenth(low)} to ${tenth(high)} mm.`,
  source: 'geometry of the setting-out',
  remedy: 'Lower skirting or plinth, or a higher unit. The strip is left out.',
});

export const tooLong = (run: string, join: RunJoin, value: number, limit: number): Finding => ({
  severity: 'warn',
  rule: 'cover-too-long',
  subject: { run, path: '/unit/elements/cover/sheet' },
  value,
  limit,
  message: `The strip over join ${join.id} in run ${run} is ${tenth(value)} mm long; the sheet it is ripped from is ${tenth(limit)} mm.`,
  source: 'sheet size from the stock book',
  remedy: 'Choose a longer sheet, or joint the strip.',
});
