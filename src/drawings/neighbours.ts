import { level } from '../base/place';
import { hull, polygonArea } from '../base/polygon';
import { extentOf } from '../base/solid/extent';
import { SAME_LENGTH } from '../base/tolerance';
import type { Stroke } from '../vocabulary/drawing';
import type { Vec2, Vec3 } from '../vocabulary/geometry';
import type { Part } from '../vocabulary/part';
import type { RodRun } from '../vocabulary/rod';
import { outlineWithin, within } from './clip';
import type { Drawable } from './drawable';
import { type Cut, cornersBehind, sliceOf } from './slice';
import { boundsOf, isBehindFrame, onElevation, type Seen } from './view';

/** How far before everything of the run its neighbours are cut, mm. */
const CLEAR = 1;

/** How far behind its frame a neighbour's top is shown before it is broken off, mm. */
const BROKEN_OFF = 60;

/** Size of a break line's zigzag, model mm. */
const ZIGZAG = 24;

/** What stands in front of a run at its inside corners. */
export interface Neighbours {
  /** Letters of the runs that are cut. */
  readonly runs: readonly string[];
  /** Their skin and what lies on it, as far back as it is seen, in the order to paint. Every piece is before the run's own parts. */
  readonly seen: readonly Seen[];
  /** The cut itself, to be painted over all. */
  readonly section: readonly Stroke[];
}

/**
 * The neighbours at inside corners, cut upright and parallel to the run's front, just before the foremost of its own parts: what
 * stands before the cut is taken away, what is cut shows its section, what lies behind it hides the run's own front.
 */
export function neighboursOf({ rod, parts }: Drawable, run: RodRun): Neighbours {
  const normal = level(run.front);
  const own = parts.filter((part) => part.run === run.id);
  const foremost = Math.max(...own.map((part) => extentOf(part, normal)[1]));
  const ends = [run.left, run.right].filter((end) => end.kind === 'corner' && end.deflectionDeg < 0);
  const letters = ends.flatMap((end) => end.neighbour ?? []);
  if (own.length === 0 || letters.length === 0) return { runs: [], seen: [], section: [] };
  const cut: Cut = { normal, at: foremost + CLEAR };
  const toPaper = onElevation(run);
  const each = ends.map((end) => {
    const letter = end.neighbour;
    const other = rod.runs.find((one) => one.id === letter);
    const theirs = parts.filter((part) => part.run === letter && !(other && isBehindFrame(part, other, rod)));
    const front = level(other?.front ?? run.front);
    const outward = [...theirs]
      .filter((part) => part.from !== 'framed')
      .sort((a, b) => extentOf(a, front)[1] - extentOf(b, front)[1]);
    const seen = outward.flatMap((part) => behind(part, cut, toPaper));
    const section = theirs.flatMap((part) => sectionOf(part, cut, toPaper));
    return brokenOff({ seen, section }, end === run.left, rod.frameHeight);
  });
  return { runs: letters, seen: each.flatMap((one) => one.seen), section: each.flatMap((one) => one.section) };
}

type Shown = Pick<Neighbours, 'seen' | 'section'>;

/** Leaves out what reaches far behind the frame, which is only the top: a break line shows where. `isLeft`: of a left end. */
function brokenOff({ seen, section }: Shown, isLeft: boolean, frameHeight: number): Shown {
  const side = isLeft ? -1 : 1;
  const below = section.flatMap(pointsOf).filter(([, z]) => z < frameHeight - SAME_LENGTH);
  const over = section.flatMap(pointsOf).filter(([, z]) => z > frameHeight + SAME_LENGTH);
  const farthest = (points: readonly Vec2[]): number => Math.max(...points.map(([x]) => x * side));
  if (below.length === 0 || over.length === 0) return { seen, section };
  const at = farthest(below) + BROKEN_OFF;
  if (!(farthest(over) > at)) return { seen, section };
  const limits = isLeft ? { from: -at, to: Number.POSITIVE_INFINITY } : { from: Number.NEGATIVE_INFINITY, to: at };
  return {
    seen: seen.flatMap((one) => within(one, limits) ?? []),
    section: [
      ...section.flatMap((stroke): readonly Stroke[] => {
        if (stroke.kind !== 'polygon') return [stroke];
        const points = outlineWithin(stroke.points, limits);
        return points.length < 3 ? [] : [{ ...stroke, points }];
      }),
      breakLine(
        at * side,
        over.map(([, z]) => z),
      ),
    ],
  };
}

const pointsOf = (stroke: Stroke): readonly Vec2[] => ('points' in stroke ? stroke.points : []);

/** A break line, upright: narrow, with a zigzag in its middle (ISO 128-2; from memory), running past what it breaks off, mm. */
function breakLine(x: number, heights: readonly number[]): Stroke {
  const [low, high] = [Math.min(...heights) - ZIGZAG, Math.max(...heights) + ZIGZAG];
  const middle = (low + high) / 2;
  return {
    kind: 'line',
    points: [
      [x, low],
      [x, middle - ZIGZAG / 2],
      [x + ZIGZAG / 2, middle - ZIGZAG / 4],
      [x - ZIGZAG / 2, middle + ZIGZAG / 4],
      [x, middle + ZIGZAG / 2],
      [x, high],
    ],
    pen: 'narrow',
    style: 'continuous',
  };
}

/** The silhouette of what lies behind the cut. A convex hull: it fills hollows. */
function behind(part: Part, cut: Cut, toPaper: (p: Vec3) => Vec2): readonly Seen[] {
  const outline = hull(cornersBehind(part, cut).map(toPaper));
  if (outline.length < 3 || polygonArea(outline) < SAME_LENGTH) return [];
  return [{ part, outline, holes: [], lines: [], nearest: cut.at, ...boundsOf(outline) }];
}

/** The cut faces of a part, filled; a hole through them shows what is behind only as paper. */
const sectionOf = (part: Part, cut: Cut, toPaper: (p: Vec3) => Vec2): readonly Stroke[] =>
  sliceOf(part, cut)
    .map((loop) => loop.map(toPaper))
    .filter((points) => Math.abs(polygonArea(points)) > SAME_LENGTH)
    .map((points) => ({
      kind: 'polygon',
      points,
      fill: polygonArea(points) > 0 ? 'timber' : 'paper',
      pen: 'wide',
      part: part.mark,
    }));
