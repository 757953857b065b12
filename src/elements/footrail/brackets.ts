import type { AlongBay } from '../../base/along-bay';
import type { Bay, RodRun } from '../../vocabulary/rod';
import { NOSE } from './bracket';
import type { Profile } from './layout';

/** A bracket stands this far clear of what is beside it, mm: room for a screwdriver's shank and a paint brush (common practice, no source). */
const CLEAR = 10;

/** Float noise must not make 800.0000001 need another bracket, nor leave one out where it just fits. */
const NOISE = 1e-6;

/**
 * Where the middles of the brackets stand: each bay carries the rail as far as the middle of the pillars beside it, on as many brackets
 * as keep within the spacing, each in the middle of an equal share; one that would stand on a pillar or block is moved beside it.
 */
export function bracketsOf(
  run: RodRun,
  rail: AlongBay,
  profile: Profile,
  spacing: number,
  datum: 'left' | 'right',
): readonly number[] {
  const [start, end] = axisOf(rail, profile);
  const { bays } = run;
  const placed = bays.flatMap((bay, i) => {
    const from = i === 0 ? start : (bays[i - 1].to + bay.from) / 2;
    const to = i === bays.length - 1 ? end : (bay.to + bays[i + 1].from) / 2;
    const room = roomIn(run, bay, rail, profile);
    if (!room || to <= from) return [];
    const count = Math.max(1, Math.ceil((to - from) / spacing - NOISE));
    const wished = Array.from({ length: count }, (_, k) => from + ((to - from) * (k + 0.5)) / count);
    return wished.map((x) => Math.min(room.to, Math.max(room.from, x)));
  });
  return apart(placed, profile.thick + CLEAR, datum);
}

/** The ends of the rail on the line of its middle. */
function axisOf({ from, to, fromPerOut, toPerOut }: AlongBay, { back, front }: Profile): readonly [number, number] {
  const half = (front - back) / 2;
  return [from + fromPerOut * half, to + toPerOut * half];
}

/** Where the middle of a bracket may stand in a bay: clear of blocks, bases and caps, of strips over joins, and of the mitres that its nose comes near. */
function roomIn(
  run: RodRun,
  bay: Bay,
  rail: AlongBay,
  { inner, front, thick, heads }: Profile,
): { readonly from: number; readonly to: number } | undefined {
  const beside = thick / 2 + CLEAR;
  const nose = front + NOSE;
  const covers = run.joins.filter((j) => j.behind === 'cover' && j.coverFrom < bay.to && j.coverTo > bay.from);
  const middle = (bay.from + bay.to) / 2;
  const leftMitre = rail.fromPerOut === 0 ? -Infinity : Math.max(...[inner, nose].map((d) => -d * run.left.grows));
  const rightMitre =
    rail.toPerOut === 0 ? Infinity : Math.min(...[inner, nose].map((d) => run.length + d * run.right.grows));
  const from = Math.max(
    bay.footFrom,
    bay.from + (bay.mitredLeft ? 0 : heads),
    leftMitre,
    rail.from,
    ...covers.flatMap((j) => (j.coverFrom < middle ? [j.coverTo] : [])),
  );
  const to = Math.min(
    bay.footTo,
    bay.to - (bay.mitredRight ? 0 : heads),
    rightMitre,
    rail.to,
    ...covers.flatMap((j) => (j.coverFrom < middle ? [] : [j.coverFrom])),
  );
  return to - from >= 2 * beside - NOISE ? { from: from + beside, to: to - beside } : undefined;
}

/** Those that stand clear of the one before, seen from the datum end: so that a mirrored unit is set out alike. */
function apart(rising: readonly number[], least: number, datum: 'left' | 'right'): readonly number[] {
  const kept: number[] = [];
  for (const x of datum === 'left' ? rising : [...rising].reverse())
    if (kept.length === 0 || Math.abs(x - kept[kept.length - 1]) >= least - NOISE) kept.push(x);
  return datum === 'left' ? kept : kept.reverse();
}

/** The clear lengths of the rail between its brackets, and twice those from its ends to the first and last: all to be held against the spacing. */
export function spansOf(rail: AlongBay, profile: Profile, brackets: readonly number[]): readonly number[] {
  const [start, end] = axisOf(rail, profile);
  return [
    2 * (brackets[0] - start),
    ...brackets.slice(1).map((x, i) => x - brackets[i]),
    2 * (end - brackets[brackets.length - 1]),
  ];
}
