import { leftOf, tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';

const PATH = '/unit/elements/footrail';

export const tooNear = (into: number): Finding => ({
  severity: 'stop',
  rule: 'foot-rail-too-near',
  subject: { path: `${PATH}/out` },
  value: into,
  limit: 0,
  message: `The foot rail's back would stand ${tenth(into)} mm within the front.`,
  source: 'geometry of the layers',
  remedy: 'Set it further out, or choose a slighter rail. The foot rail is left out.',
});

export const tooHigh = (value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'foot-rail-too-high',
  subject: { path: `${PATH}/height` },
  value,
  limit,
  message: `The foot rail would reach ${tenth(value)} mm above the floor; the top, or what lies under it, begins at ${tenth(limit)} mm.`,
  source: 'geometry of the setting-out',
  remedy: 'Lower the rail. The foot rail is left out.',
});

export const aboveFoot = (value: number, limit: number, low: number, seat: number, high: number): Finding => ({
  severity: 'stop',
  rule: 'foot-rail-bracket-low',
  subject: { path: `${PATH}/height` },
  value,
  limit,
  message: `A bracket from ${tenth(low)} to ${tenth(high)} mm above the floor keeps ${leftOf(value)} under the foot rail, which begins at ${tenth(seat)} mm; ${limit} mm is the least.`,
  source: 'common practice, no source',
  remedy:
    'Raise the rail above the skirting or plinth, or choose wider timber for the brackets. The foot rail is left out.',
});

export const noLength = (run: string, value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'foot-rail-no-length',
  subject: { run, path: `${PATH}/out` },
  value,
  limit,
  message: `The corners of run ${run} leave its foot rail ${leftOf(value)} at its shorter side; ${limit} mm is the least.`,
  source: 'geometry of the corners',
  remedy: 'Set the rail nearer to the front, or lengthen the run. This rail is left out.',
});

export const noBracket = (run: string, thick: number): Finding => ({
  severity: 'stop',
  rule: 'foot-rail-no-bracket',
  subject: { run, path: `${PATH}/timber` },
  value: 0,
  limit: 1,
  message: `No bay of run ${run} has room between its plinth blocks for a bracket ${tenth(thick)} mm thick.`,
  source: 'geometry of the setting-out',
  remedy: 'Wider bays, or thinner timber for the brackets. The foot rail of this run is left out.',
});

export const crossed = (a: string, b: string): Finding => ({
  severity: 'stop',
  rule: 'foot-rail-crossed',
  subject: { run: b, path: `${PATH}/out` },
  message: `The foot rails of runs ${a} and ${b} would stand in each other's way.`,
  source: 'geometry of the setting-out',
  remedy: 'Set the rail nearer to the front, or the runs further apart. Both rails are left out.',
});

export const tooFar = (run: string, value: number, limit: number): Finding => ({
  severity: 'warn',
  rule: 'foot-rail-span',
  subject: { run, path: `${PATH}/spacing` },
  value,
  limit,
  message: `Brackets of the foot rail in run ${run} can't stand closer than ${tenth(value)} mm (from an end counted twice); ${tenth(limit)} mm is asked for.`,
  source: 'the spacing asked for',
  remedy: 'Wider bays, narrower pillars, or a closer spacing so that more brackets are set.',
});

export const farApart = (value: number): Finding => ({
  severity: 'note',
  rule: 'foot-rail-far-apart',
  subject: { path: `${PATH}/spacing` },
  value,
  limit: 1000,
  message: `Brackets of the foot rail stand ${tenth(value)} mm apart; more than 1000 mm is unusual.`,
  source: 'common practice, no source',
  remedy: 'Set them closer.',
});

export const unusual = (
  key: 'height' | 'out',
  what: string,
  value: number,
  [least, most]: readonly [number, number],
): Finding => ({
  severity: 'note',
  rule: `foot-rail-${key}`,
  subject: { path: `${PATH}/${key}` },
  value,
  limit: value < least ? least : most,
  message: `The foot rail is ${tenth(value)} mm ${what}; ${least} to ${most} mm is usual.`,
  source: 'trade, from memory',
  remedy: 'Keep it if it is meant.',
});

/** Nothing here is reckoned for strength. */
export const strength = (brackets: number): Finding => ({
  severity: 'note',
  rule: 'foot-rail-strength',
  subject: { path: PATH },
  value: brackets,
  message: `The foot rail rests on ${brackets} brackets. What they and their screws carry is not worked out here.`,
  source: 'common practice, no source',
  remedy:
    'Try one bracket on a mock-up of the frame before the others are made; where the public stands, have it reckoned.',
  caution:
    'People stand on a foot rail with their whole weight, and fall if it gives way. Try every bracket before it is handed over. Local rules come first.',
});
