import { describe, expect, it } from 'vitest';
import { layOut } from '../../src/exports/sheet/layout';
import { boxOf, collide } from '../../src/exports/sheet/lettering';
import { spread } from '../../src/exports/sheet/spread';
import { elevation, rodDrawing } from '../../src/flow';
import type { Drawing, Stroke } from '../../src/vocabulary/drawing';
import { examples, workedExample } from '../tools/goldens';
import { rectangle } from './rectangle';

describe('dimension figures', () => {
  const chain = (stops: readonly number[], axis: 'horizontal' | 'vertical', offsetMm: number): Stroke[] =>
    stops.slice(1).map((to, i) => {
      const [a, b] = [stops[i], to];
      return {
        kind: 'dimension',
        from: axis === 'horizontal' ? [a, 0] : [0, a],
        to: axis === 'horizontal' ? [b, 0] : [0, b],
        axis,
        offsetMm,
        text: String(b - a),
      };
    });
  const apart = (drawing: Drawing, scale: number): void => {
    const boxes = layOut(drawing, scale).figures.map(boxOf);
    boxes.forEach((box, i) => {
      for (const other of boxes.slice(i + 1)) expect(collide(box, other, 0)).toBe(false);
    });
  };
  const narrow = [0, 12, 24, 38, 50, 1000, 1010, 1020, 1150, 1800];

  it.each([
    ['horizontal', -10],
    ['horizontal', 10],
    ['vertical', 10],
    ['vertical', -10],
  ] as const)('of a crowded %s chain at %d never overlap', (axis, offset) => {
    const strokes = chain(narrow, axis, offset);
    expect(layOut(rectangle(1800, 1000, strokes), 20).figures).toHaveLength(strokes.length);
    apart(rectangle(1800, 1000, strokes), 20);
  });

  it('stand over the middle of their span where there is room', () => {
    const [figure] = layOut(rectangle(1800, 1000, chain([0, 1800], 'horizontal', -10)), 10).figures;
    expect(figure).toMatchObject({ text: '1800', anchor: 'middle', turned: false });
    expect(figure.at[0]).toBeCloseTo(90, 6);
    expect(figure.at[1]).toBeCloseTo(-9.2, 6);
  });

  it('of running dimensions: the datum is 0, or what a dimension to itself says', () => {
    const run = (to: number, text: string): Stroke => ({
      kind: 'dimension',
      from: [0, 0],
      to: [to, 0],
      axis: 'horizontal',
      offsetMm: 10,
      text,
      running: true,
    });
    const written = (strokes: Stroke[]) => layOut(rectangle(1800, 1000, strokes), 10).figures.map((one) => one.text);
    expect(written([run(400, '400')])).toEqual(['0', '400']);
    expect(written([run(400, '400'), run(0, '0 frame line')])).toEqual(['0 frame line', '400']);
  });

  it('of running dimensions never overlap, and are led aside in order', () => {
    const strokes = chain(narrow, 'horizontal', 10).map((d) => ({ ...d, from: [0, 0], running: true }) as Stroke);
    const { figures } = layOut(rectangle(1800, 1000, strokes), 20);
    expect(figures).toHaveLength(narrow.length);
    const xs = figures.map((figure) => figure.at[0]);
    expect(xs).toEqual([...xs].sort((a, b) => a - b));
    apart(rectangle(1800, 1000, strokes), 20);
  });

  it.each(examples())('of every run of %s never overlap', (name) => {
    const worked = workedExample(name);
    for (const { id } of worked.rod.runs) {
      for (const drawing of [elevation(worked, id, 'front'), elevation(worked, id, 'framing')])
        for (const scale of [10, 20, 50]) apart(drawing, scale);
      const rod = rodDrawing(worked, id);
      apart(rod, rod.scale!);
    }
  });
});

describe('spreading', () => {
  it('moves only what is too near, as little as may be', () => {
    expect(spread([0, 10, 20], 3)).toEqual([0, 10, 20]);
    expect(spread([0, 1, 20], 3)).toEqual([-1, 2, 20]);
    expect(spread([5, 5, 5], 2)).toEqual([3, 5, 7]);
    expect(spread([], 2)).toEqual([]);
  });

  it('keeps the pitch when pools run into each other', () => {
    const placed = spread([0, 0.1, 3, 3.1, 6, 6.05, 6.1, 40], 2);
    for (let i = 1; i < placed.length; i += 1) expect(placed[i] - placed[i - 1]).toBeGreaterThanOrEqual(2 - 1e-9);
    expect(placed.at(-1)).toBe(40);
  });
});
