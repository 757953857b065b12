import { describe, expect, test } from 'vitest';
import { cutBatches, design } from '../../../src/flow';
import { jobOf, partsOf } from '../../elements/job-of';
import { barsOf, batchOf, withCutting } from './taken';

const corner = (deflectionDeg: number, said: Partial<Parameters<typeof jobOf>[0]> = {}) =>
  design(
    jobOf({
      runs: [{ length: 2400, deflectionDeg }, { length: 1800 }],
      leftEnd: { kind: 'free' },
      rightEnd: { kind: 'free' },
      ...said,
      elements: { undertop: { moulding: '' }, ...said.elements },
    }),
  );

describe('a panel frame', () => {
  const made = corner(90);
  const { problem, marks } = batchOf(cutBatches(made).batches, 'panel-ogee-30');

  test('is four trapezoids, the outer edge the longer, none of which can be turned', () => {
    if (problem.kind !== 'bars') throw new Error('no bars');
    expect(problem.section).toEqual({ width: 30, thickness: 15, turns: [] });
    const four = new Set(
      partsOf(made, 'PM')
        .slice(0, 4)
        .map(({ mark }) => mark),
    );
    const own = problem.pieces.flatMap((piece, i) =>
      marks[i].flat().flatMap((mark) => (four.has(mark) ? [piece] : [])),
    );
    expect(own).toHaveLength(4);
    for (const { length, ends } of own) {
      // Across from the outer edge (0) to the inner one (30): 45° takes 30 off at each end.
      const [left, right] = ends ?? [];
      const inner = length + 30 * ((right?.[0] ?? 0) - (left?.[0] ?? 0));
      expect(inner).toBeCloseTo(length - 60, 9);
      expect([left?.[1], right?.[1]]).toEqual([0, 0]);
    }
  });
});

describe('mouldings at a corner', () => {
  const bare = { pillar: { atCorners: false, width: 100 }, plinth: { style: 'blocks' } };
  const skirtingEnds = (made: ReturnType<typeof corner>) =>
    barsOf(made, 'skirting-ogee-120').pieces.flatMap(({ ends }) => (ends ? [ends] : []));

  test('outside: the face is the longer by the tangent of half the turn', () => {
    const ends = skirtingEnds(corner(60, { elements: bare }));
    const tan = Math.round(Math.tan(Math.PI / 6) * 1e6) / 1e6;
    expect(ends).toEqual([
      [
        [0, 0],
        [0, tan],
      ],
      [
        [0, -tan],
        [0, 0],
      ],
    ]);
  });

  test('inside: the back is', () => {
    const [right] = skirtingEnds(corner(-90, { elements: bare }));
    expect(right).toEqual([
      [0, 0],
      [0, -1],
    ]);
  });

  test('one with a notch for a socket is mitred like one without', () => {
    const x = 2150;
    const socket = { name: 's', run: 1, through: 'front', use: 'socket', x, z: 90, width: 100, height: 60 } as const;
    const plain = corner(90, { elements: bare });
    const cut = corner(90, { elements: bare, openings: [socket] });
    expect(partsOf(cut, 'SK').map(({ shape }) => shape.kind)).toContain('board');
    expect(barsOf(cut, 'skirting-ogee-120').pieces).toEqual(barsOf(plain, 'skirting-ogee-120').pieces);
    expect(skirtingEnds(cut)).toHaveLength(2);
  });
});

describe('tops', () => {
  test('one that is notched round a corner has no end from edge to edge, and is taken for square', () => {
    const made = corner(90);
    const [first, ...others] = made.parts.filter(({ code }) => code === 'TP');
    if (first.shape.kind !== 'board') throw new Error('no board');
    // The mitre runs over half of the width only.
    const [width, half] = [first.size.width, first.size.width / 2];
    const { length } = first.size;
    const outline = [
      [0, 0],
      [length, 0],
      [length, half],
      [length - half, width],
      [0, width],
    ] as const;
    const shape = {
      ...first.shape,
      outline,
      edges: outline.map(() => first.shape.kind === 'board' && first.shape.edges[0]),
    };
    const odd = { ...first, shape } as typeof first;
    const { pieces } = barsOf({ ...made, parts: [odd, ...others] }, `oak-40:${width}`);
    expect(pieces[0]).toMatchObject({ length: Math.round(length * 100) / 100 });
    expect(pieces[0].ends).toBeUndefined();
    expect(pieces[1].ends).toBeDefined();
  });

  test('may be turned over only where both faces are good', () => {
    const made = corner(90);
    const id = cutBatches(made).batches.find((batch) => batch.id.startsWith('oak-40:'))?.id ?? '';
    expect(barsOf(made, id).section?.turns).toEqual(['swung']);
    expect(barsOf(withCutting(made, { eitherFace: true }), id).section?.turns).toHaveLength(3);
  });

  test('what is left on at the wall makes it longer, and the mitre stays', () => {
    const made = corner(90, { leftEnd: { kind: 'wall' }, fit: { scribe: 15 } });
    const [first] = partsOf(made, 'TP');
    const { pieces } = barsOf(made, `oak-40:${first.size.width}`);
    expect(pieces[0].length).toBeCloseTo(first.size.length + 15, 2);
    expect(pieces[0].ends).toEqual([
      [0, 0],
      [-1, 0],
    ]);
  });
});
