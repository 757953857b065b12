import { eachCornerInPlan, nothing } from '../base/solid/extent';
import type { Outline } from '../vocabulary/geometry';
import type { RodRun } from '../vocabulary/rod';
import { type Compass, cover, Growing, isEmpty, type Room } from './compass';
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

/** Codes of what is divided at joins and mitred at a run's corner: its pieces change with the joins, so all of the code may wait there. */
export interface Waits {
  readonly left: ReadonlySet<string>;
  readonly right: ReadonlySet<string>;
}

const NO_SCRIBE = { left: false, right: false };

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
  compass: Compass,
  run: RodRun,
  parts: readonly Lying[],
  from: number,
  to: number,
  mitred: boolean,
  waits: Waits = NONE_WAITS,
  scribe: { readonly left: boolean; readonly right: boolean } = NO_SCRIBE,
): Atom {
  let [weightKg, byCentresKg, studKg, waitsLeft, waitsRight, behindKg] = [0, 0, 0, 0, 0, 0];
  const needed: number[] = [];
  const box = (): Box => new Box(compass, run, mitred);
  const [front, bare, behind] = [box(), box(), box()];
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
    (lying.behind ? behind : front).hold(lying, from, to);
    if (someWait && !lying.behind && !atLeft && !atRight) bare.hold(lying, from, to);
  }
  if (scribe.left && run.left.scribe > 0) front.scribedAt(-run.left.scribe);
  if (scribe.right && run.right.scribe > 0) front.scribedAt(run.length + run.right.scribe);
  return {
    run,
    weightKg,
    byCentresKg,
    studKg,
    needed,
    waitsLeft,
    waitsRight,
    behindKg,
    front: front.made(),
    bare: waitsLeft > 0 || waitsRight > 0 ? bare.made() : undefined,
    behind: behind.made(),
  };
}

/** The room of what lies between two lines across a run. */
class Box {
  private readonly x = nothing();
  private readonly d = nothing();
  private readonly room: Growing;

  constructor(
    compass: Compass,
    private readonly run: RodRun,
    private readonly mitred: boolean,
  ) {
    this.room = new Growing(compass);
  }

  hold(lying: Lying, low: number, high: number): void {
    const from = Math.max(low, lying.from);
    const to = Math.min(high, lying.to);
    const [back, fore] = lying.d;
    this.room.up(lying.z[0], lying.z[1]);
    if (!this.mitred) {
      cover(this.x, from, to);
      cover(this.d, back, fore);
    } else if (isSquare(lying)) {
      this.room.line(this.run, from, back, fore);
      this.room.line(this.run, to, back, fore);
    } else this.within(lying, low, high);
  }

  /** The corners in plan of as much of a part as lies between two lines across its run; cut square where it is cut. */
  private within(lying: Lying, low: number, high: number): void {
    const { room, run } = this;
    const whole = low <= lying.from && high >= lying.to;
    const [ax, ay] = run.along;
    const at = run.origin[0] * ax + run.origin[1] * ay;
    eachCornerInPlan(lying.part, (x, y) => {
      const along = x * ax + y * ay - at;
      if (whole || (along >= low && along <= high)) room.at(x, y);
    });
    if (low > lying.from) room.line(run, low, lying.d[0], lying.d[1]);
    if (high < lying.to) room.line(run, high, lying.d[0], lying.d[1]);
  }

  /** What is left on to be scribed to a wall, as far as x, is carried with what there is. */
  scribedAt(x: number): void {
    if (!isEmpty(this.room)) this.room.line(this.run, x, 0, 0);
  }

  made(): Room {
    const { x, d, room, run } = this;
    if (x.least <= x.most) {
      room.line(run, x.least, d.least, d.most);
      room.line(run, x.most, d.least, d.most);
    }
    return room;
  }
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
