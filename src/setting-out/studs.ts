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
  const kept = refused.flatMap(({ wish, wanted }): readonly Kept[] => {
    if (wanted === undefined) return [];
    const { reason } = wish;
    const centre = x(wanted);
    return keepOuts
      .filter((k) => inTheWay(centre, timber.face, k))
      .map((keepOut) => ({ run, x: x(wish.x), centre, reason, keepOut }));
  });
  const findings = [
    ...refused.filter((r) => r.wanted === undefined).map(({ wish }) => crowded(run, { ...wish, x: x(wish.x) })),
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
): { readonly studs: readonly Stud[]; readonly refused: readonly Refused[]; readonly cleared: readonly Cleared[] } {
  const { face } = timber;
  const { from, to } = frame;
  const studs: Standing[] = [
    { centre: from + face / 2, reasons: ['end'], needed: true },
    { centre: to - face / 2, reasons: ['end'], needed: true },
  ];
  // Where a wish lies beyond the ends the neighbour's frame stands, round the corner.
  const own = inOrder(wishes).filter(({ x }) => x >= from && x <= to);
  const refused = own.flatMap((wish) => place(wish, studs, timber, frame, bars));
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

/** A wish that is left without a stud; `wanted` is where one would stand, were no keep-out there. */
interface Refused {
  readonly wish: StudWish;
  readonly wanted?: number;
}

/** Stands a stud for a wish, or finds one that serves. Says so when the wish is left without one. */
function place(
  wish: StudWish,
  studs: Standing[],
  { face }: FrameTimber,
  frame: Frame,
  bars: readonly Barred[],
): readonly Refused[] {
  if (served(wish, studs, wish.centred ? SAME_LENGTH : face / 2 - LEAST_EDGE)) return [];
  const centre = placeFor(wish, studs, face, frame, bars);
  if (centre !== undefined) {
    studs.push({ centre, reasons: [wish.reason], needed: true });
    return [];
  }
  const wanted = placeFor(wish, studs, face, frame, []);
  if (wanted !== undefined) return [{ wish, wanted }];
  return served(wish, studs, mostOff(wish, face)) ? [] : [{ wish }];
}

/** A joint needs bearing on both sides; any other line may lie near the edge of a stud, if the next stands tight against that edge. */
const mostOff = ({ centred }: StudWish, face: number): number =>
  centred ? Math.max(SAME_LENGTH, face / 2 - LEAST_BEARING) : face / 2 + LEAST_EDGE;

/** Middle of a stud that carries a wish's line: on it, or tight against the end, another stud or a keep-out near it. */
function placeFor(
  wish: StudWish,
  studs: readonly Standing[],
  face: number,
  frame: Frame,
  bars: readonly Barred[],
): number | undefined {
  const inside = Math.min(Math.max(wish.x, frame.from + face / 2), frame.to - face / 2);
  const crowd = studs.filter((s) => Math.abs(s.centre - inside) < face);
  const barring = bars.filter((bar) => inTheWay(inside, face, bar));
  // Beside a keep-out no other stud stands tight against its edge.
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
  return best !== undefined && Math.abs(best - wish.x) <= mostOff(wish, face) ? best : undefined;
}

/** Whether a stud already stands within `reach` of a wish; it then keeps the wish's reason too. */
function served(wish: StudWish, studs: readonly Standing[], reach: number): boolean {
  const there = studs.find((s) => Math.abs(s.centre - wish.x) <= reach);
  if (there && !there.reasons.includes(wish.reason)) there.reasons.push(wish.reason);
  return there !== undefined;
}
