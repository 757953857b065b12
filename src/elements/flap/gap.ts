import { SAME_LENGTH } from '../../base/tolerance';
import type { DecisionsOf } from '../../vocabulary/field';
import type { FlapGap, Rod, RodRun } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import type { fields } from './fields';

export type Decisions = DecisionsOf<typeof fields>;

/** What hangs in a gap and how big it is. x along the left-hand run from its left frame-line end, d from the frame's face, z up. mm. */
export interface Gap {
  readonly flap: FlapGap;
  readonly left: RodRun;
  readonly right: RodRun;
  /** The gap between the frames. */
  readonly from: number;
  readonly to: number;
  /** Jambs, bearers and what stands between them. */
  readonly jamb: number;
  readonly bearer: number;
  readonly bearerHeight: number;
  readonly clear: number;
  /** Front of the jambs, flush with the cladding; their back, as far as frames stand. */
  readonly face: number;
  readonly back: number;
  /** Jambs stand on the plinth blocks that go round the frame's end, up to the underside of the top. */
  readonly low: number;
  readonly high: number;
  readonly gate: Gate;
}

/** The gate, its face just behind the stop. `notch`: cut out at its lower corners for the plinth blocks, 0 where there is none. */
export interface Gate {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly thickness: number;
  readonly face: number;
  readonly notch: number;
  readonly notchHigh: number;
}

/** Above a gate, to the bearers (common practice, no source). */
const GATE_TO_BEARER = 3;

/** The gaps of a rod that have a run on both sides. */
export function gapsOf(decisions: Decisions, { rod, book }: Pick<Bench, 'rod' | 'book'>): readonly Gap[] {
  return rod.flaps.flatMap((flap): Gap[] => {
    const left = rod.runs.find((r) => r.id === flap.left);
    const right = rod.runs.find((r) => r.id === flap.right);
    return left && right ? [gapOf(decisions, rod, { flap, left, right }, book)] : [];
  });
}

function gapOf(
  { clear, jamb, bearer, bearerHeight, gateSheet, floorClear }: Decisions,
  rod: Rod,
  { flap, left, right }: Pick<Gap, 'flap' | 'left' | 'right'>,
  book: Bench['book'],
): Gap {
  const lining = book.item('sheet', jamb).thickness;
  const thickness = book.item('sheet', gateSheet).thickness;
  const plinth = rod.layers.plinth;
  const block = plinth ? plinth.outer - plinth.inner : 0;
  const blockHigh = rod.heights.plinth ?? 0;
  const face = rod.layers.cladding?.outer ?? 0;
  const from = left.length;
  const to = left.length + flap.width;
  const low = Math.max(blockHigh, rod.frameLow);
  const notched = block > lining && floorClear < blockHigh;
  return {
    flap,
    left,
    right,
    from,
    to,
    jamb: lining,
    bearer,
    bearerHeight,
    clear,
    face,
    back: backOf(rod),
    low,
    high: rod.frameHeight,
    gate: {
      from: from + lining + clear,
      to: to - lining - clear,
      low: floorClear,
      high: rod.frameHeight - bearerHeight - GATE_TO_BEARER,
      thickness,
      face: face - thickness,
      notch: notched ? block - lining : 0,
      notchHigh: notched ? blockHigh + clear : 0,
    },
  };
}

/** Where the frames end at the back: the carcass, where it reaches up to the top. */
const backOf = ({ carcass, frameHeight, timber }: Rod): number =>
  carcass && Math.abs(carcass.high - frameHeight) < SAME_LENGTH ? carcass.back : -timber.depth;

/** Clear width of the passage with flap and gate open: between the bearers, or between the open gate and the stop. */
export const passageOf = ({ from, to, jamb, bearer, clear, flap, gate }: Gap, stop: number): number =>
  to - from - 2 * jamb - Math.max(2 * bearer, flap.gate ? stop + clear + gate.thickness + gate.notch : 0);
