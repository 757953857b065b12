import { expect, test } from 'vitest';
import { boxWith, isReadable, measuresOf, measuresOfRod } from '../../../app/scene/measures';
import { design, newJob } from '../../../src/flow';
import type { Plan } from '../../../src/vocabulary/job';
import { lying, part, standing, stick } from '../parts';

const plate = part('A-PL-1', stick(1200, 63, 38), lying(100, 38, 0), {
  size: { length: 1200, width: 63, thickness: 38 },
});

test('a square part measures what its measuring lines span', () => {
  const measures = measuresOf(plate);
  expect(measures.map((m) => [m.name, m.mm])).toEqual([
    ['length', 1200],
    ['width', 63],
    ['thickness', 38],
  ]);
  for (const { mm, lines } of measures) {
    const [a, b] = lines[0]!;
    expect(Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2])).toBeCloseTo(mm, 6);
  }
});

test('measuring lines keep clear of the part, and figures stand on their middle', () => {
  const [length, width] = measuresOf(plate);
  expect(length!.label[0]).toBeCloseTo(700, 6);
  expect(length!.label[2]).toBeLessThan(-20);
  expect(width!.label[0]).toBeLessThan(80);
  expect(width!.label[2]).toBeCloseTo(31.5, 6);
});

test('a stick shows each size where it is, whichever way it is turned', () => {
  // 38 across, 63 out: the size names the greater its width.
  const [length, width, thickness] = measuresOf(
    part('A-ST-1', stick(900, 38, 63), standing(100, 63, 0), { size: { length: 900, width: 63, thickness: 38 } }),
  );
  expect([length, width, thickness].map((m) => [m!.name, m!.mm])).toEqual([
    ['length', 900],
    ['width', 63],
    ['thickness', 38],
  ]);
  for (const { mm, lines } of [length!, width!, thickness!]) {
    const [a, b] = lines[0]!;
    expect(Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2])).toBeCloseTo(mm, 6);
  }
});

const demo = (change: Partial<Plan> = {}) => {
  const job = newJob('Measures');
  const run = { length: 3600, over: 'plinth', deflectionDeg: 90, through: 'this' } as const;
  const plan: Plan = { ...job.unit.plan, runs: [run, { ...run, length: 2000 }], rightEnd: { kind: 'free' }, ...change };
  return { rod: design({ ...job, unit: { ...job.unit, plan } }).rod, plan };
};

test('each run is measured as it was asked for, over its layer, from end to end of that layer', () => {
  const rightEnd = { kind: 'return', length: 520, over: 'top' } as const;
  for (const change of [{}, { rightEnd }, { leftEnd: { kind: 'return', length: 400 } as const }]) {
    const { rod, plan } = demo(change);
    const measures = measuresOfRod(rod, plan).slice(0, -1);
    expect(measures.map(({ name }) => name)).toEqual(rod.runs.map(({ name }) => name));
    for (const { mm, lines } of measures) {
      const [a, b] = lines[0]!;
      expect(Math.hypot(b[0] - a[0], b[1] - a[1])).toBeCloseTo(mm, 6);
    }
  }
  const { rod, plan } = demo({ rightEnd });
  expect(measuresOfRod(rod, plan).map(({ mm, over }) => [mm, over])).toEqual([
    [3600, 'plinth'],
    [2000, 'plinth'],
    [520, 'top'],
    [rod.height, undefined],
  ]);
});

test('over the top a run is measured with what the top runs past a free end', () => {
  const run = { length: 3000, over: 'top', deflectionDeg: 0, through: 'this' } as const;
  const { rod, plan } = demo({ runs: [run] });
  const [a, b] = measuresOfRod(rod, plan)[0]!.lines[0]!;
  expect(b[0] - a[0]).toBeCloseTo(3000, 6);
  expect(rod.runs[0]!.length).toBeCloseTo(3000 - rod.top.endOverhang, 6);
});

test('lengths lie before the foremost layer, and the height stands at the left', () => {
  const { rod, plan } = demo();
  const [length] = measuresOfRod(rod, plan);
  const height = measuresOfRod(rod, plan).at(-1)!;
  expect(length!.lines[0]![0][1]).toBeLessThan(-Math.max(...Object.values(rod.layers).map(({ outer }) => outer)));
  expect(length!.front).toEqual([0, -1, 0]);
  expect(height.mm).toBe(rod.height);
  expect(height.lines[0]!.map((p) => p[2])).toEqual([0, rod.height]);
  expect(height.label[0]).toBeLessThan(0);
});

test('a box takes in the measures that stand round it', () => {
  const grown = boxWith({ min: [0, 0, 0], max: [1200, 63, 38] }, measuresOf(plate));
  expect(grown.min[2]).toBeLessThan(-40);
  expect(grown.max[0]).toBeGreaterThan(1300);
  expect(boxWith({ min: [0, 0, 0], max: [1, 2, 3] }, [])).toEqual({ min: [0, 0, 0], max: [1, 2, 3] });
});

test('a measure is read from its front and from above, not from behind nor end on', () => {
  const length = {
    name: 'Run A',
    mm: 3600,
    lines: [
      [
        [0, -200, 0],
        [3600, -200, 0],
      ],
    ],
    label: [1800, -200, 0],
    front: [0, -1, 0],
  } as const;
  expect(isReadable(length, [1800, -4000, 1500])).toBe(true);
  expect(isReadable(length, [1800, 4000, 1500])).toBe(false);
  expect(isReadable(length, [1800, 300, 9000])).toBe(true);
  expect(isReadable(length, [90000, -250, 0])).toBe(false);
});
