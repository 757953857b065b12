import { leftOf, tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';

const PATH = '/unit/elements/undertop/moulding';

export const noHeight = (foot: number, height: number, frameHeight: number): Finding => ({
  severity: 'stop',
  rule: 'undertop-no-height',
  subject: { path: PATH },
  value: frameHeight - foot,
  limit: height,
  message: `Between what lies along the foot, ${tenth(foot)} mm high, and the underside of the top at ${tenth(frameHeight)} mm there is no room for a moulding of ${tenth(height)} mm under the top.`,
  source: 'geometry of the setting-out',
  remedy: 'A lower moulding, lower skirting or a higher unit. The moulding is left out.',
});

export const beyondTop = (outer: number, overhang: number): Finding => ({
  severity: 'warn',
  rule: 'undertop-beyond-top',
  subject: { path: PATH },
  value: outer,
  limit: overhang,
  message: `The moulding under the top stands ${tenth(outer)} mm out of the frame's face; the top overhangs it by ${tenth(overhang)} mm.`,
  source: 'geometry of the layers',
  remedy: 'More overhang, or a moulding that stands out less.',
});

export const proud = (thickness: number, pillars: number): Finding => ({
  severity: 'warn',
  rule: 'undertop-proud',
  subject: { path: PATH },
  value: thickness,
  limit: pillars,
  message: `The moulding under the top stands out ${tenth(thickness)} mm and the pillar boards ${tenth(pillars)} mm: its ends show.`,
  source: 'common practice, no source',
  remedy: 'Choose thicker pillar boards or a moulding that stands out less.',
});

export const noLength = (run: string, bay: number, value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'undertop-no-length',
  subject: { run, path: PATH },
  value,
  limit,
  message: `The moulding under the top would have ${leftOf(value)} at its shorter side in bay ${bay} of run ${run}; ${limit} mm is the least.`,
  source: 'geometry of the corner',
  remedy: 'A wider bay, a slighter moulding, or a corner that turns less. This piece is left out.',
});

export const pastMitre = (run: string, bay: number, value: number): Finding => ({
  severity: 'stop',
  rule: 'undertop-past-mitre',
  subject: { run, path: '/unit/elements/pillar/cornerWidth' },
  value,
  limit: 0,
  message: `The moulding under the top of bay ${bay} in run ${run} would run ${tenth(value)} mm past the mitre of the corner.`,
  source: 'geometry of the corner',
  remedy: 'Widen the corner boards, or turn the corner less. This piece is left out.',
});
