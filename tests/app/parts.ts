import { level, UP } from '../../src/base/place';
import type { Place } from '../../src/vocabulary/geometry';
import type { BuildStage, Part } from '../../src/vocabulary/part';
import type { Board, Stick } from '../../src/vocabulary/shape';

/** A square-cut stick: `width` across, `thickness` out, mm. */
export function stick(length: number, width: number, thickness: number): Stick {
  return {
    kind: 'stick',
    section: {
      start: [0, 0],
      segments: [{ to: [width, 0] }, { to: [width, thickness] }, { to: [0, thickness] }, { to: [0, 0] }],
    },
    start: { at: 0, perAcross: 0, perOut: 0 },
    end: { at: length, perAcross: 0, perOut: 0 },
  };
}

/** A square-edged board. */
export function board(length: number, width: number, thickness: number): Board {
  const square = { kind: 'square', steps: [] } as const;
  return {
    kind: 'board',
    outline: [
      [0, 0],
      [length, 0],
      [length, width],
      [0, width],
    ],
    holes: [],
    thickness,
    edges: [square, square, square, square],
  };
}

/** A place on a front that runs along x and looks towards -y: `lying` along the run, or `standing` up. */
export const lying = (x: number, y: number, z: number): Place => ({
  origin: [x, y, z],
  along: level([1, 0]),
  across: UP,
  out: level([0, -1]),
});
export const standing = (x: number, y: number, z: number): Place => ({
  origin: [x, y, z],
  along: UP,
  across: level([-1, 0]),
  out: level([0, -1]),
});

/** A part for the eye: where it lies and what it is; weight and ends are of no account here. */
export function part(mark: string, shape: Stick | Board, place: Place, rest: Partial<Part> = {}): Part {
  const from: BuildStage = 'framed';
  const square = { kind: 'square', angleDeg: 90, sawDeg: 0, tiltDeg: 0, longSide: 'none' } as const;
  return {
    kind: 'frame',
    code: 'ST',
    name: 'stud',
    run: 'A',
    material: 'sawn',
    finish: 'bare',
    from,
    shape,
    place,
    edges: [],
    grooves: [],
    where: '',
    mark,
    size: { length: 0, width: 0, thickness: 0 },
    shopLength: 0,
    shortPoint: 0,
    ends: [square, square],
    volumeMm3: 0,
    weightKg: 0,
    fitted: 'workshop',
    ...rest,
  };
}
