import { level, UP } from '../../src/base/place';
import { meshOf } from '../../src/base/solid/mesh';
import type { Place, Vec3 } from '../../src/vocabulary/geometry';
import type { Shape } from '../../src/vocabulary/shape';
import { type Creased, creased } from './crease';

/** A shape ready to be drawn, in the part's own axes (x along, y across, z out; mm). */
export interface Solid extends Creased {
  readonly min: Vec3;
  readonly max: Vec3;
}

const OWN_AXES: Place = { origin: [0, 0, 0], along: level([1, 0]), across: level([0, 1]), out: UP };

const byShape = new WeakMap<Shape, Solid>();
let byContent = new Map<string, Solid>();

/** More different shapes than one unit ever has; past this the store of shapes begins again. */
const MOST_SHAPES = 2000;

/**
 * The solid of a shape. Shapes of the same content share one, so an edit costs only the shapes that it changed,
 * and twenty like studs cost one.
 */
export function solidOf(shape: Shape): Solid {
  const known = byShape.get(shape);
  if (known) return known;
  const content = JSON.stringify(shape);
  let solid = byContent.get(content);
  if (!solid) {
    if (byContent.size >= MOST_SHAPES) byContent = new Map();
    solid = build(shape);
    byContent.set(content, solid);
  }
  byShape.set(shape, solid);
  return solid;
}

function build(shape: Shape): Solid {
  const mesh = meshOf({ shape, place: OWN_AXES });
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < mesh.positions.length; i++) {
    const axis = i % 3;
    const value = mesh.positions[i]!;
    if (value < min[axis]!) min[axis] = value;
    if (value > max[axis]!) max[axis] = value;
  }
  return { ...creased(mesh), min, max };
}
