import type { Design } from '../../../src/vocabulary/design';
import type { Vec2, Vec3 } from '../../../src/vocabulary/geometry';
import type { RodRun } from '../../../src/vocabulary/rod';
import { type ExpectedEnd, expectedLayers, expectedRuns } from '../expected';
import { cornersOf, seenFrom } from '../measure';
import type { Found } from '../sample';

/** Every number anywhere in a design is one: nothing infinite, nothing that is no number. */
export function finite(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  const walk = (value: unknown, path: string): void => {
    if (typeof value === 'number') {
      looked++;
      if (!Number.isFinite(value)) wrong.push(`${path} is ${value}`);
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, inner] of Object.entries(value)) walk(inner, `${path}/${key}`);
    }
  };
  walk(made, '');
  return { wrong, looked };
}

/** Every part has length, width, thickness, volume and weight, and none of its lengths is longer than its overall length. */
export function positive(made: Design): Found {
  const wrong = made.parts.flatMap(({ mark, size, shortPoint, shopLength, volumeMm3, weightKg, ends }) => {
    const above = { ...size, volumeMm3, weightKg };
    const said = Object.entries(above).flatMap(([name, n]) => (n > 0 ? [] : [`${mark}: ${name} is ${n}`]));
    if (shortPoint < 0 || shortPoint > size.length + 1e-6)
      said.push(`${mark}: short point ${shortPoint} of ${size.length}`);
    if (Math.abs(shopLength - size.length) > made.job.tools.roundingStep / 2 + 1e-6)
      said.push(`${mark}: shop length ${shopLength} of ${size.length}`);
    for (const { angleDeg, sawDeg, tiltDeg } of ends)
      if (angleDeg <= 0 || angleDeg > 90 || sawDeg < 0 || sawDeg >= 90 || tiltDeg < 0 || tiltDeg >= 90)
        said.push(`${mark}: an end at ${angleDeg}, saw ${sawDeg}, tilt ${tiltDeg}`);
    return said;
  });
  return { wrong, looked: made.parts.length };
}

/** Noise of turning a point into a run's own coordinates and back. */
const NOISE = 1e-6;

/**
 * Every part lies in the unit: between the floor and its height, and over the floor of its own run or a neighbour's. A run's floor
 * goes from its outermost face to the back of the frame or top, cut at corners by the line through the corner of its front and back,
 * and at walls and free ends by the end itself (a top runs past a free end, and covers a return).
 */
export function within(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  const floors = floorsOf(made);
  // Where corners leave a run's top no full length, or the plan folds, the tops say so in a finding and end wherever they meet.
  const poorTops = made.findings.some((f) => f.rule === 'top-squeezed' || f.rule === 'plan-folds');
  for (const part of made.parts) {
    if (poorTops && part.kind === 'top') continue;
    const i = floors.findIndex((f) => f.run.id === part.run);
    // A butted top goes on to its neighbour's far edge, which may be butted round the next corner in its turn.
    const reach = part.kind === 'top' && made.job.unit.elements.top.corner === 'butted' ? 2 : 1;
    const over = floors.slice(Math.max(0, i - reach), i + reach + 1);
    for (const p of cornersOf(part)) {
      looked++;
      if (p[2] < -NOISE || p[2] > made.job.unit.height + NOISE) wrong.push(`${part.mark} reaches a height of ${p[2]}`);
      if (!over.some((floor) => floor.holds(p, part.kind === 'top'))) {
        const at = seenFrom(floors[i].run, p);
        wrong.push(
          `${part.mark} (${part.name}, ${part.where}) stands outside the unit: x ${at.x} of ${floors[i].run.length}, d ${at.d}`,
        );
        break;
      }
    }
  }
  return { wrong, looked };
}

interface Floor {
  readonly run: RodRun;
  holds(point: Vec3, top: boolean): boolean;
}

function floorsOf(made: Design): readonly Floor[] {
  const { job, rod } = made;
  const { faces, frameDepth } = expectedLayers(job);
  const out = Math.max(...Object.values(faces));
  const back = Math.max(frameDepth, job.unit.depth - faces.top);
  const ends = expectedRuns(job);
  return rod.runs.map((run): Floor => {
    const expected = ends.find((e) => e.id === run.id);
    if (!expected) throw new Error(`run ${run.id} was not asked for`);
    return {
      run,
      holds(point, top) {
        const { x, d } = seenFrom(run, point);
        if (d > out + NOISE || d < -back - NOISE) return false;
        const past = (end: ExpectedEnd, neighbour: string | undefined): number => {
          // A neighbour with no length left is not built, and says so: nothing is there to run into.
          if (rod.runs.some((r) => r.id === neighbour && !r.sound)) return Infinity;
          if (end.kind === 'corner')
            return end.tan * d + (top && end.toReturn ? Math.max(0, faces.top - end.tan * d) : 0);
          return top && end.kind === 'free' ? (job.unit.elements.top.endOverhang as number) : 0;
        };
        return (
          x >= -past(expected.left, run.left.neighbour) - NOISE &&
          x <= run.length + past(expected.right, run.right.neighbour) + NOISE
        );
      },
    };
  });
}

/** The runs lie end to end in plan, each turned from the one before by the corner asked for, and as long as the job and the corner rule make them. */
export function plan(made: Design): Found {
  const wrong: string[] = [];
  const expected = expectedRuns(made.job);
  const { runs } = made.rod;
  if (runs.map((r) => r.id).join() !== expected.map((r) => r.id).join())
    wrong.push(`runs ${runs.map((r) => r.id).join()}`);
  runs.slice(1).forEach((run, i) => {
    const before = runs[i];
    const end: Vec2 = [
      before.origin[0] + before.along[0] * before.length,
      before.origin[1] + before.along[1] * before.length,
    ];
    if (Math.hypot(end[0] - run.origin[0], end[1] - run.origin[1]) > NOISE)
      wrong.push(
        `run ${run.id} starts ${Math.hypot(end[0] - run.origin[0], end[1] - run.origin[1])} from the end of ${before.id}`,
      );
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
