import { describe, expect, test } from 'vitest';
import { design, layoutsBySpacers, making } from '../../src/flow';
import { findingOf } from '../elements/job-of';
import * as sums from './l-counter-fixing-sums';
import { job } from './l-counter-job';
import { near } from './l-counter-words';

// The making of the counter that is worked by hand in `l-counter-frame.ts`: spacers, fixings, fixing map, packers, scribes.

const made = design(job);

describe('making it', () => {
  const { spacers, fixings, maps, site, steps } = making(made);

  test('spacers, each with how often', () => {
    near(
      spacers.flatMap((s) => [s.length, s.times]),
      sums.SPACERS.flat(),
    );
  });

  // 26 different ones, 4 + 6 + 7 studs, 15 + 18 + 17 noggins.
  test('the layout as it is, among the others', () => {
    const asItIs = layoutsBySpacers(job).filter((l) => l.decisions.length === 0);
    expect(asItIs).toMatchObject([{ spacers: 26, studs: 17, noggins: 50 }]);
  });

  test('every part is put on once, in the workshop on its section or on site', () => {
    const put = steps.flatMap((s) => s.parts.map((mark) => `${mark} ${s.section ?? s.place}`));
    expect(put.sort()).toEqual(made.parts.map((p) => `${p.mark} ${p.inSection ?? p.fitted}`).sort());
  });

  test.each(sums.FIXINGS)('%s: %s, %d', (code, name, count) => {
    const codeOf = new Map(made.parts.map((p) => [p.mark, p.code]));
    const own = fixings.parts.filter((f) => codeOf.get(f.part) === code && f.name === name);
    expect(own.reduce((sum, f) => sum + f.amount, 0)).toBe(count);
  });

  // Through 2 · 38 = 76, with nut, washers and a thread 87.3: M8 × 90. At the corner 38 + 63 = 101: longer than the book has.
  test('three bolts at each join', () => {
    const bolts = fixings.parts.filter((f) => made.joins.some((j) => j.id === f.part));
    expect(bolts.map((b) => [b.part, b.item, b.amount])).toEqual([
      ['J1', 'bolt-m8x90', 3],
      ['J2', undefined, 3],
    ]);
  });

  // The map is measured as the rod is, from the left end of the frame line, at the wall: the stud's middle, 1776.5 ∓ 19.
  test('the stud beside the socket on the fixing map', () => {
    const stud = maps
      .find((m) => m.run === 'A')
      ?.timber.find((t) => t.name === 'stud' && t.from > 1700 && t.from < 1900);
    if (!stud) throw new Error('no stud beside the socket');
    near([stud.from, stud.to, stud.low, stud.high], [1757.5, 1795.5, 38, 1012]);
    expect(findingOf(made, 'stud-moved')).toMatchObject({ value: 1701.5, limit: 1776.5 });
  });

  test('packers under studs and posts', () => {
    const name = (mark: string): string => mark.replace(/\d+$/, '');
    const found = site.packers.filter((p) => /-(ST|RP)\d/.test(p.part));
    const inOrder = <T extends readonly [string, number, number]>(all: readonly T[]): readonly T[] =>
      [...all].sort((a, b) => a[0].localeCompare(b[0]) || a[1] - b[1]);
    const byTool = inOrder(found.map((p) => [name(p.part), p.x, p.thickness] as const));
    const byHand = inOrder(sums.PACKERS);
    expect(byTool.map(([mark]) => mark)).toEqual(byHand.map(([mark]) => mark));
    near(
      byTool.flatMap(([, x, thick]) => [x, thick]),
      byHand.flatMap(([, x, thick]) => [x, thick]),
    );
  });

  // The wall leans back 0.6°: tan 0.6° = 0.010472. Over 1090 that is 11.41, over the front, to 1050, 10.996; 15 is left on for it.
  test('scribe gaps from the wall’s lean and the floor’s fall', () => {
    const most = (where: RegExp): number => site.scribes.find((s) => where.test(s.where))?.most ?? Number.NaN;
    expect(most(/^end of the top/)).toBeCloseTo(11.4149, 3);
    expect(most(/^front/)).toBeGreaterThan(10.99);
    expect(most(/^front/)).toBeLessThan(11.42);
    expect(findingOf(made, 'wall-out-of-plumb').value).toBeCloseTo(11.4149, 3);
    for (const { left } of site.scribes.filter((s) => /wall/.test(s.where))) expect(left).toBe(15);
    // The floor under A falls 0.004 · 1963.
    near([most(/^floor, run A/), most(/^floor, run B/)], [7.852, 8]);
    expect(findingOf(made, 'floor-out-of-level').value).toBeCloseTo(8, 9);
  });

  // The doors end on 1457.5; the other carcass begins on 1478.
  test('the doors come near to the corner, and it says so', () => {
    expect(findingOf(made, 'fronts-beside-corner').value).toBeCloseTo(1478 - 1457.5, 6);
  });
});
