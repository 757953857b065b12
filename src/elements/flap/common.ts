import { SQUARE_EDGE } from '../../base/profiles';
import type { Vec2 } from '../../vocabulary/geometry';
import type { Hold, PartDraft } from '../../vocabulary/part';
import type { Board } from '../../vocabulary/shape';
import type { Gap } from './gap';

export type Side = 'left' | 'right';

/** A flap deeper than this, or heavier, has a third hinge; so has a gate higher or heavier (common practice, no source). */
export const MOST_ON_TWO = { depth: 500, height: 1000, kg: 15 } as const;

/** Screws in each hinge, half of them in each leaf, and the thickness of a leaf (from memory). */
const SCREWS_IN_HINGE = 6;
const LEAF = 3;

/** What every part of a flap has in common. */
export const common = (
  code: string,
  name: string,
  run: string,
): Pick<PartDraft, 'kind' | 'code' | 'name' | 'run' | 'edges' | 'grooves' | 'fit'> => ({
  kind: 'flap',
  code,
  name,
  run,
  edges: [],
  grooves: [],
  fit: 'site',
});

/** A board with square edges. */
export const board = (outline: readonly Vec2[], thickness: number): Board => ({
  kind: 'board',
  outline,
  thickness,
  holes: [],
  edges: outline.map(() => SQUARE_EDGE),
});

/** A rectangle from (0, 0). */
export const box = (along: number, across: number): readonly Vec2[] => [
  [0, 0],
  [along, 0],
  [along, across],
  [0, across],
];

/** Held by the screws of its hinges. */
export const hinged = (count: number, to: string): Hold => ({
  by: 'screw',
  through: LEAF,
  where: { at: 'all', each: SCREWS_IN_HINGE * count },
  rule: `${to}: ${SCREWS_IN_HINGE} screws in each hinge (from memory)`,
});

/** The run on that side of the gap. */
export const runAt = ({ left, right }: Gap, side: Side): string => (side === 'left' ? left.id : right.id);
/** The other side. */
export const across = (side: Side): Side => (side === 'left' ? 'right' : 'left');
