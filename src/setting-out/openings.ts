import { tenth } from '../base/tenth';
import { SAME_LENGTH } from '../base/tolerance';
import type { Finding } from '../vocabulary/finding';
import type { Opening } from '../vocabulary/job';
import type { Obstacle, PlacedOpening } from '../vocabulary/opening';
import type { Rod } from '../vocabulary/rod';
import { type Block, type Ground, groundOf, withWeb } from './opening-ground';
import { boxOf, hitsOf, largestPlace, nearestPlace, tenthDown, type Wished } from './opening-places';

/**
 * Gives each wished opening its place on the front or in the top of its run. One that meets something that can't give way is refused,
 * with how far the nearest good place is; nothing else moves for it. The first of two that meet has its place.
 */
export function placeOpenings(
  rod: Rod,
  openings: readonly Opening[],
  obstacles: readonly Obstacle[],
): { readonly placed: readonly PlacedOpening[]; readonly findings: readonly Finding[] } {
  const placed: PlacedOpening[] = [];
  const findings: Finding[] = [];
  const grounds = new Map<string, Ground>();
  openings.forEach((opening, index) => {
    const { run: number, through } = opening;
    const said = { path: `/unit/openings/${index}` };
    const run = rod.runs.find((r) => r.jobIndex === number - 1);
    if (!run) findings.push(noSuchRun(nameOf(opening, index), number, said));
    else if (!run.sound) findings.push(notMade(nameOf(opening, index), run.id, said));
    else {
      const key = `${run.id} ${through}`;
      const ground = grounds.get(key) ?? groundOf(rod, run, through, obstacles);
      const wished = wishedOf(opening);
      const [worst] = hitsOf(ground, wished);
      if (worst) findings.push(refused(opening, index, run.id, ground, wished, worst.what, worst.by));
      else {
        const box = boxOf(wished);
        placed.push({ index, name: opening.name, run: run.id, through, use: opening.use, round: wished.round, ...box });
        grounds.set(key, blockedBy(ground, withWeb(box, lower(nameOf(opening, index)))));
      }
    }
  });
  return { placed, findings };
}

/** The ground with one thing more in the way. */
const blockedBy = (ground: Ground, block: Block): Ground => ({ ...ground, blocks: [...ground.blocks, block] });

/** A pipe's hole is round: its height is its width. */
function wishedOf({ x, z, width, height, use }: Opening): Wished {
  const round = use === 'pipe';
  return { x, z, width, height: round ? width : height, round };
}

const nameOf = ({ name }: Opening, index: number): string => `Opening ${index + 1}${name ? ` (${name})` : ''}`;
const lower = (name: string): string => name.replace('O', 'o');

const finding = (rule: string, rest: Omit<Finding, 'severity' | 'source' | 'rule'>): Finding => ({
  severity: 'stop',
  rule,
  source: 'geometry of the setting-out',
  ...rest,
});

function refused(
  opening: Opening,
  index: number,
  run: string,
  ground: Ground,
  wished: Wished,
  what: string,
  by: number,
): Finding {
  const subject = { run, path: `/unit/openings/${index}` };
  const meets = `${nameOf(opening, index)} in run ${run} meets ${what} by ${tenth(by)} mm.`;
  const place = nearestPlace(ground, wished);
  if (!place) return tooLarge(opening, index, run, ground, wished, meets);
  const ways = waysTo(opening, place);
  return finding('opening-refused', {
    subject,
    value: by,
    limit: 0,
    message: `${meets} The nearest good place is ${ways.join(' and ')}.`,
    remedy: `Move it ${ways.join(' and ')}. It is left out.`,
  });
}

/** "85 mm to the left, to 1210 mm": how far, which way, and where its middle then is. */
function waysTo({ x, z, through }: Opening, to: { readonly x: number; readonly z: number }): readonly string[] {
  const [more, less] = through === 'front' ? ['up', 'down'] : ['to the back', 'to the front'];
  const way = (from: number, at: number, back: string, on: string): readonly string[] =>
    Math.abs(at - from) <= SAME_LENGTH
      ? []
      : [`${tenth(Math.abs(at - from))} mm ${at < from ? back : on}, to ${placeAt(at)} mm`];
  return [...way(x, to.x, 'to the left', 'to the right'), ...way(z, to.z, less, more)];
}

function tooLarge(
  opening: Opening,
  index: number,
  run: string,
  ground: Ground,
  wished: Wished,
  meets: string,
): Finding {
  const subject = { run, path: `/unit/openings/${index}` };
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

const noSuchRun = (name: string, run: number, subject: Finding['subject']): Finding =>
  finding('opening-in-no-run', {
    subject,
    value: run,
    message: `${name} is wished in run number ${run}, which the plan has not.`,
    remedy: 'Take it away, or add the run. It is left out.',
  });

const notMade = (name: string, run: string, subject: Finding['subject']): Finding =>
  finding('opening-refused', {
    subject: { ...subject, run },
    message: `${name} is wished in run ${run}, which is too short to be built.`,
    remedy: 'Lengthen the run, or put the opening in another. It is left out.',
  });
