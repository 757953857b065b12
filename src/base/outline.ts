import type { Outline, Vec2 } from '../vocabulary/geometry';
import { arcOf, arcPoint, chordsOf, headingOf } from './arc';
import { polygonArea } from './polygon';
import { CHORD_ERROR } from './tolerance';

/** An outline drawn with straight pieces. `sharp[i]`: at point i there is an arris that one sees and feels. */
export interface Facets {
  readonly points: readonly Vec2[];
  readonly sharp: readonly boolean[];
}

/** A turn of more than this shows as an arris; less looks smooth once painted. Degrees; from memory, no source. */
const ARRIS_DEG = 12;
/** Points nearer than this are one point, mm: far below anything cut, far above the noise of the last digits. */
const SAME_POINT = 1e-7;
/** How far the last segment may end from the start, mm. */
const CLOSED = 1e-6;

const known = new WeakMap<Outline, Facets>();

/**
 * The outline as a polygon, counter-clockwise, without a repeated last point. Corners are exact; arcs are replaced by chords
 * that leave them by no more than `chordError` mm. The same outline gives the same array at the default chord error.
 * Throws when the outline isn't closed, runs clockwise, or asks for an impossible arc.
 */
export function flatten(outline: Outline, chordError: number = CHORD_ERROR): readonly Vec2[] {
  return facetsOf(outline, chordError).points;
}

/** As `flatten`, and which of the points are arrises. */
export function facetsOf(outline: Outline, chordError: number = CHORD_ERROR): Facets {
  if (chordError !== CHORD_ERROR) return makeFacets(outline, chordError);
  let facets = known.get(outline);
  if (!facets) {
    facets = makeFacets(outline, chordError);
    known.set(outline, facets);
  }
  return facets;
}

function makeFacets(outline: Outline, chordError: number): Facets {
  if (!(chordError > 0)) throw new Error(`a chord error of ${chordError} mm; it must be above 0`);
  const points: Vec2[] = [];
  const sharp: boolean[] = [];
  const { start, segments } = withoutEmptySegments(outline);
  let from = start;
  for (let i = 0; i < segments.length; i++) {
    const segment = segments[i];
    points.push(from);
    sharp.push(turnsSharply(outlineBefore(segments, i, start), from, segment));
    const arc = arcOf(from, segment);
    if (arc) {
      const pieces = chordsOf(arc, chordError);
      for (let k = 1; k < pieces; k++) {
        points.push(arcPoint(arc, k / pieces));
        sharp.push(false);
      }
    }
    from = segment.to;
  }
  const area = polygonArea(points);
  if (!(area > 0)) {
    throw new Error(
      `an outline of ${segments.length} segments from (${start[0]}, ${start[1]}) has an area of ${area} mm²; it must run counter-clockwise`,
    );
  }
  return { points, sharp };
}

function withoutEmptySegments(outline: Outline): Outline {
  const segments: Outline['segments'][number][] = [];
  let from = outline.start;
  for (const segment of outline.segments) {
    if (Math.hypot(segment.to[0] - from[0], segment.to[1] - from[1]) < SAME_POINT) continue;
    segments.push(segment);
    from = segment.to;
  }
  const gap = Math.hypot(from[0] - outline.start[0], from[1] - outline.start[1]);
  if (!(gap <= CLOSED)) {
    throw new Error(
      `an outline starts at (${outline.start[0]}, ${outline.start[1]}) and ends at (${from[0]}, ${from[1]}); it must close`,
    );
  }
  return { start: from, segments };
}

interface Arrival {
  readonly from: Vec2;
  readonly segment: Outline['segments'][number];
}

function outlineBefore(segments: Outline['segments'], i: number, start: Vec2): Arrival {
  const n = segments.length;
  const segment = segments[(i + n - 1) % n];
  const before = segments[(i + n - 2) % n];
  return { segment, from: i === 1 ? start : before.to };
}

function turnsSharply(arrival: Arrival, at: Vec2, leaving: Outline['segments'][number]): boolean {
  const turn = headingOf(at, leaving, false) - headingOf(arrival.from, arrival.segment, true);
  return Math.cos(turn) < Math.cos((ARRIS_DEG * Math.PI) / 180);
}

/** Area of an outline, mm², exact: its arcs are reckoned as arcs. Positive for a counter-clockwise outline. */
export function areaOf(outline: Outline): number {
  const corners: Vec2[] = [];
  let segments = 0;
  let from = outline.start;
  for (const segment of outline.segments) {
    corners.push(from);
    const arc = arcOf(from, segment);
    // A circular segment: r²/2·(θ − sin θ); a hollow's sweep is negative, and so is its share.
    if (arc) segments += (arc.radius * arc.radius * (arc.sweep - Math.sin(arc.sweep))) / 2;
    from = segment.to;
  }
  return polygonArea(corners) + segments;
}

/** Smallest and greatest coordinates that an outline reaches, exact for arcs. */
export function boundsOf(outline: Outline): Bounds {
  const known = bounds.get(outline);
  if (known) return known;
  const found = reachOf(outline);
  bounds.set(outline, found);
  return found;
}

interface Bounds {
  readonly min: Vec2;
  readonly max: Vec2;
}

const bounds = new WeakMap<Outline, Bounds>();

function reachOf(outline: Outline): Bounds {
  let [x0, y0] = outline.start;
  let [x1, y1] = [x0, y0];
  const reach = (p: Vec2): void => {
    x0 = Math.min(x0, p[0]);
    y0 = Math.min(y0, p[1]);
    x1 = Math.max(x1, p[0]);
    y1 = Math.max(y1, p[1]);
  };
  let from = outline.start;
  for (const segment of outline.segments) {
    reach(segment.to);
    const arc = arcOf(from, segment);
    if (arc) {
      // The arc's own extremes are where it crosses a quarter turn.
      const a = Math.min(arc.startAngle, arc.startAngle + arc.sweep);
      const b = Math.max(arc.startAngle, arc.startAngle + arc.sweep);
      for (let q = Math.ceil(a / (Math.PI / 2)); q * (Math.PI / 2) <= b; q++) {
        const turn = q * (Math.PI / 2);
        reach([arc.centre[0] + arc.radius * Math.cos(turn), arc.centre[1] + arc.radius * Math.sin(turn)]);
      }
    }
    from = segment.to;
  }
  return { min: [x0, y0], max: [x1, y1] };
}

/** A rectangle from (0, 0), `width` along u and `height` along v. */
export const rectangle = (width: number, height: number): Outline => ({
  start: [0, 0],
  segments: [{ to: [width, 0] }, { to: [width, height] }, { to: [0, height] }, { to: [0, 0] }],
});
