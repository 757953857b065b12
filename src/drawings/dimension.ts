import { SAME_LENGTH } from '../base/tolerance';
import type { Stroke } from '../vocabulary/drawing';
import type { Vec2 } from '../vocabulary/geometry';
import { figureOf } from './figure';

/** How to dimension: along which axis, how far off on paper (up or to the right positive), from what line, in which units. */
export interface Scheme {
  readonly axis: 'horizontal' | 'vertical';
  readonly offsetMm: number;
  /** The line, in model mm, from which the dimension stands off: a y for horizontal ones, an x for upright ones. */
  readonly base: number;
  readonly units: 'mm' | 'inch';
}

const point = ({ axis, base }: Scheme, at: number): Vec2 => (axis === 'horizontal' ? [at, base] : [base, at]);

/** One dimension from `from` to `to`, with words before the figure if need be. */
export const dimension = (scheme: Scheme, from: number, to: number, words = ''): Stroke => ({
  kind: 'dimension',
  from: point(scheme, from),
  to: point(scheme, to),
  axis: scheme.axis,
  offsetMm: scheme.offsetMm,
  text: `${words}${figureOf(Math.abs(to - from), scheme.units)}`,
});

/** Dimensions end to end through the stops. */
export function chain(scheme: Scheme, stops: readonly number[]): readonly Stroke[] {
  const sorted = distinct(stops);
  return sorted.slice(1).map((to, i) => dimension(scheme, sorted[i]!, to));
}

/** Superimposed running dimensions from a datum; a stop at the datum itself is its zero. */
export const running = (scheme: Scheme, datum: number, stops: readonly number[]): readonly Stroke[] =>
  distinct(stops)
    .filter((to) => Math.abs(to - datum) >= SAME_LENGTH)
    .map((to) => ({ ...dimension(scheme, datum, to), running: true }) as Stroke);

/** In rising order, each length once. */
export function distinct(stops: readonly number[]): readonly number[] {
  const sorted = [...stops].sort((a, b) => a - b);
  return sorted.filter((at, i) => i === 0 || at - sorted[i - 1]! >= SAME_LENGTH);
}
