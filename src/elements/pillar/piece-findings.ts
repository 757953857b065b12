import type { Reach } from '../../base/edge-path';
import { leftOf, tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';
import type { PillarMark } from '../../vocabulary/rod';

type Which = 'base' | 'cap';

const path = (which: Which, key: string): string => `/unit/elements/pillar/${which}${key}`;
const geometry = 'geometry of the pillars';
const practice = 'common practice, no source';
const at = ({ where, index }: PillarMark): string =>
  where === 'between' ? `of pillar ${index + 1}` : `at the ${where} end`;

export const cutterTooBig = (which: Which, reach: Reach, height: number, thickness: number): Finding => ({
  severity: 'stop',
  rule: `${which}-cutter-does-not-fit`,
  subject: { path: path(which, 'Cutter') },
  value: Math.max(reach.height, reach.depth),
  limit: Math.min(height, thickness),
  message: `The moulded edge takes ${tenth(reach.height)} mm of the face and ${tenth(reach.depth)} mm of the edge; the pillar ${which}s are ${tenth(height)} × ${tenth(thickness)} mm, and some of their thickness must stay.`,
  source: 'geometry of the cutter',
  remedy: `Choose a smaller cutter or a bigger ${which}. They are drawn square.`,
});

export const tooShort = (which: Which, run: string, pillar: PillarMark, value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: `${which}-too-short`,
  subject: { run, path: '/unit/elements/pillar/cornerWidth' },
  value,
  limit,
  message: `The pillar ${which} ${at(pillar)} of run ${run} has ${leftOf(value)} at its shorter side; ${limit} mm is the least.`,
  source: geometry,
  remedy: 'Widen the corner boards, use thinner stuff, or turn the corner less. It is left out.',
});

export const pastMitre = (which: Which, run: string, pillar: PillarMark, value: number): Finding => ({
  severity: 'stop',
  rule: `${which}-past-mitre`,
  subject: { run, path: path(which, 'Overhang') },
  value,
  limit: 0,
  message: `The pillar ${which} ${at(pillar)} of run ${run} would run ${tenth(value)} mm past the mitre of the corner.`,
  source: geometry,
  remedy: 'Move the pillar from the corner, or let the piece be no wider than the pillar. It is left out.',
});

export const tooLow = (which: Which, value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: `${which}-too-low`,
  subject: { path: path(which, 'Height') },
  value,
  limit,
  message: `Pillar ${which}s ${tenth(value)} mm high can't be held at the saw; ${limit} mm is the least.`,
  source: practice,
  remedy: 'Make them higher, or 0 for none. They are left out.',
});

export const noBoard = (value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'no-board-between-base-and-cap',
  subject: { path: path('base', 'Height') },
  value,
  limit,
  message: `Base and cap leave ${leftOf(value)} of the pillar boards; ${limit} mm is the least.`,
  source: geometry,
  remedy: 'Lower them, or raise the unit. Bases and caps are left out.',
});

/** Two pieces that stand into one bay from both sides must not meet. */
export const meetInBay = (which: Which, run: string, bay: number, value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: `${which}s-overlap`,
  subject: { run, path: path(which, 'Overhang') },
  value,
  limit,
  message: `Bay ${bay} of run ${run} is ${tenth(value)} mm wide; the pillar ${which}s beside it stand ${tenth(limit)} mm into it.`,
  source: geometry,
  remedy: `Let them stand out less, or make fewer bays. The ${which}s of this run are left out.`,
});

export const skirtingInTheWay = (value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'base-meets-skirting',
  subject: { path: path('base', 'Overhang') },
  value,
  limit,
  message: `The skirting is ${tenth(value)} mm high and runs into pillar bases that begin at ${tenth(limit)} mm and are wider than the blocks.`,
  source: geometry,
  remedy: 'Higher blocks, lower skirting, or bases no wider than the blocks. Bases are left out.',
});

export const boardStandsProud = (which: Which, value: number, limit: number): Finding => ({
  severity: 'warn',
  rule: `${which}-thinner-than-board`,
  subject: { path: path(which, 'Sheet') },
  value,
  limit,
  message: `Pillar ${which}s are ${tenth(value)} mm thick and the boards ${tenth(limit)} mm: the boards stand proud of them.`,
  source: practice,
  remedy: 'Choose a thicker sheet for them.',
});

export const pastTop = (value: number, limit: number): Finding => ({
  severity: 'warn',
  rule: 'cap-past-top',
  subject: { path: path('cap', 'Sheet') },
  value,
  limit,
  message: `The caps stand ${tenth(value)} mm out from the frame and the top ${tenth(limit)} mm: it does not cover them.`,
  source: practice,
  remedy: 'Choose a thinner sheet for them, or more overhang of the top.',
});
