import { describe, expect, test } from 'vitest';
import { alike, design } from '../../src/flow';
import type { Part } from '../../src/vocabulary/part';
import { box } from '../drawings/fixture';
import { jobOf } from '../elements/job-of';

describe('parts that are cut alike', () => {
  const { parts } = design(jobOf({ runs: [{ deflectionDeg: 90 }, {}] }));
  const groups = alike(parts);

  test('hold every mark once', () => {
    const marks = groups.flatMap((g) => g.marks);
    expect([...marks].sort()).toEqual(parts.map((p) => p.mark).sort());
  });
  test('are the same size to a hundredth, with the same ends', () => {
    const by = new Map(parts.map((p) => [p.mark, p]));
    for (const { marks, part } of groups)
      for (const mark of marks) {
        const other = by.get(mark);
        expect(other?.size.length).toBeCloseTo(part.size.length, 2);
        expect(other?.ends.map((e) => e.kind)).toEqual(part.ends.map((e) => e.kind));
        expect([other?.name, other?.material]).toEqual([part.name, part.material]);
      }
  });
  test('left and right corner boards are not alike: their bevels are on other edges', () => {
    const corner = groups.filter((g) => g.part.name === 'corner pillar board');
    expect(corner).toHaveLength(2);
  });
  test('studs of a straight unit are one group', () => {
    const studs = alike(design(jobOf({})).parts).filter((g) => g.part.name === 'stud');
    expect(studs).toHaveLength(1);
  });
});

describe('twins but for one thing', () => {
  const one = box({ kind: 'x', mark: 'A-X1', name: 'board', from: 'finished', x: [0, 500], z: [0, 100], d: [0, 18] });
  const circle = { start: [10, 0] as const, segments: [] };
  const stick: Part['shape'] = {
    kind: 'stick',
    section: circle,
    start: { at: 0, perAcross: 0, perOut: 0 },
    end: { at: 500, perAcross: 0, perOut: 0 },
  };
  const groove = { centre: 20, width: 12, depth: 5, radius: 6 };
  const board = one.shape.kind === 'board' ? one.shape : undefined;
  if (!board) throw new Error('a box is a board');

  test.each<[string, Partial<Part>, Partial<Part>]>([
    ['other work', {}, { work: ['notch 40 × 12'] }],
    ['stuff left on', {}, { oversize: [{ side: 'left end', amount: 15, on: 'length', reason: 'to scribe' }] }],
    [
      'as much left on at the other end',
      { oversize: [{ side: 'left end', amount: 15, on: 'length', reason: 'to scribe' }] },
      { oversize: [{ side: 'right end', amount: 15, on: 'length', reason: 'to scribe' }] },
    ],
    ['a hole', {}, { shape: { ...board, holes: [circle] } }],
    ['flutes that stop', { grooves: [groove] }, { grooves: [{ ...groove, stops: [30, 30] }] }],
    ['a section hollowed in part', { shape: stick }, { shape: { ...stick, stopped: { from: 30, to: 470 } } }],
    ['a mitre with a neighbour', {}, { meets: 'left' }],
    ['a mitre with the other neighbour', { meets: 'left' }, { meets: 'right' }],
  ])('%s makes them two rows', (_, a, b) => {
    const [left, right] = [
      { ...one, ...a },
      { ...one, mark: 'A-X2', ...b },
    ];
    expect(alike([left, right])).toHaveLength(2);
    expect(alike([left, { ...left, mark: 'A-X3' }])).toHaveLength(1);
  });
});
