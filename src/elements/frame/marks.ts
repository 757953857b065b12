import { alongFace } from '../../base/place';
import type { Part } from '../../vocabulary/part';
import type { Mark, RodRun } from '../../vocabulary/rod';

/** Centre of each stud, in the timber lane. A stud's origin is its right-hand edge: its width runs to the left. */
export function marks(run: RodRun, parts: readonly Part[]): readonly Mark[] {
  return parts
    .filter((p) => p.code === 'ST')
    .map((p) => ({
      id: p.mark,
      x: alongFace(run, p.place.origin) - p.size.width / 2,
      lane: 'timber',
      reason: `stud: ${p.where}`,
      part: p.mark,
    }));
}
