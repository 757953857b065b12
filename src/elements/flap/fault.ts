import { leftOf, tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';
import type { Rod } from '../../vocabulary/rod';
import type { Gap } from './gap';
import { between, subjectOf } from './words';

/** No one gets through less than this (common practice, no source). */
const LEAST_BETWEEN = 200;
/** A jamb is this much higher than its bearer at least, to be fixed by (common practice, no source). */
const LEAST_JAMB = 100;

/** Why nothing can hang in a gap; undefined when it can. */
export function faultOf(gap: Gap, rod: Rod, inTheWay: readonly { readonly run: string }[]): Finding | undefined {
  const { left, right, low, high, jamb, bearer, bearerHeight } = gap;
  const stop = { severity: 'stop', subject: subjectOf(gap), source: 'geometry of the gap' } as const;
  const unmade = [left, right].find((run) => !run.sound);
  if (unmade)
    return {
      ...stop,
      rule: 'flap-no-run',
      message: `The flap ${between(gap)} has nothing to lie on: run ${unmade.id} is too short to be made.`,
      remedy: `Lengthen run ${unmade.id}. The flap is left out.`,
    };
  const need = bearerHeight + LEAST_JAMB;
  // As the frame has it: two plates and the shortest stud.
  const least = 3 * rod.timber.face;
  if (high - rod.frameLow < least)
    return {
      ...stop,
      rule: 'flap-no-height',
      value: high - rod.frameLow,
      limit: least,
      message: `The flap ${between(gap)} has nothing to lie on: the frames beside it are ${tenth(Math.max(0, high - rod.frameLow))} mm high, and ${tenth(least)} mm is the least that is made.`,
      remedy: 'Raise the unit. The flap is left out.',
    };
  if (high - low < need)
    return {
      ...stop,
      rule: 'flap-no-height',
      value: high - low,
      limit: need,
      message: `From the plinth blocks to the underside of the top there is ${leftOf(high - low)} at the flap ${between(gap)}; a bearer of ${tenth(bearerHeight)} mm and its jamb need ${tenth(need)} mm.`,
      remedy: 'Raise the unit, or make the bearers or plinth blocks lower. The flap is left out.',
    };
  const clear = gap.to - gap.from - 2 * (jamb + bearer);
  if (clear < LEAST_BETWEEN)
    return {
      ...stop,
      rule: 'flap-too-narrow',
      value: clear,
      limit: LEAST_BETWEEN,
      message: `Two jambs of ${tenth(jamb)} mm and two bearers of ${tenth(bearer)} mm leave ${leftOf(clear)} of the gap of ${tenth(gap.to - gap.from)} mm ${between(gap)}; ${LEAST_BETWEEN} mm is the least.`,
      source: 'common practice, no source',
      remedy: 'Widen the gap, or take thinner jambs or narrower bearers. The flap is left out.',
    };
  if (inTheWay[0])
    return {
      ...stop,
      rule: 'flap-meets-run',
      message: `Run ${inTheWay[0].run} or its top reaches into the gap ${between(gap)}.`,
      remedy: 'Move the flap along, so that the run beside it is longer. The flap is left out.',
    };
  return undefined;
}
