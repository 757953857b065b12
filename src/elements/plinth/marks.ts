import { boundsOf } from '../../base/outline';
import { alongFace } from '../../base/place';
import type { Part } from '../../vocabulary/part';
import type { Mark, RodRun } from '../../vocabulary/rod';
import type { EndPlane } from '../../vocabulary/shape';

/** The arrises of a piece's face: at a corner its back begins or ends elsewhere. Pieces that turn an end have none. */
export function marks(run: RodRun, made: readonly Part[]): readonly Mark[] {
  return made.filter((part) => part.code !== 'BR').flatMap((part) => edgesOf(run, part));
}

function edgesOf(run: RodRun, { mark, name, code, place, shape }: Part): readonly Mark[] {
  if (shape.kind !== 'stick') return [];
  const out = boundsOf(shape.section).max[1];
  const start = alongFace(run, place.origin);
  const at = ({ at: along, perOut }: EndPlane): number => start + along + perOut * out;
  const edge = (side: string, plane: EndPlane): Mark => ({
    id: `${mark}-${side}`,
    x: at(plane),
    lane: code === 'KB' ? 'timber' : 'front',
    reason: `${code === 'BK' ? 'plinth block' : name}, ${side} edge`,
    part: mark,
  });
  return [edge('left', shape.start), edge('right', shape.end)];
}
