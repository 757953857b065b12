import { SAME_LENGTH } from '../base/tolerance';
import type { Stroke } from '../vocabulary/drawing';
import type { Vec2 } from '../vocabulary/geometry';
import type { Bay, RodRun } from '../vocabulary/rod';
import { chain, dimension, distinct, type Scheme } from './dimension';
import { nearEdge } from './near-edge';
import type { Seen } from './view';

type Span = readonly [number, number];
const isSame = (a: number, b: number): boolean => Math.abs(a - b) < SAME_LENGTH;

/** Just above the floor, mm: there one sees what stands on it, whatever is done to its lower arris. */
const ABOVE_FLOOR = 1;

/**
 * Where the faces of the pieces that are seen along the floor begin and end: of the run's own, painted in order, the neighbours' over
 * them. A piece that is partly hidden is measured whole. Empty where none of its own is seen there.
 */
export function floorStops(run: RodRun, own: readonly Seen[], before: readonly Seen[]): readonly number[] {
  const pieces = [...own.map((seen) => ({ seen, isOwn: true })), ...before.map((seen) => ({ seen, isOwn: false }))];
  const spans = pieces.flatMap(({ seen, isOwn }) =>
    spansAt(seen.outline, ABOVE_FLOOR).map((span) => ({ span, mark: isOwn ? seen.part.mark : null })),
  );
  const cuts = distinct(spans.flatMap(({ span }) => span));
  const strips = cuts.slice(1).map((to, i) => {
    const middle = (cuts[i]! + to) / 2;
    const top = spans.findLast(({ span }) => span[0] < middle && middle < span[1]);
    return { from: cuts[i]!, to, mark: top?.mark ?? null };
  });
  const seen = new Set(strips.map(({ mark }) => mark));
  return distinct(own.filter(({ part }) => seen.has(part.mark)).flatMap(({ part }) => nearEdge(part, run, true)));
}

/** Where a level line lies within a polygon. */
function spansAt(polygon: readonly Vec2[], y: number): readonly Span[] {
  const xs = polygon
    .flatMap(([x1, y1], i) => {
      const [x0, y0] = polygon[(i + polygon.length - 1) % polygon.length]!;
      return y0 <= y === y1 <= y ? [] : [x0 + ((x1 - x0) * (y - y0)) / (y1 - y0)];
    })
    .sort((a, b) => a - b);
  return xs.flatMap((x, i) => (i % 2 === 1 ? [[xs[i - 1]!, x] as const] : []));
}

/**
 * Dimensions of what stands free in the bays, from pillar to pillar. Where all bays are alike they are written over the first only,
 * and `alike` says so.
 */
export function bayChains(
  scheme: Scheme,
  run: RodRun,
  seen: readonly Seen[],
): { readonly strokes: readonly Stroke[]; readonly alike: boolean } {
  const finished = seen.filter(({ part }) => part.from === 'finished');
  const chains = run.bays.map((bay) => {
    const free = freeIn(bay, finished).flat();
    return free.length === 0 ? [] : chain(scheme, [bay.from, ...free, bay.to]);
  });
  const figures = chains.map((strokes) => strokes.map((one) => ('text' in one ? one.text : '')).join(' '));
  const alike = chains.length > 1 && figures[0] !== '' && figures.every((text) => text === figures[0]);
  return { strokes: alike ? chains[0]! : chains.flat(), alike };
}

/**
 * Widths of what stands in a bay and touches neither its ends nor a piece of another kind: frames, whatever they consist of. Pieces from end
 * to end of the bay don't count, nor what hangs before something wider.
 */
function freeIn(bay: Bay, finished: readonly Seen[]): readonly Span[] {
  const inside = finished.filter(
    ({ min, max }) =>
      min[0] > bay.from - SAME_LENGTH &&
      max[0] < bay.to + SAME_LENGTH &&
      !(isSame(min[0], bay.from) && isSame(max[0], bay.to)),
  );
  const kinds = new Set(inside.map(({ part }) => part.kind));
  const free = [...kinds].map((kind) => {
    const spans = merged(inside.filter(({ part }) => part.kind === kind).map(({ min, max }): Span => [min[0], max[0]]));
    const others = finished.filter(({ part }) => part.kind !== kind);
    const ends = [bay.from, bay.to, ...others.flatMap(({ min, max }) => [min[0], max[0]])];
    return spans.filter((span) => !span.some((x) => ends.some((end) => isSame(end, x))));
  });
  const wide = (spans: readonly Span[]): number => spans.reduce((sum, [from, to]) => sum + to - from, 0);
  const kept: Span[] = [];
  for (const spans of free.sort((a, b) => wide(b) - wide(a)))
    if (!spans.some((one) => kept.some(meets(one)))) kept.push(...spans);
  return kept;
}

const meets =
  ([from, to]: Span) =>
  (other: Span): boolean =>
    from < other[1] && other[0] < to;

/** Spans that touch or overlap as one, in rising order. */
function merged(spans: readonly Span[]): readonly Span[] {
  const all: [number, number][] = [];
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    const last = all.at(-1);
    if (last && from <= last[1] + SAME_LENGTH) last[1] = Math.max(last[1], to);
    else all.push([from, to]);
  }
  return all;
}

/** How far what lies on the frame runs past the ends of the frame line, at its front edge; a flap, which lies beyond, doesn't count. */
export function overhangs(scheme: Scheme, run: RodRun, onTop: readonly Seen[]): readonly Stroke[] {
  const over = onTop.filter(({ min, max }) => min[0] < run.length - SAME_LENGTH && max[0] > SAME_LENGTH);
  if (over.length === 0) return [];
  const edges = over.map(({ part }) => nearEdge(part, run));
  const from = Math.min(...edges.map((edge) => edge[0]));
  const to = Math.max(...edges.map((edge) => edge[1]));
  return [
    ...(from < -SAME_LENGTH ? [dimension(scheme, from, 0)] : []),
    ...(to > run.length + SAME_LENGTH ? [dimension(scheme, run.length, to)] : []),
  ];
}
