import { design } from '../../../src/flow';
import { mirrorJob } from '../../../src/job/mirror';
import type { Design } from '../../../src/vocabulary/design';
import type { Vec3 } from '../../../src/vocabulary/geometry';
import type { Part } from '../../../src/vocabulary/part';
import type { RodRun } from '../../../src/vocabulary/rod';
import { cornersOf } from '../measure';
import type { Found } from '../sample';
import { joinedByHand } from './repeated';

/** Two units this near are the same, mm. */
const NEAR = 1e-6;

/**
 * The mirrored job's unit is the unit's mirror image: the same pieces, with the same ends, each where its image would be. Of two ways of parting a
 * unit that are as good either may be chosen, so joins in the fewest sections are held where they are, as marked by hand.
 */
export function mirrored(given: Design): Found {
  const made = given.job.unit.joins.by === 'least' ? { ...given, job: joinedByHand(given) } : given;
  const job = mirrorJob(
    made.job,
    (run) => runAt(made, run).length,
    (run) => runAt(made, run).bays.length,
  );
  const other = design(job);
  const wrong: string[] = [];
  if (other.parts.length !== made.parts.length)
    wrong.push(`${made.parts.length} parts, in the mirror ${other.parts.length}`);
  const waiting = new Map<string, Standing[]>();
  for (const part of other.parts) {
    const standing = standingOf(part, (p) => p);
    const list = waiting.get(part.kind + part.name);
    if (list) list.push(standing);
    else waiting.set(part.kind + part.name, [standing]);
  }
  const image = imageOf(made);
  for (const part of made.parts) {
    const mine = standingOf(part, image);
    const list = waiting.get(part.kind + part.name) ?? [];
    const at = list.findIndex((s) => alike(mine, s));
    if (at < 0) {
      wrong.push(`${part.mark} (${part.name}, ${part.where}) has no image`);
    } else list.splice(at, 1);
  }
  return { wrong, looked: made.parts.length };
}

function runAt({ rod }: Design, index: number): RodRun {
  const run = rod.runs.find((r) => r.jobIndex === index);
  if (!run) throw new Error(`no run ${index}`);
  return run;
}

/** Mirrors the plan and lays the last of the job's runs, now the first, along x from the origin. */
function imageOf({ rod }: Design): (p: Vec3) => Vec3 {
  const own = rod.runs.filter((r) => r.jobIndex !== null);
  const { origin, along, length } = own[own.length - 1];
  const end = [origin[0] + along[0] * length, origin[1] + along[1] * length];
  // Along the run from its right-hand end backwards becomes x; out of its front, −y, stays out of the front.
  return ([x, y, z]) => {
    const [u, v] = [x - end[0], y - end[1]];
    return [-(u * along[0] + v * along[1]), -(u * along[1] - v * along[0]), z];
  };
}

/** A part as it stands: its box, and the first two moments of its corners, which no two different ways of standing share by chance. */
interface Standing {
  readonly part: Part;
  readonly numbers: readonly number[];
  readonly ends: readonly string[];
}

function standingOf(part: Part, image: (p: Vec3) => Vec3): Standing {
  const points = cornersOf(part).map(image);
  const n = points.length;
  const mean = [0, 1, 2].map((k) => points.reduce((s, p) => s + p[k], 0) / n);
  const low = [0, 1, 2].map((k) => Math.min(...points.map((p) => p[k])));
  const high = [0, 1, 2].map((k) => Math.max(...points.map((p) => p[k])));
  // Square roots of the moments, so that they are lengths and one tolerance serves all.
  const spread = [0, 1, 2].map((k) => Math.sqrt(points.reduce((s, p) => s + (p[k] - mean[k]) ** 2, 0) / n));
  const skew = points.reduce((s, p) => s + (p[0] - mean[0]) * (p[1] - mean[1]), 0) / n;
  const { length, width, thickness } = part.size;
  return {
    part,
    numbers: [
      ...mean,
      ...low,
      ...high,
      ...spread,
      Math.sign(skew) * Math.sqrt(Math.abs(skew) < 1e-3 ? 0 : Math.abs(skew)),
      length,
      width,
      thickness,
      part.shortPoint,
      part.weightKg,
    ],
    ends: part.ends
      .map((e) => `${e.kind} ${e.angleDeg.toFixed(4)} ${e.sawDeg.toFixed(4)} ${e.tiltDeg.toFixed(4)} ${e.longSide}`)
      .sort(),
  };
}

const alike = (a: Standing, b: Standing): boolean =>
  a.numbers.every((n, i) => Math.abs(n - b.numbers[i]) <= NEAR * 10) && a.ends.every((e, i) => e === b.ends[i]);
