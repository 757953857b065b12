import { hull } from '../base/polygon';
import { cornersInPlan } from '../base/solid/extent';
import type { Outline, Vec2 } from '../vocabulary/geometry';
import type { RodRun } from '../vocabulary/rod';
import { divides, type Lying, share } from './lying';

/** What lies between two neighbouring spots of a run, without what lies across its ends. */
export interface Atom {
  readonly run: RodRun;
  readonly weightKg: number;
  /** Of that, the studs that stand by the centres; what one stud weighs, kg; and the middles of those that something needs. */
  readonly byCentresKg: number;
  readonly studKg: number;
  readonly needed: readonly number[];
  /** Of its weight, what is divided at joins and mitred with a neighbour: what is left of it before a corner that is parted waits for the neighbour. kg. */
  readonly waitsLeft: number;
  readonly waitsRight: number;
  readonly front: Room;
  /** The same without what may wait at a corner, where something may. */
  readonly bare?: Room;
  readonly behind: Room;
  /** Of its weight, what lies behind the front frame, kg. */
  readonly behindKg: number;
}

/** The room that something takes: its corners in plan, its height, its length along the run. Nothing: no corners. */
export interface Room {
  readonly points: readonly Vec2[];
  readonly height: readonly [number, number];
  readonly length: number;
}

/** Codes of what is divided at joins and mitred at a run's corner: its pieces change with the joins, so all of the code may wait there. */
export interface Waits {
  readonly left: ReadonlySet<string>;
  readonly right: ReadonlySet<string>;
}

const NO_CORNERS: readonly Vec2[] = [];

const NONE_WAITS: Waits = { left: new Set(), right: new Set() };

export function waitsIn(parts: readonly Lying[]): Waits {
  const at = (side: 'left' | 'right'): ReadonlySet<string> =>
    new Set(
      parts.flatMap((one) => (divides(one) && (one.meets === side || one.meets === 'both') ? [one.part.code] : [])),
    );
  return { left: at('left'), right: at('right') };
}

/** What lies between two lines across a run; beside a corner its box is told by the parts' corners (`mitred`), elsewhere by a rectangle. */
export function atomOf(
  run: RodRun,
  parts: readonly Lying[],
  from: number,
  to: number,
  mitred: boolean,
  waits: Waits = NONE_WAITS,
): Atom {
  let [weightKg, byCentresKg, studKg, waitsLeft, waitsRight, behindKg] = [0, 0, 0, 0, 0, 0];
  const needed: number[] = [];
  const [front, bare, behind] = [new Box(), new Box(), new Box()];
  const someWait = waits.left.size > 0 || waits.right.size > 0;
  for (const lying of parts) {
    const across = lying.from < from || lying.to > to;
    if (lying.to <= from || lying.from >= to || (across && !divides(lying))) continue;
    const weight = across ? lying.weightKg * share(lying, from, to) : lying.weightKg;
    weightKg += weight;
    if (lying.behind) behindKg += weight;
    const { byCentres } = lying.part;
    if (byCentres !== undefined) studKg = lying.weightKg;
    if (byCentres) byCentresKg += lying.weightKg;
    else if (byCentres === false) needed.push((lying.from + lying.to) / 2);
    const mayWait = someWait && divides(lying);
    const atLeft = mayWait && waits.left.has(lying.part.code);
    const atRight = mayWait && waits.right.has(lying.part.code);
    if (atLeft) waitsLeft += weight;
    if (atRight) waitsRight += weight;
    const corners = mitred
      ? isSquare(lying)
        ? square(lying, run, from, to)
        : within(lying, run, from, to)
      : NO_CORNERS;
    const box = lying.behind ? behind : front;
    box.hold(lying, from, to, corners);
    if (someWait && !lying.behind && !atLeft && !atRight) bare.hold(lying, from, to, corners);
  }
  return {
    run,
    weightKg,
    byCentresKg,
    studKg,
    needed,
    waitsLeft,
    waitsRight,
    behindKg,
    front: front.asRoom(run, mitred),
    bare: waitsLeft > 0 || waitsRight > 0 ? bare.asRoom(run, mitred) : undefined,
    behind: behind.asRoom(run, mitred),
  };
}

/** A box that grows with what it holds: along the run, out of it, up. */
class Box {
  private readonly x: [number, number] = [Infinity, -Infinity];
  private readonly d: [number, number] = [Infinity, -Infinity];
  private readonly z: [number, number] = [Infinity, -Infinity];
  private readonly corners: Vec2[] = [];

  hold({ from, to, d, z }: Lying, low: number, high: number, corners: readonly Vec2[]): void {
    for (const corner of corners) this.corners.push(corner);
    widen(this.x, Math.max(low, from), Math.min(high, to));
    widen(this.d, d[0], d[1]);
    widen(this.z, z[0], z[1]);
  }

  asRoom(run: RodRun, mitred: boolean): Room {
    const [x0, x1] = this.x;
    if (x0 > x1) return { points: [], height: [Infinity, -Infinity], length: 0 };
    const points = mitred ? hull(this.corners) : rectangle(run, x0, x1, this.d[0], this.d[1]);
    return { points, height: this.z, length: x1 - x0 };
  }
}

const widen = (range: [number, number], low: number, high: number): void => {
  range[0] = Math.min(range[0], low);
  range[1] = Math.max(range[1], high);
};

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

/** Cut square, and lying along or across the run, or standing with a rectangle for its section: four corners tell it. */
const isSquare = ({ part: { shape, place } }: Lying): boolean =>
  shape.kind === 'stick' &&
  !shape.start.perAcross &&
  !shape.start.perOut &&
  !shape.end.perAcross &&
  !shape.end.perOut &&
  (Math.abs(place.along[2]) < 0.5 || isRectangle(shape.section));

function isRectangle({ start, segments }: Outline): boolean {
  if (segments.length !== 4) return false;
  let from = start;
  for (const { to, radius } of segments) {
    if (radius !== undefined || (to[0] !== from[0] && to[1] !== from[1])) return false;
    from = to;
  }
  return true;
}

const square = (lying: Lying, run: RodRun, from: number, to: number): readonly Vec2[] =>
  rectangle(run, Math.max(from, lying.from), Math.min(to, lying.to), lying.d[0], lying.d[1]);

function rectangle(run: RodRun, x0: number, x1: number, d0: number, d1: number): readonly Vec2[] {
  const corner = (x: number, d: number): Vec2 => [
    run.origin[0] + run.along[0] * x + run.front[0] * d,
    run.origin[1] + run.along[1] * x + run.front[1] * d,
  ];
  return [corner(x0, d0), corner(x1, d0), corner(x1, d1), corner(x0, d1)];
}
