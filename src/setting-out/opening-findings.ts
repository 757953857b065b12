import { tenth } from '../base/tenth';
import { SAME_LENGTH } from '../base/tolerance';
import type { Finding } from '../vocabulary/finding';
import type { Opening } from '../vocabulary/job';
import type { Ground } from './opening-ground';
import { against, meetingOf } from './opening-meets';
import { type Hit, largestPlace, nearestPlace, tenthDown, type Wished } from './opening-places';

/** "Opening 2 (till)"; `word`: as it begins. */
export const nameOf = ({ name }: Pick<Opening, 'name'>, index: number, word = 'Opening'): string =>
  `${word} ${index + 1}${name ? ` (${name})` : ''}`;

const finding = (rule: string, rest: Omit<Finding, 'severity' | 'source' | 'rule'>): Finding => ({
  severity: 'stop',
  rule,
  source: 'geometry of the setting-out',
  ...rest,
});

/** A wished opening that has no place where it is wished, in its run. */
export interface Refused {
  readonly opening: Opening;
  readonly index: number;
  readonly run: string;
  readonly ground: Ground;
  readonly wished: Wished;
}

/** What it meets, and where the nearest good place is; or how large one can be, where it has none. */
export function refused(one: Refused, worst: Hit): Finding {
  const { opening, index, run, ground, wished } = one;
  const place = nearestPlace(ground, wished);
  const { words, value, limit } = meetingOf(wished, worst, place);
  const meets = `${nameOf(opening, index)} in run ${run} ${words}.`;
  if (!place) return tooLarge(one, meets);
  const ways = waysTo(opening, place).join(' and ');
  return finding('opening-refused', {
    subject: subjectOf(one),
    value,
    limit,
    message: `${meets} The nearest good place is ${ways}${against(ground, wished, place, worst.what)}.`,
    remedy: `Move it ${ways}. It is left out.`,
  });
}

const subjectOf = ({ index, run }: Refused): Finding['subject'] => ({ run, path: `/unit/openings/${index}` });

/** "85 mm to the left, to 1210 mm": how far, which way, and where its middle then is. */
function waysTo({ x, z, through }: Opening, to: { readonly x: number; readonly z: number }): readonly string[] {
  const [more, less] = through === 'front' ? ['up', 'down'] : ['to the back', 'to the front'];
  const way = (from: number, at: number, back: string, on: string): readonly string[] =>
    Math.abs(at - from) <= SAME_LENGTH
      ? []
      : [`${tenth(Math.abs(at - from))} mm ${at < from ? back : on}, to ${placeAt(at)} mm`];
  return [...way(x, to.x, 'to the left', 'to the right'), ...way(z, to.z, less, more)];
}

function tooLarge(one: Refused, meets: string): Finding {
  const { opening, ground, wished } = one;
  const subject = subjectOf(one);
  const size = (w: number, h: number): string => `${tenthDown(w)} × ${tenthDown(h)} mm`;
  const sizeOf = (w: number, h: number): string => (wished.round ? `${tenthDown(w)} mm across` : size(w, h));
  const largest = largestPlace(ground, wished);
  const own = sizeOf(wished.width, wished.height);
  if (!largest)
    return finding('opening-refused', {
      subject,
      value: Math.max(wished.width, wished.height),
      limit: 0,
      message: `${meets} There is no clear field for an opening of any size in this run.`,
      remedy: 'Take it away, or put it in another run. It is left out.',
    });
  const narrow = wished.width - largest.width >= wished.height - largest.height;
  return finding('opening-too-large', {
    subject,
    value: narrow ? wished.width : wished.height,
    limit: narrow ? largest.width : largest.height,
    message: `${meets} It is ${own}, and the clear field that comes nearest is ${size(...largest.field)}: nothing so large has a place in this run.`,
    remedy: `Make it ${sizeOf(largest.width, largest.height)} at most, its middle at ${placeAt(largest.x)} mm along and ${placeAt(largest.z)} mm ${opening.through === 'front' ? 'up' : 'back'}. It is left out.`,
  });
}

/** A place as it is said: in tenths, unless only a finer figure is right. */
const placeAt = (mm: number): number =>
  Math.abs(tenth(mm) - mm) <= SAME_LENGTH ? tenth(mm) : Math.round(mm * 1000) / 1000;

/** Wished in a run that there isn't. */
export const noSuchRun = (name: string, run: number, subject: Finding['subject']): Finding =>
  finding('opening-in-no-run', {
    subject,
    value: run,
    message: `${name} is wished in run number ${run}, which the plan has not.`,
    remedy: 'Take it away, or add the run. It is left out.',
  });

/** Wished in a run that can't be built. */
export const notMade = (name: string, run: string, subject: Finding['subject']): Finding =>
  finding('opening-refused', {
    subject: { ...subject, run },
    message: `${name} is wished in run ${run}, which is too short to be built.`,
    remedy: 'Lengthen the run, or put the opening in another. It is left out.',
  });
