import type { RodRun } from '../vocabulary/rod';
import { Box } from './atom-box';
import type { Compass, Room } from './compass';
import { divides, type Lying, meetsAt, share } from './lying';

/** What lies between two neighbouring spots of a run, without what lies across its ends. */
export interface Atom {
  readonly run: RodRun;
  readonly whole: Content;
  /** The same where a corner beside it is parted: without what waits there for the neighbour. */
  without(left: boolean, right: boolean): Content;
}

/** Weights in kg. */
export interface Content {
  readonly weightKg: number;
  /** Of that, the studs that stand by the centres; what one stud weighs; and the middles of those that something needs. */
  readonly byCentresKg: number;
  readonly studKg: number;
  readonly needed: readonly number[];
  /** Of its weight, what lies behind the front frame. */
  readonly behindKg: number;
  readonly front: Room;
  readonly behind: Room;
}

/** Codes of what is divided at joins and mitred at a run's corner: its pieces change with the joins, so all of the code may wait there. */
export interface Waits {
  readonly left: ReadonlySet<string>;
  readonly right: ReadonlySet<string>;
}

const NONE_WAITS: Waits = { left: new Set(), right: new Set() };

export function waitsIn(parts: readonly Lying[]): Waits {
  const at = (side: 'left' | 'right'): ReadonlySet<string> =>
    new Set(parts.flatMap((one) => (divides(one) && meetsAt(one, side) ? [one.part.code] : [])));
  return { left: at('left'), right: at('right') };
}

/** What is to be told as an atom: the parts between two lines across a run. */
export interface Between {
  readonly compass: Compass;
  readonly run: RodRun;
  readonly parts: readonly Lying[];
  readonly from: number;
  readonly to: number;
  /** Beside a corner its box is told by the parts' corners, elsewhere by a rectangle. */
  readonly mitred: boolean;
  readonly waits?: Waits;
  /** Ends at which stuff is left on to be scribed to a wall. */
  readonly scribe?: { readonly left: boolean; readonly right: boolean };
}

export function atomOf(between: Between): Atom {
  const { run, waits = NONE_WAITS } = between;
  const whole = contentOf(between, () => true);
  const known = new Map<number, Content>();
  const without = (left: boolean, right: boolean): Content => {
    const waiting = (code: string): boolean => (left && waits.left.has(code)) || (right && waits.right.has(code));
    const key = 2 * Number(left && waits.left.size > 0) + Number(right && waits.right.size > 0);
    if (key === 0) return whole;
    const content = known.get(key) ?? contentOf(between, (one) => !(divides(one) && waiting(one.part.code)));
    known.set(key, content);
    return content;
  };
  return { run, whole, without };
}

function contentOf(
  { compass, run, parts, from, to, mitred, scribe }: Between,
  isHere: (lying: Lying) => boolean,
): Content {
  let [weightKg, byCentresKg, studKg, behindKg] = [0, 0, 0, 0];
  const needed: number[] = [];
  const [front, behind] = [new Box(compass, run, mitred), new Box(compass, run, mitred)];
  for (const lying of parts) {
    const across = lying.from < from || lying.to > to;
    if (lying.to <= from || lying.from >= to || (across && !divides(lying)) || !isHere(lying)) continue;
    const weight = across ? lying.weightKg * share(lying, from, to) : lying.weightKg;
    weightKg += weight;
    if (lying.behind) behindKg += weight;
    const { byCentres } = lying.part;
    if (byCentres !== undefined) studKg = lying.weightKg;
    if (byCentres) byCentresKg += lying.weightKg;
    else if (byCentres === false) needed.push((lying.from + lying.to) / 2);
    (lying.behind ? behind : front).hold(lying, from, to);
  }
  if (scribe?.left && run.left.scribe > 0) front.scribedAt(-run.left.scribe);
  if (scribe?.right && run.right.scribe > 0) front.scribedAt(run.length + run.right.scribe);
  return { weightKg, byCentresKg, studKg, needed, behindKg, front: front.made(), behind: behind.made() };
}
