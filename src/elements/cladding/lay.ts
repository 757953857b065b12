import type { DecisionsOf } from '../../vocabulary/field';
import type { RodRun, RunEnd } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import type { fields } from './fields';
import { type Cut, chooseCuts } from './joints';

export type Decisions = DecisionsOf<typeof fields>;

/** How the skin of one run is divided. `cuts` undefined: it can't be. */
export interface Laying {
  readonly from: number;
  readonly to: number;
  readonly longest: number;
  readonly low: number;
  readonly high: number;
  readonly tallest: number;
  readonly cuts: readonly Cut[] | undefined;
}

/** Sheets lie along the run while the front is no higher than a sheet is wide, else they stand. */
export function layRun(
  run: RodRun,
  { sheet, floorGap, trim }: Decisions,
  { rod, book }: Pick<Bench, 'rod' | 'book'>,
): Laying {
  const stock = book.item('sheet', sheet);
  const low = floorGap;
  const high = rod.frameHeight;
  const lies = high - low <= stock.width - 2 * trim;
  const longest = (lies ? stock.length : stock.width) - 2 * trim;
  const tallest = (lies ? stock.width : stock.length) - 2 * trim;
  const grown = Math.max(0, run.left.grows * stock.thickness) + Math.max(0, run.right.grows * stock.thickness);
  return {
    from: 0,
    to: run.length,
    longest,
    tallest,
    low,
    high,
    cuts: fromDatum(run.length, rod.timber.datum, longest - grown, places(run, rod.timber, stock.thickness)),
  };
}

/** Of two ways to cut that are as good, the same is chosen as seen from the datum end: so a unit and its mirror image are cut alike. */
function fromDatum(length: number, datum: string, longest: number, at: readonly Cut[]): readonly Cut[] | undefined {
  if (datum === 'left') return chooseCuts(0, length, longest, at);
  const turned = new Map(at.map((cut) => [length - cut.x, cut]));
  const cuts = chooseCuts(
    0,
    length,
    longest,
    [...turned].map(([x, { behindPillar }]) => ({ x, behindPillar })),
  );
  return cuts?.map(({ x }) => turned.get(x) as Cut).reverse();
}

/** Behind the middle of a pillar that stands clear of the ends, or on a line of the frame's module. */
function places(
  run: RodRun,
  timber: { readonly centres: number; readonly face: number; readonly datum: string },
  thickness: number,
): readonly Cut[] {
  const inner: Cut[] = run.pillars
    .filter((p) => p.where === 'between')
    .map((p) => ({ x: p.centre, behindPillar: true }));
  const { frameAt: from } = run.left;
  const { frameAt: to } = run.right;
  // A piece must be longer than the mitre takes off it, and its joint clear of the end stud.
  const least = (end: RunEnd): number => timber.face + thickness * Math.abs(end.grows);
  const clear = (x: number): boolean =>
    x - Math.max(0, from) > least(run.left) &&
    Math.min(to, run.length) - x > least(run.right) &&
    inner.every((c) => Math.abs(c.x - x) >= timber.face);
  const lines = Array.from({ length: Math.floor((to - from) / timber.centres) }, (_, k) =>
    timber.datum === 'left' ? from + (k + 1) * timber.centres : to - (k + 1) * timber.centres,
  );
  return [...inner, ...lines.filter(clear).map((x) => ({ x, behindPillar: false }))];
}
