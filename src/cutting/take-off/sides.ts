import { boundsOf, flatten } from '../../base/outline';
import { hull } from '../../base/polygon';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Part } from '../../vocabulary/part';

/*
 * What a part's section is cut from: how wide a strip of stuff of a given thickness, and how many of them where it must be glued up.
 */

/** Sides of a part's section, mm: across its face, and out from its back. */
export function sidesOf({ shape, size }: Pick<Part, 'shape' | 'size'>): {
  readonly across: number;
  readonly out: number;
} {
  if (shape.kind === 'board')
    return { across: shape.thickness === size.width ? size.thickness : size.width, out: shape.thickness };
  const { min, max } = boundsOf(shape.section);
  return { across: max[0] - min[0], out: max[1] - min[1] };
}

/** A strip that a part is cut from. `layers`: how many are glued up. `onEdge`: its width is the part's thickness, from back to face. */
export interface Strip {
  readonly width: number;
  readonly layers: number;
  readonly onEdge: boolean;
}

/** From stuff so thick: the side that is as thick as the stuff is; failing that what needs the least gluing up, then the narrower. */
export function stripOf(part: Pick<Part, 'shape' | 'size'>, thickness: number): Strip {
  const { across, out } = sidesOf(part);
  const flat = { width: across, layers: count(out, thickness), onEdge: false };
  const upright = { width: out, layers: count(across, thickness), onEdge: true };
  if (same(out, thickness)) return flat;
  if (same(across, thickness)) return upright;
  const fewer = upright.layers - flat.layers || upright.width - flat.width;
  return fewer < 0 ? upright : flat;
}

/** How many bars of a rectangular section a part takes: more than one where it is glued up, as a large corner fillet is. */
export function barsFor(
  part: Pick<Part, 'shape' | 'size'>,
  bar: { readonly width: number; readonly thickness: number },
): number {
  return Math.min(
    ...boxesOf(part).map(([a, b]) =>
      Math.min(count(a, bar.width) * count(b, bar.thickness), count(a, bar.thickness) * count(b, bar.width)),
    ),
  );
}

/** Rectangles that hold the section: as it is drawn, and along each side of its hull, among which is the least (Freeman & Shapira, 1975). */
function boxesOf(part: Pick<Part, 'shape' | 'size'>): readonly (readonly [number, number])[] {
  const { across, out } = sidesOf(part);
  if (part.shape.kind === 'board') return [[across, out]];
  const points = hull(flatten(part.shape.section));
  const turned = points.map(([x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length];
    const long = Math.hypot(nx - x, ny - y);
    const [dx, dy] = [(nx - x) / long, (ny - y) / long];
    const along = points.map((p) => p[0] * dx + p[1] * dy);
    const off = points.map((p) => p[1] * dx - p[0] * dy);
    return [Math.max(...along) - Math.min(...along), Math.max(...off) - Math.min(...off)] as const;
  });
  return [[across, out], ...turned];
}

const count = (side: number, of: number): number => Math.max(1, Math.ceil((side - SAME_LENGTH) / of));

const same = (a: number, b: number): boolean => Math.abs(a - b) < SAME_LENGTH;
