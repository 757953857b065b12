import type { BevelSetUp, Dial, GroovePass, GrooveSetUp, SawSetUp } from '../../src/vocabulary/set-up';
import { angle } from '../shell/format';
import type { Say } from './words';

const DIALS: Readonly<Record<Dial, string>> = {
  'rip fence': 'rip fence',
  'cross-cut stop': 'cross-cut stop',
  mitre: 'turned',
  tilt: 'tilted',
  'length stop': 'stop',
};

const ANGLES: readonly Dial[] = ['mitre', 'tilt'];

/** What a dial is set to. Angles of nought need no word but where they are set back to it. */
function dialWords(dial: Dial, value: number, moved: boolean, say: Say): string {
  if (!ANGLES.includes(dial)) return `${DIALS[dial]} ${say(value)}`;
  if (value === 0) return moved ? `${dial === 'mitre' ? 'turned' : 'tilted'} back to square` : '';
  return `${DIALS[dial]} ${angle(Math.abs(value))} to the ${value > 0 ? 'right' : 'left'}`;
}

/** What the saw stands at. */
export function setUpWords({ at, move }: Pick<SawSetUp, 'at' | 'move'>, say: Say): string {
  const dials = (Object.keys(at) as Dial[]).map((dial) => dialWords(dial, at[dial] ?? 0, move.includes(dial), say));
  return dials.filter(Boolean).join(', ') || 'by eye';
}

export const bevelWords = ({ of, tiltDeg, mitreDeg }: BevelSetUp): string =>
  [
    of === 'edge' ? 'long edge' : 'end',
    tiltDeg === 0 ? '' : `tilted ${angle(tiltDeg)}`,
    mitreDeg === 0 ? '' : `turned ${angle(mitreDeg)}`,
  ]
    .filter(Boolean)
    .join(', ');

export const grooveWords = ({ fence, radius, width, depth }: GrooveSetUp, say: Say): string =>
  `fence ${say(fence)} from the cutter’s centre; radius ${say(radius)}, ${say(depth)} deep, ${say(width)} wide`;

export function passWords({ mark, groove, against, stops }: GroovePass, say: Say): string {
  const stopped = stops
    ? `, stopped ${say(stops.lower)} below and ${say(stops.upper)} above: blocks at ${say(stops.begin)} and ${say(stops.end)}`
    : '';
  return `${mark} no. ${groove}, ${against} edge to the fence${stopped}`;
}
