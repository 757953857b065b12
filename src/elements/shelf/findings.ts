import { tenth } from '../../base/tenth';
import type { BackBay } from '../../vocabulary/carcass';
import type { Finding } from '../../vocabulary/finding';
import type { RodRun } from '../../vocabulary/rod';
import type { HoleRow } from './heights';

const GEOMETRY = 'geometry of the setting-out';
const PRACTICE = 'common practice, no source';

const name = ({ id }: RodRun, { bay }: BackBay): string => `Bay ${(bay ?? 0) + 1} of run ${id}`;

export const tooClose = (
  run: RodRun,
  bay: BackBay,
  found: {
    readonly clear: number;
    readonly count: number;
    readonly gap: number;
    readonly least: number;
    readonly most: number;
  },
): Finding => ({
  severity: 'stop',
  rule: 'shelves-too-close',
  subject: { run: run.id, path: bay.wish?.path ?? '/unit/bays' },
  value: found.gap,
  limit: found.least,
  message: `${name(run, bay)} is ${tenth(found.clear)} mm high in the clear: ${found.count} ${found.count === 1 ? 'shelf' : 'shelves'} would leave ${tenth(found.gap)} mm between; ${tenth(found.least)} mm is the least.`,
  source: 'the clear height that was decided on, and the height of a bearer',
  remedy: `${found.most === 0 ? 'Not one shelf fits' : `The most that fit: ${found.most}`}. Ask for fewer, or for less clear height. None is made.`,
});

export const tooSmall = (
  run: RodRun,
  bay: BackBay,
  which: 'width' | 'depth',
  value: number,
  limit: number,
): Finding => ({
  severity: 'stop',
  rule: 'bay-too-small-for-shelves',
  subject: { run: run.id, path: bay.wish?.path ?? '/unit/bays' },
  value,
  limit,
  message: `${name(run, bay)} leaves ${tenth(value)} mm for the ${which} of a shelf; ${tenth(limit)} mm is the least.`,
  source: PRACTICE,
  remedy:
    which === 'width'
      ? 'Ask for fewer bays, or for thinner linings or bearers. No shelf is made.'
      : 'Make the unit deeper, or bring the rows nearer to the edges. No shelf is made.',
});

export const tooLarge = (
  run: RodRun,
  bay: BackBay,
  what: string,
  [long, deep]: readonly number[],
  sheet: { readonly length: number; readonly width: number },
): Finding => ({
  severity: 'stop',
  rule: 'shelf-larger-than-sheet',
  subject: { run: run.id, path: `/unit/elements/shelf/${what === 'shelf' ? 'sheet' : 'lining'}` },
  value: Math.max(long, deep),
  limit: sheet.length,
  message: `A ${what} of ${tenth(long)} × ${tenth(deep)} mm behind bay ${(bay.bay ?? 0) + 1} of run ${run.id} can't be cut from a sheet of ${sheet.length} × ${sheet.width} mm.`,
  source: 'sheet size from the stock book',
  remedy: 'Ask for more bays, or choose a longer sheet. No shelf is made.',
});

export const noHoles = (run: RodRun, bay: BackBay, clear: number, margin: number): Finding => ({
  severity: 'stop',
  rule: 'no-room-for-holes',
  subject: { run: run.id, path: '/unit/elements/shelf/margin' },
  value: clear,
  limit: 2 * margin,
  message: `${name(run, bay)} is ${tenth(clear)} mm high in the clear; with ${tenth(margin)} mm left at both ends no hole has room.`,
  source: GEOMETRY,
  remedy: 'Let the rows of holes begin nearer to the ends. No shelf is made.',
});

export const offHoles = (run: RodRun, bay: BackBay, count: number, holes: HoleRow): Finding => ({
  severity: 'stop',
  rule: 'shelves-off-holes',
  subject: { run: run.id, path: '/unit/elements/shelf/pitch' },
  value: holes.count,
  limit: count,
  message: `${name(run, bay)} has ${holes.count} holes on a pitch of ${tenth(holes.pitch)} mm: ${count} shelves on them would meet one another or the ends.`,
  source: GEOMETRY,
  remedy: 'A closer pitch, a smaller margin, or fewer shelves. No shelf is made.',
});

export const holesRunTogether = (run: RodRun, hole: number, pitch: number): Finding => ({
  severity: 'stop',
  rule: 'holes-run-together',
  subject: { run: run.id, path: '/unit/elements/shelf/pitch' },
  value: pitch,
  limit: hole,
  message: `Holes ${tenth(hole)} mm across on a pitch of ${tenth(pitch)} mm run into one another.`,
  source: GEOMETRY,
  remedy: 'A wider pitch, or smaller holes. No shelf is made.',
});
