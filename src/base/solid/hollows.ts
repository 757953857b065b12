import type { Outline, Vec2 } from '../../vocabulary/geometry';
import type { Stick } from '../../vocabulary/shape';
import { flatten } from '../outline';

/** A hollow of a section: its flattened points from one end of the chord to the other, the ends among them. */
export interface Hollow {
  /** Where the chord starts among the points of the whole section; it ends on the next. */
  readonly at: number;
  readonly points: readonly Vec2[];
}

const wholes = new WeakMap<Outline, Outline>();

/** The section before its hollows are cut: a chord stands in place of each. The same section gives the same outline. */
export function wholeOf(section: Outline): Outline {
  let whole = wholes.get(section);
  if (!whole) {
    const segments = section.segments.map((s) => (s.radius !== undefined && s.radius < 0 ? { to: s.to } : s));
    whole = { start: section.start, segments };
    wholes.set(section, whole);
  }
  return whole;
}

/** The section that a stick shows at its ends: where its hollows are stopped, the whole. */
export const endSection = ({ section, stopped }: Stick): Outline => (stopped ? wholeOf(section) : section);

const known = new WeakMap<Outline, readonly Hollow[]>();

/** The hollows of a section in order, those that are flattened to their chord left out: they take nothing away. */
export function hollowsOf(section: Outline): readonly Hollow[] {
  let hollows = known.get(section);
  if (!hollows) {
    hollows = findHollows(flatten(section), flatten(wholeOf(section)));
    known.set(section, hollows);
  }
  return hollows;
}

/** Corners and rounds are flattened alike in both, to the last digit; so what the whole has not lies in a hollow. */
function findHollows(cut: readonly Vec2[], whole: readonly Vec2[]): readonly Hollow[] {
  const hollows: Hollow[] = [];
  let k = 0;
  whole.forEach((corner, at) => {
    const points = [cut[k++]];
    const next = whole[(at + 1) % whole.length];
    while (k < cut.length && !same(cut[k], next)) points.push(cut[k++]);
    if (points.length > 1) hollows.push({ at, points: [...points, next] });
    if (!same(points[0], corner)) throw new Error(`a hollow at (${corner[0]}, ${corner[1]}) has no chord`);
  });
  return hollows;
}

const same = (a: Vec2, b: Vec2): boolean => a[0] === b[0] && a[1] === b[1];
