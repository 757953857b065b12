import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../src/base/outline';
import { design } from '../../src/flow';
import { partsOf, runOf } from '../elements/job-of';
import { cornersIn, type Extent, reachOf } from '../properties/measure';
import { FRAME, GAPS, STUDS } from './l-counter-frame';
import { FRONT, HOLES } from './l-counter-front';
import { JOIN_AT, job } from './l-counter-job';
import * as sums from './l-counter-sums';
import { handListed, near, toolListed } from './l-counter-words';

// A whole counter worked with pencil and paper: the rod, every part, and the sums, against what is worked out from the job.

const made = design(job);
const A = runOf(made, 'A');
const B = runOf(made, 'B');
const middle = ({ from, to }: Extent): number => (from + to) / 2;
describe('the rod', () => {
  test('frame lines, from the lengths over plinth and pillars', () => {
    near([A.length, B.length], [1963, 1170]);
    near([A.left.frameAt, A.right.frameAt, B.left.frameAt, B.right.frameAt], [3, 1963, 63, 1170]);
  });

  test('pillars and bays', () => {
    near(
      A.pillars.flatMap((p) => [p.from, p.to]),
      [0, 120, 631, 751, 1262, 1382, 1893, 1993],
    );
    near(
      B.pillars.flatMap((p) => [p.from, p.to]),
      [-30, 70, 500, 620, 1050, 1170],
    );
  });

  test('running measurements of the pillars: left edge, centre, right edge', () => {
    const marked = (run: string): readonly number[] =>
      made.marks[run].filter((m) => /^(corner )?pillar board/.test(m.reason)).map((m) => m.x);
    near(marked('A'), [0, 60, 120, 631, 691, 751, 1262, 1322, 1382, 1893, 1943, 1993]);
    near(marked('B'), [-30, 20, 70, 500, 560, 620, 1050, 1110, 1170]);
  });

  test('joins behind the second pillar and at the corner', () => {
    expect(made.joins.map(({ id, at, sections }) => [id, at, ...sections])).toEqual([
      ['J1', 'run', 'S1', 'S2'],
      ['J2', 'corner', 'S2', 'S3'],
    ]);
    expect(made.joins[0].x).toBeCloseTo(JOIN_AT, 9);
  });

  test('cross frames behind it, and the spaces between them', () => {
    near(
      [...A.crossLines, ...B.crossLines].map((l) => l.from),
      [3, 653, 691, 1440, 485, 1132],
    );
    near(
      [...A.backBays, ...B.backBays].flatMap((b) => [b.from, b.to]),
      [41, 653, 729, 1440, 523, 1132],
    );
  });

  test.each(['S1', 'S2', 'S3'] as const)('studs of %s', (section) => {
    const run = section === 'S3' ? B : A;
    const studs = partsOf(made, 'ST', run.id).filter((p) => p.inSection === section);
    near(
      studs.map((p) => middle(reachOf(run, p))),
      STUDS[section],
    );
  });

  test.each(['S1', 'S2', 'S3'] as const)('noggins of %s, gap by gap', (section) => {
    const run = section === 'S3' ? B : A;
    const of = (code: string) => partsOf(made, code, run.id).filter((p) => p.inSection === section);
    const studs = of('ST').map((p) => reachOf(run, p));
    const noggins = of('NG').map((p) => ({
      ...reachOf(run, p),
      z: cornersIn(run, p).reduce((s, c) => s + c.z / 8, 0),
    }));
    const gaps = studs.slice(1).map((stud, i) => ({ from: studs[i].to, to: stud.from }));
    const expected = GAPS.filter((g) => g.in === section);
    near(
      gaps.map((g) => g.to - g.from),
      expected.map((g) => g.clear),
    );
    for (const [i, gap] of gaps.entries()) {
      const own = noggins.filter((n) => middle(n) > gap.from && middle(n) < gap.to);
      near(
        own.map((n) => n.z).sort((a, b) => a - b),
        expected[i].noggins,
      );
      for (const n of own) near([n.from, n.to], [gap.from, gap.to]);
    }
  });
});

describe('the list', () => {
  test('has every part that was written by hand, and no other', () => {
    expect(toolListed(made.parts)).toEqual(handListed([...FRAME, ...FRONT]));
  });

  test('counts by code', () => {
    const found: Record<string, number> = {};
    for (const { code } of made.parts) found[code] = (found[code] ?? 0) + 1;
    expect(found).toEqual(sums.COUNT);
    expect(made.totals.parts).toBe(sums.PARTS);
  });

  test.each(['S2', 'S3'] as const)('the hole in the skin of %s', (section) => {
    const skin = made.parts.find((p) => p.code === 'CL' && p.inSection === section);
    if (skin?.shape.kind !== 'board') throw new Error(`no skin on ${section}`);
    expect(skin.shape.holes).toHaveLength(1);
    const { min, max } = boundsOf(skin.shape.holes[0]);
    near([(min[0] + max[0]) / 2, (min[1] + max[1]) / 2], HOLES[section].middle);
    near([max[0] - min[0], max[1] - min[1]], HOLES[section].size);
  });

  test('nothing in it can’t be built', () => {
    expect(made.findings.filter((f) => f.severity === 'stop')).toEqual([]);
  });
});

describe('what it comes to', () => {
  test('metres and square metres by material', () => {
    const found = Object.fromEntries(made.totals.materials.map((m) => [m.material, m.amount]));
    expect(Object.keys(found).sort()).toEqual(Object.keys(sums.AMOUNTS).sort());
    for (const [material, amount] of Object.entries(sums.AMOUNTS)) expect(found[material]).toBeCloseTo(amount, 9);
  });

  test('weights of single parts', () => {
    const weightOf = (code: string, run = 'A'): number => partsOf(made, code, run)[0].weightKg;
    const found = [weightOf('ST'), weightOf('SH'), weightOf('DR'), weightOf('TP'), weightOf('TP', 'B')];
    const { stud, shelf, door, topA, topB } = sums.WEIGHTS;
    near(found, [stud, shelf, door, topA, topB]);
  });

  // Solids have chords for arcs, no further than 0.03 from them: on a board of five flutes up to 2 g, elsewhere less.
  test('weights of the sections, and of what goes loose', () => {
    const found = new Map(made.sections.map((s) => [s.id, s.weightKg]));
    expect([...found.keys()]).toEqual(Object.keys(sums.SECTION_KG));
    for (const [id, kg] of Object.entries(sums.SECTION_KG))
      expect(Math.abs((found.get(id) ?? 0) - kg)).toBeLessThan(0.005);
    const loose = made.parts.filter((p) => p.fitted === 'site').reduce((sum, p) => sum + p.weightKg, 0);
    expect(Math.abs(loose - sums.LOOSE_KG)).toBeLessThan(0.007);
    const { S1, S2, S3 } = sums.SECTION_KG;
    expect(Math.abs(made.totals.weightKg - (S1 + S2 + S3 + sums.LOOSE_KG))).toBeLessThan(0.014);
  });

  test('boxes of the sections', () => {
    for (const { id, size } of made.sections) {
      const box = sums.BOXES[id as keyof typeof sums.BOXES];
      near([size.length, size.depth, size.height], [box.length, box.depth, box.height]);
    }
  });
});
