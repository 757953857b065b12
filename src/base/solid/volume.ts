import type { Outline, Vec2 } from '../../vocabulary/geometry';
import type { Board, Shape, Stick } from '../../vocabulary/shape';
import { flatten } from '../outline';
import { polygonArea, polygonCentroid } from '../polygon';
import { endSection } from './hollows';
import { ringsOf } from './rings';
import { planeAt } from './stick';

/**
 * Volume of a shape, mm³: exactly that of its mesh (arcs as the flattened outline has them). Needs no mesh.
 * Throws, with the values, for a board whose edges can't be made.
 */
export const volumeOf = (shape: Shape): number => (shape.kind === 'stick' ? stickVolume(shape) : boardVolume(shape));

const sections = new WeakMap<Outline, { area: number; centre: Vec2 }>();

/** Area × length through the section's centre of area: exact, since both ends are planes. What stopped hollows take is a prism. */
function stickVolume(stick: Stick): number {
  const ends = areaAndCentre(endSection(stick));
  const [u, v] = ends.centre;
  const uncut = ends.area * (planeAt(stick.end, u, v) - planeAt(stick.start, u, v));
  const { stopped } = stick;
  return stopped ? uncut - (ends.area - areaAndCentre(stick.section).area) * (stopped.to - stopped.from) : uncut;
}

function areaAndCentre(outline: Outline): { readonly area: number; readonly centre: Vec2 } {
  let section = sections.get(outline);
  if (!section) {
    const points = flatten(outline);
    section = { area: polygonArea(points), centre: polygonCentroid(points) };
    sections.set(outline, section);
  }
  return section;
}

/** Between two rings every corner moves in a straight line, so the area is quadratic in height and Simpson's rule exact. */
function boardVolume(board: Board): number {
  const rings = ringsOf(board);
  let volume = 0;
  for (let r = 0; r + 1 < rings.length; r++) {
    const low = rings[r];
    const high = rings[r + 1];
    if (low.points === high.points) {
      volume += polygonArea(low.points) * (high.out - low.out);
      continue;
    }
    const middle = low.points.map(([x, y], i): Vec2 => {
      const [p, q] = high.points[i];
      return [(x + p) / 2, (y + q) / 2];
    });
    const areas = polygonArea(low.points) + 4 * polygonArea(middle) + polygonArea(high.points);
    volume += (areas / 6) * (high.out - low.out);
  }
  for (const hole of board.holes) volume -= polygonArea(flatten(hole)) * board.thickness;
  return volume;
}
