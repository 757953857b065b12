import { figures } from '../../base/figure';
import type { Job } from '../../vocabulary/job';
import type { EdgeWork, EndCut, GrooveWork, Oversize } from '../../vocabulary/part';
import { rounded } from './csv-text';

/** Angles are shown to a hundredth of a degree. */
export const ANGLE = 0.01;
const degrees = (angleDeg: number): string => `${rounded(angleDeg, ANGLE)}°`;

/** How a job's lengths are written. */
export type Lengths = Pick<Job, 'units' | 'tools'>;

/** An end in short: what it is and the angles to set, saw before blade. */
export function endText({ kind, sawDeg, tiltDeg }: EndCut): string {
  if (kind === 'square') return kind;
  const angles = [sawDeg, tiltDeg].filter((angle) => rounded(angle, ANGLE) !== 0).map(degrees);
  return [kind, angles.join(' and ')].join(' ').trim();
}

/** Work along the edges in words, lengths as the job writes them; empty where there is none. */
export function edgesText(edges: readonly EdgeWork[], job: Lengths): string {
  const figure = figures(job);
  const one = ({ edge, work, angleDeg, cutter, backWidth }: EdgeWork): string => {
    const does = [edge, work, cutter, angleDeg === undefined ? undefined : degrees(angleDeg)];
    const back = backWidth === undefined ? '' : `, back ${figure(backWidth)} wide`;
    return does.filter((word) => word !== undefined).join(' ') + back;
  };
  return edges.map(one).join('; ');
}

/** Stuff left on, in words: "length + 15 at the left end, to scribe"; empty where there is none. */
export function oversizeText(oversize: readonly Oversize[], job: Lengths): string {
  const figure = figures(job);
  return oversize
    .map(({ on, amount, side, reason }) => `${on} + ${figure(amount)} at the ${side}, ${reason}`)
    .join('; ');
}

/** Grooves in words, those of one width, depth and length together; empty where there are none. */
export function groovesText(grooves: readonly GrooveWork[], job: Lengths): string {
  const figure = figures(job);
  const lots = new Map<string, string[]>();
  for (const { width, depth, radius, centre, stops } of grooves) {
    const ends = stops ? `, stopped ${figure(stops[0])} from the lower and ${figure(stops[1])} from the upper end` : '';
    const size = `${figure(width)} wide, ${figure(depth)} deep, radius ${figure(radius)}${ends}`;
    lots.set(size, [...(lots.get(size) ?? []), figure(centre)]);
  }
  return [...lots]
    .map(([size, centres]) => {
      const [flutes, places] = centres.length === 1 ? ['flute', 'centre'] : ['flutes', 'centres'];
      return `${centres.length} ${flutes} ${size}, ${places} ${centres.join(', ')} from the left edge of the face`;
    })
    .join('; ');
}
