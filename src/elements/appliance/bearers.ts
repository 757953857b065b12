import { crossStick } from '../../base/box';
import { rectangle } from '../../base/outline';
import { lying, type Stuff } from '../../base/stuff';
import { leftOf, tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Timber } from '../../vocabulary/book';
import type { Carcass } from '../../vocabulary/carcass';
import type { Finding } from '../../vocabulary/finding';
import type { Hold, PartDraft } from '../../vocabulary/part';
import { railAt, type Space } from './spaces';

/** A bearer shorter than this carries nothing, mm (common practice, no source). */
const LEAST_BEARER = 50;

/** Where the two bearers of a bowl lie: x of their sides towards it. Undefined where its width isn't stated. */
export interface Pair {
  readonly left: number;
  readonly right: number;
}

/** The bowl hangs in the middle of its bay, clear of each bearer. */
export function pairOf({ bay, wish }: Space): Pair | undefined {
  if (wish.width <= 0) return undefined;
  const middle = (bay.from + bay.to) / 2;
  const half = wish.width / 2 + wish.besides;
  return { left: middle - half, right: middle + half };
}

/** A bowl that fits its bay, but leaves no room for bearers beside it. */
export function crowded({ run, bay, wish, width, depth }: Space, thickness: number): Finding | undefined {
  if (depth < LEAST_BEARER) return noLength(run.id, (bay.bay ?? 0) + 1, wish.path, depth);
  const need = wish.width + 2 * wish.besides + 2 * thickness;
  if (need <= width + SAME_LENGTH) return undefined;
  return {
    severity: 'warn',
    rule: 'sink-without-bearers',
    subject: { run: run.id, path: wish.path },
    value: need,
    limit: width,
    message: `The sink bowl in bay ${(bay.bay ?? 0) + 1} of run ${run.id} and a bearer at each side want ${tenth(need)} mm; the bay has ${tenth(width)} mm.`,
    source: 'geometry of the setting-out',
    remedy: `The widest bowl with bearers is ${tenth(Math.max(0, width - 2 * wish.besides - 2 * thickness))} mm; else it hangs between the cross frames themselves. No bearers are made.`,
  };
}

const noLength = (run: string, bay: number, path: string, value: number): Finding => ({
  severity: 'warn',
  rule: 'sink-without-bearers',
  subject: { run, path },
  value,
  limit: LEAST_BEARER,
  message: `Bay ${bay} of run ${run} leaves ${leftOf(value)} from rail to rail for bearers of the sink; ${LEAST_BEARER} mm is the least.`,
  source: 'common practice, no source',
  remedy: 'Make the unit or the worktop deeper. No bearers are made.',
});

/** Two bearers from front to back at the bowl's sides, under the top; and one behind it from frame to frame where no rail runs there. */
export function sinkBearers(
  space: Space,
  pair: Pair,
  carcass: Carcass,
  material: string,
  timber: Timber,
): readonly PartDraft[] {
  const { run, bay, front, rear, top } = space;
  const { width: high, thickness } = timber;
  const section = rectangle(high, thickness);
  const draft = (where: string, holds: readonly Hold[], stuff: Stuff): PartDraft => ({
    kind: 'appliance',
    code: 'SR',
    name: 'sink bearer',
    run: run.id,
    material,
    finish: 'bare',
    from: 'framed',
    edges: [],
    grooves: [],
    where: `bay ${(bay.bay ?? 0) + 1}, ${where}`,
    holds,
    ...stuff,
  });
  const side = (from: number, towards: 1 | -1): Stuff =>
    crossStick(run, { from, to: from + thickness, back: rear, front, low: top - high, high: top }, section, towards);
  return [
    ...(carcass.rearRail
      ? []
      : [
          draft('rear', [ENDS], lying(run, section, { from: bay.from, to: bay.to, d: railAt(carcass), z: top - high })),
        ]),
    draft('left of the bowl', [ENDS], side(pair.left - thickness, 1)),
    draft('right of the bowl', [ENDS], side(pair.right, -1)),
  ];
}

const ENDS: Hold = {
  by: 'screw',
  through: 25,
  where: { at: 'ends', each: 2 },
  rule: 'sink bearer: skewed, 2 at each end, as a noggin (common practice, no source)',
};
