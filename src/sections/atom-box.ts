import { cover, nothing } from '../base/reach';
import { eachCornerInPlan, isSquare } from '../base/solid/corners';
import type { Outline } from '../vocabulary/geometry';
import type { RodRun } from '../vocabulary/rod';
import { type Compass, Growing, isEmpty, type Room } from './compass';
import type { Lying } from './lying';

/** The room of what lies between two lines across a run; `mitred`: told by the parts' corners, elsewhere by a rectangle. */
export class Box {
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
    } else if (isPlain(lying)) {
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
const isPlain = ({ part: { shape, place } }: Lying): boolean =>
  shape.kind === 'stick' &&
  isSquare(shape.start) &&
  isSquare(shape.end) &&
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
