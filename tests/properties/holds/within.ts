import type { Design } from '../../../src/vocabulary/design';
import type { RodRun } from '../../../src/vocabulary/rod';
import { type ExpectedEnd, type ExpectedRun, expectedRuns } from '../expected';
import { expectedReach, type Reach } from '../expected-reach';
import { cornersOf, type InRun, seenFrom } from '../measure';
import type { Found } from '../sample';

/** Noise of turning a point into a run's own coordinates and back. */
const NOISE = 1e-6;

/**
 * Every part lies where its kind may: between the heights, in front of and behind the frame's face, and past an end no further than its
 * decisions say (`expected-reach.ts`). At corners it is cut by the line through the corner of front and back, or lies over the floor of the run
 * round the corner.
 */
export function within(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  const { rod, job } = made;
  const expected = expectedRuns(job);
  const reachOf = expectedReach(job);
  // Where corners leave a run's top no full length, or the plan folds, the tops say so in a finding and end wherever they meet; a flap is a piece of them.
  const poorTops = made.findings.some((f) => f.rule === 'top-squeezed' || f.rule === 'plan-folds');
  // A neighbour with no length left is not built, and says so: nothing is there to run into.
  const missing = new Set(rod.runs.filter((r) => !r.sound).map((r) => r.id));
  for (const part of made.parts) {
    if (poorTops && (part.kind === 'top' || part.code === 'LF')) continue;
    const reach = reachOf(part);
    const i = rod.runs.findIndex((r) => r.id === part.run);
    if (!reach || i < 0) {
      wrong.push(`nothing is expected of ${part.mark} (${part.kind}, ${part.name})`);
      continue;
    }
    // A butted top goes on to its neighbour's far edge, which may be butted round the next corner in its turn.
    const corners = part.kind === 'top' && job.unit.elements.top.corner === 'butted' ? 2 : 1;
    const over = roundCorners(rod.runs, expected, i, corners);
    for (const p of cornersOf(part)) {
      looked++;
      if (p[2] < reach.low - NOISE || p[2] > reach.high + NOISE)
        wrong.push(`${part.mark} (${part.name}, ${part.where}) reaches a height of ${p[2]}`);
      if (!over.some((floor) => holds(floor, seenFrom(floor.run, p), reach, missing))) {
        const at = seenFrom(rod.runs[i], p);
        wrong.push(
          `${part.mark} (${part.name}, ${part.where}) stands outside the unit: x ${at.x} of ${rod.runs[i].length}, d ${at.d}`,
        );
        break;
      }
    }
  }
  return { wrong, looked };
}

interface Floor {
  readonly run: RodRun;
  readonly ends: ExpectedRun;
  /** How much further back than its own a part from round the corner may reach here, by the depth of the part's own kind. */
  readonly further: number;
}

/** Inside corners this near to square have one frame run on square behind the other (setting-out/corner.ts), degrees. */
const NEAR_SQUARE = 10;

/** A run and those round so many corners from it. */
function roundCorners(
  runs: readonly RodRun[],
  expected: readonly ExpectedRun[],
  i: number,
  corners: number,
): readonly Floor[] {
  let [from, to] = [i, i];
  for (let k = 0; k < corners; k++) {
    if (expected[from].left.kind === 'corner') from--;
    if (expected[to].right.kind === 'corner') to++;
  }
  const further = ({ turnDeg }: ExpectedEnd): number =>
    Math.abs(turnDeg + 90) <= NEAR_SQUARE ? Math.abs(Math.cos((turnDeg * Math.PI) / 180)) : 0;
  return runs.slice(from, to + 1).map((run, k) => {
    const ends = expected[from + k];
    const at = from + k;
    return { run, ends, further: at === i - 1 ? further(ends.right) : at === i + 1 ? further(ends.left) : 0 };
  });
}

/** Whether a point of such a part may lie along a run there. */
function holds({ run, ends, further }: Floor, { x, d }: InRun, reach: Reach, missing: ReadonlySet<string>): boolean {
  const back = reach.square ? reach.back * (1 + further) : reach.back;
  if (d > reach.front + NOISE || d < back - NOISE) return false;
  const past = (end: ExpectedEnd, neighbour: string | undefined): number => {
    if (neighbour && missing.has(neighbour)) return Infinity;
    if (end.flap !== undefined) return reach.past.flap;
    if (end.kind !== 'corner') return reach.past[end.kind];
    if (!end.toReturn || reach.pastReturn === undefined) return end.tan * d;
    return reach.pastReturn < 0 ? reach.pastReturn : Math.max(end.tan * d, reach.pastReturn);
  };
  return (
    x >= -past(ends.left, run.left.neighbour) - NOISE && x <= run.length + past(ends.right, run.right.neighbour) + NOISE
  );
}
