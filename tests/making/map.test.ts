import { describe, expect, it } from 'vitest';
import { design, making } from '../../src/flow';
import { jobOf, partsOf } from '../elements/job-of';

const RUNS = [{ length: 2400, deflectionDeg: 90 }, { length: 1800 }];

describe('the fixing map', () => {
  const made = design(jobOf({ runs: RUNS, fit: { tolerance: 3 } }));
  const { maps } = making(made);

  it('has every timber of each frame, measured from the end of the frame line that the setting-out is', () => {
    expect(maps.map((map) => [map.run, map.datum])).toEqual([
      ['A', 'left'],
      ['B', 'left'],
    ]);
    for (const map of maps) {
      const frame = made.parts.filter((p) => p.run === map.run && p.kind === 'frame' && p.code !== 'FI');
      const marks = new Set(map.timber.map((t) => t.part));
      expect(frame.filter((p) => !marks.has(p.mark)).map((p) => p.mark)).toEqual([]);
    }
  });

  it('measures from the end of the frame line, as the rod does: the frame begins 3 clear of the wall', () => {
    const [first] = maps[0].timber;
    expect(first).toMatchObject({ name: 'plate', from: 3, low: 0, high: 38 });
    const stud = maps[0].timber.find((t) => t.name === 'stud');
    expect(stud).toMatchObject({ from: 3, to: 41, low: 38 });
    expect(stud?.high).toBeCloseTo(made.rod.frameHeight - 38, 9);
  });

  it('says the same as the framing, stud for stud', () => {
    for (const { run, studs } of made.framing) {
      const timber = maps.find((map) => map.run === run)?.timber.filter((t) => t.name === 'stud') ?? [];
      expect(timber).toHaveLength(studs.length);
      timber.forEach((t, i) => {
        expect(t.from).toBeCloseTo(studs[i].from, 6);
        expect(t.to).toBeCloseTo(studs[i].to, 6);
      });
    }
  });

  it('is sorted along the run', () => {
    for (const { timber } of maps)
      expect(timber.map((t) => t.from)).toEqual(timber.map((t) => t.from).sort((a, b) => a - b));
  });

  it('runs from the right where the setting-out does, and leaves out what stands behind', () => {
    // A wall on the right too: the last stud ends 5 before the end of the frame line.
    const right = design(
      jobOf({ fit: { tolerance: 5 }, elements: { frame: { datum: 'right' }, carcass: { build: true } } }),
    );
    const [map] = making(right).maps;
    expect(map.datum).toBe('right');
    const studs = map.timber.filter((t) => t.name === 'stud');
    const last = partsOf(right, 'ST').at(-1);
    expect(studs[0].part).toBe(last?.mark);
    expect(studs[0].from).toBeCloseTo(5, 9);
    expect(studs[0].to).toBeCloseTo(43, 9);
    expect(studs.at(-1)?.to).toBeCloseTo(2400 - 5, 9);
    expect(right.parts.some((p) => p.kind === 'carcass')).toBe(true);
    const behind = new Set(right.parts.filter((p) => p.kind === 'carcass').map((p) => p.mark));
    expect(map.timber.filter((t) => behind.has(t.part))).toEqual([]);
  });
});
