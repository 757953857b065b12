import { SAME_LENGTH } from '../base/tolerance';
import type { Stud } from '../vocabulary/backing';
import type { Finding } from '../vocabulary/finding';
import type { FrameTimber } from '../vocabulary/rod';
import { LEAST_EDGE } from './bands';
import { type Frame, fill } from './centres';
import {
  type Barred,
  barred,
  type Cleared,
  clearOf,
  inTheWay,
  type KeepOut,
  type Kept,
  type Standing,
} from './keep-outs';
import { clearedFindings, crowded, keptFinding, type StudWish } from './stud-findings';

/** A joint must have at least this much timber on each side of it (common practice, no source). */
const LEAST_BEARING = 12;

/** The studs of a frame, what is to be said of them, and the keep-outs that are to be trimmed with noggins. */
interface Stood {
  readonly studs: readonly Stud[];
  readonly trimmed: readonly KeepOut[];
  /** Studs that are needed and that a keep-out leaves no place. */
  readonly kept: readonly Kept[];
  readonly findings: readonly Finding[];
}

/**
 * Where the studs of one run stand: its ends, then wherever a room asks, then the module or equal division between those, so that no
 * two neighbours are further apart than the centres. None stands in a keep-out: it is moved, or the opening trimmed. x in mm along the run.
 */
export function standStuds(
  run: string,
  from: number,
  to: number,
  timber: FrameTimber,
  wishes: readonly StudWish[],
  keepOuts: readonly KeepOut[] = [],
): Stood {
  // From the right it is the same work seen in a mirror: so a unit and its mirror image are framed alike, to the last stud.
  const fromLeft = timber.datum === 'left';
  const x = (at: number): number => (fromLeft ? at : from + to - at);
  const seen = fromLeft ? wishes : wishes.map((wish) => ({ ...wish, x: x(wish.x) }));
  // A keep-out seen in the mirror is still the room's own.
  const own = new Map(keepOuts.map((k) => [fromLeft ? k : { ...k, from: x(k.to), to: x(k.from) }, k]));
  const bars = barred([...own.keys()], timber.face);
  const { studs, refused, cleared } = standFromLeft({ from, to }, timber, seen, bars);
  const trimmed = cleared.filter((c) => !c.needed && c.to === undefined).flatMap((c) => c.bar.of);
  const unserved = refused.map((wish) => ({ ...wish, x: x(wish.x) }));
  const kept = unserved.flatMap((wish) => keptOut(run, wish, keepOuts, timber.face));
  const findings = [
    ...unserved.filter((wish) => !kept.some((k) => k.x === wish.x)).map((wish) => crowded(run, wish)),
    ...kept.map(keptFinding),
    ...cleared.flatMap((c) => clearedFindings(run, c, timber, x)),
  ];
  return {
    studs: fromLeft ? studs : studs.map((s) => ({ ...s, from: x(s.to), to: x(s.from) })).reverse(),
    trimmed: trimmed.map((k) => own.get(k) as KeepOut),
    kept,
    findings,
  };
}

function standFromLeft(
  frame: Frame,
  timber: FrameTimber,
  wishes: readonly StudWish[],
  bars: readonly Barred[],
): { readonly studs: readonly Stud[]; readonly refused: readonly StudWish[]; readonly cleared: readonly Cleared[] } {
  const { face } = timber;
  const { from, to } = frame;
  const studs: Standing[] = [
    { centre: from + face / 2, reasons: ['end'], needed: true },
    { centre: to - face / 2, reasons: ['end'], needed: true },
  ];
  // Where a wish lies beyond the ends the neighbour's frame stands, round the corner.
  const own = inOrder(wishes).filter(({ x }) => x >= from && x <= to);
  const refused = own.filter((wish) => !place(wish, studs, timber, frame, bars));
  const required = [...studs].sort((a, b) => a.centre - b.centre);
  const between = required.slice(1).flatMap((stud, i) => fill(required[i].centre, stud.centre, frame, timber));
  const all = [...required, ...between.map((centre) => ({ centre, reasons: ['centres'], needed: false }))].sort(
    (a, b) => a.centre - b.centre,
  );
  const clear = clearOf(bars, all, frame, timber);
  return {
    studs: clear.studs.map((s) => ({ from: s.centre - face / 2, to: s.centre + face / 2, reasons: s.reasons })),
    refused,
    cleared: clear.cleared,
  };
}

/** Joints first: they can't move. */
const inOrder = (wishes: readonly StudWish[]): readonly StudWish[] =>
  [...wishes].sort((a, b) => Number(b.centred) - Number(a.centred) || a.x - b.x);

/** Stands a stud for a wish, or finds one that serves. False when the wish is left without one. */
function place(
  wish: StudWish,
  studs: Standing[],
  { face }: FrameTimber,
  frame: Frame,
  bars: readonly Barred[],
): boolean {
  if (served(wish, studs, wish.centred ? SAME_LENGTH : face / 2 - LEAST_EDGE)) return true;
  // A line near an end, another stud or an opening is met by a stud standing tight against it.
  const inside = Math.min(Math.max(wish.x, frame.from + face / 2), frame.to - face / 2);
  const crowd = studs.filter((s) => Math.abs(s.centre - inside) < face);
  const barring = bars.filter((bar) => inTheWay(inside, face, bar));
  const reach = Math.max(SAME_LENGTH, face / 2 - (wish.centred ? LEAST_BEARING : LEAST_EDGE));
  const beside = barring.flatMap((bar) => [bar.from - face / 2, bar.to + face / 2]);
  const options = [
    inside,
    ...crowd.flatMap((s) => [s.centre - face, s.centre + face]),
    ...beside.filter((c) => Math.abs(c - wish.x) <= reach),
  ].filter(
    (c) =>
      c >= frame.from + face / 2 - SAME_LENGTH &&
      c <= frame.to - face / 2 + SAME_LENGTH &&
      studs.every((s) => Math.abs(s.centre - c) >= face - SAME_LENGTH) &&
      bars.every((bar) => !inTheWay(c, face, bar)),
  );
  const best = options.sort((a, b) => Math.abs(a - wish.x) - Math.abs(b - wish.x))[0];
  // A joint needs bearing on both sides; any other line may lie near the edge of a stud, if the next stands tight against that edge.
  const most = wish.centred ? Math.max(SAME_LENGTH, face / 2 - LEAST_BEARING) : face / 2 + LEAST_EDGE;
  const carried = best !== undefined && Math.abs(best - wish.x) <= most;
  if (carried) studs.push({ centre: best, reasons: [wish.reason], needed: true });
  return carried || served(wish, studs, most);
}

/** Whether a stud already stands within `reach` of a wish; it then keeps the wish's reason too. */
function served(wish: StudWish, studs: readonly Standing[], reach: number): boolean {
  const there = studs.find((s) => Math.abs(s.centre - wish.x) <= reach);
  if (there && !there.reasons.includes(wish.reason)) there.reasons.push(wish.reason);
  return there !== undefined;
}

/** A wish that a keep-out leaves without a stud, when it is that and not another stud. */
function keptOut(run: string, { x, reason }: StudWish, keepOuts: readonly KeepOut[], face: number): readonly Kept[] {
  const reach = face / 2 + LEAST_EDGE;
  const keepOut = keepOuts.find((k) => x > k.from - reach && x < k.to + reach);
  return keepOut ? [{ run, x, reason, keepOut }] : [];
}
