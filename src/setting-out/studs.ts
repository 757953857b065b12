import type { Stud } from '../vocabulary/backing';
import type { Finding } from '../vocabulary/finding';
import type { FrameTimber } from '../vocabulary/rod';
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
import { place, type Refused } from './serve';
import { clearedFindings, crowded, keptFinding, type StudWish } from './stud-findings';

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
  const all: Standing[] = [];
  for (const stud of required) {
    const before = all.at(-1);
    for (const centre of before ? fill(before.centre, stud.centre, frame, timber) : [])
      all.push({ centre, reasons: ['centres'], needed: false });
    all.push(stud);
  }
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

/** How many studs stand by the centres only in a frame from `from` to `to`, between those at its ends and those `needed` (their middles). mm. */
export function studsByCentres(from: number, to: number, needed: readonly number[], timber: FrameTimber): number {
  const { face, datum } = timber;
  const seen = datum === 'left' ? needed : needed.map((x) => from + to - x);
  const inside = seen.filter((x) => x >= from + face && x <= to - face).sort((a, b) => a - b);
  const centres = [from + face / 2, ...inside, to - face / 2];
  return centres.slice(1).reduce((sum, x, i) => sum + fill(centres[i], x, { from, to }, timber).length, 0);
}
