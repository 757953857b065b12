import { level } from '../base/place';
import { hull, polygonArea } from '../base/polygon';
import { extentOf } from '../base/solid/extent';
import { SAME_LENGTH } from '../base/tolerance';
import type { Stroke } from '../vocabulary/drawing';
import type { Vec2, Vec3 } from '../vocabulary/geometry';
import type { Part } from '../vocabulary/part';
import type { RodRun } from '../vocabulary/rod';
import type { Drawable } from './drawable';
import { type Cut, cornersBehind, sliceOf } from './slice';
import { boundsOf, onElevation, type Seen } from './view';

/** How far before everything of the run its neighbours are cut, mm. */
const CLEAR = 1;

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
  const each = letters.map((letter) => {
    const theirs = parts.filter((part) => part.run === letter);
    const front = level(rod.runs.find((one) => one.id === letter)?.front ?? run.front);
    const outward = [...theirs]
      .filter((part) => part.from !== 'framed')
      .sort((a, b) => extentOf(a, front)[1] - extentOf(b, front)[1]);
    return {
      seen: outward.flatMap((part) => behind(part, cut, toPaper)),
      section: theirs.flatMap((part) => sectionOf(part, cut, toPaper)),
    };
  });
  return { runs: letters, seen: each.flatMap((one) => one.seen), section: each.flatMap((one) => one.section) };
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
