import type { Vec3 } from '../vocabulary/geometry';
import type { Rod, RodRun } from '../vocabulary/rod';
import type { Section } from '../vocabulary/section';

/** Hands take a section no nearer to its ends than this part of its length (common practice, no source). */
const LIFT_AT = 0.2;

/**
 * Where a section is taken: under the top plate of its front frame, and under its rear rail where it has one. In one run two stations,
 * as far on one side of the centre of gravity as on the other, so that both ends weigh the same; round a corner one in the middle of each
 * piece, between which the centre of gravity lies.
 */
export function liftingPoints(rod: Rod, pieces: Section['pieces'], centre: Vec3): readonly Vec3[] {
  return pieces.flatMap((piece): Vec3[] => {
    const run = rod.runs.find((r) => r.id === piece.run);
    if (!run) return [];
    const stations = pieces.length > 1 ? [(piece.from + piece.to) / 2] : aboutCentre(piece, run, centre);
    return stations.flatMap((x) => [
      at(run, x, -rod.timber.depth / 2, rod.frameHeight - rod.timber.face),
      ...rearRail(rod, run, x),
    ]);
  });
}

function aboutCentre(piece: Section['pieces'][number], { origin, along }: RodRun, centre: Vec3): readonly number[] {
  const middle = (centre[0] - origin[0]) * along[0] + (centre[1] - origin[1]) * along[1];
  const nearer = Math.min(middle - piece.from, piece.to - middle);
  const least = nearer - LIFT_AT * (piece.to - piece.from);
  const arm = least > 0 ? least : nearer / 2;
  return [middle - arm, middle + arm];
}

/** Under the top rail behind, where cross frames carry one at x. */
function rearRail({ carcass }: Rod, run: RodRun, x: number): readonly Vec3[] {
  const held = run.backBays.some((bay) => x >= bay.from && x <= bay.to);
  if (!carcass?.rearRail || !held) return [];
  return [at(run, x, carcass.back + carcass.face / 2, carcass.high - carcass.depth)];
}

const at = ({ origin, along, front }: RodRun, x: number, d: number, z: number): Vec3 => [
  origin[0] + along[0] * x + front[0] * d,
  origin[1] + along[1] * x + front[1] * d,
  z,
];
