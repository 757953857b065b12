import type { RodRun } from '../vocabulary/rod';
import { Box } from './atom-box';
import type { Compass, Room } from './compass';
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
