import type { Cutter } from '../vocabulary/book';
import type { Segment, Vec2 } from '../vocabulary/geometry';
import type { EdgePath } from './edge-path';

/**
 * The Roman mouldings as edge paths, by projection P (how far the curve goes back from the face) and height H (how much of the
 * face it takes), in mm. Constructions: P. Nicholson, *The Mechanic's Companion* (1812 and later), the article on mouldings.
 * Where P and H differ, the arcs are those tangent at one end (plane geometry), so that the curve keeps within the stuff.
 *
 * `fillet`, where given, is a flat sunk square into the face before the curve begins.
 */

/** Radius of an arc across P × H that is tangent to the longer side at one end: (P² + H²) / 2·min(P, H). P = H gives a quadrant. */
export const tangentRadius = (projection: number, height: number): number =>
  (projection * projection + height * height) / (2 * Math.min(projection, height));

/**
 * Ovolo: a round. P = H: the quarter round of the Romans. `construction` 'nicholson': of radius H whatever P is
 * (Nicholson: arcs of radius H from both ends meet at the centre); it swells past its ends, so it needs a fillet before it.
 */
export function ovolo(
  projection: number,
  height: number,
  fillet = 0,
  construction: 'tangent' | 'nicholson' = 'tangent',
): EdgePath {
  const radius = construction === 'nicholson' ? height : tangentRadius(projection, height);
  return curve('ovolo', projection, height, fillet, [{ to: [-projection, 0], radius }]);
}

/** Cavetto, or cove: a hollow, constructed as the ovolo. */
export const cavetto = (projection: number, height: number, fillet = 0): EdgePath =>
  curve('cavetto', projection, height, fillet, [{ to: [-projection, 0], radius: -tangentRadius(projection, height) }]);

/** Chamfer: the arris taken off straight. */
export const chamfer = (projection: number, height: number, fillet = 0): EdgePath =>
  curve('chamfer', projection, height, fillet, [{ to: [-projection, 0] }]);

/**
 * Cyma reversa, the common ogee: round where it projects (next to the face), hollow towards the edge; two equal arcs that run
 * into each other at the middle, quadrants when P = H.
 */
export function cymaReversa(projection: number, height: number, fillet = 0): EdgePath {
  const radius = tangentRadius(projection / 2, height / 2);
  return curve('ogee', projection, height, fillet, [
    { to: [-projection / 2, -height / 2], radius },
    { to: [-projection, 0], radius: -radius },
  ]);
}

/** Cyma recta: hollow where it projects (next to the face), round towards the edge; the arcs as in the cyma reversa. */
export function cymaRecta(projection: number, height: number, fillet = 0): EdgePath {
  const radius = tangentRadius(projection / 2, height / 2);
  return curve('cyma recta', projection, height, fillet, [
    { to: [-projection / 2, -height / 2], radius: -radius },
    { to: [-projection, 0], radius },
  ]);
}

/** What most people call an ogee. */
export const ogee = cymaReversa;

/**
 * Bead: a half round of diameter H that lies flush with the face, parted from it by a quirk (a narrow groove as deep as the
 * bead's radius). It takes H + `quirk` of the face.
 */
export const bead = (height: number, quirk: number): EdgePath => halfRound('bead', height, quirk);

/** Torus: a half round of diameter H, larger than a bead and always with a fillet beside it (Nicholson). It takes H + `fillet` of the face. */
export const torus = (height: number, fillet: number): EdgePath => halfRound('torus', height, fillet);

function halfRound(name: string, height: number, beside: number): EdgePath {
  if (!(height > 0 && beside > 0))
    throw new Error(`a ${name} of ${height} mm with ${beside} mm beside it; both must be above 0`);
  const radius = height / 2;
  return {
    start: [0, -height - beside],
    segments: [{ to: [-radius, -height - beside] }, { to: [-radius, -height] }, { to: [-radius, 0], radius }],
  };
}

function curve(
  name: string,
  projection: number,
  height: number,
  fillet: number,
  segments: readonly Segment[],
): EdgePath {
  if (!(projection > 0 && height > 0 && fillet >= 0)) {
    throw new Error(
      `${name}: projection ${projection}, height ${height}, fillet ${fillet} mm; the first two must be above 0, the fillet not below`,
    );
  }
  if (fillet === 0) return { start: [0, -height], segments };
  const sunk = ([x, y]: Vec2): Vec2 => [x - fillet, y];
  return {
    start: [0, -height],
    segments: [{ to: [-fillet, -height] }, ...segments.map((s) => ({ ...s, to: sunk(s.to) }))],
  };
}

/** A cutter for the stock book or tool list from a path. */
export const cutterOf = (id: string, name: string, path: EdgePath): Cutter => ({ id, name, ...path });
