import { describe, expect, it } from 'vitest';
import { elevationOf } from '../../src/drawings/elevation';
import { design } from '../../src/flow';
import type { Drawing } from '../../src/vocabulary/drawing';
import { jobOf } from '../elements/job-of';
import { examples, workedExample } from '../tools/goldens';
import { at, of, texts } from './strokes';

describe.each(examples())('every run of %s', (name) => {
  const worked = workedExample(name);
  it.each(worked.rod.runs.map((run) => run.id))('%s has a front whose widths add up, and a frame', (id) => {
    const run = worked.rod.runs.find((one) => one.id === id)!;
    const front = elevationOf(worked, id, 'front');
    const pillars = [run.pillars.at(0)!.from, run.pillars.at(-1)!.to];
    const widths = [-10, -20]
      .map((offset) => at(front, 'horizontal', offset))
      .find((row) => row[0].from[0] === pillars[0] && row.at(-1)!.to[0] === pillars[1])!;
    const spans = widths.reduce((sum, d) => sum + d.to[0] - d.from[0], 0);
    const ends = run.pillars.flatMap((pillar) => [pillar.from, pillar.to]);
    expect(spans).toBeCloseTo(Math.max(...ends) - Math.min(...ends), 6);
    const joins = worked.joins.filter((join) => join.run === id).map((join) => join.x);
    const i = worked.rod.runs.indexOf(run);
    if (worked.rod.runs[i - 1]?.joinAtRight !== undefined) joins.push(0);
    const chainLines = (drawing: Drawing) => of(drawing, 'line').filter((line) => line.style === 'chain');
    const xs = chainLines(front).map((line) => line.points[0][0]);
    const rising = (a: number, b: number) => a - b;
    expect(xs.sort(rising)).toEqual([...run.pillars.map((pillar) => pillar.centre), ...joins].sort(rising));
    const framing = worked.framing.find((one) => one.run === id)!;
    const frame = elevationOf(worked, id, 'framing');
    expect(chainLines(frame)).toHaveLength(joins.length);
    // A figure for each stud and each join, and for the datum, which a join there is already.
    const datum = joins.includes(0) ? 0 : 1;
    expect(at(frame, 'horizontal', 10).length).toBe(framing.studs.length + joins.length + datum);
    for (const drawing of [front, frame, elevationOf(worked, id, 'behind')])
      for (const stroke of drawing.strokes)
        if (stroke.kind === 'polygon' || stroke.kind === 'line')
          expect(stroke.points.flat().every(Number.isFinite)).toBe(true);
  });

  it('draws the size that was asked for, over the layer it was taken to', () => {
    for (const run of worked.rod.runs) {
      if (run.jobIndex === null) continue;
      const asked = worked.job.unit.plan.runs[run.jobIndex];
      if (asked.over === 'frame') continue;
      const over = of(elevationOf(worked, run.id, 'front'), 'dimension').find((d) => d.text.startsWith('over '))!;
      expect(Math.abs(over.to[0] - over.from[0])).toBeCloseTo(asked.length, 6);
    }
  });
});

describe('at corners that are not square', () => {
  const frontOf = (deflectionDeg: number, corner: 'mitred' | 'butted' = 'mitred') => {
    const made = design(
      jobOf({
        runs: [{ length: 3150, over: 'plinth', deflectionDeg }, { length: 2240 }],
        elements: { top: { corner } },
      }),
    );
    return { made, front: elevationOf(made, 'A', 'front') };
  };

  it.each([-91.4, -120, -135])('an inside corner of %d°: the last block has its own width, hidden or not', (turn) => {
    const { made, front } = frontOf(turn);
    const floor = texts(at(front, 'horizontal', -10)).map(Number);
    const block = made.parts.filter((p) => p.code === 'BK' && p.run === 'A').at(-1);
    expect(floor.at(-1)).toBeCloseTo(block?.shortPoint ?? 0, 1);
    // The chain adds up to the size taken over the blocks, each figure rounded to a tenth.
    expect(Math.abs(floor.reduce((sum, one) => sum + one, 0) - 3150)).toBeLessThanOrEqual(0.05 * floor.length);
  });
  it('a butted top past an outside corner is measured at its front edge', () => {
    const { front } = frontOf(60, 'butted');
    const past = texts(at(front, 'horizontal', 10)).at(-1);
    expect(Number(past)).toBeCloseTo(75 * Math.tan(Math.PI / 6), 1);
  });
});
