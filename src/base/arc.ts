import type { Segment, Vec2 } from '../vocabulary/geometry';

/** A circular arc of an outline: from `from` to `to` about `centre`, turned through `sweep` radians (positive: counter-clockwise). */
export interface Arc {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly centre: Vec2;
  readonly radius: number;
  readonly startAngle: number;
  readonly sweep: number;
}

/** How far a radius may fall short of half its chord and still be read as a semicircle, mm: noise of the last digits. */
const SEMICIRCLE_NOISE = 1e-6;

/**
 * The arc of a segment that starts at `from`, or null when the segment is straight. Radius positive: a round, turning left as
 * the outline runs; negative: a hollow. Always the shorter arc, a semicircle at most.
 * Throws when the radius is less than half the distance between the ends, since no such arc exists.
 */
export function arcOf(from: Vec2, segment: Segment): Arc | null {
  const signed = segment.radius;
  if (signed === undefined) return null;
  const to = segment.to;
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const chord = Math.hypot(dx, dy);
  if (chord === 0) return null;
  const half = chord / 2;
  if (!(Math.abs(signed) >= half - SEMICIRCLE_NOISE)) {
    throw new Error(
      `an arc from (${from[0]}, ${from[1]}) to (${to[0]}, ${to[1]}) has a radius of ${Math.abs(signed)}; at least half its chord, ${half}, is needed`,
    );
  }
  const radius = Math.max(Math.abs(signed), half);
  const turn = Math.sign(signed);
  // The centre of a round lies to the left of the chord, that of a hollow to the right.
  const rise = (turn * Math.sqrt(Math.max(0, radius * radius - half * half))) / chord;
  const centre: Vec2 = [from[0] + dx / 2 - dy * rise, from[1] + dy / 2 + dx * rise];
  return {
    from,
    to,
    centre,
    radius,
    startAngle: Math.atan2(from[1] - centre[1], from[0] - centre[0]),
    sweep: turn * 2 * Math.asin(Math.min(1, half / radius)),
  };
}

/** The point of an arc at a fraction of its sweep. */
export function arcPoint(arc: Arc, fraction: number): Vec2 {
  const a = arc.startAngle + arc.sweep * fraction;
  return [arc.centre[0] + arc.radius * Math.cos(a), arc.centre[1] + arc.radius * Math.sin(a)];
}

/** Into how many chords an arc is cut so that none is further than `chordError` from it. */
export function chordsOf(arc: Arc, chordError: number): number {
  if (chordError >= arc.radius) return Math.max(1, Math.ceil(Math.abs(arc.sweep) / Math.PI));
  const each = 2 * Math.acos(1 - chordError / arc.radius);
  return Math.max(1, Math.ceil(Math.abs(arc.sweep) / each - 1e-9));
}

/** Direction in which a segment leaves `from` (`end` false) or arrives at its `to` (`end` true), radians. */
export function headingOf(from: Vec2, segment: Segment, end: boolean): number {
  const chord = Math.atan2(segment.to[1] - from[1], segment.to[0] - from[0]);
  const arc = arcOf(from, segment);
  return arc ? chord + ((end ? 1 : -1) * arc.sweep) / 2 : chord;
}
