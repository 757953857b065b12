import { leftOf, tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { Rod } from '../../vocabulary/rod';
import { type Need, needsOf, type Space } from './spaces';

const GEOMETRY = 'geometry of the setting-out';
const LICENSED =
  'The maker’s instructions come first. Wiring, gas and plumbing are for licensed people; local codes come first.';

/** Generic openings for air where an appliance is built in, low and high (from memory; the appliance's own data come first). */
const GRILLE_CM2 = 200;

const THING = { appliance: 'appliance', sink: 'sink bowl', bin: 'bin' } as const;
type Purpose = keyof typeof THING;

const thingOf = ({ wish }: Space): string => THING[wish.purpose as Purpose];
const placeOf = ({ run, bay }: Space): string => `bay ${(bay.bay ?? 0) + 1} of run ${run.id}`;
const subjectOf = ({ run, wish }: Space): Finding['subject'] => ({ run: run.id, path: wish.path });

/** What is too small for the thing that is to be there, way by way, with the nearest that would do. */
export function misfits(space: Space, rod: Rod): readonly Finding[] {
  const needs = needsOf(space);
  const short = needs.filter((n) => n.need > n.have + SAME_LENGTH);
  const onlyWidth = short.every((n) => n.what === 'wide');
  return short.map((n) => ({
    severity: 'stop',
    rule: `${space.wish.purpose}-too-${n.what}`,
    subject: subjectOf(space),
    value: n.need,
    limit: n.have,
    message: `The ${thingOf(space)} in ${placeOf(space)} is ${tenth(n.size)} mm ${n.what} and wants ${tenth(n.clear)} mm clear besides: ${tenth(n.need)} mm in all; the bay has ${leftOf(n.have)}.`,
    source: GEOMETRY,
    remedy: `${nearest(n, space, rod, onlyWidth)} Nothing else moves for it.`,
    caution: LICENSED,
  }));
}

function nearest(n: Need, space: Space, rod: Rod, onlyWidth: boolean): string {
  const largest = n.have - n.clear;
  const fits =
    largest > 0 ? `The most that fits is ${tenth(largest)} mm ${n.what}.` : 'Nothing fits with so much clear.';
  if (n.what === 'deep') return `${fits} Or make the unit ${tenth(n.need - n.have)} mm deeper.`;
  if (n.what === 'high') return `${fits} Or ${higher(n.need - n.have, rod)}.`;
  const other = onlyWidth ? widerBay(n, space, rod) : undefined;
  const pitch = n.need + (rod.carcass?.face ?? 0);
  return `${fits} ${other ?? `No free bay is wide enough: cross frames would have to stand ${tenth(pitch)} mm from middle to middle.`}`;
}

/** What makes a bay so much higher. Under a worktop its bearer in front is in the way as much as rear rails are. */
function higher(short: number, { carcass }: Rod): string {
  if (carcass?.worktop) return `raise the worktop by ${tenth(short)} mm`;
  const rails = carcass?.rearRail && short <= carcass.depth + SAME_LENGTH;
  return `raise the top by ${tenth(short)} mm${rails ? ', or do without rear rails' : ''}`;
}

/** The narrowest free bay that takes it; of two alike the first. Depth and height are the same all along. */
function widerBay({ need }: Need, { bay }: Space, { runs }: Rod): string | undefined {
  const wide = runs
    .flatMap((run) => run.backBays.map((b) => ({ run, b, width: b.to - b.from })))
    .filter(
      ({ b, width }) =>
        b !== bay && b.bay !== undefined && (b.wish?.purpose ?? 'open') === 'open' && width >= need - SAME_LENGTH,
    )
    .sort((a, b) => Math.round((a.width - b.width) * 10));
  const [best] = wide;
  return best
    ? `Bay ${(best.b.bay ?? 0) + 1} of run ${best.run.id} is free and ${tenth(best.width)} mm wide.`
    : undefined;
}

/** What isn't stated isn't checked. */
export function unstated(space: Space): readonly Finding[] {
  const { wish, width, height, depth } = space;
  const missing = [
    ...(wish.width > 0 ? [] : ['width']),
    ...(wish.height > 0 ? [] : ['height']),
    ...(wish.depth > 0 ? [] : ['depth']),
  ];
  if (missing.length === 0) return [];
  return [
    {
      severity: 'note',
      rule: `${wish.purpose}-not-stated`,
      subject: subjectOf(space),
      value: missing.length,
      limit: 0,
      message: `The ${thingOf(space)} in ${placeOf(space)}: ${missing.join(', ')} not stated, so not checked. The bay is ${tenth(width)} mm wide, ${tenth(height)} mm high and ${tenth(depth)} mm deep in the clear.`,
      source: GEOMETRY,
      remedy: `Take ${missing.join(', ')} from the maker’s sheet.${wish.purpose === 'sink' && wish.width === 0 ? ' Without its width no bearers are made.' : ''}`,
    },
  ];
}

/** An appliance that fits: the clear space that it has, and what to mind. */
export function airOf(space: Space): Finding {
  const { wish, width, height, depth } = space;
  const left = [
    ...(wish.width > 0 ? [`${tenth((width - wish.width) / 2)} mm at each side`] : []),
    ...(wish.height > 0 ? [`${tenth(height - wish.height)} mm above`] : []),
    ...(wish.depth > 0 ? [`${tenth(depth - wish.depth)} mm behind`] : []),
  ];
  return {
    severity: 'note',
    rule: 'appliance-air',
    subject: subjectOf(space),
    message: `The appliance in ${placeOf(space)} has ${left.join(', ') || 'no stated size'}; it gives off warmth, and the front closes it in.`,
    source: `common practice: ${GRILLE_CM2} cm² of grille low and high where it is built in (from memory)`,
    remedy: 'Ask the maker’s instructions what air it needs, and let it in low and out high.',
    caution: LICENSED,
  };
}

/** The hole for a bowl is decided among the openings of the top; in a worktop it is cut to the maker's template. */
export function holeOf(space: Space, hasWorktop: boolean, hasHole: boolean): readonly Finding[] {
  if (!hasWorktop && hasHole) return [];
  return [
    {
      severity: 'note',
      rule: 'sink-without-hole',
      subject: { run: space.run.id, path: '/unit/openings' },
      message: hasWorktop
        ? `The worktop over ${placeOf(space)} is drawn whole: the hole for the sink is not cut in this design.`
        : `The top over ${placeOf(space)} has no opening for the sink.`,
      source: 'the openings of the job',
      remedy: `${hasWorktop ? 'Cut it' : 'Decide on an opening through the top, or cut it'} to the maker’s template, clear of the bearers, and seal its edges.`,
      caution: LICENSED,
    },
  ];
}
