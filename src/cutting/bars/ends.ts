import type { BarPiece, BarProblem, BarTurn, Slant } from '../../vocabulary/cut-problem';

/** A piece's two ends as it lies on the bar, and how it was turned to lie so. */
export interface Pose {
  readonly turn?: BarTurn;
  readonly left: Slant;
  readonly right: Slant;
}

const SQUARE: Slant = [0, 0];

/** Ends of a piece that has none of its own. */
export const SQUARE_ENDS: readonly [Slant, Slant] = [SQUARE, SQUARE];

/** What a turn makes of a plane that leans so. The turned bar is looked at from where it was: see `BarTurn`. */
const TURNED: Readonly<Record<BarTurn, (slant: Slant) => Slant>> = {
  rolled: ([a, o]) => [0 - a, 0 - o],
  swung: ([a, o]) => [a, 0 - o],
  tumbled: ([a, o]) => [0 - a, o],
};

const sameSlant = (a: Slant, b: Slant): boolean => a[0] === b[0] && a[1] === b[1];

/** Every way that a piece with such ends can lie, those alike only once. */
export function posesOf([left, right]: readonly [Slant, Slant], turns: readonly BarTurn[]): readonly Pose[] {
  const poses: Pose[] = [{ left, right }];
  for (const turn of turns) {
    const lean = TURNED[turn];
    const pose =
      turn === 'rolled'
        ? { turn, left: lean(left), right: lean(right) }
        : { turn, left: lean(right), right: lean(left) };
    if (!poses.some((other) => sameSlant(other.left, pose.left) && sameSlant(other.right, pose.right)))
      poses.push(pose);
  }
  return poses;
}

/** How much longer along the bar a kerf is that leans so. */
export const kerfFactor = ([across, out]: Slant): number => Math.sqrt(1 + across * across + out * out);

/**
 * From the last point of one piece to the foremost point of the next, mm: a kerf, less what their ends lie into one another; so it may be
 * negative. At each corner of the section they are apart by the kerf of the steeper plane.
 */
export function gapBetween(right: Slant, left: Slant, kerf: number, width: number, thickness: number): number {
  const corners = [0, right[0] * width, right[1] * thickness, right[0] * width + right[1] * thickness];
  const next = [0, left[0] * width, left[1] * thickness, left[0] * width + left[1] * thickness];
  const last = Math.max(...corners);
  const first = Math.min(...next);
  let nested = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 4; i++) nested = Math.min(nested, last - corners[i] + (next[i] - first));
  return kerf * Math.max(kerfFactor(right), kerfFactor(left)) - nested;
}

/** Pieces whose ends are alike, and how they can lie. */
export interface EndClass {
  readonly poses: readonly number[];
  /** The least that a piece takes up beyond its length, with its share of the gaps on both sides, mm. */
  readonly share: number;
}

/** All the ends of a problem. */
export interface Ends {
  readonly poses: readonly Pose[];
  readonly classes: readonly EndClass[];
  /** The class of each piece of the problem. */
  readonly classOf: readonly number[];
  /** Gap when the first pose's right end meets the second's left end, mm. */
  readonly gaps: readonly (readonly number[])[];
  /** The most that the outer two ends of a bar's pieces may count in their shares without a gap being there, mm. */
  readonly outer: number;
}

/** The ends of all pieces, classed; what each shares in gaps at the least, so that lengths with shares never exceed what is needed. */
export function endsOf({ pieces, kerf, section }: BarProblem): Ends {
  const turns = section?.turns ?? [];
  const keys = new Map<string, number>();
  const poses: Pose[] = [];
  const members: number[][] = [];
  const classOf = pieces.map((piece: BarPiece) => {
    const ends = piece.ends ?? SQUARE_ENDS;
    const key = ends
      .flat()
      .map((n) => n + 0)
      .join();
    const known = keys.get(key);
    if (known !== undefined) return known;
    keys.set(key, members.length);
    const own = posesOf(ends, turns);
    members.push(own.map((_, i) => poses.length + i));
    poses.push(...own);
    return members.length - 1;
  });
  const gaps = poses.map((a) =>
    poses.map((b) => gapBetween(a.right, b.left, kerf, section?.width ?? 0, section?.thickness ?? 0)),
  );
  const rights = gaps.map((row) => Math.min(...row) / 2);
  const lefts = poses.map((_, i) => Math.min(...gaps.map((row) => row[i])) / 2);
  const classes = members.map((own) => ({ poses: own, share: Math.min(...own.map((i) => lefts[i] + rights[i])) }));
  return { poses, classes, classOf, gaps, outer: poses.length === 0 ? 0 : Math.max(...lefts) + Math.max(...rights) };
}
