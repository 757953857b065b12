import { SAME_LENGTH } from '../base/tolerance';
import type { FrameTimber } from '../vocabulary/rod';
import { LEAST_EDGE } from './bands';
import type { Frame } from './centres';
import { type Barred, inTheWay, type Standing } from './keep-outs';
import type { StudWish } from './stud-findings';

/** A joint must have at least this much timber on each side of it (common practice, no source). */
const LEAST_BEARING = 12;

/** A wish that is left without a stud; `wanted` is where one would stand, were no keep-out there. */
export interface Refused {
  readonly wish: StudWish;
  readonly wanted?: number;
}

/** Stands a stud for a wish, or finds one that serves. Says so when the wish is left without one. */
export function place(
  wish: StudWish,
  studs: Standing[],
  { face }: FrameTimber,
  frame: Frame,
  bars: readonly Barred[],
): readonly Refused[] {
  if (served(wish, studs, (wish.centred ? 0 : face / 2 - LEAST_EDGE) + SAME_LENGTH)) return [];
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
  if (crowd.length === 0 && barring.length === 0)
    return Math.abs(inside - wish.x) <= mostOff(wish, face) ? inside : undefined;
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
