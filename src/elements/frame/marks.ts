import { boundsOf } from '../../base/outline';
import { alongFace } from '../../base/place';
import type { Part } from '../../vocabulary/part';
import type { Mark, RodRun } from '../../vocabulary/rod';

/** Centre of each stud, in the timber lane. A stud's origin is its right-hand edge: its section runs to the left. */
export function marks(run: RodRun, parts: readonly Part[]): readonly Mark[] {
  const half = (p: Part): number => (p.shape.kind === 'stick' ? boundsOf(p.shape.section).max[0] / 2 : 0);
  return parts
    .filter((p) => p.code === 'ST')
    .map((p) => ({
      id: p.mark,
      x: alongFace(run, p.place.origin) - half(p),
      lane: 'timber',
      reason: `stud: ${p.where}`,
      part: p.mark,
    }));
}
