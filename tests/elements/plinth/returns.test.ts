import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import type { Part } from '../../../src/vocabulary/part';
import { boundsInRoom } from '../../base/bounds';
import { jobOf, partOf, partsOf } from '../job-of';

/** Blocks of 25 on 12 of cladding; the frame is 63 deep. */
const elements = { cladding: { sheet: 'mdf-12' }, plinth: { sheet: 'mdf-25', height: 150 } };
const box = (part: Part) => {
  const { min, max } = boundsInRoom(part);
  const round = (n: number): number => Math.round(n * 1e6) / 1e6 + 0;
  return [min.map(round), max.map(round)];
};

describe('at a free end', () => {
  const unit = design(jobOf({ leftEnd: { kind: 'free' }, rightEnd: { kind: 'free' }, elements }));
  const blocks = partsOf(unit, 'BK');
  const turns = partsOf(unit, 'BR');

  test('the end block is mitred at its outer side', () => {
    for (const block of [blocks[0], blocks[blocks.length - 1]]) {
      // Back as the pillar's foot, 140 + 5; the face 25 longer.
      expect(block.shortPoint).toBeCloseTo(145, 9);
      expect(block.size.length).toBeCloseTo(170, 9);
      const mitres = block.ends.filter((e) => e.kind === 'bevel');
      expect(mitres.map((e) => [e.angleDeg, e.longSide])).toEqual([[45, 'face']]);
    }
  });

  test('a short piece of the same strip runs back from the mitre along the end of the frame', () => {
    expect(turns.map((p) => [p.name, p.where])).toEqual([
      ['plinth return', 'left end'],
      ['plinth return', 'right end'],
    ]);
    for (const piece of turns) {
      // From the back of the frame, 63 behind its face, to the face of the cladding, 12 before it; its own face 25 longer.
      expect(piece.shortPoint).toBe(75);
      expect(piece.size).toMatchObject({ length: 100, width: 150, thickness: 25 });
      expect(piece.edges).toEqual(blocks[0].edges);
      expect(piece.holds).not.toEqual([]);
    }
    // Outside the ends; y runs back from the frame's face.
    expect(box(turns[0])).toEqual([
      [-25, -37, 0],
      [0, 63, 150],
    ]);
    expect(box(turns[1])).toEqual([
      [2400, -37, 0],
      [2425, 63, 150],
    ]);
  });

  test('or neither, where that is not wanted', () => {
    const plain = design(
      jobOf({
        rightEnd: { kind: 'free' },
        elements: { ...elements, plinth: { ...elements.plinth, endReturn: false } },
      }),
    );
    expect(partsOf(plain, 'BR')).toEqual([]);
    expect(partsOf(plain, 'BK').map((p) => p.size.length)[3]).toBeCloseTo(145, 9);
  });

  test('nothing turns an end at a wall', () => {
    const walls = design(jobOf({ elements }));
    expect(partsOf(walls, 'BR')).toEqual([]);
    expect(partsOf(walls, 'BK').every((p) => p.ends.every((e) => e.kind === 'square'))).toBe(true);
  });
});

test('both ends at a flap are turned', () => {
  const flap = { width: 700, hinge: 'left', gate: false } as const;
  const unit = design(jobOf({ runs: [{ flap }, {}], elements }));
  expect(partOf(unit, 'BR', 'A').where).toBe('right end');
  expect(partOf(unit, 'BR', 'B').where).toBe('left end');
  expect(box(partOf(unit, 'BR', 'B'))[0][0]).toBe(3100 - 25);
});

test('the free end of a return is turned too, square to its own run', () => {
  const unit = design(jobOf({ rightEnd: { kind: 'return', length: 400 }, elements }));
  const piece = partOf(unit, 'BR', 'RR');
  // The return runs back from (2400, 0): its frame lies before x = 2400, its end at y = 400.
  expect(box(piece)).toEqual([
    [2337, 400, 0],
    [2437, 425, 150],
  ]);
});
