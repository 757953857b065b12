import type { CutTree, Leftover, Parted, PlacedOnSheet, Rect } from '../../vocabulary/cut-plan';
import { largeEnough } from '../least-offcut';
import { stagesOf } from '../set-ups/stages';

/** Noise of sums, mm: nearer is the same. */
const NOISE = 1e-6;

/** How sheets are cut: what a tree is made to. */
export interface TreeTerms {
  readonly kerf: number;
  readonly trimsFree?: boolean;
  /** Longest cut that the saw can make, mm; absent: any. */
  readonly longestCut?: number;
  /** From these sides on a leftover is reusable, the longer first. */
  readonly leastOffcut: readonly [number, number];
}

/**
 * Cuts from edge to edge that part a sheet into these pieces, in as few stages as can be; undefined where there are none. Pieces stay where they
 * are, except that gaps too narrow to leave anything (less than two kerfs between pieces, less than one at the near edges) are closed. Of two ways in as few stages, the one that leaves the larger piece for the rack.
 *
 * All cuts that go through in one direction are made at once: a cut that goes through meets no piece, and what is parted by it can be cut no worse
 * than before. So the direction of the first cuts is the only choice, and both are tried.
 */
export function treeOf(pieces: readonly PlacedOnSheet[], sheet: Rect, terms: TreeTerms): CutTree | undefined {
  const { x, y, length, width } = sheet;
  const inside = pieces.every(
    (p) =>
      p.x >= x - NOISE &&
      p.y >= y - NOISE &&
      farOf(p, 'across') <= x + length + NOISE &&
      farOf(p, 'along') <= y + width + NOISE,
  );
  if (!inside) return undefined;
  let best: CutTree | undefined;
  for (const way of ['along', 'across'] as const) {
    const tree = parted(pieces, { x, y, length, width }, way, terms, false);
    if (tree && (!best || isBetter(tree, best, terms))) best = tree;
  }
  return best;
}

/** In fewer stages; or in as many, and leaving a larger piece for the rack. */
function isBetter(a: CutTree, b: CutTree, { trimsFree }: TreeTerms): boolean {
  const fewer = stagesOf(b, trimsFree) - stagesOf(a, trimsFree);
  return fewer > 0 || (fewer === 0 && largestLeft(a) > largestLeft(b) + NOISE);
}

/** Area of the largest leftover that can be used again, mm². */
function largestLeft(tree: CutTree): number {
  if (tree.kind === 'cut') return Math.max(0, ...tree.parts.map(largestLeft));
  return tree.kind === 'left' && tree.reusable ? tree.length * tree.width : 0;
}

type Way = Parted['way'];

const nearOf = ({ x, y }: Rect, way: Way): number => (way === 'across' ? x : y);
const sizeOf = ({ length, width }: Rect, way: Way): number => (way === 'across' ? length : width);
const farOf = (rect: Rect, way: Way): number => nearOf(rect, way) + sizeOf(rect, way);

/** Part of a rectangle: the whole of it across the way, and from `at` so far in it. */
const slice = ({ x, y, length, width }: Rect, way: Way, at: number, size: number): Rect =>
  way === 'across' ? { x: at, y, length: size, width } : { x, y: at, length, width: size };

const shifted = (piece: PlacedOnSheet, way: Way, by: number): PlacedOnSheet =>
  way === 'across' ? { ...piece, x: piece.x + by } : { ...piece, y: piece.y + by };

/** @param must a cut this way is needed, or the pieces can't be cut at all: the other way has been tried */
function parted(
  pieces: readonly PlacedOnSheet[],
  rect: Rect,
  way: Way,
  terms: TreeTerms,
  must: boolean,
): CutTree | undefined {
  if (pieces.length === 0) return leftOf(rect, terms);
  const [only] = pieces;
  const other = way === 'across' ? 'along' : 'across';
  if (pieces.length === 1 && isFilled(only, rect)) return { ...only, x: rect.x, y: rect.y };
  const groups = groupsOf(pieces, way, terms.kerf);
  const from = nearOf(rect, way);
  const end = farOf(rect, way);
  const parts: { readonly rect: Rect; readonly pieces: readonly PlacedOnSheet[] }[] = [];
  let at = from;
  for (const { near, far, members } of groups) {
    const gap = near - at;
    if (gap > terms.kerf + NOISE) {
      // Something is left before it.
      parts.push({ rect: slice(rect, way, at, gap - terms.kerf), pieces: [] });
      at = near;
    }
    const size = Math.min(far - near, end - at);
    parts.push({ rect: slice(rect, way, at, size), pieces: members.map((piece) => shifted(piece, way, at - near)) });
    at += size + terms.kerf;
  }
  const beyond = end - (at - terms.kerf);
  if (beyond > terms.kerf + NOISE) parts.push({ rect: slice(rect, way, at, end - at), pieces: [] });
  const cuts = parts.length > 1 || beyond > NOISE;
  if (!cuts) return must ? undefined : parted(pieces, rect, other, terms, true);
  if (sizeOf(rect, other) > (terms.longestCut ?? Number.POSITIVE_INFINITY) + NOISE) return undefined;
  const trees: CutTree[] = [];
  for (const part of parts) {
    const tree = parted(part.pieces, part.rect, other, terms, true);
    if (!tree) return undefined;
    trees.push(tree);
  }
  return { kind: 'cut', ...rect, way, parts: trees };
}

const isFilled = (piece: Rect, rect: Rect): boolean =>
  Math.abs(piece.length - rect.length) <= NOISE && Math.abs(piece.width - rect.width) <= NOISE;

interface Group {
  readonly near: number;
  readonly far: number;
  readonly members: readonly PlacedOnSheet[];
}

/** Pieces between which a cut this way goes through, in order. */
function groupsOf(pieces: readonly PlacedOnSheet[], way: Way, kerf: number): readonly Group[] {
  const sorted = [...pieces].sort((a, b) => nearOf(a, way) - nearOf(b, way));
  const groups: { near: number; far: number; members: PlacedOnSheet[] }[] = [];
  for (const piece of sorted) {
    const last = groups.at(-1);
    if (last && nearOf(piece, way) - last.far < kerf - NOISE) {
      last.members.push(piece);
      last.far = Math.max(last.far, farOf(piece, way));
    } else groups.push({ near: nearOf(piece, way), far: farOf(piece, way), members: [piece] });
  }
  return groups;
}

/** What is left of a sheet; large enough for the rack, either way round. */
export function leftOf(rect: Rect, { leastOffcut }: Pick<TreeTerms, 'leastOffcut'>): Leftover {
  const { x, y, length, width } = rect;
  const reusable = largeEnough(length + NOISE, width + NOISE, leastOffcut);
  return { kind: 'left', x, y, length, width, reusable };
}
