import type { Reach } from '../../base/edge-path';
import { leftOf, tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';

const PATH = '/unit/elements/plinth';
const corner = 'geometry of the corner';

export const tooShort = (run: string, where: string, value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'block-too-short',
  subject: { run, path: '/unit/elements/pillar/cornerWidth' },
  value,
  limit,
  message: `The corner leaves the plinth block at the ${where} end of run ${run} ${leftOf(value)} at its shorter side; ${limit} mm is the least.`,
  source: corner,
  remedy: 'Widen the corner boards, use thinner blocks, or turn the corner less. The block is left out.',
});

export const tooBig = ({ height: high, depth }: Reach, height: number, thickness: number): Finding => ({
  severity: 'stop',
  rule: 'cutter-does-not-fit',
  subject: { path: `${PATH}/cutter` },
  value: Math.max(high, depth),
  limit: Math.min(height, thickness),
  message: `The moulded edge takes ${tenth(high)} mm of the face and ${tenth(depth)} mm of the edge; the plinth strip is ${tenth(height)} × ${tenth(thickness)} mm, and some of its thickness must stay.`,
  source: 'geometry of the cutter',
  remedy: 'Choose a smaller cutter or a bigger strip. It is drawn square.',
});

/** A block hard by an inside corner that has no pillar. */
export const pastMitre = (run: string, pillar: number, value: number): Finding => ({
  severity: 'stop',
  rule: 'block-past-mitre',
  subject: { run, path: '/unit/elements/pillar/atCorners' },
  value,
  limit: 0,
  message: `The plinth block of pillar ${pillar} in run ${run} would stand ${tenth(value)} mm past the mitre of the corner.`,
  source: corner,
  remedy: 'Move the pillar, or have pillars at corners. The block is left out.',
});

export const meetInBay = (run: string, bay: number, value: number): Finding => ({
  severity: 'stop',
  rule: 'block-meets-block',
  subject: { run, path: `${PATH}/overhang` },
  value,
  limit: 0,
  message: `The plinth blocks on both sides of bay ${bay} in run ${run} would overlap by ${tenth(value)} mm.`,
  source: 'geometry of the setting-out',
  remedy: 'Narrower blocks, or fewer bays. Both are left out.',
});

export const tooHigh = (value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'plinth-too-high',
  subject: { path: `${PATH}/height` },
  value,
  limit,
  message: `The plinth is ${tenth(value)} mm high; the underside of the top is at ${tenth(limit)} mm.`,
  source: 'geometry of the setting-out',
  remedy: 'Lower the plinth or raise the unit. No plinth is made.',
});

export const boardTooShort = (name: string, run: string, value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'plinth-board-too-short',
  subject: { run, path: `${PATH}/style` },
  value,
  limit,
  message: `The corners leave a ${name} of run ${run} ${leftOf(value)} at its shorter side; ${limit} mm is the least.`,
  source: corner,
  remedy: 'Lengthen the run, use thinner stuff, or turn the corner less. This length is left out.',
});

export const longerThanSheet = (name: string, run: string, limit: number): Finding => ({
  severity: 'stop',
  rule: 'plinth-board-too-long',
  subject: { run, path: `${PATH}/sheet` },
  limit,
  message: `The ${name} of run ${run} is longer than its sheet, ${tenth(limit)} mm, and there is no pillar in reach over which to joint it.`,
  source: 'sheet size from the stock book',
  remedy: 'Choose a longer sheet, or a closer pitch of pillars. It is drawn in one piece.',
});

export const jointed = (name: string, run: string, at: readonly number[], limit: number): Finding => ({
  severity: 'note',
  rule: 'plinth-jointed',
  subject: { run, path: `${PATH}/sheet` },
  value: at.length,
  limit,
  message: `The ${name} of run ${run} is longer than its sheet, ${tenth(limit)} mm: it is jointed at ${at.map(tenth).join(', ')} mm, in the middle of pillars.`,
  source: 'sheet size from the stock book',
  remedy: 'Choose a longer sheet if it should have no joints; else glue, fill and sand them.',
});

export const kickTooDeep = (value: number, most: number, depth: number): Finding => ({
  severity: 'stop',
  rule: 'kick-does-not-carry',
  subject: { path: `${PATH}/recess` },
  value,
  limit: most,
  message: `A kick board set back ${tenth(value)} mm does not lie under the bottom plate, which is ${tenth(depth)} mm deep; ${most >= 0 ? `${tenth(most)} mm is the most` : 'the board is thicker than that'}.`,
  source: 'geometry of the frame',
  remedy:
    most >= 0
      ? `Set it back ${tenth(most)} mm, choose a thinner board, or deeper frame timber. No kick board is made.`
      : 'Choose a thinner board, or deeper frame timber. No kick board is made.',
});

/** Usual toe space, mm: depth and height at least. */
const USUAL = { recess: 50, height: 100 };

/** A toe space smaller than usual: worth knowing, not wrong. */
export function smallToeSpace({
  recess,
  height,
}: {
  readonly recess: number;
  readonly height: number;
}): readonly Finding[] {
  const short = (['recess', 'height'] as const).find((key) => ({ recess, height })[key] < USUAL[key]);
  if (!short) return [];
  return [
    {
      severity: 'note',
      rule: 'toe-space-small',
      subject: { path: `${PATH}/${short}` },
      value: short === 'recess' ? recess : height,
      limit: USUAL[short],
      message: `The toe space is ${tenth(height)} mm high and ${tenth(recess)} mm deep; 100–150 high and 50–75 deep is usual.`,
      source: 'EN 1116 and trade, from memory',
      remedy: 'A thinner kick board or deeper frame timber lets it go further back.',
    },
  ];
}
