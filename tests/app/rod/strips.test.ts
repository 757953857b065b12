import { expect, test } from 'vitest';
import { blockOf, inOrder, type Strip, steered, strokesOf } from '../../../app/rod/strips';
import type { Mark } from '../../../src/vocabulary/rod';
import { part, standing, stick } from '../parts';

const mark = (id: string, x: number, lane: Mark['lane'], reason: string, of?: string): Mark =>
  of === undefined ? { id, x, lane, reason } : { id, x, lane, reason, part: of };

const marks: readonly Mark[] = [
  mark('t2', 600, 'timber', 'stud: sheet joint'),
  mark('t1', 19, 'timber', 'stud: left end', 'A-ST-1'),
  mark('t3', 600.001, 'timber', 'stud: pillar', 'A-ST-2'),
  mark('f1', 600, 'front', 'pillar centre'),
  mark('s1', 1200, 'skin', 'sheet joint'),
];
const strip = (lane: Mark['lane']): Strip => ({ lane, blocks: [], widths: [], strokes: strokesOf(marks, lane) });

test('marks on the same place are one stroke, with every reason and the part of either', () => {
  expect(strokesOf(marks, 'timber')).toEqual([
    { id: 't1', lane: 'timber', x: 19, reasons: ['stud: left end'], part: 'A-ST-1' },
    { id: 't2', lane: 'timber', x: 600, reasons: ['stud: sheet joint', 'stud: pillar'], part: 'A-ST-2' },
  ]);
});

const strips = [strip('front'), strip('skin'), strip('timber'), strip('behind')];
const led = (from: string, key: string): string | undefined =>
  steered(strips, inOrder(strips).find((stroke) => stroke.id === from)!, key)?.id;

test('left and right go along the run, from the front backwards on the same place', () => {
  expect(inOrder(strips).map((stroke) => stroke.id)).toEqual(['t1', 'f1', 't2', 's1']);
  expect(led('t1', 'ArrowRight')).toBe('f1');
  expect(led('t2', 'ArrowLeft')).toBe('f1');
  expect(led('s1', 'ArrowRight')).toBeUndefined();
  expect(led('s1', 'Home')).toBe('t1');
  expect(led('t1', 'End')).toBe('s1');
  expect(led('t1', 'a')).toBeUndefined();
});

test('up and down go to the nearest stroke of the next lane that has one', () => {
  expect(led('s1', 'ArrowDown')).toBe('t2');
  expect(led('t1', 'ArrowUp')).toBe('s1');
  expect(led('f1', 'ArrowUp')).toBeUndefined();
  expect(led('t1', 'ArrowDown')).toBeUndefined();
});

test('a part lies in its run where its place puts it, whichever way the run goes', () => {
  const stud = part('A-ST-1', stick(900, 38, 63), standing(138, 63, 38));
  expect(blockOf(stud, { origin: [40, 0], along: [1, 0] })).toMatchObject({ from: 60, to: 98, low: 38, high: 938 });
  expect(blockOf(stud, { origin: [0, 100], along: [0, -1] })).toMatchObject({ from: 37, to: 100 });
});
