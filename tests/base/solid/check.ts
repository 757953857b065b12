import type { Place } from '../../../src/vocabulary/geometry';
import type { EndPlane } from '../../../src/vocabulary/shape';

/** A place at the room's origin with the axes of the room. */
export const HERE: Place = { origin: [0, 0, 0], along: [1, 0, 0], across: [0, 1, 0], out: [0, 0, 1] };
export const square = (at: number): EndPlane => ({ at, perAcross: 0, perOut: 0 });

interface Triangles {
  readonly points: ArrayLike<number>;
  readonly triangles: ArrayLike<number>;
}

/** What is wrong with a mesh as a closed skin: each edge must be run once in each direction; every corner used. Empty when sound. */
export function faultsOf({ points, triangles }: Triangles): string[] {
  const faults: string[] = [];
  const runs = new Map<string, number>();
  const used = new Set<number>();
  for (let t = 0; t < triangles.length; t += 3) {
    const corner = [triangles[t], triangles[t + 1], triangles[t + 2]];
    corner.forEach((a, i) => {
      used.add(a);
      const edge = `${a}>${corner[(i + 1) % 3]}`;
      runs.set(edge, (runs.get(edge) ?? 0) + 1);
    });
  }
  for (const [edge, times] of runs) {
    const [a, b] = edge.split('>');
    if (times !== 1) faults.push(`edge ${edge} is run ${times} times`);
    if (!runs.has(`${b}>${a}`)) faults.push(`edge ${edge} has no partner`);
  }
  if (used.size !== points.length / 3) faults.push(`${points.length / 3 - used.size} corners are not used`);
  return faults;
}

/** Volume enclosed by a skin of triangles (divergence theorem); negative when it is inside out. */
export function enclosed({ points: p, triangles }: Triangles): number {
  let six = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
    six +=
      p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]) -
      p[a + 1] * (p[b] * p[c + 2] - p[b + 2] * p[c]) +
      p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c]);
  }
  return six / 6;
}

/** A number to a relative accuracy. */
export const relative = (found: number, expected: number): number => Math.abs(found - expected) / Math.abs(expected);
