import { arcOf, arcPoint, chordsOf } from '../base/arc';
import { type EdgePath, reachOf } from '../base/edge-path';
import { boundsOf } from '../base/outline';
import { polygonArea } from '../base/polygon';
import { CHORD_ERROR, SAME_LENGTH } from '../base/tolerance';
import { add2, cross2, dot2, scale2, sub2 } from '../base/vec';
import type { Cutter } from '../vocabulary/book';
import type { Outline, Segment, Vec2 } from '../vocabulary/geometry';

/** What is wrong with a section or a cutter, at a path within it. */
export interface ProfileFault {
  readonly at: readonly (string | number)[];
  readonly message: string;
}

/** Chord error where only crossing is asked, mm: coarse, since every side is held against every other. */
const CROSSING_ERROR = 0.25;
/** How far the end of a section may miss its start, and a radius half its chord, mm: what the solids accept. */
const NOISE = 1e-6;

/** A moulding's section closes, has possible arcs, does not cross itself, and runs counter-clockwise. */
export function sectionFaults(section: Outline): ProfileFault[] {
  const { start, segments } = section;
  const faults = segmentFaults(start, segments);
  if (faults.length > 0) return faults;
  const last = segments.length - 1;
  const end = segments[last]?.to ?? start;
  if (distance(end, start) > NOISE) {
    return [
      fault(['segments', last, 'to'], `found ${show(end)}; a closed section ends where it starts, ${show(start)}`),
    ];
  }
  const coarse = pointsOf(start, segments, CROSSING_ERROR);
  if (crosses(coarse, true) || touches(coarse)) return [fault([], 'a side of the section crosses or touches another')];
  const { min } = boundsOf(section);
  if (Math.max(Math.abs(min[0]), Math.abs(min[1])) > NOISE) {
    return [fault([], `its lower edge and its back lie at ${show(min)}; a section is drawn from [0, 0]`)];
  }
  const area = polygonArea(pointsOf(start, segments, CHORD_ERROR));
  if (area > 0) return [];
  return [
    fault([], `${area < 0 ? 'runs clockwise' : 'encloses nothing'}; a section runs counter-clockwise round the stuff`),
  ];
}

/** A cutter's path goes from the face to the edge, within the stuff, has possible arcs and does not cross itself. */
export function cutterFaults({ start, segments }: Cutter): ProfileFault[] {
  const faults = segmentFaults(start, segments);
  if (faults.length > 0) return faults;
  const last = segments.length - 1;
  const end = segments[last]?.to ?? start;
  if (start[0] !== 0 || start[1] >= 0) {
    return [fault(['start'], `found ${show(start)}; a cut starts on the face below the arris: [0, less than 0]`)];
  }
  if (end[1] !== 0 || end[0] >= 0) {
    return [
      fault(['segments', last, 'to'], `found ${show(end)}; a cut ends on the edge behind the arris: [less than 0, 0]`),
    ];
  }
  const outside = reachFault({ start, segments });
  if (outside) return [fault(['segments'], outside)];
  return crosses(pointsOf(start, segments, CROSSING_ERROR), false) ? [fault(['segments'], 'crosses its own path')] : [];
}

/** Segments without length and arcs that no circle of their radius can make. */
function segmentFaults(start: Vec2, segments: readonly Segment[]): ProfileFault[] {
  return segments.flatMap(({ to, radius }, i) => {
    const from = segments[i - 1]?.to ?? start;
    const chord = distance(from, to);
    if (chord <= SAME_LENGTH) return [fault(['segments', i, 'to'], `found ${show(to)}, where the segment starts`)];
    if (radius === undefined || Math.abs(radius) >= chord / 2 - NOISE) return [];
    const needed = `an arc from ${show(from)} to ${show(to)} needs at least ${(Math.ceil(chord * 500) / 1000).toFixed(3)}`;
    return [fault(['segments', i, 'radius'], `found ${radius}; ${needed}, or as much below 0 for a hollow`)];
  });
}

/** Corners of the path with its arcs in chords; a closing point that repeats the start is left out. */
function pointsOf(start: Vec2, segments: readonly Segment[], chordError: number): Vec2[] {
  const points: Vec2[] = [start];
  let from = start;
  for (const segment of segments) {
    const arc = arcOf(from, segment);
    const pieces = arc ? chordsOf(arc, chordError) : 1;
    for (let k = 1; arc && k < pieces; k += 1) points.push(arcPoint(arc, k / pieces));
    points.push(segment.to);
    from = segment.to;
  }
  if (distance(from, start) <= NOISE) points.pop();
  return points;
}

/** Whether a side properly crosses another. Touching is allowed. */
function crosses(points: readonly Vec2[], closed: boolean): boolean {
  const sides = points
    .slice(0, closed ? points.length : -1)
    .map((a, i): [Vec2, Vec2] => [a, points[(i + 1) % points.length] ?? a]);
  return sides.some(([a, b], i) => {
    const [left, right] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])];
    for (let j = i + 2; j < sides.length; j += 1) {
      const [c, d] = sides[j] ?? [a, b];
      if ((c[0] < left && d[0] < left) || (c[0] > right && d[0] > right)) continue;
      if (properlyCross(a, b, c, d)) return true;
    }
    return false;
  });
}

/** What the engine itself would say of a cutter's path, or nothing. */
function reachFault(path: EdgePath): string | undefined {
  try {
    reachOf(path);
    return undefined;
  } catch (error) {
    return (error as Error).message;
  }
}

/** Whether a corner lies on a side that it does not belong to: the stuff would be cut in two there. */
function touches(points: readonly Vec2[]): boolean {
  const n = points.length;
  return points.some((p, k) =>
    points.some((a, i) => {
      const j = (i + 1) % n;
      return k !== i && k !== j && fromSide(p, a, points[j]) < SAME_LENGTH;
    }),
  );
}

/** Distance of a point from a side, mm. */
function fromSide(p: Vec2, a: Vec2, b: Vec2): number {
  const side = sub2(b, a);
  const t = Math.min(1, Math.max(0, dot2(sub2(p, a), side) / dot2(side, side)));
  return distance(p, add2(a, scale2(side, t)));
}

function properlyCross(a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean {
  const side = (p: Vec2, q: Vec2, r: Vec2) => cross2(sub2(q, p), sub2(r, p));
  const slack = SAME_LENGTH * SAME_LENGTH;
  return side(a, b, c) * side(a, b, d) < -slack && side(c, d, a) * side(c, d, b) < -slack;
}

const fault = (at: ProfileFault['at'], message: string): ProfileFault => ({ at, message });
const distance = (a: Vec2, b: Vec2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
const show = (p: Vec2): string => `[${Number(p[0].toFixed(3))}, ${Number(p[1].toFixed(3))}]`;
