import { deepestOf } from '../base/deepest';
import { tenth } from '../base/tenth';
import { degrees, radians } from '../base/vec';
import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Rod, RodRun } from '../vocabulary/rod';

/** A gap that a bead of filler hides is not worth a finding, mm (common practice, no source). */
const LEAST_GAP = 2;

/** Further from square than this, the wall can't be the one that an end stands against (degrees; common practice, no source). */
const MOST_ASKEW_DEG = 30;

/** Surveyed walls at the unit's ends that are out of square or out of plumb: how wide the gap would be, to be scribed. */
export function outOfSquare({ job, rod }: { readonly job: Job; readonly rod: Rod }): readonly Finding[] {
  const { leftEnd, rightEnd } = job.unit.plan;
  const { runs } = rod;
  return [
    ...(leftEnd.kind === 'wall' ? atWall(job, rod, runs[0], leftEnd.wall, 'left') : []),
    ...(rightEnd.kind === 'wall' ? atWall(job, rod, runs[runs.length - 1], rightEnd.wall, 'right') : []),
  ];
}

function atWall(job: Job, rod: Rod, run: RodRun, name: string | undefined, side: 'left' | 'right'): readonly Finding[] {
  const index = job.survey.walls.findIndex((w) => w.name === name);
  const wall = job.survey.walls[index];
  if (!wall) return [];
  const at = { run, side, wall: wall.name, path: `/survey/walls/${index}` };
  const runDeg = degrees(Math.atan2(run.along[1], run.along[0]));
  // A wall has no sense of direction: 180° about makes the same wall. Square is 90° to the run.
  const askew = ((((wall.directionDeg - runDeg) % 180) + 180) % 180) - 90;
  if (Math.abs(askew) > MOST_ASKEW_DEG) return [noSuchWall(at, askew)];
  // Turned counter-clockwise, a wall at the right end comes nearer as it goes back: the unit touches there and gapes in front.
  const opens = askew > 0 === (side === 'right') ? 'front' : 'back';
  return [
    ...gape(at, 'out of square', askew, deepestOf(rod, run), `over the depth of the unit, opening to the ${opens}`),
    ...gape(
      at,
      'out of plumb',
      wall.leanDeg,
      rod.height,
      `over the height, opening to the ${wall.leanDeg > 0 ? 'top' : 'floor'}`,
    ),
  ];
}

interface Place {
  readonly run: RodRun;
  readonly side: 'left' | 'right';
  readonly wall: string;
  readonly path: string;
}

const hundredth = (deg: number): number => Math.round(Math.abs(deg) * 100) / 100;

function gape(
  { run, side, wall, path }: Place,
  what: string,
  deg: number,
  over: number,
  words: string,
): readonly Finding[] {
  const gap = Math.abs(Math.tan(radians(deg))) * over;
  if (gap < LEAST_GAP) return [];
  return [
    {
      severity: 'note',
      rule: `wall-${what.replaceAll(' ', '-')}`,
      subject: { run: run.id, path },
      value: gap,
      limit: LEAST_GAP,
      message: `${wall}, at the ${side} end of run ${run.id}, is ${hundredth(deg)}° ${what}: a gap of ${tenth(gap)} mm ${words}.`,
      source: 'survey',
      remedy: 'Leave stuff at that end to scribe to the wall.',
    },
  ];
}

const noSuchWall = ({ run, side, wall, path }: Place, askew: number): Finding => ({
  severity: 'warn',
  rule: 'wall-not-across',
  subject: { run: run.id, path: `${path}/directionDeg` },
  value: Math.abs(askew),
  limit: MOST_ASKEW_DEG,
  message: `${wall} is ${hundredth(askew)}° from square to run ${run.id}: the run's ${side} end can't stand against it.`,
  source: 'survey',
  remedy: "Check the wall's direction (counter-clockwise from the first run), or choose another wall for this end.",
});
