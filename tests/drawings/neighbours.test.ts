import { describe, expect, it } from 'vitest';
import { polygonArea } from '../../src/base/polygon';
import { elevationOf } from '../../src/drawings/elevation';
import { sliceOf } from '../../src/drawings/slice';
import { design } from '../../src/flow';
import type { Drawing, Stroke } from '../../src/vocabulary/drawing';
import type { Vec2, Vec3 } from '../../src/vocabulary/geometry';
import { jobOf } from '../elements/job-of';
import { workedExample } from '../tools/goldens';
import { box, byHand } from './fixture';
import { of } from './strokes';

const SQUARE = { at: 0, perAcross: 0, perOut: 0 };
const UP: Vec3 = [0, 0, 1];
const FRONT: Vec3 = [0, -1, 0];
const area = (loop: readonly Vec3[], axes: readonly [Vec3, Vec3]): number =>
  polygonArea(loop.map((p): Vec2 => axes.map((a) => a[0] * p[0] + a[1] * p[1] + a[2] * p[2]) as unknown as Vec2));

describe('a slice', () => {
  const part = box({ kind: 'k', mark: 'A-X1', name: 'x', from: 'clad', x: [0, 100], z: [0, 40], d: [0, 18] });

  it('of a board across its thickness is its face, counter-clockwise for the viewer', () => {
    const [loop, ...more] = sliceOf(part, { normal: FRONT, at: 9 });
    expect(more).toEqual([]);
    expect(area(loop, [[1, 0, 0], UP])).toBeCloseTo(4000, 6);
    expect(loop.every((p) => Math.abs(p[1] + 9) < 1e-9)).toBe(true);
  });

  it('of a board across its length is its section', () => {
    const [loop] = sliceOf(part, { normal: [1, 0, 0], at: 30 });
    expect(area(loop, [[0, 1, 0], UP])).toBeCloseTo(720, 6);
  });

  it('runs clockwise round a hole', () => {
    const hole = {
      start: [20, 10] as const,
      segments: [
        { to: [40, 10] as const },
        { to: [40, 30] as const },
        { to: [20, 30] as const },
        { to: [20, 10] as const },
      ],
    };
    const shape = part.shape.kind === 'board' ? { ...part.shape, holes: [hole] } : part.shape;
    const areas = sliceOf({ ...part, shape }, { normal: FRONT, at: 9 }).map((loop) => area(loop, [[1, 0, 0], UP]));
    expect(areas.map(Math.round).sort((a, b) => a - b)).toEqual([-400, 4000]);
  });

  it('is nothing where the plane passes by, and nothing lost where it touches a face', () => {
    expect(sliceOf(part, { normal: FRONT, at: 19 })).toEqual([]);
    expect(sliceOf(part, { normal: FRONT, at: 18 })).toEqual([]);
    expect(sliceOf(part, { normal: FRONT, at: 0 }).map((loop) => Math.round(area(loop, [[1, 0, 0], UP])))).toEqual([
      4000,
    ]);
  });

  it('of a mitred stick is cut at the mitre', () => {
    const section = {
      start: [0, 0] as const,
      segments: [
        { to: [40, 0] as const },
        { to: [40, 18] as const },
        { to: [0, 18] as const },
        { to: [0, 0] as const },
      ],
    };
    const shape = { kind: 'stick', section, start: SQUARE, end: { at: 100, perAcross: 0, perOut: -1 } } as const;
    const [loop] = sliceOf({ shape, place: part.place }, { normal: FRONT, at: 10 });
    expect(area(loop, [[1, 0, 0], UP])).toBeCloseTo(90 * 40, 6);
  });
});

type Polygon = Extract<Stroke, { kind: 'polygon' }>;

/** The mark of what is painted last over a point. */
const seenAt = ({ strokes }: Drawing, x: number, y: number): string | undefined =>
  strokes
    .filter((stroke): stroke is Polygon => stroke.kind === 'polygon' && stroke.fill !== 'none')
    .findLast((polygon) => holds(polygon, x, y))?.part;

function holds({ points }: Polygon, x: number, y: number): boolean {
  let inside = false;
  points.forEach(([x1, y1], i) => {
    const [x0, y0] = points[(i + points.length - 1) % points.length];
    if (y0 > y !== y1 > y && x < x0 + ((x1 - x0) * (y - y0)) / (y1 - y0)) inside = !inside;
  });
  return inside;
}

describe('the front of a run that ends in an inside corner', () => {
  const worked = workedExample('inside-corner');
  const [a, b] = worked.rod.runs;
  const { layers, heights, frameHeight } = worked.rod;

  it.each([
    ['A', () => ({ run: a, corner: a.length, into: -1 })],
    ['B', () => ({ run: b, corner: 0, into: 1 })],
  ])('shows nothing of run %s where the neighbour stands before it, at any height', (id, ends) => {
    const { run, corner, into } = ends();
    const drawing = elevationOf(worked, run.id, 'front');
    const other = id === 'A' ? 'B' : 'A';
    const heightsOf = { plinth: heights.plinth / 2, pillar: (heights.plinth + frameHeight) / 2, top: frameHeight + 5 };
    for (const [name, z] of Object.entries(heightsOf)) {
      const reach = layers[name].outer;
      // Nearly square: the neighbour's face runs all but straight towards the viewer, so its layer hides its own thickness.
      expect(seenAt(drawing, corner + into * (reach - 4), z), name).toMatch(new RegExp(`^${other}-`));
      expect(seenAt(drawing, corner + into * (reach + 6), z), name).toMatch(new RegExp(`^${id}-`));
    }
  });

  it('fills what is cut and says which run it is', () => {
    const drawing = elevationOf(worked, 'A', 'front');
    const cut = drawing.strokes.filter((stroke) => stroke.kind === 'polygon' && stroke.fill === 'timber');
    const kinds = new Set(
      cut.map((stroke) => worked.parts.find((part) => 'part' in stroke && part.mark === stroke.part)?.kind),
    );
    for (const kind of ['frame', 'cladding', 'pillar', 'plinth', 'top']) expect(kinds).toContain(kind);
    expect(drawing.notes?.join(' ')).toContain('Run B is cut');
  });

  it('breaks the top of the neighbour off behind its frame', () => {
    const drawing = elevationOf(worked, 'A', 'front');
    expect(drawing.bounds.max[0]).toBeLessThan(a.length + worked.rod.timber.depth + 100);
    expect(worked.rod.depth).toBeGreaterThan(worked.rod.timber.depth + 200);
  });

  it('cuts nothing at an outside corner', () => {
    const { rod, ...rest } = workedExample('canted');
    for (const { id } of rod.runs) {
      const fills = elevationOf({ rod, ...rest }, id, 'front').strokes.flatMap((s) =>
        s.kind === 'polygon' ? s.fill : [],
      );
      expect(fills).not.toContain('timber');
    }
  });
});

describe('a front at an inside corner', () => {
  const corner = { ...byHand.rod.runs[0].right, kind: 'corner' as const, deflectionDeg: -90, grows: -1, frameAt: 1863 };
  const parts = byHand.parts.map((part) =>
    part.mark === 'A-TP1'
      ? box({
          kind: 'top',
          mark: 'A-TP1',
          name: 'top',
          from: 'finished',
          x: [-30, 2300],
          z: [1010, 1050],
          d: [-500, 75],
        })
      : part,
  );
  const end = box({
    kind: 'frame',
    mark: 'A-ST7',
    name: 'stud',
    from: 'framed',
    x: [1825, 1863],
    z: [38, 972],
    d: [-63, 0],
  });
  const layers = { ...byHand.rod.layers, cladding: { name: 'cladding', inner: 0, outer: 12 } };
  const rod = { ...byHand.rod, layers, runs: [{ ...byHand.rod.runs[0], right: corner }] };
  const front = elevationOf({ ...byHand, rod, parts: [...parts, end] }, 'A', 'front');

  it('ends on the skin of the neighbour, which hides what lies beyond', () => {
    const xs = of(front, 'polygon').flatMap((polygon) => polygon.points.map((p) => p[0]));
    expect(Math.max(...xs)).toBe(1788);
    expect(of(front, 'polygon').map((polygon) => polygon.part)).not.toContain('A-ST7');
  });

  it('leaves the other end alone', () => {
    expect(Math.min(...of(front, 'polygon').flatMap((polygon) => polygon.points.map((p) => p[0])))).toBe(-30);
  });
});

describe('the front of a return', () => {
  it('shows the top that covers it, though that belongs to the run it comes off', () => {
    const worked = workedExample('corner-return');
    const back = worked.rod.runs.find((run) => run.jobIndex === null)!;
    const shown = of(elevationOf(worked, back.id, 'front'), 'polygon').map((polygon) => polygon.part);
    const foreign = worked.parts.filter((part) => part.run !== back.id && shown.includes(part.mark));
    expect(foreign.map((part) => part.kind)).toEqual(['top']);
  });
});

describe('at an inside corner that hardly turns', () => {
  it.each([-0.2, -0.5, -1, -2])('of %d° every stroke has a place', (deflectionDeg) => {
    const made = design(
      jobOf({ runs: [{ length: 3000, deflectionDeg }, { length: 3000 }], elements: { carcass: { build: true } } }),
    );
    const places = ['A', 'B'].flatMap((run) =>
      elevationOf(made, run, 'front').strokes.flatMap((stroke) =>
        stroke.kind === 'text'
          ? stroke.at
          : stroke.kind === 'dimension'
            ? [...stroke.from, ...stroke.to]
            : stroke.points.flat(),
      ),
    );
    expect(places.length).toBeGreaterThan(0);
    expect(places.every(Number.isFinite)).toBe(true);
  });
});
