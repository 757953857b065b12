import { expect, test } from 'vitest';
import { edgeWords, endBrief, endsBrief, endWords } from '../../../app/facts/end-words';
import type { EndCut } from '../../../src/vocabulary/part';

const cut = (kind: EndCut['kind'], sawDeg: number, tiltDeg: number, longSide: string): EndCut => ({
  kind,
  angleDeg: 90 - (sawDeg || tiltDeg),
  sawDeg,
  tiltDeg,
  longSide,
});
const square: EndCut = { kind: 'square', angleDeg: 90, sawDeg: 0, tiltDeg: 0, longSide: 'none' };
const mitre = cut('mitre', 45, 0, 'outer edge');
const bevel = cut('bevel', 0, 44.25, 'face');
const compound = cut('compound', 14.5, 43.1, 'lower edge');

test('an end is said in the words of the saw', () => {
  expect(endWords(square, 150)).toBe('square');
  expect(endWords(mitre, 30)).toBe('mitred, saw at 45°, longer at the outer edge');
  expect(endWords(bevel, 150)).toBe(
    'bevelled, blade tilted 44.25°, lying on its back (or saw at 44.25°, standing on edge), longer at the face',
  );
  // Nobody stands a sheet on edge at a mitre saw.
  expect(endWords(bevel, 955)).toBe('bevelled, blade tilted 44.25°, lying on its back, longer at the face');
  expect(endWords(compound, 90)).toBe(
    'compound cut, saw at 14.5°, blade tilted 43.1°, lying on its back, longer at the lower edge',
  );
});

test('in a list, ends are short, and said once when they are the same', () => {
  expect(endBrief(bevel)).toBe('bevel 44.25°');
  expect(endBrief(compound)).toBe('compound 14.5° / 43.1°');
  expect(endsBrief([square, square])).toBe('square');
  expect(endsBrief([mitre, mitre])).toBe('mitre 45° both');
  expect(endsBrief([square, bevel])).toBe('square, bevel 44.25°');
});

test('a bevelled edge says what is left at the back', () => {
  const size = (mm: number) => `${mm} mm`;
  const edge = { edge: 'left long edge', work: 'bevelled', angleDeg: 22.5, backWidth: 102.54 } as const;
  expect(edgeWords(edge, size)).toBe('left long edge bevelled, 22.5°, 102.54 mm wide at the back');
  expect(edgeWords({ edge: 'upper arris', work: 'moulded', cutter: 'Ovolo 9' }, size)).toBe(
    'upper arris moulded, Ovolo 9',
  );
});
