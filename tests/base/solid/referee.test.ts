import fc from 'fast-check';
import Module, { type Manifold } from 'manifold-3d';
import { describe, expect, test } from 'vitest';
import { flatten } from '../../../src/base/outline';
import { meshOf } from '../../../src/base/solid/mesh';
import { boardFault } from '../../../src/base/solid/rings';
import { volumeOf } from '../../../src/base/solid/volume';
import type { Vec2 } from '../../../src/vocabulary/geometry';
import type { Board, Shape, Stick } from '../../../src/vocabulary/shape';
import { SEED } from '../seed';
import { HERE, relative } from './check';
import { convexBoards, sticks } from './random';

const kernel = await Module();
kernel.setup();
const FAR = 10_000;

/** A length of moulding; where its hollows are stopped, run plain and then cut between the stops with what fills the hollows. */
function run({ section, stopped }: Stick): Manifold {
  const cut = new kernel.CrossSection([flatten(section) as [number, number][]]);
  if (!stopped) return cut.extrude(2 * FAR).translate([0, 0, -FAR]);
  const hollow = (radius: number | undefined): boolean => radius !== undefined && radius < 0;
  const segments = section.segments.map((s) => (hollow(s.radius) ? { to: s.to } : s));
  const plain = new kernel.CrossSection([flatten({ start: section.start, segments }) as [number, number][]]);
  const length = plain.extrude(2 * FAR).translate([0, 0, -FAR]);
  const waste = plain.subtract(cut);
  // The kernel can't extrude nothing.
  if (waste.isEmpty()) return length;
  return length.subtract(waste.extrude(stopped.to - stopped.from).translate([0, 0, stopped.from]));
}

/** A stick made as at the bench: a length of moulding, then one saw cut at each end. (u, v, along) are the kernel's axes. */
function sawn(stick: Stick): number {
  const length = run(stick);
  const { start, end } = stick;
  const cut = (m: Manifold, a: number, o: number, at: number, keep: 1 | -1): Manifold => {
    const size = Math.hypot(a, o, 1);
    return m.trimByPlane([(-a * keep) / size, (-o * keep) / size, keep / size], (at * keep) / size);
  };
  const one = cut(length, start.perAcross, start.perOut, start.at, 1);
  const both = cut(one, end.perAcross, end.perOut, end.at, -1);
  const volume = both.volume();
  for (const thing of [length, one, both]) thing.delete();
  return volume;
}

/** A convex board made by what each edge leaves: the common part of one endless profiled strip for every side, less the holes. */
function shaped(board: Board): number {
  const strips = board.outline.map((a, i) => {
    const b = board.outline[(i + 1) % board.outline.length];
    const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const [dx, dy] = [(b[0] - a[0]) / l, (b[1] - a[1]) / l];
    const square: readonly Vec2[] = [
      [0, 0],
      [board.thickness, 0],
    ];
    const steps = board.edges[i].steps.length > 0 ? board.edges[i].steps : square;
    const profile: [number, number][] = [
      [-FAR, 0],
      ...steps.map(([out, growth]): [number, number] => [growth, out]),
      [-FAR, board.thickness],
    ];
    const section = new kernel.CrossSection([profile]);
    const endless = section.extrude(2 * FAR).translate([0, 0, -FAR]);
    // Its axes: outward from the side (dy, −dx), out, and along the side backwards, to stay right-handed.
    const strip = endless.transform([dy, -dx, 0, 0, 0, 0, 1, 0, -dx, -dy, 0, 0, a[0], a[1], 0, 1]);
    section.delete();
    endless.delete();
    return strip;
  });
  const plugs = board.holes.map((hole) => {
    const section = new kernel.CrossSection([flatten(hole) as [number, number][]]);
    const plug = section.extrude(3 * board.thickness).translate([0, 0, -board.thickness]);
    section.delete();
    return plug;
  });
  const common = kernel.Manifold.intersection(strips);
  const rest = kernel.Manifold.difference([common, ...plugs]);
  const volume = rest.volume();
  for (const thing of [...strips, ...plugs, common, rest]) thing.delete();
  return volume;
}

function accepts(shape: Shape): { status: string; volume: number } {
  const { positions, indices } = meshOf({ shape, place: HERE });
  const solid = kernel.Manifold.ofMesh(new kernel.Mesh({ numProp: 3, vertProperties: positions, triVerts: indices }));
  const found = { status: solid.status(), volume: solid.volume() };
  solid.delete();
  return found;
}

describe('an outside kernel as referee', () => {
  test(`sticks: the same volume as sawing one from a length, within 1e-6 (seed ${SEED})`, () => {
    fc.assert(
      fc.property(sticks, (stick) => {
        expect(relative(sawn(stick), volumeOf(stick))).toBeLessThan(1e-6);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  test(`boards: the same volume as shaping each edge for itself, within 1e-6 (seed ${SEED})`, () => {
    fc.assert(
      fc.property(convexBoards, (board) => {
        fc.pre(boardFault(board) === null);
        expect(relative(shaped(board), volumeOf(board))).toBeLessThan(1e-6);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  test(`takes every mesh as a closed solid (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.oneof<fc.Arbitrary<Shape>[]>(sticks, convexBoards), (shape) => {
        fc.pre(shape.kind === 'stick' || boardFault(shape) === null);
        const { status, volume } = accepts(shape);
        expect(status).toBe('NoError');
        // The kernel takes corners in single precision.
        expect(relative(volume, volumeOf(shape))).toBeLessThan(2e-5);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});
