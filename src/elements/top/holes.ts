import { rectangle } from '../../base/outline';
import { clip } from '../../base/polygon';
import { tenth } from '../../base/tenth';
import { LEAST_BETWEEN, LEAST_TO_EDGE } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { Outline, Vec2 } from '../../vocabulary/geometry';
import type { PlacedOpening } from '../../vocabulary/opening';

/** Noise of the last digits, mm. */
const NOISE = 1e-6;

/** An opening as a hole: its middle and its half sizes. x along the run, y back from the front edge. */
interface Hole {
  readonly opening: PlacedOpening;
  readonly middle: Vec2;
  readonly half: Vec2;
}

const holeOf = (opening: PlacedOpening): Hole => ({
  opening,
  middle: [(opening.from + opening.to) / 2, (opening.low + opening.high) / 2],
  half: [(opening.to - opening.from) / 2, (opening.high - opening.low) / 2],
});

/** How far a hole reaches from its middle in a direction. */
const reachIn = ({ opening, half }: Hole, [nx, ny]: Vec2): number =>
  opening.round ? half[0] : half[0] * Math.abs(nx) + half[1] * Math.abs(ny);

/**
 * The holes of a top's lengths: for each length its own, in the run's coordinates. Openings have been kept clear of the ends already; what
 * comes too near to a joint that had no better place is refused and said.
 */
export function holesIn(
  openings: readonly PlacedOpening[],
  lengths: readonly (readonly Vec2[])[],
): { readonly holes: readonly (readonly PlacedOpening[])[]; readonly findings: readonly Finding[] } {
  const holes: PlacedOpening[][] = lengths.map(() => []);
  const findings: Finding[] = [];
  for (const opening of openings) {
    const hole = holeOf(opening);
    const left = lengths.map((outline) => leftAround(hole, outline));
    const best = left.indexOf(Math.max(...left));
    const near = holes.flat().find((other) => gapBetween(other, opening) < LEAST_BETWEEN - NOISE);
    if (best < 0 || left[best] < LEAST_TO_EDGE - NOISE) findings.push(refused(hole, Math.max(...left), lengths));
    else if (near) findings.push(crowded(hole, near));
    else holes[best].push(opening);
  }
  return { holes, findings };
}

/** Outward normal of the side from corner i of a counter-clockwise outline. */
function normalOf(outline: readonly Vec2[], i: number): Vec2 {
  const [a, b] = [outline[i], outline[(i + 1) % outline.length]];
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return [(b[1] - a[1]) / long, (a[0] - b[0]) / long];
}

/** The least stuff that a hole leaves to a side of the (convex) outline; negative when it runs out. */
const leftAround = (hole: Hole, outline: readonly Vec2[]): number =>
  Math.min(
    ...outline.map((a, i) => {
      const n = normalOf(outline, i);
      return (a[0] - hole.middle[0]) * n[0] + (a[1] - hole.middle[1]) * n[1] - reachIn(hole, n);
    }),
  );

const gapBetween = (a: PlacedOpening, b: PlacedOpening): number =>
  Math.max(a.from - b.to, b.from - a.to, a.low - b.high, b.low - a.high);

/** Where the middle of the hole may be nearest to where it is wished; undefined where no length has room for it. */
function nearestPlace(hole: Hole, lengths: readonly (readonly Vec2[])[]): Vec2 | undefined {
  const [mx, my] = hole.middle;
  const places = lengths.flatMap((outline): Vec2[] => {
    const room = outline.reduce((polygon: readonly Vec2[], a, i) => {
      const n = normalOf(outline, i);
      const back = LEAST_TO_EDGE + reachIn(hole, n);
      return clip(polygon, [a[0] - n[0] * back, a[1] - n[1] * back], n);
    }, outline);
    return room.map((a, i) => nearestOn(a, room[(i + 1) % room.length], hole.middle));
  });
  return places.sort((a, b) => Math.hypot(a[0] - mx, a[1] - my) - Math.hypot(b[0] - mx, b[1] - my))[0];
}

function nearestOn(a: Vec2, b: Vec2, p: Vec2): Vec2 {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const t = square > 0 ? Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / square)) : 0;
  return [a[0] + dx * t, a[1] + dy * t];
}

const nameOf = ({ name, use }: PlacedOpening): string => (name ? `“${name}”` : `for a ${use}`);

function refused(hole: Hole, value: number, lengths: readonly (readonly Vec2[])[]): Finding {
  const { opening } = hole;
  const place = nearestPlace(hole, lengths);
  const where = place && `${tenth(place[0])} mm along, ${tenth(place[1])} mm back from the front edge`;
  return {
    severity: 'stop',
    rule: 'top-opening-near-edge',
    subject: { run: opening.run, path: `/unit/openings/${opening.index}` },
    ...(Number.isFinite(value) ? { value } : {}),
    limit: LEAST_TO_EDGE,
    message: `The opening ${nameOf(opening)} in the top of run ${opening.run} ${value >= 0 ? `leaves ${tenth(value)} mm to an edge, a joint or a mitre` : 'runs out over an edge, a joint or a mitre'}; ${LEAST_TO_EDGE} mm is the least. ${where ? `The nearest place for its middle is ${where}.` : 'No length of this top has room for it.'}`,
    source: 'common practice, no source',
    remedy: where
      ? `Move its middle to ${where}. No hole is made.`
      : 'Make it smaller, or the top deeper. No hole is made.',
  };
}

const crowded = ({ opening }: Hole, near: PlacedOpening): Finding => ({
  severity: 'stop',
  rule: 'top-openings-near',
  subject: { run: opening.run, path: `/unit/openings/${opening.index}` },
  value: gapBetween(near, opening),
  limit: LEAST_BETWEEN,
  message: `The openings ${nameOf(near)} and ${nameOf(opening)} in the top of run ${opening.run} are ${tenth(Math.max(0, gapBetween(near, opening)))} mm apart; ${LEAST_BETWEEN} mm is the least.`,
  source: 'common practice, no source',
  remedy: 'Move one of them, or make one hole of both. The second is not made.',
});

/** A hole's outline on a board whose x starts at `left` along the run. */
export function outlineOf(opening: PlacedOpening, left: number): Outline {
  const { middle, half } = holeOf(opening);
  const [x, y] = [middle[0] - left, middle[1]];
  if (opening.round)
    return {
      start: [x + half[0], y],
      segments: [
        { to: [x - half[0], y], radius: half[0] },
        { to: [x + half[0], y], radius: half[0] },
      ],
    };
  const { segments } = rectangle(2 * half[0], 2 * half[1]);
  const moved = ([u, v]: Vec2): Vec2 => [u + x - half[0], v + y - half[1]];
  return { start: moved([0, 0]), segments: segments.map((s) => ({ to: moved(s.to) })) };
}

/** A hole in words, from the length's own left end (its furthest point there). */
export function holeWork(opening: PlacedOpening, left: number): string {
  const { middle, half } = holeOf(opening);
  const size = opening.round ? `${tenth(2 * half[0])} across` : `${tenth(2 * half[0])} × ${tenth(2 * half[1])}`;
  return `hole ${size} for “${opening.name || opening.use}”, its middle ${tenth(middle[0] - left)} from the left end and ${tenth(middle[1])} back from the front edge`;
}
