import { CLEAR_OF_HOLE } from '../../base/tolerance';
import type { DecisionsOf } from '../../vocabulary/field';
import type { PlacedOpening } from '../../vocabulary/opening';
import type { Rod, RodRun, RunEnd } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import type { fields } from './fields';
import { type Cut, chooseCuts } from './joints';

export type Decisions = DecisionsOf<typeof fields>;

/** The skin between two joins, or an end of the run and a join. `cuts` undefined: it can't be divided. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly longest: number;
  readonly cuts: readonly Cut[] | undefined;
}

/** How the skin of one run is divided. Heights above the floor; `longest` and `tallest` what the trimmed sheet gives. */
export interface Laying {
  readonly stretches: readonly Stretch[];
  readonly low: number;
  readonly high: number;
  readonly longest: number;
  readonly tallest: number;
}

/** From the frame's lower edge, but clear of the floor, to the top. */
export const skinHeights = (rod: Rod, { floorGap }: Decisions): { readonly low: number; readonly high: number } => ({
  low: Math.max(floorGap, rod.frameLow),
  high: rod.frameHeight,
});

/** A skin lower than this is none, mm: nothing could be fixed through it (common practice, no source). */
export const LEAST_HEIGHT = 20;

/** Sheets lie along the run while the front is no higher than a sheet is wide, else they stand. Each section has its own. */
export function layRun(
  run: RodRun,
  decisions: Decisions,
  { rod, book, openings }: Pick<Bench, 'rod' | 'book' | 'openings'>,
): Laying {
  const { sheet, trim } = decisions;
  const stock = book.item('sheet', sheet);
  const { low, high } = skinHeights(rod, decisions);
  const lies = high - low <= stock.width - 2 * trim;
  const longest = (lies ? stock.length : stock.width) - 2 * trim;
  const tallest = (lies ? stock.width : stock.length) - 2 * trim;
  const { thickness } = stock;
  const holes = openings.filter((o) => o.run === run.id && o.through === 'front');
  const lines = [0, ...run.joins.map((j) => j.x), run.length];
  const stretches = lines.slice(1).map((to, i): Stretch => {
    const from = lines[i];
    // What the mitre and the scribe add must come out of the same sheet.
    const ends = [...(i === 0 ? [run.left] : []), ...(i === lines.length - 2 ? [run.right] : [])];
    const most = longest - ends.reduce((sum, end) => sum + Math.max(0, end.grows * thickness) + end.scribe, 0);
    // Most stretches come out of one sheet; the places are looked for only where one must be cut.
    if (to - from <= most) return { from, to, longest: most, cuts: [] };
    const at = places(run, { from, to }, rod.timber, thickness).filter((cut) => misses(cut.x, holes, rod.timber.face));
    return { from, to, longest: most, cuts: fromDatum({ from, to }, rod.timber.datum, most, at) };
  });
  return { stretches, longest, tallest, low, high };
}

/** Whether a joint and the stud behind it are clear of every opening. */
const misses = (x: number, holes: readonly PlacedOpening[], face: number): boolean =>
  holes.every((o) => x + face / 2 <= o.from - CLEAR_OF_HOLE || x - face / 2 >= o.to + CLEAR_OF_HOLE);

type Reach = Pick<Stretch, 'from' | 'to'>;

/** Of two ways to cut that are as good, the same is chosen as seen from the datum end: so a unit and its mirror image are cut alike. */
function fromDatum(
  { from, to }: Reach,
  datum: string,
  longest: number,
  at: readonly Cut[],
): readonly Cut[] | undefined {
  if (datum === 'left') return chooseCuts(from, to, longest, at);
  const turned = new Map(at.map((cut) => [from + to - cut.x, cut]));
  const cuts = chooseCuts(
    from,
    to,
    longest,
    [...turned].map(([x, { behindPillar }]) => ({ x, behindPillar })),
  );
  return cuts?.map(({ x }) => turned.get(x) as Cut).reverse();
}

/** Behind the middle of a pillar that stands clear of the ends, or on a line of the module of that section's frame. */
function places(
  run: RodRun,
  { from, to }: Reach,
  timber: { readonly centres: number; readonly face: number; readonly datum: string },
  thickness: number,
): readonly Cut[] {
  // Beside a join stands the stud of its own section; half another must find room beyond it.
  const fromJoins = (x: number): boolean => run.joins.every((j) => Math.abs(j.x - x) >= 1.5 * timber.face);
  const inner: Cut[] = run.pillars
    .filter((p) => p.where === 'between' && p.centre > from && p.centre < to && fromJoins(p.centre))
    .map((p) => ({ x: p.centre, behindPillar: true }));
  const start = from === 0 ? run.left.frameAt : from;
  const end = to === run.length ? run.right.frameAt : to;
  // A piece must be longer than the mitre takes off it, and its joint clear of the end stud.
  const least = (at: RunEnd): number => timber.face + thickness * Math.abs(at.grows);
  const clear = (x: number): boolean =>
    x - Math.max(0, run.left.frameAt) > least(run.left) &&
    Math.min(run.right.frameAt, run.length) - x > least(run.right) &&
    fromJoins(x) &&
    inner.every((c) => Math.abs(c.x - x) >= timber.face);
  const lines = Array.from({ length: Math.max(0, Math.floor((end - start) / timber.centres)) }, (_, k) =>
    timber.datum === 'left' ? start + (k + 1) * timber.centres : end - (k + 1) * timber.centres,
  );
  return [...inner, ...lines.filter(clear).map((x) => ({ x, behindPillar: false }))];
}
