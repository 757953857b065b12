import { flatten } from '../../base/outline';
import type { GrooveWork, Part } from '../../vocabulary/part';
import type { GroovePass, GrooveSetUp } from '../../vocabulary/set-up';

/** How far the back of a board stands out beyond its visible face at the left and at the right, with what is left on there; mm. */
interface Beyond {
  readonly left: number;
  readonly right: number;
  readonly face: number;
}

/** A groove that is to be run, and how far its centre lies from a fence at either edge. */
interface Wanted {
  readonly part: Part;
  readonly number: number;
  readonly groove: GrooveWork;
  readonly from: { readonly left: number; readonly right: number };
}

const HUNDREDTHS = 100;
const hundredths = (mm: number): number => Math.round(mm * HUNDREDTHS);
/** Points this near in height lie on the face, mm. */
const LEVEL = 1e-6;

/**
 * Grooves by what the router is set to: cutter and depth, then the fence. A board may be run from either edge, turned end for end; so of an
 * odd number that lie evenly on it the middle one has a setting of its own and every other pair one together: ⌈n/2⌉. The fence that serves
 * most is taken first (greedy cover; for boards alike that is the least number), and set from the middle outwards.
 */
export function grooveSetUps(parts: readonly Part[]): readonly GrooveSetUp[] {
  const cutters = new Map<string, Wanted[]>();
  for (const one of parts.flatMap(wantedOf)) {
    const { radius, depth } = one.groove;
    const key = `${hundredths(radius)} ${hundredths(depth)}`;
    const known = cutters.get(key);
    if (known) known.push(one);
    else cutters.set(key, [one]);
  }
  return [...cutters.values()].flatMap(fences);
}

/** The fences that serve all of what one cutter at one depth is to run, the furthest first. */
function fences(wanted: readonly Wanted[]): readonly GrooveSetUp[] {
  const [{ groove }] = wanted;
  const { radius, width, depth } = groove;
  const chosen: GrooveSetUp[] = [];
  for (let open = [...wanted]; open.length > 0; ) {
    const served = new Map<number, number>();
    for (const { from } of open)
      for (const at of new Set([hundredths(from.left), hundredths(from.right)]))
        served.set(at, (served.get(at) ?? 0) + 1);
    const [fence] = [...served].reduce((a, b) => (b[1] > a[1] || (b[1] === a[1] && b[0] < a[0]) ? b : a));
    const passes = open.filter((one) => edgeAt(one, fence)).map((one) => passOf(one, edgeAt(one, fence) ?? 'left'));
    chosen.push({ kind: 'groove', fence: fence / HUNDREDTHS, radius, width, depth, passes });
    open = open.filter((one) => !edgeAt(one, fence));
  }
  return chosen.sort((a, b) => b.fence - a.fence);
}

/** The edge from which a fence there serves it. */
function edgeAt({ from }: Wanted, fence: number): GroovePass['against'] | undefined {
  if (hundredths(from.left) === fence) return 'left';
  return hundredths(from.right) === fence ? 'right' : undefined;
}

/**
 * A pass, the face down on the table and fed from right to left: with the left edge against the fence the upper end leads, with the right edge
 * the lower. The round end that the cutter leaves lies within the groove, half its width beyond the cutter's centre.
 */
function passOf({ part, number, groove }: Wanted, against: GroovePass['against']): GroovePass {
  const { stops, width } = groove;
  if (!stops) return { mark: part.mark, groove: number, against };
  const [lower, upper] = stops;
  const centre = (short: number): number => part.size.length - short - width / 2;
  const [begin, end] = against === 'left' ? [centre(upper), centre(lower)] : [centre(lower), centre(upper)];
  return { mark: part.mark, groove: number, against, stops: { lower, upper, begin, end } };
}

function wantedOf(part: Part): readonly Wanted[] {
  if (part.grooves.length === 0) return [];
  const { left, right, face } = beyond(part);
  return part.grooves.map((groove, i) => ({
    part,
    number: i + 1,
    groove,
    from: { left: left + groove.centre, right: right + face - groove.centre },
  }));
}

/** What lies beyond the face: of a bevel whose back is the wider, and stuff left on to be scribed. The left is where u is greatest (u runs to the left). */
function beyond({ shape, size, oversize = [] }: Part): Beyond {
  const left = (side: string): number =>
    oversize.reduce((sum, one) => sum + (one.on === 'width' && one.side === side ? one.amount : 0), 0);
  const more = { left: left('left long edge'), right: left('right long edge') };
  if (shape.kind === 'board') return { ...more, face: size.width };
  const points = flatten(shape.section);
  const top = points.reduce((most, [, v]) => Math.max(most, v), Number.NEGATIVE_INFINITY);
  const us = points.map(([u]) => u);
  const face = points.filter(([, v]) => v > top - LEVEL).map(([u]) => u);
  return {
    left: Math.max(...us) - Math.max(...face) + more.left,
    right: Math.min(...face) - Math.min(...us) + more.right,
    face: Math.max(...face) - Math.min(...face),
  };
}
