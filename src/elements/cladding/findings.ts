import { leftOf, tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';
import type { RodRun } from '../../vocabulary/rod';
import type { Laying } from './lay';

/** What is wrong or poor about the skin of one run. */
export function poor(run: RodRun, { stretches, low, high, tallest }: Laying): readonly Finding[] {
  const findings: Finding[] = [];
  const subject = { run: run.id, path: '/unit/elements/cladding/sheet' };
  const source = 'sheet size from the stock book';
  for (const { from, to, longest, cuts } of stretches) {
    if (!cuts)
      findings.push({
        severity: 'stop',
        rule: 'cladding-not-divisible',
        subject,
        value: to - from,
        limit: longest,
        source,
        message: `The cladding of run ${run.id} from ${tenth(from)} to ${tenth(to)} mm is ${tenth(to - from)} mm long and can't be divided on studs, clear of openings, into pieces of ${tenth(longest)} mm or less.`,
        remedy: 'Choose a longer sheet, closer studs, or narrower openings. It is drawn in one piece.',
      });
    for (const cut of (cuts ?? []).filter((c) => !c.behindPillar))
      findings.push({
        severity: 'warn',
        rule: 'joint-in-field',
        subject,
        value: cut.x,
        source: 'common practice, no source',
        message: `A cladding joint falls in a painted field of run ${run.id}, at ${tenth(cut.x)} mm: no pillar is in reach of the sheet.`,
        remedy: 'Choose a longer sheet, or a closer pitch of pillars; else fill, tape and sand the joint.',
      });
  }
  if (high - low > tallest)
    findings.push({
      severity: 'stop',
      rule: 'cladding-too-high',
      subject,
      value: high - low,
      limit: tallest,
      source,
      message: `The cladding of run ${run.id} is ${tenth(high - low)} mm high; the trimmed sheet gives ${tenth(tallest)} mm.`,
      remedy: 'Choose a longer sheet.',
    });
  return findings;
}

/** Between what the frame stands on, or the gap at the floor, and the top there is no skin to speak of. */
export const tooLow = (run: RodRun, { low, high }: Laying, limit: number): Finding => ({
  severity: 'stop',
  rule: 'cladding-no-height',
  subject: { run: run.id, path: '/unit/height' },
  value: high - low,
  limit,
  message: `The cladding of run ${run.id} begins ${tenth(low)} mm above the floor and has ${leftOf(high - low)} up to the top at ${tenth(high)} mm; ${tenth(limit)} mm of height is the least.`,
  source: 'geometry of the setting-out',
  remedy: 'Raise the unit, or lower what its frame stands on. None is made there.',
});
