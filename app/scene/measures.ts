import { boundsOf } from '../../src/base/outline';
import { onFace, toUnit } from '../../src/base/place';
import { add2, dot, dot2, scale, scale2, sub } from '../../src/base/vec';
import type { Vec2, Vec3 } from '../../src/vocabulary/geometry';
import type { Plan } from '../../src/vocabulary/job';
import type { Part } from '../../src/vocabulary/part';
import type { Rod, RodRun } from '../../src/vocabulary/rod';
import type { Box } from './assembly';
import { solidOf } from './solid';
import { facing } from './standpoint';

/** One size of a part: lines to draw (pairs of points) and where its figure stands, in unit coordinates. */
export interface Measure {
  readonly name: string;
  readonly mm: number;
  readonly lines: readonly (readonly [Vec3, Vec3])[];
  readonly label: Vec3;
  /** What is written instead of the size. */
  readonly text?: string;
  /** The layer over which the size was asked for. */
  readonly over?: string;
  /** Where it is only worth reading from one side: the direction of that side. */
  readonly front?: Vec3;
}

/** Distance of a measuring line from the part, and how far the lines at its ends go beyond it, mm. */
const OFF = 45;
const BEYOND = 15;

/** A part's extents across and out, mm: of a stick, whichever is the greater is its width, so the size doesn't tell. */
function sectionOf({ shape, size }: Pick<Part, 'shape' | 'size'>): { readonly across: number; readonly out: number } {
  if (shape.kind === 'board') return { across: size.width, out: size.thickness };
  const { min, max } = boundsOf(shape.section);
  return { across: max[0] - min[0], out: max[1] - min[1] };
}

/**
 * A part's three sizes, set out on its face: the length below, what it measures across to the left, out at the upper right.
 * The figures are the part's own sizes (long point to long point), not measured off the mesh. Length, width, thickness, in order.
 */
export function measuresOf(part: Pick<Part, 'shape' | 'place' | 'size'>): readonly Measure[] {
  const { min, max } = solidOf(part.shape);
  const at = (x: number, y: number, z: number): Vec3 => toUnit(part.place, x, y, z);
  const [x0, y0, z0] = min;
  const [x1, y1, z1] = max;
  const line = (
    name: string,
    mm: number,
    from: readonly [number, number, number],
    to: readonly [number, number, number],
    away: readonly [number, number, number],
  ): Measure => {
    const off = (p: readonly [number, number, number], d: number): Vec3 =>
      at(p[0] + away[0] * d, p[1] + away[1] * d, p[2] + away[2] * d);
    const a = off(from, OFF);
    const b = off(to, OFF);
    return {
      name,
      mm,
      lines: [
        [a, b],
        [off(from, BEYOND / 2), off(from, OFF + BEYOND)],
        [off(to, BEYOND / 2), off(to, OFF + BEYOND)],
      ],
      label: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2],
    };
  };
  const { across, out } = sectionOf(part);
  const upright = part.shape.kind === 'board' || across >= out;
  const [first, second] = upright ? ['width', 'thickness'] : ['thickness', 'width'];
  const section = [
    line(first!, across, [x0, y0, z1], [x0, y1, z1], [-1, 0, 0]),
    line(second!, out, [x1, y1, z0], [x1, y1, z1], [1, 0, 0]),
  ];
  return [
    line('length', part.size.length, [x0, y0, z1], [x1, y0, z1], [0, -1, 0]),
    ...(upright ? section : section.reverse()),
  ];
}

/** Distance of the unit's own measuring lines from its foremost layer, and length of the strokes across their ends, mm. */
const BEFORE = 180;
const STROKE = 60;

/** The length that was asked for in a run, and the layer to which it was taken. */
function askedOf({ id, jobIndex }: Pick<RodRun, 'id' | 'jobIndex'>, plan: Plan): { length: number; over: string } {
  const run = jobIndex === null ? undefined : plan.runs[jobIndex];
  if (run) return run;
  const end = id === 'RL' ? plan.leftEnd : plan.rightEnd;
  return end.kind === 'return' ? { length: end.length, over: end.over ?? 'frame' } : { length: 0, over: 'frame' };
}

/** How far a layer goes beyond an end of the frame line, mm. */
const beyond = (rod: Pick<Rod, 'layers' | 'top'>, over: string, end: RodRun['left']): number =>
  end.kind === 'corner' ? (rod.layers[over]?.outer ?? 0) * end.grows : over === rod.top.layer ? end.topBeyond : 0;

/**
 * The unit's sizes: each run's length as it was asked for, over its layer, chalked on the floor before it, and the height at the
 * left.
 */
export function measuresOfRod(rod: Pick<Rod, 'runs' | 'layers' | 'height' | 'top'>, plan: Plan): readonly Measure[] {
  const before = Math.max(0, ...Object.values(rod.layers).map((layer) => layer.outer)) + BEFORE;
  const lengths = rod.runs.map((run): Measure => {
    const at = (x: number, d: number): Vec3 => onFace(run, x, d, 0);
    const { length, over } = askedOf(run, plan);
    const from = -beyond(rod, over, run.left);
    const to = run.length + beyond(rod, over, run.right);
    return {
      name: run.name,
      mm: length,
      over,
      lines: [
        [at(from, before), at(to, before)],
        [at(from, before - STROKE), at(from, before + STROKE)],
        [at(to, before - STROKE), at(to, before + STROKE)],
      ],
      label: at((from + to) / 2, before),
      front: [run.front[0], run.front[1], 0],
    };
  });
  if (lengths.length === 0) return lengths;
  // On the left of somebody who faces the unit, clear of it and of the lengths.
  const [fx, fy] = facing(rod.runs);
  const left: Vec2 = [fy, -fx];
  const ends = rod.runs.flatMap((run) => [run.origin, add2(run.origin, scale2(run.along, run.length))]);
  // Of two as far left the one further to the front, where nothing stands before it.
  const aside = (p: Vec2): number => dot2(p, left) + dot2(p, [fx, fy]) / 4;
  const [leftmost] = ends.sort((a, b) => aside(b) - aside(a));
  const up = (z: number, shift = 0): Vec3 => {
    const [x, y] = add2(leftmost!, scale2(left, before + BEFORE / 2 + shift));
    return [x, y, z];
  };
  const height: Measure = {
    name: 'height',
    mm: rod.height,
    lines: [
      [up(0), up(rod.height)],
      [up(0, -STROKE), up(0, STROKE)],
      [up(rod.height, -STROKE), up(rod.height, STROKE)],
    ],
    label: up(rod.height / 2),
  };
  return [...lengths, height];
}

/** A box grown so that measures stand in it too. */
export function boxWith(box: Box, measures: readonly Measure[]): Box {
  const points = [box.min, box.max, ...measures.flatMap((measure) => measure.lines.flat())];
  const extreme = (of: (...values: number[]) => number, axis: 0 | 1 | 2): number => of(...points.map((p) => p[axis]));
  return {
    min: [extreme(Math.min, 0), extreme(Math.min, 1), extreme(Math.min, 2)],
    max: [extreme(Math.max, 0), extreme(Math.max, 1), extreme(Math.max, 2)],
  };
}

/** Cosines: of a line that is seen nearly end on, and of a look that is nearly straight down. */
const END_ON = 0.97;
const FROM_ABOVE = 0.8;

/**
 * Whether a measure is worth reading from where the viewer stands: not when its line is seen end on, nor, where it has a
 * front, from behind, unless from above.
 */
export function isReadable({ lines, label, front }: Measure, viewer: Vec3): boolean {
  const toViewer = unit(sub(viewer, label));
  const [from, to] = lines[0]!;
  if (Math.abs(dot(unit(sub(to, from)), toViewer)) > END_ON) return false;
  return !front || dot(front, toViewer) > 0 || toViewer[2] > FROM_ABOVE;
}

const unit = (v: Vec3): Vec3 => scale(v, 1 / (Math.hypot(...v) || 1));
