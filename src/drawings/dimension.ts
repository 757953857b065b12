import { SAME_LENGTH } from '../base/tolerance';
import type { Stroke } from '../vocabulary/drawing';
import type { Vec2 } from '../vocabulary/geometry';

/** How to dimension: along which axis, how far off on paper (up or to the right positive), from what line, how figures are written. */
export interface Scheme {
  readonly axis: 'horizontal' | 'vertical';
  readonly offsetMm: number;
  /** The line, in model mm, from which the dimension stands off: a y for horizontal ones, an x for upright ones. */
  readonly base: number;
  readonly figure: (mm: number) => string;
}

export type Dimension = Extract<Stroke, { kind: 'dimension' }>;

const point = ({ axis, base }: Scheme, at: number): Vec2 => (axis === 'horizontal' ? [at, base] : [base, at]);

/** One dimension from `from` to `to`, with words before the figure if need be. */
export const dimension = (scheme: Scheme, from: number, to: number, words = ''): Dimension => ({
  kind: 'dimension',
  from: point(scheme, from),
  to: point(scheme, to),
  axis: scheme.axis,
  offsetMm: scheme.offsetMm,
  text: `${words}${scheme.figure(Math.abs(to - from))}`,
});

/** Dimensions end to end through the stops. */
export function chain(scheme: Scheme, stops: readonly number[]): readonly Stroke[] {
  const sorted = distinct(stops);
  return sorted.slice(1).map((to, i) => dimension(scheme, sorted[i]!, to));
}

/**
 * Superimposed running dimensions from a datum, one to each side of it signed; a stop at the datum itself is its zero. `zero` is
 * written at the datum, where a nought alone would not say what it is.
 */
export function running(scheme: Scheme, datum: number, stops: readonly number[], zero?: string): readonly Stroke[] {
  const along = (to: number): Dimension => ({ ...dimension(scheme, datum, to), running: true });
  const away = distinct(stops).filter((to) => Math.abs(to - datum) >= SAME_LENGTH);
  const isBehind = (to: number): boolean => to < datum && away.some((other) => other > datum);
  return [
    ...(zero === undefined || away.length === 0 ? [] : [{ ...along(datum), text: zero }]),
    ...away.map((to) => (isBehind(to) ? { ...along(to), text: `-${along(to).text}` } : along(to))),
  ];
}

/** A dimension of a span, and in the same row what another span has beyond it at either end. */
export const withBeyond = (
  scheme: Scheme,
  [from, to]: readonly [number, number],
  other: readonly [number, number],
  words: string,
): readonly Stroke[] => [
  dimension(scheme, from, to, words),
  ...(from - other[0] >= SAME_LENGTH ? [dimension(scheme, other[0], from)] : []),
  ...(other[1] - to >= SAME_LENGTH ? [dimension(scheme, to, other[1])] : []),
];

/** In rising order, each length once. */
export function distinct(stops: readonly number[]): readonly number[] {
  const sorted = [...stops].sort((a, b) => a - b);
  return sorted.filter((at, i) => i === 0 || at - sorted[i - 1]! >= SAME_LENGTH);
}
