import { rectangle } from '../../src/base/outline';
import { placeOf } from '../../src/base/place';
import { SQUARE_EDGE } from '../../src/base/profiles';
import { squareCut } from '../../src/base/stuff';
import { makeParts } from '../../src/parts/make';
import type { Outline, Vec2, Vec3 } from '../../src/vocabulary/geometry';
import type { Part, PartDraft } from '../../src/vocabulary/part';
import type { EndPlane } from '../../src/vocabulary/shape';

/** A part for a test: square timber from (0, 0, 0) along x unless more is said. */
export function partOf(said: Partial<PartDraft> & Pick<PartDraft, 'shape'>, mark: string): Part {
  const draft: PartDraft = {
    kind: 'frame',
    code: 'XX',
    name: 'piece',
    run: 'A',
    material: 'stuff',
    finish: 'bare',
    from: 'framed',
    place: placeOf([0, 0, 0], [1, 0, 0], [0, 0, 1]),
    edges: [],
    grooves: [],
    where: '',
    ...said,
  };
  return { ...makeParts([draft], () => 500, 0.1)[0], mark, fitted: 'workshop', inSection: 'S1' };
}

/** A square block from one corner: so long along x, wide along y, high along z. */
export const block = (mark: string, at: Vec3, size: Vec3, said: Partial<PartDraft> = {}): Part =>
  partOf(
    { shape: stickOf(rectangle(size[1], size[2]), size[0]), place: placeOf(at, [1, 0, 0], [0, 0, 1]), ...said },
    mark,
  );

/** A stick of a section along x from `at`, its ends cut as said. */
export const stickOf = (section: Outline, length: number, ends: { start?: EndPlane; end?: EndPlane } = {}) =>
  ({ kind: 'stick', section, start: ends.start ?? squareCut(0), end: ends.end ?? squareCut(length) }) as const;

/** A board of square edges. */
export const boardOf = (outline: readonly Vec2[], thickness: number, holes: readonly Outline[] = []) =>
  ({ kind: 'board', outline, holes, thickness, edges: outline.map(() => SQUARE_EDGE) }) as const;
