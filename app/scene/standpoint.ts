import { add, cross, dot, scale, sub } from '../../src/base/vec';
import type { Vec2, Vec3 } from '../../src/vocabulary/geometry';
import type { RodRun } from '../../src/vocabulary/rod';
import type { Look } from '../store/view';
import type { Box } from './assembly';

/** Where the viewer stands, in unit coordinates, and how wide he sees (upright angle of view, degrees). */
export interface Standpoint {
  readonly position: Vec3;
  readonly target: Vec3;
  readonly fovDeg: number;
}

/** As the unit is seen by somebody in the room; and from so far off that parallel lines look parallel. */
const NEAR_FOV_DEG = 32;
const FAR_FOV_DEG = 1.2;

/** Free space round the unit in a fitted view. */
const MARGIN = 1.06;

/** Looking straight down, a hair towards the front keeps "up the screen" the way from front to back. */
const HAIR = 1e-3;

const unit = (v: Vec3): Vec3 => scale(v, 1 / (Math.hypot(...v) || 1));

/** Which way a unit faces, all in all, in plan (a unit vector): each run's front counts by its length. */
export function facing(runs: readonly Pick<RodRun, 'front' | 'length'>[]): Vec2 {
  let x = 0;
  let y = 0;
  let total = 0;
  for (const { front, length } of runs) {
    x += front[0] * length;
    y += front[1] * length;
    total += length;
  }
  const size = Math.hypot(x, y);
  // Fronts that look all ways have no side of their own; the first run then speaks for the unit.
  if (size < 0.1 * total) return runs[0]?.front ?? [0, -1];
  return size === 0 ? [0, -1] : [x / size, y / size];
}

/** Degrees to the left of the unit's face at which one first stands: a straight front then does not look like a drawing. */
const ASIDE_DEG = 24;

/** A direction towards the viewer from which the fronts of all runs show as well as they can, a little from above. */
export function welcome(runs: readonly Pick<RodRun, 'front' | 'length'>[]): Vec3 {
  const [x, y] = facing(runs);
  const straight = runs.every(({ front }) => front[0] * x + front[1] * y > 0.99);
  const turn = straight ? (-ASIDE_DEG * Math.PI) / 180 : 0;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return unit([c * x - s * y, s * x + c * y, 0.46]);
}

/** What a look is taken of: the run in hand, and the first, by which the plan always lies. */
export interface Sighted {
  readonly run: Pick<RodRun, 'front' | 'along'>;
  readonly first: Pick<RodRun, 'front'>;
}

/** The direction towards the viewer for a look; `fit` keeps the present one. */
function directionOf(look: Exclude<Look, 'room'>, { run, first }: Sighted, present: Vec3): Vec3 {
  const front: Vec3 = [run.front[0], run.front[1], 0];
  const along: Vec3 = [run.along[0], run.along[1], 0];
  const foot: Vec3 = [first.front[0], first.front[1], 0];
  const directions: Readonly<Record<Exclude<Look, 'room'>, Vec3>> = {
    fit: present,
    front,
    behind: scale(front, -1),
    plan: unit(add([0, 0, 1], scale(foot, HAIR))),
    left: scale(along, -1),
    right: along,
  };
  return directions[look];
}

/** Stands so that the whole box is in view from a direction. `aspect` is the picture's width by its height. */
function standOff(box: Box, toViewer: Vec3, fovDeg: number, aspect: number): Standpoint {
  const back = unit(toViewer);
  const right = unit(cross([0, 0, 1], back));
  const up = cross(back, right);
  const target: Vec3 = scale(add(box.min, box.max), 0.5);
  const tanUp = Math.tan((fovDeg * Math.PI) / 360) / MARGIN;
  const tanRight = tanUp * aspect;
  let distance = 0;
  for (const x of [box.min[0], box.max[0]]) {
    for (const y of [box.min[1], box.max[1]]) {
      for (const z of [box.min[2], box.max[2]]) {
        const p = sub([x, y, z], target);
        const off = Math.max(Math.abs(dot(p, right)) / tanRight, Math.abs(dot(p, up)) / tanUp);
        distance = Math.max(distance, dot(p, back) + off);
      }
    }
  }
  return { position: add(target, scale(back, distance)), target, fovDeg };
}

/** Whether a direction is square on to a run: from the front, the back, an end or straight above. */
function isSquare(toViewer: Vec3, run: Pick<RodRun, 'front' | 'along'>): boolean {
  const flat: Vec3 = [toViewer[0], toViewer[1], 0];
  const onFront = Math.abs(dot(flat, [run.front[0], run.front[1], 0]));
  const onAlong = Math.abs(dot(flat, [run.along[0], run.along[1], 0]));
  return Math.max(onFront, onAlong, Math.abs(toViewer[2])) > 1 - HAIR;
}

/**
 * The standpoint for a look asked for; `present` is where the viewer stands now. Square looks are taken from so far off
 * that they read as drawings, all others from within the room.
 */
export function standFor(
  look: Exclude<Look, 'room'>,
  sighted: Sighted,
  box: Box,
  aspect: number,
  present: Standpoint,
): Standpoint {
  const toViewer = directionOf(look, sighted, unit(sub(present.position, present.target)));
  return standOff(box, toViewer, isSquare(toViewer, sighted.run) ? FAR_FOV_DEG : NEAR_FOV_DEG, aspect);
}

/** Where somebody in the room would stand: the first standpoint, and the way back from the square looks. */
export const roomStand = (runs: readonly Pick<RodRun, 'front' | 'length'>[], box: Box, aspect: number): Standpoint =>
  standOff(box, welcome(runs), NEAR_FOV_DEG, aspect);
