import { boundsOf, flatten } from '../../base/outline';
import { bevelledEdge, SQUARE_EDGE } from '../../base/profiles';
import { boardFault } from '../../base/solid/rings';
import { tenth } from '../../base/tenth';
import type { Outline, Vec2 } from '../../vocabulary/geometry';
import type { Board, BoardEdge } from '../../vocabulary/shape';
import { type Cut, LEAST_LEFT } from './cuts';

/** Two points of a section nearer than this are one, mm: noise of the last digits. */
const NOISE = 1e-6;

/** A section seen as a board with a moulded upper edge. */
export interface UpperEdge {
  readonly edge: BoardEdge;
  readonly height: number;
  readonly thickness: number;
  /** Below this its back and face are plain. */
  readonly plainTo: number;
}

/**
 * The upper edge of a section with a square lower edge, a plain back and a plain face; undefined when it is another, or when its upper
 * edge undercuts: the steps of a board's edge can't tell of that.
 */
export function upperEdgeOf(section: Outline): UpperEdge | undefined {
  const points = flatten(section);
  const thickness = boundsOf(section).max[1];
  const foot = points.findIndex(([u, v]) => Math.abs(u) < NOISE && Math.abs(v) < NOISE);
  if (foot < 0) return undefined;
  const round = [...points.slice(foot), ...points.slice(0, foot)];
  const last = round.findIndex(([u, v]) => Math.abs(u) < NOISE && Math.abs(v - thickness) < NOISE);
  // From the foot of the back up, over the edge, and down the face to its foot; what follows lies on the floor.
  if (last < 0 || round.slice(last).some(([u]) => Math.abs(u) > NOISE)) return undefined;
  const walk = round.slice(0, last + 1);
  const back = walk.findIndex(([, v], i) => i > 0 && v > NOISE) - 1;
  const face = walk.findIndex(([, v]) => v > thickness - NOISE);
  const height = walk[back][0];
  const falls = walk.slice(face).every(([u], i, down) => i === 0 || u <= down[i - 1][0] + NOISE);
  const plain = walk.slice(face).every(([, v]) => v > thickness - NOISE);
  const steps = walk.slice(back, face + 1).map(([u, v]): Vec2 => [Math.min(thickness, Math.max(0, v)), u - height]);
  const rises = steps.every(([out], i) => i === 0 || out >= steps[i - 1][0]);
  if (!(height > 0 && falls && plain && rises)) return undefined;
  const plainTo = height + Math.min(...steps.map(([, growth]) => growth));
  return { edge: { kind: 'moulded', steps }, height, thickness, plainTo };
}

/** The ends of a board along the foot: bevels in degrees at its left and right end, positive where its face is the longer. */
export interface Ends {
  readonly length: number;
  readonly leftDeg: number;
  readonly rightDeg: number;
}

/** The board with its holes and notches, and what is to be cut, in words; undefined when it can't be made so. `start`: the run's x at its left end. */
export function cutBoard(
  { edge, height, thickness, plainTo }: UpperEdge,
  { length, leftDeg, rightDeg }: Ends,
  start: number,
  cuts: readonly Cut[],
): Board | undefined {
  const upper: [Vec2, BoardEdge][] = [];
  for (const cut of [...cuts].filter((c) => isNotch(c, plainTo)).reverse()) {
    const [from, to] = [cut.from - start, cut.to - start];
    upper.push([[to, height], SQUARE_EDGE], [[to, cut.low], SQUARE_EDGE]);
    upper.push([[from, cut.low], SQUARE_EDGE], [[from, height], edge]);
  }
  const sides: readonly [Vec2, BoardEdge][] = [
    [[0, 0], SQUARE_EDGE],
    [[length, 0], bevelledEdge(thickness, rightDeg)],
    [[length, height], edge],
    ...upper,
    [[0, height], bevelledEdge(thickness, leftDeg)],
  ];
  const board: Board = {
    kind: 'board',
    thickness,
    outline: sides.map(([corner]) => corner),
    edges: sides.map(([, side]) => side),
    holes: cuts.filter((c) => !isNotch(c, plainTo)).map((c) => holeOf(c, start)),
  };
  return boardFault(board) === null ? board : undefined;
}

/** An opening that leaves too little of the plain face above it is cut through the upper edge. */
const isNotch = (cut: Cut, plainTo: number): boolean => cut.high > plainTo - LEAST_LEFT;

function holeOf({ from, to, low, high, round }: Cut, start: number): Outline {
  const [a, b] = [from - start, to - start];
  if (!round)
    return { start: [a, low], segments: [{ to: [b, low] }, { to: [b, high] }, { to: [a, high] }, { to: [a, low] }] };
  const radius = (b - a) / 2;
  const middle = (low + high) / 2;
  return {
    start: [a, middle],
    segments: [
      { to: [b, middle], radius },
      { to: [a, middle], radius },
    ],
  };
}

/** Where a piece is measured from: the run's x at its left end, and what that end is called. */
export interface LeftEnd {
  readonly at: number;
  readonly called: string;
}

/** What is cut, in words, measured from the piece's left end and from the floor. */
export function cutInWords(cut: Cut, { at, called }: LeftEnd, plainTo: number): string {
  const [from, to] = [cut.from - at, cut.to - at];
  const whose = `for ${cut.names.join(' and ')}`;
  if (isNotch(cut, plainTo))
    return `notch ${whose}, from ${tenth(from)} to ${tenth(to)} from ${called}, down to ${tenth(cut.low)} above the floor`;
  if (cut.round)
    return `hole ${tenth(to - from)} round ${whose}, centre ${tenth((from + to) / 2)} from ${called} and ${tenth((cut.low + cut.high) / 2)} above the floor`;
  return `hole ${tenth(to - from)} × ${tenth(cut.high - cut.low)} ${whose}, from ${tenth(from)} to ${tenth(to)} from ${called}, ${tenth(cut.low)} to ${tenth(cut.high)} above the floor`;
}
