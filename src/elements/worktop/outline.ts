import { meetsBehind } from '../../base/meets-behind';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Carcass, CarcassWorktop, CrossLine } from '../../vocabulary/carcass';
import type { Vec2 } from '../../vocabulary/geometry';
import type { Rod, RodRun } from '../../vocabulary/rod';

/** A strip of worktop narrower than this beside a post would split off: the notch is opened to the end instead (common practice, no source). */
const LEAST_TONGUE = 30;

/** A length of worktop: one for each section that has cross frames to carry it. */
export interface Length {
  readonly lines: readonly CrossLine[];
  readonly left: EndOf;
  readonly right: EndOf;
}

/** Where a length ends: x at offset 0, how much further it reaches per mm outward, and whether a neighbour's worktop is mitred to it. */
interface EndOf {
  readonly x: number;
  readonly perOut: number;
  readonly mitred: boolean;
  readonly wall: boolean;
}

/** The lengths of worktop behind a run, from left to right; they end on the joins. */
export function lengthsOf(rod: Rod, run: RodRun): readonly Length[] {
  const lengths: CrossLine[][] = [];
  let open = false;
  for (const line of run.crossLines) {
    if (!open) lengths.push([]);
    lengths[lengths.length - 1].push(line);
    // Each length begins and ends with a frame that is not a bay's.
    if (line.why !== 'bay') open = !open;
  }
  return lengths.map((lines) => ({
    lines,
    left: endOf(rod, run, 'left', lines[0]),
    right: endOf(rod, run, 'right', lines[lines.length - 1]),
  }));
}

function endOf(rod: Rod, run: RodRun, side: 'left' | 'right', line: CrossLine): EndOf {
  const x = side === 'left' ? line.from : line.to;
  const square = { x, perOut: 0, mitred: false, wall: false };
  if (line.why !== 'end') return square;
  const end = run[side];
  const vertex = side === 'left' ? 0 : run.length;
  if (end.kind === 'wall') return { ...square, x: vertex, wall: true };
  if (!meetsBehind(rod, end, side)) return square;
  return { x: vertex, perOut: side === 'left' ? -end.grows : end.grows, mitred: true, wall: false };
}

/**
 * A length of worktop seen from above: x along the run, y *back* from the back of the front frame; counter-clockwise. Posts that go through
 * to the top are notched round, from its rear edge; a notch at the end of a length is open there.
 */
export function worktopOutline(length: Length, carcass: Carcass, worktop: CarcassWorktop): readonly Vec2[] {
  const { front, back, depth } = carcass;
  const deep = front - worktop.edge;
  const at = (end: EndOf, y: number): number => end.x + (front - y) * end.perOut;
  const { left, right } = length;
  const notch = front - (back + depth);
  const through = carcass.high > worktop.high && notch < deep - SAME_LENGTH;
  if (!through)
    return [
      [at(left, 0), 0],
      [at(right, 0), 0],
      [at(right, deep), deep],
      [at(left, deep), deep],
    ];
  const openLeft = (line: CrossLine): boolean => line.from - at(left, left.perOut === 0 ? 0 : deep) < LEAST_TONGUE;
  const openRight = (line: CrossLine): boolean => at(right, right.perOut === 0 ? 0 : deep) - line.to < LEAST_TONGUE;
  const rear = [...length.lines].reverse().flatMap((line): Vec2[] => {
    if (openRight(line))
      return [
        [at(right, notch), notch],
        [line.from, notch],
        [line.from, deep],
      ];
    if (openLeft(line))
      return [
        [line.to, deep],
        [line.to, notch],
        [at(left, notch), notch],
      ];
    return [
      [line.to, deep],
      [line.to, notch],
      [line.from, notch],
      [line.from, deep],
    ];
  });
  const cornered = (end: EndOf, open: boolean): Vec2[] => (open ? [] : [[at(end, deep), deep]]);
  return [
    [at(left, 0), 0],
    [at(right, 0), 0],
    ...cornered(right, openRight(length.lines[length.lines.length - 1])),
    ...rear,
    ...cornered(left, openLeft(length.lines[0])),
  ];
}
