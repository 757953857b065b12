import type { Box } from '../../base/box';
import { pastCorners } from '../../base/place';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { Bench } from '../../vocabulary/room';
import { eachOf, mostOf } from './divide';
import { type Decisions, fieldOf, frontsOf, type InBay } from './field';
import { largerThanSheet, nothingToHangOn, pastCorner, tooLittleHold, tooSmall } from './findings';
import { poor } from './poor';

/** A door narrower, or a drawer front lower than this is none, mm (common practice, no source). */
const LEAST_DOOR = 100;
const LEAST_DRAWER = 60;

/** A front must lie on a post, or a stop on its side, by at least this (common practice, no source). */
const LEAST_HOLD = 8;

/** The fronts of one bay, each in its box. */
export interface Laid extends InBay {
  readonly purpose: 'doors' | 'drawers';
  readonly fronts: readonly Box[];
}

/** Works out the fronts of every bay that wants doors or drawers; where they can't be made a finding says so, with the nearest that can. */
export function layFronts(
  decisions: Decisions,
  { rod, book }: Pick<Bench, 'rod' | 'book'>,
): { readonly laid: readonly Laid[]; readonly findings: readonly Finding[] } {
  const laid: Laid[] = [];
  const findings: Finding[] = [];
  const sheet = book.item('sheet', decisions.sheet);
  const stop = book.item('timber', decisions.stop);
  for (const run of rod.runs)
    for (const bay of run.backBays) {
      const purpose = bay.wish?.purpose;
      if (!bay.wish || !rod.carcass || (purpose !== 'doors' && purpose !== 'drawers')) continue;
      const one = fieldOf(decisions, rod.carcass, run, bay, sheet.thickness, stop);
      const refused = faultOf(decisions, one, purpose, bay.wish.count, sheet);
      if (refused) {
        findings.push(refused);
        continue;
      }
      const fronts = frontsOf(one.field, purpose, bay.wish.count, decisions.gap);
      laid.push({ ...one, purpose, fronts });
      findings.push(...poor(one, purpose, fronts[0], rod));
    }
  return { laid, findings };
}

function faultOf(
  { lie, gap }: Decisions,
  { run, bay, field, hold }: InBay,
  purpose: 'doors' | 'drawers',
  count: number,
  sheet: { readonly length: number; readonly width: number },
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
  const past = pastCorners(run, { from: field.from, to: field.to, inner: field.back, outer: field.front });
  return past > SAME_LENGTH ? pastCorner(run, bay, past) : undefined;
}
