import { cover, lengthOf, nothing } from '../base/reach';
import type { RodRun } from '../vocabulary/rod';
import type { Atom, Content } from './atoms';
import { type Chain, isJoin, type Spot } from './chain';
import { type Compass, ownOf, type Room } from './compass';
import type { Load } from './limits';

/** What the setting-out knows of a frame that is made shorter. mm along the run. */
export interface Shorter {
  /** How many studs stand by the centres only, from–to, between its ends and those that something needs (their middles). */
  studs(from: number, to: number, needed: readonly number[]): number;
  /** The least length behind which a carcass stands; below it there is none. */
  readonly leastBehind: number;
}

/** What a stretch of the chain would weigh as one section, and the box it would stand in, along its longest run. Spots by number. */
export function loadOfStretch(
  { spots, atoms, spans, compass }: Chain,
  from: number,
  to: number,
  shorter: Shorter,
): Load {
  const rooms: Room[] = [];
  let weightKg = spots[from].moreRight + spots[to].moreLeft;
  let longest = { run: atoms[from].run, length: 0 };
  for (let first = from; first < to; ) {
    const { run } = atoms[first];
    let next = first + 1;
    while (next < to && atoms[next].run === run) next++;
    const frame = frameOf(run, spots[first], spots[next]);
    const stands = standsBehind(run, frame, shorter.leastBehind);
    // What is mitred with a neighbour at a corner that is parted waits for it.
    const left = first === from && spots[from].kind === 'corner';
    const right = next === to && spots[to].kind === 'corner';
    const pieces = atoms.slice(first, next).map((atom) => atom.without(left, right));
    weightKg += weightOf(pieces, frame, shorter);
    if (!stands) {
      weightKg -= sum(pieces, (piece) => piece.behindKg);
      if (first === from) weightKg -= spots[from].behindRight;
      if (next === to) weightKg -= spots[to].behindLeft;
    }
    // By the frame's pieces, as the box of what is made is told.
    const length = frame.to - frame.from;
    if (length > longest.length) longest = { run, length };
    for (const piece of pieces) rooms.push(...(stands ? [piece.front, piece.behind] : [piece.front]));
    first = next;
  }
  for (let k = from; k < to; k++)
    for (const { last, atom } of spans.get(k) ?? [])
      if (last < to) {
        weightKg += atom.whole.weightKg;
        rooms.push(atom.whole.front, atom.whole.behind);
      }
  return boxed(rooms, compass, longest.run, weightKg);
}

/** What lies between two neighbouring spots, as a load of its own. */
export const loadOfAtom = ({ run, whole: { front, behind, weightKg } }: Atom, compass: Compass): Load =>
  boxed([front, behind], compass, run, weightKg);

/** Whether a carcass stands behind a piece of a run: where the room that the cross frames of the whole have there is long enough. */
function standsBehind({ crossLines }: RodRun, { from, to }: Frame, least: number): boolean {
  if (crossLines.length === 0) return false;
  return Math.min(to, crossLines[crossLines.length - 1].to) - Math.max(from, crossLines[0].from) >= least;
}

interface Frame {
  readonly from: number;
  readonly to: number;
}

/** From where to where the frame of a run goes between two spots. */
const frameOf = (run: RodRun, left: Spot, right: Spot): Frame => ({
  from: isJoin(left) ? left.x : run.left.frameAt,
  to: isJoin(right) ? right.x : run.right.frameAt,
});

/** The pieces of one run, their studs stood anew in the frame, kg. */
function weightOf(pieces: readonly Content[], { from, to }: Frame, shorter: Shorter): number {
  const needed = pieces.flatMap((piece) => piece.needed);
  const studKg = Math.max(...pieces.map((piece) => piece.studKg));
  return sum(pieces, (piece) => piece.weightKg - piece.byCentresKg) + shorter.studs(from, to, needed) * studKg;
}

const sum = (pieces: readonly Content[], of: (piece: Content) => number): number =>
  pieces.reduce((s, piece) => s + of(piece), 0);

function boxed(rooms: readonly Room[], compass: Compass, run: RodRun, weightKg: number): Load {
  const own = ownOf(compass, run);
  const [long, deep, high] = [nothing(), nothing(), nothing()];
  for (const { reaches, height } of rooms) {
    cover(long, reaches[own.along].least, reaches[own.along].most);
    cover(deep, reaches[own.front].least, reaches[own.front].most);
    cover(high, height.least, height.most);
  }
  return { length: lengthOf(long), depth: lengthOf(deep), height: lengthOf(high), weightKg };
}
