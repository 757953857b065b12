import { describe, expect, it } from 'vitest';
import { rodDrawing } from '../../src/drawings/rod';
import { byHand } from './fixture';
import { of, texts } from './strokes';

describe('the rod of a run set out by hand', () => {
  const rod = rodDrawing(byHand, 'A');

  it('has a lane each for front, skin and timber, and for what is behind when something is', () => {
    expect(of(rod, 'text').map((text) => text.text)).toEqual(['front', 'skin', 'timber']);
    const marks = { A: [...byHand.marks.A, { id: 'pipe', x: 600, lane: 'behind' as const, reason: 'pipe' }] };
    expect(of(rodDrawing({ ...byHand, marks }, 'A'), 'text').map((text) => text.text)).toEqual([
      'front',
      'skin',
      'timber',
      'behind',
    ]);
  });

  it('measures every mark from the left end of the frame line', () => {
    const lane = (y: number) => texts(of(rod, 'dimension').filter((d) => d.from[1] === y));
    const [front, skin, timber] = [...new Set(of(rod, 'dimension').map((d) => d.from[1]))].map(lane);
    expect(front).toEqual(['70', '140', '830', '900', '970', '1660', '1730', '1800']);
    expect(skin).toEqual(['800', '1800']);
    expect(timber).toEqual(['19', '400', '800', '1200', '1600', '1781', '1800']);
  });

  it('writes a mark before the datum with its sign, and every figure to the step of the job', () => {
    const marks = { A: [...byHand.marks.A, { id: 'edge', x: -37.3, lane: 'skin' as const, reason: 'skin starts' }] };
    const written = texts(of(rodDrawing({ ...byHand, marks }, 'A'), 'dimension'));
    expect(written).toContain('-37.5');
    const tools = { ...byHand.job.tools, roundingStep: 0.1 };
    expect(texts(of(rodDrawing({ ...byHand, marks, job: { ...byHand.job, tools } }, 'A'), 'dimension'))).toContain(
      '-37.3',
    );
  });

  it('draws joins as chain lines through every lane, with their ids above', () => {
    const run = byHand.rod.runs[0]!;
    const join = { id: 'J1', x: 900, behind: 'pillar', coverFrom: 830, coverTo: 970 } as const;
    const before = { ...run, id: 'Z', joinAtRight: 'J0' };
    const runs = [before, { ...run, joins: [join], joinAtRight: 'J2' }];
    const drawn = rodDrawing({ ...byHand, rod: { ...byHand.rod, runs } }, 'A');
    const chains = of(drawn, 'line').filter((line) => line.style === 'chain');
    const xs = [0, 900, 1800];
    // Three lanes.
    expect(chains.map((line) => line.points[0][0])).toEqual([...xs, ...xs, ...xs]);
    const names = of(drawn, 'text').filter((text) => text.text.startsWith('J'));
    expect(names.map((text) => [text.text, text.at[0]])).toEqual([
      ['J0', 0],
      ['J1', 900],
      ['J2', 1800],
    ]);
    expect(names.every((text) => text.at[1] <= drawn.bounds.max[1])).toBe(true);
  });
});
