import type { Box } from '../../base/box';
import { pastCorners } from '../../base/place';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { RodRun, RunEnd } from '../../vocabulary/rod';
import { eachOf, mostOf } from './divide';
import { type Decisions, frontsOf, type InBay } from './field';
import { largerThanSheet, nothingToHangOn, pastCorner, tooLittleHold, tooSmall } from './findings';

/** A door narrower, or a drawer front lower than this is none, mm (common practice, no source). */
const LEAST_DOOR = 100;
const LEAST_DRAWER = 60;

/** A front must lie on a post, or a stop on its side, by at least this (common practice, no source). */
const LEAST_HOLD = 8;

/** What is wished in one bay: so many, from this sheet. `frame`: depth of the front frame's timber, mm. */
export interface WishedFronts {
  readonly purpose: 'doors' | 'drawers';
  readonly count: number;
  readonly sheet: { readonly length: number; readonly width: number };
  readonly frame: number;
}

/** Why the fronts of a bay can't be made, if so. `between`: whether they could lie between the posts instead; asked only where that matters. */
export function faultOf(
  { lie, gap }: Decisions,
  { run, bay, field, hold }: InBay,
  { purpose, count, sheet, frame }: WishedFronts,
  between: () => boolean,
): Finding | undefined {
  if (hold < LEAST_HOLD) return tooLittleHold(run, bay, lie, hold, LEAST_HOLD);
  // A door between two others would have nothing behind its edges.
  if (purpose === 'doors' && count > 2) return nothingToHangOn(run, bay, count);
  const [long, least] =
    purpose === 'doors' ? [field.to - field.from, LEAST_DOOR] : [field.high - field.low, LEAST_DRAWER];
  const each = eachOf(long, count, gap);
  if (each < least - SAME_LENGTH)
    return tooSmall(run, bay, purpose, { count, each, least, most: mostOf(long, gap, least) });
  const first = frontsOf(field, purpose, count, gap)[0];
  const size = [first.to - first.from, first.high - first.low] as const;
  if (Math.min(...size) < LEAST_DRAWER - SAME_LENGTH)
    return tooSmall(run, bay, purpose, { count, each: Math.min(...size), least: LEAST_DRAWER, most: 0 });
  if (Math.max(...size) > sheet.length || Math.min(...size) > sheet.width)
    return largerThanSheet(run, bay, purpose, size, sheet);
  const past = pastNeighbours(run, field, frame);
  return past > SAME_LENGTH ? pastCorner(run, bay, past, lie, between()) : undefined;
}

/**
 * How far fronts would stand past the line on which the neighbour's begin, mm. Nothing lies behind a return: there the back of its frame,
 * which stands behind the end of the run, is the limit.
 */
function pastNeighbours({ length, left, right }: RodRun, field: Box, frame: number): number {
  const grows = ({ toReturn, grows: own }: RunEnd): number => (toReturn ? 0 : own);
  const into = ({ toReturn }: RunEnd): number => (toReturn ? frame : 0);
  const face = { length: length - into(right), left: { grows: grows(left) }, right: { grows: grows(right) } };
  const { back: inner, front: outer } = field;
  return pastCorners(face, { from: field.from - into(left), to: field.to, inner, outer });
}
