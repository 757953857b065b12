import { SAME_LENGTH } from '../../base/tolerance';
import type { Vec2 } from '../../vocabulary/geometry';
import { divide, divides, type Limits, type Span } from './divide';
import { LAST_DIGITS } from './spans';

/** Something that a joint keeps clear of, along the run. A join has no width. */
export interface Block extends Span {
  /** In words: "join J1", "opening “socket”". */
  readonly what: string;
}

/** The top of one run as the joints see it: its ends, and where its ends (mitres too) are behind one. mm along the run. */
export interface Reach {
  readonly from: number;
  readonly to: number;
  readonly innerFrom: number;
  readonly innerTo: number;
}

/** How a top is jointed. */
export interface Jointed {
  readonly at: readonly number[];
  /** How far the joints keep clear of everything: what was asked, or as much as there is; undefined where they must lie in something. */
  readonly clear: number | undefined;
}

/** Halvings by which the greatest clearance is found: to a thousandth of a millimetre and less. */
const HALVINGS = 30;

/** Ends of a top, from its outline (x along the run, y back from the front edge): to its far points, and within its ends' slant. */
export function reachOf(outline: readonly Vec2[]): Reach {
  const xs = outline.map((p) => p[0]);
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  const ys = outline.map((p) => p[1]);
  const edges = [Math.min(...ys), Math.max(...ys)].map((y) =>
    outline.filter((p) => Math.abs(p[1] - y) < SAME_LENGTH).map((p) => p[0]),
  );
  return {
    from,
    to,
    innerFrom: Math.max(...edges.map((e) => Math.min(...e))),
    innerTo: Math.min(...edges.map((e) => Math.max(...e))),
  };
}

/**
 * Chooses the joints of a top. Where they can't keep `clear` of everything they keep as much as they can; where that is nothing they
 * divide it evenly, whatever they meet: the top is always made, and a finding says what is wrong with it.
 */
export function jointed(reach: Reach, blocks: readonly Block[], clear: number, limits: Omit<Limits, 'apart'>): Jointed {
  const { from, to } = reach;
  const tried = (c: number): readonly number[] | undefined =>
    divide(from, to, placesFor(reach, blocks, c), { ...limits, apart: c });
  const asked = tried(clear);
  if (asked) return { at: asked, clear };
  const goes = (c: number): boolean => divides(from, to, placesFor(reach, blocks, c), { ...limits, apart: c });
  if (!goes(0)) return { at: evenly(from, to, limits), clear: undefined };
  let [low, high] = [0, clear];
  for (let i = 0; i < HALVINGS; i++) {
    const c = (low + high) / 2;
    if (goes(c)) low = c;
    else high = c;
  }
  // Places that leave as much are all as good; at the very most the last digits would choose among them.
  const most = Math.max(0, low - LAST_DIGITS);
  return { at: tried(most) ?? evenly(from, to, limits), clear: most };
}

/** Where a joint keeps `clear` of the ends and of every block, from left to right. */
export function placesFor(reach: Reach, blocks: readonly Block[], clear: number): readonly Span[] {
  const places: Span[] = [];
  let from = reach.innerFrom + clear;
  for (const b of [...blocks].sort((x, y) => x.from - y.from)) {
    if (b.from - clear >= from) places.push({ from, to: Math.min(b.from - clear, reach.innerTo - clear) });
    from = Math.max(from, b.to + clear);
  }
  places.push({ from, to: reach.innerTo - clear });
  return places.filter((p) => p.from <= p.to);
}

function evenly(from: number, to: number, { longest, leftOn, rightOn }: Omit<Limits, 'apart'>): readonly number[] {
  const lengths = Math.ceil((to - from) / Math.max(1, longest - Math.max(leftOn, rightOn)));
  return Array.from({ length: lengths - 1 }, (_, i) => from + ((to - from) * (i + 1)) / lengths);
}

/** What a joint comes nearest to, and how near: 0 when it lies in it. */
export function nearest(
  at: readonly number[],
  reach: Reach,
  blocks: readonly Block[],
): { readonly x: number; readonly what: string; readonly gap: number } | undefined {
  const things: readonly Block[] = [
    ...blocks,
    { from: -Infinity, to: reach.innerFrom, what: 'the left end' },
    { from: reach.innerTo, to: Infinity, what: 'the right end' },
  ];
  return at
    .flatMap((x) => things.map(({ from, to, what }) => ({ x, what, gap: Math.max(0, from - x, x - to) })))
    .sort((a, b) => a.gap - b.gap)[0];
}
