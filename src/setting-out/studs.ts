import { tenth } from '../base/tenth';
import { SAME_LENGTH } from '../base/tolerance';
import type { Backing, Stud } from '../vocabulary/backing';
import type { Finding } from '../vocabulary/finding';
import type { FrameTimber } from '../vocabulary/rod';

/** A line that need not fall on the middle of a stud must lie at least this far in from its edge (common practice, no source). */
const LEAST_EDGE = 6;

/** A joint must have at least this much timber on each side of it (common practice, no source). */
const LEAST_BEARING = 12;

/** A module stud is not stood nearer than this, clear, to one that is needed: no room to fix a noggin (common practice, no source). */
const LEAST_CLEAR = 100;

type StudWish = Extract<Backing, { kind: 'stud' }>;
type Standing = { centre: number; reasons: string[] };

/**
 * Where the studs of one run stand: its ends, then wherever a room asks, then the module or equal division between those, so that no
 * two neighbours are further apart than the centres. x in mm along the run.
 */
export function standStuds(
  run: string,
  from: number,
  to: number,
  timber: FrameTimber,
  wishes: readonly StudWish[],
): { readonly studs: readonly Stud[]; readonly findings: readonly Finding[] } {
  if (timber.datum === 'left') {
    const { studs, refused } = standFromLeft({ from, to }, timber, wishes);
    return { studs, findings: refused.map((wish) => crowded(run, wish)) };
  }
  // From the right it is the same work seen in a mirror: so a unit and its mirror image are framed alike, to the last stud.
  const turned = <T extends { readonly x: number }>(wish: T): T => ({ ...wish, x: from + to - wish.x });
  const { studs, refused } = standFromLeft({ from, to }, timber, wishes.map(turned));
  return {
    studs: studs.map((s) => ({ ...s, from: from + to - s.to, to: from + to - s.from })).reverse(),
    findings: refused.map((wish) => crowded(run, turned(wish))),
  };
}

/** The frame of a run, from end to end. */
interface Frame {
  readonly from: number;
  readonly to: number;
}

function standFromLeft(
  frame: Frame,
  timber: FrameTimber,
  wishes: readonly StudWish[],
): { readonly studs: readonly Stud[]; readonly refused: readonly StudWish[] } {
  const { face } = timber;
  const { from, to } = frame;
  const studs: Standing[] = [
    { centre: from + face / 2, reasons: ['end'] },
    { centre: to - face / 2, reasons: ['end'] },
  ];
  // Where a wish lies beyond the ends the neighbour's frame stands, round the corner.
  const own = inOrder(wishes).filter(({ x }) => x >= from && x <= to);
  const refused = own.filter((wish) => !place(wish, studs, timber, frame));
  const required = [...studs].sort((a, b) => a.centre - b.centre);
  const between = required.slice(1).flatMap((stud, i) => fill(required[i].centre, stud.centre, frame, timber));
  const all = [...required, ...between.map((centre) => ({ centre, reasons: ['centres'] }))].sort(
    (a, b) => a.centre - b.centre,
  );
  return {
    studs: all.map((s) => ({ from: s.centre - face / 2, to: s.centre + face / 2, reasons: s.reasons })),
    refused,
  };
}

/** Joints first: they can't move. */
const inOrder = (wishes: readonly StudWish[]): readonly StudWish[] =>
  [...wishes].sort((a, b) => Number(b.centred) - Number(a.centred) || a.x - b.x);

/** Stands a stud for a wish, or finds one that serves. False when the wish is left without one. */
function place(wish: StudWish, studs: Standing[], { face }: FrameTimber, frame: Frame): boolean {
  if (served(wish, studs, wish.centred ? SAME_LENGTH : face / 2 - LEAST_EDGE)) return true;
  // A line near an end, or near another stud, is met by a stud standing tight against it.
  const inside = Math.min(Math.max(wish.x, frame.from + face / 2), frame.to - face / 2);
  const crowd = studs.filter((s) => Math.abs(s.centre - inside) < face);
  const options = [inside, ...crowd.flatMap((s) => [s.centre - face, s.centre + face])].filter(
    (c) =>
      c >= frame.from + face / 2 - SAME_LENGTH &&
      c <= frame.to - face / 2 + SAME_LENGTH &&
      studs.every((s) => Math.abs(s.centre - c) >= face - SAME_LENGTH),
  );
  const best = options.sort((a, b) => Math.abs(a - wish.x) - Math.abs(b - wish.x))[0];
  // A joint needs bearing on both sides; any other line may lie near the edge of a stud, if the next stands tight against that edge.
  const most = wish.centred ? Math.max(SAME_LENGTH, face / 2 - LEAST_BEARING) : face / 2 + LEAST_EDGE;
  const carried = best !== undefined && Math.abs(best - wish.x) <= most;
  if (carried) studs.push({ centre: best, reasons: [wish.reason] });
  return carried || served(wish, studs, most);
}

/** Whether a stud already stands within `reach` of a wish; it then keeps the wish's reason too. */
function served(wish: StudWish, studs: readonly Standing[], reach: number): boolean {
  const there = studs.find((s) => Math.abs(s.centre - wish.x) <= reach);
  if (there && !there.reasons.includes(wish.reason)) there.reasons.push(wish.reason);
  return there !== undefined;
}

/** Stud centres between two that stand already. */
function fill(a: number, b: number, frame: Frame, timber: FrameTimber): readonly number[] {
  if (b - a <= timber.centres + SAME_LENGTH) return [];
  return timber.method === 'module' ? onModule(a, b, frame, timber) : equally(a, b, timber.centres);
}

const equally = (a: number, b: number, centres: number): readonly number[] => {
  const gaps = Math.ceil((b - a) / centres - 1e-9);
  return Array.from({ length: gaps - 1 }, (_, i) => a + ((b - a) * (i + 1)) / gaps);
};

/**
 * Module lines, in whole centres from the left end of the frame, that fall between a and b; those not needed to keep within the centres
 * are left out, and so are those hard by another stud. Where the rest can't keep within the centres, that gap is divided equally.
 */
function onModule(a: number, b: number, { from, to }: Frame, { centres, face }: FrameTimber): readonly number[] {
  const count = Math.floor((to - from) / centres);
  const lines = Array.from({ length: count }, (_, k) => from + (k + 1) * centres).filter(
    (x) => Math.min(x - a, b - x) >= face + LEAST_CLEAR,
  );
  const kept = dropSpare([a, ...lines, b], centres);
  const widest = Math.max(...kept.slice(1).map((x, i) => x - kept[i]));
  return widest <= centres + SAME_LENGTH ? kept.slice(1, -1) : equally(a, b, centres);
}

function dropSpare(line: readonly number[], centres: number): readonly number[] {
  const kept = [...line];
  for (let i = 1; i < kept.length - 1; ) {
    if (kept[i + 1] - kept[i - 1] <= centres + SAME_LENGTH) kept.splice(i, 1);
    else i++;
  }
  return kept;
}

const crowded = (run: string, wish: StudWish): Finding => ({
  severity: 'warn',
  rule: 'stud-crowded',
  subject: { run },
  message: `A stud is wanted on ${tenth(wish.x)} mm in run ${run} (${wish.reason}), but others stand too near.`,
  value: wish.x,
  source: 'geometry of the setting-out',
  remedy: 'Move the pillar or the joint, or fix a batten to the neighbouring stud.',
});
