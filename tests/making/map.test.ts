import { describe, expect, it } from 'vitest';
import { design, making } from '../../src/flow';
import { jobOf, partsOf } from '../elements/job-of';

const RUNS = [{ length: 2400, deflectionDeg: 90 }, { length: 1800 }];

describe('the fixing map', () => {
  const made = design(jobOf({ runs: RUNS, fit: { tolerance: 3 } }));
  const { maps } = making(made);

  it('has every timber of each frame, measured from its datum end', () => {
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

  it('begins at the frame, not at the wall: 3 mm clear of it', () => {
    const [first] = maps[0].timber;
    expect(first).toMatchObject({ name: 'plate', from: 0, low: 0, high: 38 });
    const stud = maps[0].timber.find((t) => t.name === 'stud');
    expect(stud).toMatchObject({ from: 0, to: 38, low: 38 });
    expect(stud?.high).toBeCloseTo(made.rod.frameHeight - 38, 9);
  });

  it('says the same as the framing, stud for stud', () => {
    for (const { run, studs, from } of made.framing) {
      const timber = maps.find((map) => map.run === run)?.timber.filter((t) => t.name === 'stud') ?? [];
      expect(timber).toHaveLength(studs.length);
      timber.forEach((t, i) => {
        expect(t.from).toBeCloseTo(studs[i].from - from, 6);
        expect(t.to).toBeCloseTo(studs[i].to - from, 6);
      });
    }
  });

  it('is sorted along the run', () => {
    for (const { timber } of maps)
      expect(timber.map((t) => t.from)).toEqual(timber.map((t) => t.from).sort((a, b) => a - b));
  });

  it('runs from the right where the setting-out does, and leaves out what stands behind', () => {
    const right = design(jobOf({ elements: { frame: { datum: 'right' }, carcass: { build: true } } }));
    const [map] = making(right).maps;
    expect(map.datum).toBe('right');
    const studs = map.timber.filter((t) => t.name === 'stud');
    const last = partsOf(right, 'ST').at(-1);
    expect(studs[0]).toMatchObject({ part: last?.mark, from: 0, to: 38 });
    expect(right.parts.some((p) => p.kind === 'carcass')).toBe(true);
    const behind = new Set(right.parts.filter((p) => p.kind === 'carcass').map((p) => p.mark));
    expect(map.timber.filter((t) => behind.has(t.part))).toEqual([]);
  });
});
