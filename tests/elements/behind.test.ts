import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { design } from '../../src/flow';
import type { BayWish, Job } from '../../src/vocabulary/job';
import type { Part } from '../../src/vocabulary/part';
import { SEED } from '../base/seed';
import { cornersOf } from '../properties/measure';
import { anyJob } from '../properties/random-job';
import { overlaps, referee, solidOf } from '../properties/referee';

const COUNT = 100;
const KINDS = ['shelf', 'appliance', 'door'];

const tenth = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

const wish: fc.Arbitrary<BayWish> = fc.record({
  run: fc.integer({ min: 1, max: 3 }),
  bay: fc.integer({ min: 1, max: 5 }),
  panels: fc.boolean(),
  purpose: fc.constantFrom('open', 'shelves', 'shelves', 'appliance', 'sink', 'bin', 'doors', 'doors', 'drawers'),
  count: fc.integer({ min: 1, max: 5 }),
  shelves: fc.constantFrom('fixed', 'standards', 'holes'),
  width: fc.oneof(fc.constant(0), tenth(100, 700)),
  height: tenth(0, 300),
  depth: tenth(0, 300),
  besides: tenth(0, 20),
  above: tenth(0, 30),
  behind: tenth(0, 60),
});

const decided = fc.record({
  carcass: fc.record({
    build: fc.constant(true),
    timber: fc.constantFrom('sawn-38x63', 'sawn-47x75', 'sawn-38x89'),
    lines: fc.constantFrom('bays', 'bays', 'ends'),
    setBack: tenth(0, 80),
    rearRail: fc.boolean(),
    midRail: fc.boolean(),
    toeHeight: fc.constantFrom(0, 100, 150),
    toeDepth: tenth(20, 90),
  }),
  worktop: fc.record({
    height: fc.constantFrom(0, 0, 750, 850.5),
    of: fc.constantFrom('hardwood', 'sheet'),
    depth: tenth(200, 700),
  }),
  shelf: fc.record({
    sheet: fc.constantFrom('mdf-18', 'mdf-25'),
    lining: fc.constantFrom('mdf-12', 'mdf-18'),
    bearer: fc.constantFrom('sawn-25x38', 'sawn-38x63'),
    least: tenth(40, 150),
    pitch: fc.constantFrom(32, 25, 50),
  }),
  door: fc.record({
    lie: fc.constantFrom('overlay', 'inset'),
    gap: tenth(1, 5),
    sheet: fc.constantFrom('mdf-18', 'mdf-25'),
  }),
});

const behind: fc.Arbitrary<Job> = fc
  .record({
    job: anyJob,
    bays: fc.uniqueArray(wish, { minLength: 3, maxLength: 12, selector: (b) => `${b.run} ${b.bay}` }),
    decided,
    joins: fc.constantFrom({ by: 'none' as const }, { by: 'least' as const }),
    depth: tenth(350, 750),
  })
  .map(({ job, bays, decided: said, joins, depth }) => {
    const elements = Object.entries(job.unit.elements).map(([kind, old]) => [
      kind,
      { ...old, ...said[kind as keyof typeof said] },
    ]);
    const unit = { ...job.unit, bays, joins, depth, elements: Object.fromEntries(elements) };
    return { ...job, unit: { ...unit, bays: bays.filter((b) => b.run <= unit.plan.runs.length) } };
  });

type Box = readonly (readonly [number, number])[];
const boxOf = (part: Part): Box => {
  const corners = cornersOf(part);
  return [0, 1, 2].map((k) => [Math.min(...corners.map((c) => c[k])), Math.max(...corners.map((c) => c[k]))]);
};
const near = (a: Box, b: Box): boolean => a.every(([from, to], k) => from <= b[k][1] + 0.5 && b[k][0] <= to + 0.5);

/** What a part must touch: for each list one of the names in it. */
function mustTouch({ code, where }: Part): readonly (readonly string[])[] {
  const frame = ['stud', 'noggin', 'plate', 'bearer'];
  const posts = ['rear post', 'cross rail'];
  switch (code) {
    case 'SH':
      return [['shelf bearer', 'side lining']];
    case 'LN':
      return [['rear post'], ['cross rail']];
    case 'SB':
      return where.endsWith('front') ? [frame] : [posts, ['shelf bearer']];
    case 'SR':
      return where.endsWith('rear') ? [posts] : [frame, ['rear rail', 'sink bearer']];
    case 'DS':
      return [['rear post']];
    default:
      return [['rear post', 'stop']];
  }
}

describe(`${COUNT} random units with something behind the front (seed ${SEED})`, () => {
  it('nothing overlaps, everything touches what it is fixed to, every finding is in words', {
    timeout: 300_000,
  }, async () => {
    const wasm = await referee();
    const seen = new Set<string>();
    for (const job of fc.sample(behind, { seed: SEED, numRuns: COUNT })) {
      const made = design(job);
      for (const { message, remedy } of made.findings)
        expect(`${message} ${remedy}`).not.toMatch(/NaN|undefined|Infin/);
      // A plan that folds on itself is refused; its runs stand in each other.
      if (made.findings.some(({ rule }) => rule === 'plan-folds')) continue;
      const boxes = new Map(made.parts.map((part) => [part, boxOf(part)]));
      const box = (part: Part): Box => boxes.get(part) ?? [];
      const mine = made.parts.filter((part) => KINDS.includes(part.kind));
      const about = made.parts.filter((part) => mine.some((own) => near(box(own), box(part))));
      const marks = new Set(mine.map((part) => part.mark));
      expect(overlaps(wasm, about, 1).filter(({ a, b }) => marks.has(a) || marks.has(b))).toEqual([]);
      for (const part of mine) {
        seen.add(part.code);
        expect(part.holds?.length, part.mark).toBeGreaterThan(0);
        const solid = solidOf(wasm, part);
        const touched = about
          .filter((other) => other !== part && near(box(part), box(other)))
          .filter((other) => {
            const theirs = solidOf(wasm, other);
            const gap = solid.minGap(theirs, 1);
            theirs.delete();
            return gap <= 0.5;
          })
          .map((other) => other.name);
        solid.delete();
        for (const names of mustTouch(part))
          expect(
            touched.some((name) => names.includes(name)),
            `${part.mark}, ${part.name} (${part.where}), touches ${touched.join(', ')}; wanted ${names.join(' or ')}`,
          ).toBe(true);
      }
    }
    // The jobs were such that everything was made.
    expect([...seen].sort()).toEqual(['DF', 'DR', 'DS', 'LN', 'SB', 'SH', 'SR']);
  });
});
