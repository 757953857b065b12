import { leftOf, tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';
import type { RunJoin } from '../../vocabulary/rod';
import type { Frame } from './frames';

const PATH = '/unit/elements/panel';

/** Too narrow a return stays plain, and nothing stops for that: it is no longer than it need be. */
export function noRoom(
  { run, where, bay, from, to, low, high }: Frame,
  margin: number,
  width: number,
  need: number,
): Finding {
  const short = Math.min(to - from, high - low);
  const narrow = to - from < high - low;
  const plain = narrow && run.jobIndex === null;
  const left = narrow
    ? `the bay is ${tenth(bay.to - bay.from)} mm wide, and margins of ${tenth(margin)} mm leave ${leftOf(short)}`
    : `margins of ${tenth(margin)} mm leave ${leftOf(short)} of the height`;
  return {
    severity: plain ? 'note' : 'stop',
    rule: 'panel-no-room',
    subject: { run: run.id, path: `${PATH}/margin` },
    value: short,
    limit: need,
    message: `No room for a panel frame in ${where} of run ${run.id}: ${left}; two mouldings of ${tenth(width)} mm need ${tenth(need)} mm.`,
    source: 'geometry of the setting-out',
    remedy: plain
      ? 'Nothing, if the return may stay plain; else a longer return, less margin or narrower pillars. This frame is left out.'
      : 'Less margin, a narrower moulding, fewer rows or wider bays. This frame is left out.',
  };
}

/** The brackets of a foot rail reach higher than the margin leaves free. */
export const raised = (wished: number, made: number, brackets: number): Finding => ({
  severity: 'note',
  rule: 'panel-raised',
  subject: { path: `${PATH}/margin` },
  value: made,
  limit: wished,
  message: `The lowest panel frames are wished from ${tenth(wished)} mm above the floor; the brackets of the foot rail reach ${tenth(brackets)} mm, so they are made from ${tenth(made)} mm.`,
  source: 'geometry of the setting-out',
  remedy: 'Nothing, if that looks well; else lower the foot rail, or take more margin all round.',
});

/** Where a corner is sharp and its boards narrow, a frame close to them would run into the neighbour's. */
export const pastMitre = (run: string, where: string, value: number): Finding => ({
  severity: 'stop',
  rule: 'panel-past-mitre',
  subject: { run, path: `${PATH}/margin` },
  value,
  limit: 0,
  message: `The panel frame in ${where} of run ${run} would run ${tenth(value)} mm past the mitre of the corner.`,
  source: 'geometry of the corner',
  remedy: 'More margin, wider corner boards, or a corner that turns less. This frame is left out.',
});

/** A strip that covers a join stands where the frame would. */
export function atCover({ run, where, from, to }: Frame, { id, coverFrom, coverTo }: RunJoin): Finding {
  const into = Math.min(coverTo - from, to - coverFrom);
  return {
    severity: 'stop',
    rule: 'panel-at-cover',
    subject: { run: run.id, path: `${PATH}/margin` },
    value: into,
    limit: 0,
    message: `The panel frame in ${where} of run ${run.id} would lie ${tenth(into)} mm over the strip that covers join ${id}, from ${tenth(coverFrom)} to ${tenth(coverTo)} mm.`,
    source: 'geometry of the setting-out',
    remedy: 'More margin, or join the run behind a pillar. This frame is left out.',
  };
}

/** What stands out much wider than its pillar reaches under a frame with little margin. */
export const atPillar = ({ run, where, low, high }: Frame, into: number, what: string): Finding => ({
  severity: 'stop',
  rule: 'panel-at-pillar',
  subject: { run: run.id, path: `${PATH}/margin` },
  value: into,
  limit: 0,
  message: `The panel frame in ${where} of run ${run.id}, from ${tenth(low)} to ${tenth(high)} mm above the floor, would lie ${tenth(into)} mm over ${what}.`,
  source: 'geometry of the setting-out',
  remedy: 'More margin, or less overhang at the pillar. This frame is left out.',
});

/** Less above and below a rail than this reads as a mistake. */
export const noRail = (gap: number, height: number, margin: number): Finding => ({
  severity: 'stop',
  rule: 'panel-rail-no-room',
  subject: { path: `${PATH}/railHeight` },
  value: gap,
  limit: height + 2 * margin,
  message: `Between two rows of panel frames there are ${tenth(gap)} mm; a rail of ${tenth(height)} mm with ${tenth(margin)} mm above and below needs ${tenth(height + 2 * margin)} mm.`,
  source: 'common practice, no source',
  remedy: 'More space between the rows, or a lower rail. The rails are left out.',
});

/** Its ends show where it stands out further than the pillars. */
export const railProud = (thickness: number, pillars: number): Finding => ({
  severity: 'warn',
  rule: 'panel-rail-proud',
  subject: { path: `${PATH}/railSheet` },
  value: thickness,
  limit: pillars,
  message: `The flat rails are ${tenth(thickness)} mm thick and the pillar boards ${tenth(pillars)} mm: the rails' ends show.`,
  source: 'common practice, no source',
  remedy: 'Choose a thinner sheet for the rails or thicker pillar boards.',
});

export const railNoLength = (run: string, where: string, value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'panel-rail-no-length',
  subject: { run, path: `${PATH}/rail` },
  value,
  limit,
  message: `The flat rail in ${where} of run ${run} would have ${leftOf(value)} at its shorter side; ${limit} mm is the least.`,
  source: 'geometry of the setting-out',
  remedy: 'A wider bay, or a corner that turns less. This rail is left out.',
});

export const railPastMitre = (run: string, where: string, value: number): Finding => ({
  severity: 'stop',
  rule: 'panel-rail-past-mitre',
  subject: { run, path: '/unit/elements/pillar/cornerWidth' },
  value,
  limit: 0,
  message: `The flat rail in ${where} of run ${run} would run ${tenth(value)} mm past the mitre of the corner.`,
  source: 'geometry of the corner',
  remedy: 'Wider corner boards, or a corner that turns less. This rail is left out.',
});

export const railTooLong = (run: string, where: string, value: number, limit: number): Finding => ({
  severity: 'warn',
  rule: 'panel-rail-too-long',
  subject: { run, path: `${PATH}/railSheet` },
  value,
  limit,
  message: `The flat rail in ${where} of run ${run} is ${tenth(value)} mm long; the sheet it is ripped from is ${tenth(limit)} mm.`,
  source: 'sheet size from the stock book',
  remedy: 'Choose a longer sheet or narrower bays, or splice it over the noggin behind it.',
});
