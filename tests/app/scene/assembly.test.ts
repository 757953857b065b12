import { expect, test } from 'vitest';
import { assemble, boxOf, markAt, scatter } from '../../../app/scene/assembly';
import { solidOf } from '../../../app/scene/solid';
import { partsUpTo, surfaceOf } from '../../../app/scene/surface';
import { meshOf } from '../../../src/base/solid/mesh';
import { board, lying, part, standing, stick } from '../parts';

const stud = part('A-ST-1', stick(900, 38, 63), standing(138, 63, 38));
const plate = part('A-PL-1', stick(1200, 38, 63), lying(0, 63, 0));
const sheet = part('A-CL-1', board(1200, 900, 12), lying(0, 0, 5), { from: 'clad', finish: 'paint' });
const top = part('A-TP-1', board(1300, 600, 40), lying(0, 0, 0), { from: 'finished', finish: 'oil' });
const all = [stud, sheet, plate, top];

test('parts come on in the order in which the unit is built', () => {
  const marks = (stage: 'framed' | 'clad' | 'finished') => partsUpTo(all, stage).map((p) => p.mark);
  expect(marks('framed')).toEqual(['A-ST-1', 'A-PL-1']);
  expect(marks('clad')).toEqual(['A-ST-1', 'A-CL-1', 'A-PL-1']);
  expect(marks('finished')).toHaveLength(4);
});

test('board is bare until the unit is finished', () => {
  expect(surfaceOf(sheet, 'clad')).toBe('board');
  expect(surfaceOf(sheet, 'finished')).toBe('paint');
  expect(surfaceOf(stud, 'clad')).toBe('sawn');
  expect(surfaceOf(top, 'finished')).toBe('oiled');
});

test('one heap for each surface, and no triangle lost on the way', () => {
  const { heaps } = assemble(all, 'finished');
  expect(heaps.map((heap) => heap.surface).sort()).toEqual(['oiled', 'paint', 'sawn']);
  const drawn = heaps.reduce((sum, heap) => sum + heap.positions.length / 9, 0);
  expect(drawn).toBe(all.reduce((sum, p) => sum + meshOf(p).indices.length / 3, 0));
  for (const heap of heaps) {
    expect(heap.normals.length).toBe(heap.positions.length);
    expect(heap.tones.length).toBe(heap.positions.length);
    expect(heap.grain.length / 2).toBe(heap.positions.length / 3);
  }
});

test('every triangle of a heap is told to the part whose box it lies in', () => {
  const heap = assemble(all, 'finished').heaps.find((h) => h.surface === 'sawn')!;
  const seen = new Set<string>();
  for (let t = 0; t < heap.positions.length / 9; t++) {
    const mark = markAt(heap, t)!;
    const box = boxOf([all.find((p) => p.mark === mark)!])!;
    seen.add(mark);
    for (let i = 9 * t; i < 9 * t + 9; i++) {
      const axis = (i % 3) as 0 | 1 | 2;
      expect(heap.positions[i]).toBeGreaterThanOrEqual(box.min[axis] - 0.01);
      expect(heap.positions[i]).toBeLessThanOrEqual(box.max[axis] + 0.01);
    }
  }
  expect([...seen]).toEqual(['A-ST-1', 'A-PL-1']);
  expect(markAt(heap, heap.positions.length / 9)).toBeNull();
});

test('a part stands where its place puts it', () => {
  expect(boxOf([stud])).toEqual({ min: [100, 0, 38], max: [138, 63, 938] });
  expect(boxOf([])).toBeNull();
});

test('normals turn with the part: a plate has as much face upward as its mesh', () => {
  const { heaps } = assemble([plate], 'framed');
  const { normals } = heaps[0]!;
  const upward = Array.from({ length: normals.length / 3 }, (_, i) => normals[3 * i + 2]!).filter((z) => z > 0.99);
  expect(upward).toHaveLength(6);
});

test('like shapes share one solid, other shapes do not', () => {
  expect(solidOf(stick(700, 38, 63))).toBe(solidOf(stick(700, 38, 63)));
  expect(solidOf(stick(700, 38, 63))).not.toBe(solidOf(stick(700.01, 38, 63)));
});

test('a part keeps its tone, and tones differ between parts', () => {
  expect(scatter('A-ST-1')).toBe(scatter('A-ST-1'));
  const tones = new Set(Array.from({ length: 50 }, (_, i) => scatter(`A-ST-${i}`)));
  expect(tones.size).toBeGreaterThan(40);
  for (const tone of tones) expect(tone >= 0 && tone <= 1).toBe(true);
});
