import { SAME_LENGTH } from '../base/tolerance';
import type { Stroke } from '../vocabulary/drawing';
import type { Rod, RodRun } from '../vocabulary/rod';
import { dimension, type Scheme } from './dimension';

/** A join across a run or at one of its ends, at x along it. */
export interface JoinMark {
  readonly id: string;
  readonly x: number;
}

/** The joins of a run from left to right, those at its corners and flaps among them. */
export function joinsOn(run: RodRun, { runs }: Pick<Rod, 'runs'>): readonly JoinMark[] {
  const before = runs[runs.findIndex(({ id }) => id === run.id) - 1]?.joinAtRight;
  return [
    ...(before === undefined ? [] : [{ id: before, x: 0 }]),
    ...run.joins.map(({ id, x }) => ({ id, x })),
    ...(run.joinAtRight === undefined ? [] : [{ id: run.joinAtRight, x: run.length }]),
  ];
}

/** A narrow chain line over the whole height at each join: there the unit is taken apart. */
export const joinLines = (joins: readonly JoinMark[], low: number, high: number): readonly Stroke[] =>
  joins.map(({ x }) => ({
    kind: 'line',
    points: [
      [x, low],
      [x, high],
    ],
    pen: 'narrow',
    style: 'chain',
  }));

/**
 * The joins named in a row of running dimensions: id, then how far from the left end of the frame line. `placeOf`: where a point along the
 * run lies on the drawing.
 */
export const joinNames = (
  scheme: Scheme,
  joins: readonly JoinMark[],
  placeOf: (x: number) => number = (x) => x,
): readonly Stroke[] =>
  joins.map(({ id, x }) => {
    const datum = placeOf(0);
    if (Math.abs(x) < SAME_LENGTH)
      return { ...dimension(scheme, datum, datum), running: true, text: `${id} 0 frame line` };
    const measured = { ...dimension(scheme, datum, placeOf(x)), running: true };
    return { ...measured, text: `${id} ${x < 0 ? '-' : ''}${measured.text}` };
  });
