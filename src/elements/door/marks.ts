import { level } from '../../base/place';
import { extentOf } from '../../base/solid/extent';
import type { Part } from '../../vocabulary/part';
import type { Mark, RodRun } from '../../vocabulary/rod';

/** Both edges of every door, and of the lowest drawer front of a bay: those above it lie alike. */
export function marks(run: RodRun, parts: readonly Part[]): readonly Mark[] {
  const start = run.origin[0] * run.along[0] + run.origin[1] * run.along[1];
  return parts
    .filter((p) => p.code === 'DR' || (p.code === 'DF' && p.where.endsWith('drawer 1 from below')))
    .flatMap((p): Mark[] => {
      const edges = extentOf(p, level(run.along)).map((x) => x - start);
      return edges.map((x, i) => ({
        id: `${p.mark}-${i === 0 ? 'left' : 'right'}`,
        x,
        lane: 'behind',
        reason: `edge of ${p.name}, ${p.where}`,
        part: p.mark,
      }));
    });
}
