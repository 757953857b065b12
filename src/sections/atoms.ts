import { hull } from '../base/polygon';
import { cornersInPlan } from '../base/solid/extent';
import type { Vec2 } from '../vocabulary/geometry';
import type { RodRun } from '../vocabulary/rod';
import { divides, type Lying, share } from './lying';

/** What lies between two neighbouring spots: its weight without what lies across its ends, and the corners of the box it stands in, in plan. */
export interface Atom {
  readonly weightKg: number;
  /** Of that, the studs that stand by the centres; what one stud weighs, kg; and the middles of those that something needs. */
  readonly byCentresKg: number;
  readonly studKg: number;
  readonly needed: readonly number[];
  /** Of its weight, what is divided at joins and mitred with a neighbour: its last piece before a corner that is parted waits for the neighbour. kg. */
  readonly waitsLeft: number;
  readonly waitsRight: number;
  readonly height: readonly [number, number];
  readonly points: readonly Vec2[];
  readonly runs: readonly { readonly run: RodRun; readonly length: number }[];
}

/** What lies between two lines across a run; beside a corner its box is told by the parts' corners (`mitred`), elsewhere by a rectangle. */
export function atomOf(run: RodRun, parts: readonly Lying[], from: number, to: number, mitred: boolean): Atom {
  const corners: Vec2[] = [];
  let weightKg = 0;
  let [byCentresKg, studKg] = [0, 0];
  const needed: number[] = [];
  let [waitsLeft, waitsRight] = [0, 0];
  let [x0, x1, d0, d1, z0, z1] = [Infinity, -Infinity, Infinity, -Infinity, Infinity, -Infinity];
  for (const lying of parts) {
    if (lying.to <= from || lying.from >= to) continue;
    if (lying.from < from || lying.to > to) {
      if (!divides(lying)) continue;
      weightKg += lying.weightKg * share(lying, from, to);
    } else weightKg += lying.weightKg;
    if (lying.part.byCentres !== undefined) studKg = lying.weightKg;
    if (lying.part.byCentres) byCentresKg += lying.weightKg;
    else if (lying.part.byCentres === false) needed.push((lying.from + lying.to) / 2);
    if (lying.meets && divides(lying)) {
      const weight = lying.weightKg * share(lying, from, to);
      if (lying.meets !== 'right') waitsLeft += weight;
      if (lying.meets !== 'left') waitsRight += weight;
    }
    if (mitred) corners.push(...(isSquare(lying) ? square(lying, run, from, to) : within(lying, run, from, to)));
    x0 = Math.min(x0, Math.max(from, lying.from));
    x1 = Math.max(x1, Math.min(to, lying.to));
    d0 = Math.min(d0, lying.d[0]);
    d1 = Math.max(d1, lying.d[1]);
    z0 = Math.min(z0, lying.z[0]);
    z1 = Math.max(z1, lying.z[1]);
  }
  if (x0 > x1)
    return {
      weightKg: 0,
      byCentresKg: 0,
      studKg: 0,
      needed: [],
      waitsLeft: 0,
      waitsRight: 0,
      height: [0, 0],
      points: [],
      runs: [],
    };
  return {
    weightKg,
    byCentresKg,
    studKg,
    needed,
    waitsLeft,
    waitsRight,
    height: [z0, z1],
    points: mitred ? hull(corners) : rectangle(run, x0, x1, d0, d1),
    runs: [{ run, length: x1 - x0 }],
  };
}

/** Corners in plan of as much of a part as lies between two lines across its run; cut square where it is cut. */
function within(lying: Lying, run: RodRun, from: number, to: number): readonly Vec2[] {
  const at = run.origin[0] * run.along[0] + run.origin[1] * run.along[1];
  const [low, high] = [Math.max(from, lying.from), Math.min(to, lying.to)];
  const inside = cornersInPlan(lying.part).filter(([x, y]) => {
    const along = x * run.along[0] + y * run.along[1] - at;
    return along >= low && along <= high;
  });
  const cut = [...(low > lying.from ? [low] : []), ...(high < lying.to ? [high] : [])];
  return [...inside, ...cut.flatMap((x) => rectangle(run, x, x, lying.d[0], lying.d[1]).slice(1, 3))];
}

/** Cut square and lying along, across or upright: four corners tell it. */
const isSquare = ({ part: { shape } }: Lying): boolean =>
  shape.kind === 'stick' && !shape.start.perAcross && !shape.start.perOut && !shape.end.perAcross && !shape.end.perOut;

const square = (lying: Lying, run: RodRun, from: number, to: number): readonly Vec2[] =>
  rectangle(run, Math.max(from, lying.from), Math.min(to, lying.to), lying.d[0], lying.d[1]);

/** Offsets in the room's plan are measured across the run, but not from its own line. */
function rectangle(run: RodRun, x0: number, x1: number, d0: number, d1: number): readonly Vec2[] {
  const at = run.origin[0] * run.front[0] + run.origin[1] * run.front[1];
  const corner = (x: number, d: number): Vec2 => [
    run.origin[0] + run.along[0] * x + run.front[0] * (d - at),
    run.origin[1] + run.along[1] * x + run.front[1] * (d - at),
  ];
  return [corner(x0, d0), corner(x1, d0), corner(x1, d1), corner(x0, d1)];
}
