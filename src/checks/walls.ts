import { tenth } from '../base/tenth';
import { radians } from '../base/vec';
import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Rod, RodRun } from '../vocabulary/rod';

/** A gap that a bead of filler hides is not worth a finding, mm (common practice, no source). */
const LEAST_GAP = 2;

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
  const wall = job.survey.walls.find((w) => w.name === name);
  if (!wall) return [];
  const runDeg = (Math.atan2(run.along[1], run.along[0]) * 180) / Math.PI;
  // A wall has no sense of direction: 180° about makes the same wall. Square is 90° to the run.
  const from = ((((wall.directionDeg - runDeg) % 180) + 180) % 180) - 90;
  const square = Math.abs(Math.tan(radians(from))) * rod.depth;
  const plumb = Math.abs(Math.tan(radians(wall.leanDeg))) * rod.height;
  const about = (what: string, deg: number, gap: number, over: string): readonly Finding[] =>
    gap < LEAST_GAP
      ? []
      : [
          {
            severity: 'note',
            rule: `wall-${what.replaceAll(' ', '-')}`,
            subject: { run: run.id, path: `/survey/walls/${job.survey.walls.indexOf(wall)}` },
            value: gap,
            limit: LEAST_GAP,
            message: `${wall.name}, at the ${side} end of run ${run.id}, is ${Math.round(Math.abs(deg) * 100) / 100}° ${what}: a gap of ${tenth(gap)} mm over the ${over}.`,
            source: 'survey',
            remedy: 'Leave stuff at that end to scribe to the wall.',
          },
        ];
  return [
    ...about('out of square', from, square, 'depth of the top'),
    ...about('out of plumb', wall.leanDeg, plumb, 'height'),
  ];
}
