import { tenth } from '../../base/tenth';
import type { Outline } from '../../vocabulary/geometry';
import type { Obstacle, PlacedOpening } from '../../vocabulary/opening';
import type { Rod, RodRun } from '../../vocabulary/rod';
import { type Decisions, LEAST_HEIGHT, skinHeights } from './lay';

/** Between a hole and the edge of the skin at least this much must stay, or it breaks out, mm (common practice, no source). */
const LEAST_WEB = 20;

/** The hole of an opening in a piece whose lower left corner is at (x, z). */
export function holeOf({ from, to, low, high, round }: PlacedOpening, x: number, z: number): Outline {
  const [x0, x1, z0, z1] = [from - x, to - x, low - z, high - z];
  const middle = (z0 + z1) / 2;
  const radius = (x1 - x0) / 2;
  return round
    ? {
        start: [x0, middle],
        segments: [
          { to: [x1, middle], radius },
          { to: [x0, middle], radius },
        ],
      }
    : { start: [x0, z0], segments: [{ to: [x1, z0] }, { to: [x1, z1] }, { to: [x0, z1] }, { to: [x0, z0] }] };
}

/** How it is marked out on a piece that begins at `x`; at a mitred end that is its back's edge. */
export const holeWork = ({ from, to, low, high, round }: PlacedOpening, x: number): string => {
  const size = round ? `round hole ${tenth(to - from)}` : `hole ${tenth(to - from)} × ${tenth(high - low)}`;
  return `${size}, middle ${tenth((from + to) / 2 - x)} from the left, ${tenth((low + high) / 2)} from the floor`;
};

/** The edges of the skin, as far in as a hole must stay, and its upper edge under the top. */
export function edgesOf(run: RodRun, rod: Rod, decisions: Decisions): readonly Obstacle[] {
  const { low, high } = skinHeights(rod, decisions);
  const { inner, outer } = rod.layers.cladding;
  const front = {
    run: run.id,
    through: 'front' as const,
    from: -Infinity,
    to: Infinity,
    low: -Infinity,
    high: Infinity,
  };
  if (high - low < LEAST_HEIGHT) return [{ ...front, what: 'the cladding, which has no height' }];
  // At an inside corner the face is shorter than the back.
  const [left, right] = [run.left, run.right].map((end) => Math.max(0, -end.grows * outer) + LEAST_WEB);
  return [
    { ...front, high: low + LEAST_WEB, what: 'the lower edge of the cladding' },
    { ...front, low: high - LEAST_WEB, what: 'the upper edge of the cladding' },
    { ...front, to: left, what: 'the left edge of the cladding' },
    { ...front, from: run.length - right, what: 'the right edge of the cladding' },
    {
      ...front,
      through: 'top',
      low: rod.top.overhang - outer,
      high: rod.top.overhang - inner,
      what: 'the upper edge of the cladding',
    },
  ];
}
