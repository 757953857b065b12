import fc from 'fast-check';
import { expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { SEED } from '../../base/seed';
import { overlaps, referee } from '../../properties/referee';
import { jobOf, type Said } from '../job-of';

const COUNT = 20;

const said: fc.Arbitrary<Said> = fc
  .record({
    width: fc.integer({ min: 450, max: 1200 }),
    hinge: fc.constantFrom('left' as const, 'right' as const),
    lengths: fc.tuple(fc.integer({ min: 900, max: 4200 }), fc.integer({ min: 900, max: 4200 })),
    turn: fc.constantFrom(90, -90, 45, -30),
    depth: fc.integer({ min: 300, max: 800 }),
    jamb: fc.constantFrom('mdf-12', 'mdf-18', 'mdf-25'),
    plinth: fc.constantFrom('mdf-18', 'mdf-30'),
    floorClear: fc.integer({ min: 10, max: 200 }),
    edge: fc.constantFrom('', 'ovolo-9', 'chamfer-6'),
    corner: fc.constantFrom('mitred', 'butted'),
    build: fc.boolean(),
  })
  .map(({ width, hinge, lengths: [a, b], turn, depth, jamb, plinth, floorClear, edge, corner, build }) => ({
    runs: [{ length: a, flap: { width, hinge, gate: true } }, { length: b, deflectionDeg: turn }, { length: 2400 }],
    depth,
    elements: {
      flap: { jamb, floorClear },
      plinth: { sheet: plinth },
      top: { edge, corner },
      carcass: { build },
    },
  }));

test(`${COUNT} random flaps share no wood with what is round them (seed ${SEED})`, { timeout: 120_000 }, async () => {
  const kernel = await referee();
  let hung = 0;
  fc.assert(
    fc.property(said, (job) => {
      const { parts } = design(jobOf(job));
      const mine = new Set(parts.filter((p) => p.kind === 'flap' || p.kind === 'top').map((p) => p.mark));
      hung += parts.filter((p) => p.code === 'LF').length;
      expect(overlaps(kernel, parts, 1).filter(({ a, b }) => mine.has(a) || mine.has(b))).toEqual([]);
    }),
    { seed: SEED, numRuns: COUNT },
  );
  expect(hung).toBeGreaterThan(COUNT / 2);
});
