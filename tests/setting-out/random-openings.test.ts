import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flatten } from '../../src/base/outline';
import { level, onFace, placeOf } from '../../src/base/place';
import { SQUARE_EDGE } from '../../src/base/profiles';
import { holeOf } from '../../src/elements/cladding/holes';
import { design } from '../../src/flow';
import { mirrorJob } from '../../src/job/mirror';
import type { Design } from '../../src/vocabulary/design';
import type { Job, Opening } from '../../src/vocabulary/job';
import type { PlacedOpening } from '../../src/vocabulary/opening';
import type { Part } from '../../src/vocabulary/part';
import { openingOf } from '../elements/behind-job';
import { jobOf } from '../elements/job-of';
import { mirrored } from '../properties/holds/mirrored';
import { anyJob } from '../properties/random-job';
import { overlaps, referee } from '../properties/referee';

const SEED = Number(process.env.SEED ?? 20_260);
/** Few, for a test of every day; the same by the hundred with JOBS=200. */
const JOBS = Number(process.env.JOBS ?? 30);

const opening: fc.Arbitrary<Opening> = fc.record({
  name: fc.constantFrom('', 'till'),
  run: fc.integer({ min: 1, max: 4 }),
  through: fc.constant('front' as const),
  use: fc.constantFrom('socket' as const, 'pipe' as const, 'grille' as const),
  x: fc.integer({ min: 0, max: 4000 }),
  z: fc.integer({ min: 60, max: 1000 }),
  width: fc.integer({ min: 20, max: 400 }),
  height: fc.integer({ min: 20, max: 300 }),
});

/** A job with three openings, each moved as it is told to when it is refused, so that most have a place. */
const withOpenings: fc.Arbitrary<Job> = fc
  .record({ job: anyJob, openings: fc.array(opening, { minLength: 3, maxLength: 3 }) })
  .map(({ job, openings }) => {
    const count = job.unit.plan.runs.length;
    const inRuns = openings.map((o) => ({ ...o, run: ((o.run - 1) % count) + 1 }));
    return advised({ ...job, unit: { ...job.unit, openings: inRuns } });
  });

/** The job with its refused openings moved, or made smaller, as their findings say. */
function advised(job: Job): Job {
  const { findings } = design(job);
  const openings = job.unit.openings.map((o, i): Opening => {
    const said = findings.find(
      (f) => f.subject.path === `/unit/openings/${i}` && /^opening-(refused|too-large)$/.test(f.rule),
    );
    const size = said?.remedy.match(/^Make it ([\d.]+)(?: × ([\d.]+))? mm/);
    const x = said?.remedy.match(/(?:left|right), to ([-\d.]+) mm/) ?? said?.remedy.match(/at ([-\d.]+) mm along/);
    const z = said?.remedy.match(/(?:up|down), to ([\d.]+) mm/) ?? said?.remedy.match(/and ([\d.]+) mm up/);
    return {
      ...o,
      ...(x ? { x: Number(x[1]) } : {}),
      ...(z ? { z: Number(z[1]) } : {}),
      ...(size ? { width: Number(size[1]), height: Number(size[2] ?? size[1]) } : {}),
    };
  });
  return { ...job, unit: { ...job.unit, openings } };
}

/** What would come through an opening: a plug from the back of the frame to the face of the skin. */
function plug({ rod }: Design, o: PlacedOpening, like: Part): Part {
  const run = rod.runs.find((r) => r.id === o.run);
  if (!run) throw new Error(`no run ${o.run}`);
  const outline = flatten(holeOf(o, o.from, o.low));
  return {
    ...like,
    mark: `opening ${o.index + 1}`,
    place: placeOf(onFace(run, o.from, -rod.timber.depth, o.low), level(run.along), level(run.front)),
    shape: {
      kind: 'board',
      holes: [],
      outline,
      thickness: rod.timber.depth + rod.layers.cladding.outer,
      edges: outline.map(() => SQUARE_EDGE),
    },
  };
}

describe(`${JOBS} random jobs with three openings each (seed ${SEED})`, () => {
  const sample = fc.sample(withOpenings, { numRuns: JOBS, seed: SEED }).map((job) => design(job));

  test('most openings have a place', () =>
    expect(sample.reduce((sum, d) => sum + d.openings.length, 0)).toBeGreaterThan(2 * JOBS));

  test(
    'nothing of frame and skin meets an opening, or anything else of them',
    async () => {
      const wasm = await referee();
      const wrong = sample
        // A plan that folds on itself is said to.
        .filter((d) => !d.findings.some((f) => f.rule === 'plan-folds'))
        .flatMap((d, i) => {
          const made = d.parts.filter((p) => p.kind === 'frame' || p.kind === 'cladding');
          const plugs = d.openings.map((o) => plug(d, o, made[0]));
          return overlaps(wasm, [...made, ...plugs], 1).map((o) => `job ${i}: ${o.a} and ${o.b} share ${o.mm3} mm³`);
        });
      expect(wrong).toEqual([]);
    },
    JOBS * 1000,
  );

  test('none is lost: each has its place, or is said to have none', () => {
    for (const d of sample)
      d.job.unit.openings.forEach((_, i) => {
        const said = d.findings.some((f) => f.severity === 'stop' && f.subject.path === `/unit/openings/${i}`);
        expect(d.openings.some((o) => o.index === i) || said).toBe(true);
      });
  });
});

describe('in a mirror', () => {
  const openings = [430, 950, 1230, 1890, 2600].map((x) => openingOf({ x }));
  test.each([
    ['module', 'left'],
    ['module', 'right'],
    ['equal', 'left'],
  ])('a unit with openings is the mirror image, %s from the %s', (method, datum) => {
    const job = jobOf({
      runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }],
      elements: { frame: { method, datum, cableWay: 16 }, panel: { rows: 0 } },
      openings,
    });
    const made = design(job);
    expect(made.openings).toHaveLength(5);
    expect(made.findings.some((f) => f.rule === 'opening-trimmed')).toBe(true);
    expect(mirrored(made).wrong).toEqual([]);
    expect(design(mirrorJob(job)).framing[0].noggins).toHaveLength(made.framing[0].noggins.length);
  });
});
