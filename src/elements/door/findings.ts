import { tenth } from '../../base/tenth';
import type { BackBay } from '../../vocabulary/carcass';
import type { Finding } from '../../vocabulary/finding';
import type { RodRun } from '../../vocabulary/rod';

const GEOMETRY = 'geometry of the setting-out';
const PRACTICE = 'common practice, no source';

const name = ({ id }: RodRun, { bay }: BackBay): string => `Bay ${(bay ?? 0) + 1} of run ${id}`;
const subjectOf = ({ id }: RodRun, { wish }: BackBay): Finding['subject'] => ({
  run: id,
  path: wish?.path ?? '/unit/bays',
});

export const nothingToHangOn = (run: RodRun, bay: BackBay, count: number): Finding => ({
  severity: 'stop',
  rule: 'doors-without-post',
  subject: subjectOf(run, bay),
  value: count,
  limit: 2,
  message: `${name(run, bay)} is to have ${count} doors; it has a post at each side, so those between the outer two have nothing to hang on.`,
  source: GEOMETRY,
  remedy: 'Ask for 2 doors, or for more bays. None is made.',
});

export const tooSmall = (
  run: RodRun,
  bay: BackBay,
  purpose: 'doors' | 'drawers',
  found: { readonly count: number; readonly each: number; readonly least: number; readonly most: number },
): Finding => ({
  severity: 'stop',
  rule: 'fronts-too-small',
  subject: subjectOf(run, bay),
  value: found.each,
  limit: found.least,
  message: `${name(run, bay)}: ${found.count} ${purpose} would be ${tenth(found.each)} mm ${purpose === 'doors' ? 'wide' : 'high'} each; ${found.least} mm is the least.`,
  source: PRACTICE,
  remedy: `${found.most > 0 ? `The most that fit: ${purpose === 'doors' ? Math.min(2, found.most) : found.most}` : 'Not one fits; ask for fewer bays or a higher unit'}. None is made.`,
});

export const tooLittleHold = (
  run: RodRun,
  bay: BackBay,
  lie: 'overlay' | 'inset',
  value: number,
  limit: number,
): Finding => ({
  severity: 'stop',
  rule: 'fronts-without-hold',
  subject: { run: run.id, path: `/unit/elements/door/${lie === 'inset' ? 'sheet' : 'gap'}` },
  value,
  limit,
  message:
    lie === 'inset'
      ? `${name(run, bay)}: fronts between the posts shut against stops; ${tenth(value)} mm would be left to fix a stop by or to shut on, ${limit} mm is the least.`
      : `${name(run, bay)}: fronts would lie on the posts by ${tenth(value)} mm; ${limit} mm is the least.`,
  source: PRACTICE,
  remedy: `${lie === 'inset' ? 'Choose a thinner sheet or thicker stops, narrower gaps' : 'Make the gaps narrower'}, or choose heavier carcass timber. None is made.`,
});

export const largerThanSheet = (
  run: RodRun,
  bay: BackBay,
  purpose: 'doors' | 'drawers',
  [wide, high]: readonly [number, number],
  sheet: { readonly length: number; readonly width: number },
): Finding => ({
  severity: 'stop',
  rule: 'front-larger-than-sheet',
  subject: { run: run.id, path: '/unit/elements/door/sheet' },
  value: Math.max(wide, high),
  limit: sheet.length,
  message: `${name(run, bay)}: ${purpose} of ${tenth(wide)} × ${tenth(high)} mm can't be cut from a sheet of ${sheet.length} × ${sheet.width} mm.`,
  source: 'sheet size from the stock book',
  remedy: 'Ask for more of them or for more bays, or choose a larger sheet. None is made.',
});

export const pastCorner = (
  run: RodRun,
  bay: BackBay,
  value: number,
  lie: 'overlay' | 'inset',
  between: boolean,
): Finding => ({
  severity: 'stop',
  rule: 'fronts-past-corner',
  subject: subjectOf(run, bay),
  value,
  limit: 0,
  message: `${name(run, bay)}: fronts ${lie === 'inset' ? 'between' : 'on'} the posts would run ${tenth(value)} mm past the line of the corner, into the neighbour’s.`,
  source: 'geometry of the corner',
  remedy: `${between ? 'Let them lie between the posts, or choose' : 'Choose'} a bay further from the corner. None is made.`,
});

export const wideLeaf = (run: RodRun, bay: BackBay, value: number, limit: number): Finding => ({
  severity: 'warn',
  rule: 'door-wide',
  subject: subjectOf(run, bay),
  value,
  limit,
  message: `${name(run, bay)}: a door ${tenth(value)} mm wide drags on its hinges; up to ${limit} mm is usual.`,
  source: PRACTICE,
  remedy: 'Two doors, or more bays.',
});

export const proudOfTop = (
  run: RodRun,
  bay: BackBay,
  value: number,
  over: 'top' | 'worktop',
  between: boolean,
): Finding => ({
  severity: 'warn',
  rule: 'fronts-proud-of-top',
  subject: { run: run.id, path: '/unit/elements/carcass/setBack' },
  value,
  limit: 0,
  message: `${name(run, bay)}: fronts stand ${tenth(value)} mm proud of the back edge of the ${over} over them.`,
  source: GEOMETRY,
  remedy: `Set the posts further back from that edge${between ? ', or let the fronts lie between the posts' : ''}.`,
});

export const besideCorner = (run: RodRun, bay: BackBay, value: number, limit: number): Finding => ({
  severity: 'warn',
  rule: 'fronts-beside-corner',
  subject: subjectOf(run, bay),
  value,
  limit,
  message: `${name(run, bay)}: fronts begin ${tenth(value)} mm from the corner that the backs of two runs make; ${limit} mm keeps them clear of the neighbour’s handles.`,
  source: PRACTICE,
  remedy: 'Leave this bay open, or the neighbour’s; else try how doors and drawers pass each other.',
});
