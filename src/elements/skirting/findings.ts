import { leftOf, tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';

const PATH = '/unit/elements/skirting/moulding';

export const blocksOverlap = (run: string, bay: number, clear: number): Finding => ({
  severity: 'stop',
  rule: 'blocks-overlap',
  subject: { run, path: '/unit/elements/plinth/overhang' },
  value: clear,
  limit: 0,
  message: `The plinth blocks of bay ${bay} in run ${run} ${tenth(-clear) > 0 ? `overlap by ${tenth(-clear)} mm` : 'meet'}; there is no room for skirting.`,
  source: 'geometry of the setting-out',
  remedy: 'Narrower blocks, or fewer bays.',
});

/** Where a corner is sharp and its boards narrow, the piece beside them would run into the neighbour's. */
export const pastMitre = (run: string, bay: number, value: number): Finding => ({
  severity: 'stop',
  rule: 'skirting-past-mitre',
  subject: { run, path: '/unit/elements/pillar/cornerWidth' },
  value,
  limit: 0,
  message: `The skirting of bay ${bay} in run ${run} would run ${tenth(value)} mm past the mitre of the corner.`,
  source: 'geometry of the corner',
  remedy: 'Widen the corner boards, or turn the corner less. This piece is left out.',
});

/** The mitres of a bay without pillars at its corners may take the whole of a short piece. */
export const noLength = (run: string, bay: number, value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'skirting-no-length',
  subject: { run, path: '/unit/elements/pillar/atCorners' },
  value,
  limit,
  message: `The corner leaves the skirting of bay ${bay} in run ${run} ${leftOf(value)} at its shorter side; ${limit} mm is the least.`,
  source: 'geometry of the corner',
  remedy: 'A wider bay, thinner skirting, or a corner that turns less. This piece is left out.',
});

/** Skirting that rises above the blocks shows its cut ends. */
export const aboveBlocks = (value: number, limit: number): Finding => ({
  severity: 'warn',
  rule: 'skirting-above-block',
  subject: { path: PATH },
  value,
  limit,
  message: `The skirting is ${tenth(value)} mm high and the plinth blocks ${tenth(limit)} mm: its ends show above them.`,
  source: 'common practice, no source',
  remedy: 'Choose lower skirting or higher blocks.',
});

export const skirtingProud = (thickness: number, proud: number): Finding => ({
  severity: 'warn',
  rule: 'skirting-proud',
  subject: { path: PATH },
  value: thickness,
  limit: thickness - proud,
  message: `The skirting stands ${tenth(proud)} mm proud of the plinth blocks: its ends will show.`,
  source: 'common practice, no source',
  remedy: 'Choose thicker blocks or thinner skirting.',
});

/** An opening that leaves too little below it, or beside it. */
export const cutInTwo = (
  run: string,
  bay: number,
  opening: { readonly names: readonly string[]; readonly first: number; readonly low: number },
  limit: number,
): Finding => ({
  severity: 'note',
  rule: 'skirting-cut-at-opening',
  subject: { run, path: `/unit/openings/${opening.first}` },
  value: opening.low,
  limit,
  message: `The opening for ${opening.names.join(' and ')} leaves less than ${limit} mm of the skirting of bay ${bay} in run ${run} below it or beside it (its lower edge is at ${tenth(opening.low)} mm): the skirting stops at its sides.`,
  source: 'common practice, no source',
  remedy: 'Move the opening if the skirting should go round it.',
});

/** A section that can't be drawn with a hole in it. */
export const byHand = (run: string, bay: number, names: readonly string[], low: number, height: number): Finding => ({
  severity: 'warn',
  rule: 'skirting-by-hand',
  subject: { run, path: PATH },
  value: low,
  limit: height,
  message: `The opening for ${names.join(' and ')} begins at ${tenth(low)} mm, behind the skirting of bay ${bay} in run ${run}, ${tenth(height)} mm high; its moulding can't be drawn cut there, and the piece is shown whole.`,
  source: 'geometry of the moulding',
  remedy: 'Scribe and cut it by hand, or choose a plainer skirting, or move the opening.',
});
