import { alongFace } from '../base/along';
import { deepestOf } from '../base/deepest';
import { extentOf } from '../base/solid/extent';
import { fromSquareDeg } from '../base/square';
import { radians } from '../base/vec';
import type { Job } from '../vocabulary/job';
import type { Notch, Scribe } from '../vocabulary/making';
import type { Part } from '../vocabulary/part';
import type { Rod, RodRun } from '../vocabulary/rod';
import { MOST_GAP } from './contacts';
import { type Floor, floorOf } from './floor';
import { lowestOf } from './order';

/** Further from square than this, a wall can't be the one that an end stands against (degrees; common practice, no source). */
const MOST_ASKEW_DEG = 30;

/** An end of the unit that stands against a wall. */
interface AtWall {
  readonly run: RodRun;
  readonly side: 'left' | 'right';
  readonly wall?: Job['survey']['walls'][number];
}

function wallEnds({ unit, survey }: Job, rod: Rod): readonly AtWall[] {
  const of = (side: 'left' | 'right', run: RodRun | undefined): readonly AtWall[] => {
    const end = side === 'left' ? unit.plan.leftEnd : unit.plan.rightEnd;
    if (end.kind !== 'wall' || !run) return [];
    const wall = survey.walls.find((w) => w.name === end.wall);
    return [{ run, side, ...(wall ? { wall } : {}) }];
  };
  return [...of('left', rod.runs[0]), ...of('right', rod.runs.at(-1))];
}

/**
 * What is scribed to the walls: at each wall end the front, over the frame's height to the underside of the top; the top, over its depth;
 * and a worktop, over its own. `most` is the widest gap that the wall leaves when the unit touches it at one point: it leans by so much over the height of the
 * front, or up to the top, and runs out of square by so much over the depth. 0 where the wall was not surveyed.
 */
export function wallScribes(job: Job, rod: Rod): readonly Scribe[] {
  return wallEnds(job, rod).flatMap(({ run, side, wall }): Scribe[] => {
    const askew = wall ? fromSquareDeg(wall.directionDeg, run.along) : 0;
    if (Math.abs(askew) > MOST_ASKEW_DEG) return [];
    const perDepth = Math.abs(Math.tan(radians(askew)));
    const deep = deepestOf(rod, run);
    const all = perDepth * deep;
    const lean = Math.abs(Math.tan(radians(wall?.leanDeg ?? 0)));
    // Turned counter-clockwise, a wall at the right end comes nearer as it goes back: the unit touches there and gapes in front.
    const gapesInFront = askew !== 0 && askew > 0 === (side === 'right');
    const gapesAbove = (wall?.leanDeg ?? 0) > 0;
    const at = `${side} end of run ${run.id}, ${wall ? wall.name : 'wall not surveyed'}`;
    const left = run[side].scribe;
    return [
      {
        where: `front, ${at}`,
        run: run.id,
        length: rod.frameHeight,
        most: lean * rod.frameHeight + (gapesInFront ? all : 0),
        left,
      },
      {
        where: `end of the top, ${at}`,
        run: run.id,
        length: rod.depth,
        most: (gapesInFront ? all : perDepth * rod.depth) + (gapesAbove ? lean * rod.height : 0),
        left,
      },
      ...worktopAt(rod, run, side).map(({ high, from, to }) => ({
        where: `end of the worktop, ${at}`,
        run: run.id,
        length: to - from,
        most: perDepth * (gapesInFront ? deep - from : to) + lean * (gapesAbove ? high : rod.height - high),
        left,
      })),
    ];
  });
}

/** The worktop that comes up to an end of a run: its height, and from where to where it lies back from the top's front edge. None, or one. */
function worktopAt(
  { carcass, top }: Rod,
  { crossLines }: RodRun,
  side: 'left' | 'right',
): readonly { readonly high: number; readonly from: number; readonly to: number }[] {
  const worktop = carcass?.worktop;
  const last = side === 'left' ? crossLines[0] : crossLines[crossLines.length - 1];
  // Before a join no cross frame may stand near the end: then no worktop does.
  if (!carcass || !worktop || worktop.leftOut || last?.why !== 'end') return [];
  return [{ high: worktop.high, from: top.overhang - carcass.front, to: top.overhang - worktop.edge }];
}

/**
 * What is scribed to the floor: in each run, what is seen and comes down to it, by the floor's fall below its highest point where such a
 * piece stands; `x`: where that is.
 */
export function floorScribes(parts: readonly Part[], rod: Rod, floor: Floor): readonly Scribe[] {
  const seen = parts.filter((p) => (p.from !== 'framed' || p.finish !== 'bare') && extentOf(p, UP)[0] < MOST_GAP);
  return rod.runs.flatMap((run): Scribe[] => {
    const down = seen.filter((p) => p.run === run.id);
    if (!run.sound || down.length === 0) return [];
    const { x, height } = down
      .map((p) => alongFace(p, run))
      .map(([from, to]) => floor.lowest(run, clampedTo(run, from), clampedTo(run, to)))
      .reduce((low, point) => (point.height < low.height ? point : low));
    const names = [...new Set(down.map((p) => p.name))];
    const spare = down.map((p) =>
      Math.max(0, ...(p.oversize ?? []).filter((o) => o.below === true).map((o) => o.amount)),
    );
    return [
      {
        where: `floor, run ${run.id}: ${names.join(', ')}`,
        run: run.id,
        length: run.length,
        most: floor.datum - height,
        left: Math.min(...spare),
        x,
      },
    ];
  });
}

/** What is scribed to the floor as the job has surveyed it; nothing where it is not. */
export function surveyedFloorScribes({ survey }: Job, parts: readonly Part[], rod: Rod): readonly Scribe[] {
  const floor = floorOf(survey.levels, rod);
  return floor ? floorScribes(parts, rod, floor) : [];
}

/** What stands round a corner reaches beyond its run; the floor is known along it. */
const clampedTo = ({ length }: RodRun, x: number): number => Math.min(length, Math.max(0, x));

const UP = [0, 0, 1] as const;

/** Skirting on the walls that stays: which parts come so near to the wall, and so low, that they are cut to its section. */
export function notchesOf(job: Job, rod: Rod, parts: readonly Part[]): readonly Notch[] {
  return wallEnds(job, rod).flatMap(({ run, side, wall }): Notch[] => {
    const { skirtingHeight: height = 0, skirtingThickness: thickness = 0 } = wall ?? {};
    if (!wall || height <= 0 || thickness <= 0) return [];
    const near = parts.filter((p) => {
      if (p.run !== run.id || lowestOf(p) >= height) return false;
      const [from, to] = alongFace(p, run);
      return side === 'left' ? from < thickness : to > run.length - thickness;
    });
    if (near.length === 0) return [];
    return [
      {
        where: `${side} end of run ${run.id}, ${wall.name}`,
        run: run.id,
        parts: near.map((p) => p.mark),
        height,
        thickness,
      },
    ];
  });
}
