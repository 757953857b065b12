import { alongFace } from '../../base/place';
import type { Part } from '../../vocabulary/part';
import type { Mark, RodRun } from '../../vocabulary/rod';

/** Edges of the pieces at their face: at a corner that is the long point of the mitre, or its short one at an inside corner. */
export function marks(run: RodRun, parts: readonly Part[]): readonly Mark[] {
  if (parts.length === 0) return [];
  const { thickness } = parts[0].size;
  const last = parts[parts.length - 1];
  const mark = (id: string, x: number, reason: string, part: Part): Mark => ({
    id: `${run.id}-cladding-${id}`,
    x,
    lane: 'skin',
    reason,
    part: part.mark,
  });
  return [
    mark('start', -thickness * run.left.grows, 'cladding starts', parts[0]),
    ...parts.slice(1).map((p, i) => mark(`${i + 1}`, alongFace(run, p.place.origin), 'cladding joint', p)),
    mark('end', run.length + thickness * run.right.grows, 'cladding ends', last),
  ];
}
