import type { Vec3 } from '../../src/vocabulary/geometry';
import type { Part } from '../../src/vocabulary/part';
import type { BoardEdge } from '../../src/vocabulary/shape';

const SQUARE: BoardEdge = { kind: 'square', steps: [] };
const CUT = { kind: 'square', angleDeg: 90, sawDeg: 0, tiltDeg: 0, longSide: 'none' } as const;

interface Box {
  readonly kind: string;
  readonly mark: string;
  readonly name: string;
  readonly from: Part['from'];
  readonly x: readonly [number, number];
  readonly z: readonly [number, number];
  /** Back and face, mm in front of the frame's face. */
  readonly d: readonly [number, number];
}

/** A square board standing in the front: seen as a rectangle x × z. */
export function box({ kind, mark, name, from, x, z, d }: Box): Part {
  const [length, width, thickness] = [x[1] - x[0], z[1] - z[0], d[1] - d[0]];
  const origin: Vec3 = [x[0], -d[0], z[0]];
  return {
    kind,
    code: mark.replace(/[^A-Z]/g, ''),
    name,
    run: 'A',
    material: from === 'framed' ? 'sawn-38x63' : 'mdf-18',
    finish: from === 'framed' ? 'bare' : kind === 'top' ? 'oil' : 'paint',
    from,
    shape: {
      kind: 'board',
      outline: [
        [0, 0],
        [length, 0],
        [length, width],
        [0, width],
      ],
      holes: [],
      thickness,
      edges: [SQUARE, SQUARE, SQUARE, SQUARE],
    },
    place: { origin, along: [1, 0, 0], across: [0, 0, 1], out: [0, -1, 0] },
    edges: [],
    grooves: [],
    where: 'by hand',
    mark,
    size: { length, width, thickness },
    shopLength: length,
    shortPoint: length,
    ends: [CUT, CUT],
    volumeMm3: length * width * thickness,
    weightKg: length * width * thickness * 7.5e-7,
    fitted: 'workshop',
    inSection: 'S1',
  };
}
