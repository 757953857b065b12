import type { Design } from '../../../src/vocabulary/design';
import type { Vec2 } from '../../../src/vocabulary/geometry';
import { expectedRuns } from '../expected';
import type { Found } from '../sample';

/** Noise of turning a point into a run's own coordinates and back. */
const NOISE = 1e-6;

/**
 * The runs lie end to end in plan, with a gap as wide as the flap where one hangs, each turned from the one before by the corner asked for, and
 * as long as the job and the corner rule make them.
 */
export function plan(made: Design): Found {
  const wrong: string[] = [];
  const expected = expectedRuns(made.job);
  const { runs } = made.rod;
  if (runs.map((r) => r.id).join() !== expected.map((r) => r.id).join())
    wrong.push(`runs ${runs.map((r) => r.id).join()}`);
  runs.slice(1).forEach((run, i) => {
    const before = runs[i];
    const to = before.length + (expected[i + 1].left.flap ?? 0);
    const end: Vec2 = [before.origin[0] + before.along[0] * to, before.origin[1] + before.along[1] * to];
    const off = Math.hypot(end[0] - run.origin[0], end[1] - run.origin[1]);
    if (off > NOISE) wrong.push(`run ${run.id} starts ${off} from where it should after ${before.id}`);
    const turn =
      (Math.atan2(
        before.along[0] * run.along[1] - before.along[1] * run.along[0],
        before.along[0] * run.along[0] + before.along[1] * run.along[1],
      ) *
        180) /
      Math.PI;
    if (Math.abs(turn - expected[i + 1].left.turnDeg) > 1e-9)
      wrong.push(`run ${run.id} turns ${turn}; ${expected[i + 1].left.turnDeg} was asked`);
  });
  return { wrong, looked: runs.length };
}
