import fc from 'fast-check';
import { design } from '../../../src/flow';
import type { Decision } from '../../../src/vocabulary/field';
import type { Flap, Job } from '../../../src/vocabulary/job';
import { anyJob } from '../../properties/random-job';

const tenth = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const height = fc.oneof(fc.constant(0), tenth(0, 150));
const sheet = fc.constantFrom('mdf-12', 'mdf-18', 'mdf-25', 'mdf-30');
const cutter = fc.constantFrom('', 'ovolo-9', 'ogee-12', 'torus-12');

const pillar: fc.Arbitrary<Readonly<Record<string, Decision>>> = fc.record({
  atCorners: fc.boolean(),
  fluteEnds: fc.constantFrom('through', 'stopped'),
  fluteStop: tenth(1, 200),
  endReturn: fc.boolean(),
  baseHeight: height,
  baseSheet: sheet,
  baseOverhang: tenth(0, 12),
  baseCutter: cutter,
  capHeight: height,
  capSheet: sheet,
  capOverhang: tenth(0, 12),
  capCutter: cutter,
});

const plinth: fc.Arbitrary<Readonly<Record<string, Decision>>> = fc.record({
  style: fc.constantFrom('blocks', 'plain', 'kicked'),
  endReturn: fc.boolean(),
  recess: tenth(0, 70),
});

const flap: fc.Arbitrary<Flap> = fc.record({
  width: tenth(500, 900),
  hinge: fc.constantFrom('left' as const, 'right' as const),
  gate: fc.boolean(),
});

/** Any job with the decisions of pillars and plinths varied, taken apart behind some of its pillars, with flaps here and there. */
export const varied: fc.Arbitrary<Job> = fc
  .record({
    job: anyJob,
    pillar,
    plinth,
    underTop: fc.constantFrom('', '', 'panel-ovolo-22'),
    flaps: fc.array(fc.option(flap, { freq: 2 }), { minLength: 4, maxLength: 4 }),
    parted: fc.boolean(),
  })
  .map(({ job, pillar: p, plinth: q, underTop, flaps, parted }) => {
    const { elements, plan } = job.unit;
    const runs = plan.runs.map((run, i) => {
      const hung = i < plan.runs.length - 1 ? flaps[i] : null;
      return hung ? { ...run, deflectionDeg: 0, flap: hung } : run;
    });
    const made: Job = {
      ...job,
      unit: {
        ...job.unit,
        plan: { ...plan, runs },
        elements: {
          ...elements,
          pillar: { ...elements.pillar, ...p },
          plinth: { ...elements.plinth, ...q },
          ...(elements.undertop ? { undertop: { ...elements.undertop, moulding: underTop } } : {}),
        },
      },
    };
    return parted ? takenApart(made) : made;
  });

/** Joined behind every second pillar, at the edge of every third bay, and at every corner. */
function takenApart(job: Job): Job {
  const at = design(job).rod.runs.flatMap((run) => {
    if (run.jobIndex === null) return [];
    const number = run.jobIndex + 1;
    const behind = run.pillars.filter((p, i) => p.where === 'between' && i % 2 === 0).map((p) => p.centre);
    const beside = run.bays.filter((_, i) => i % 3 === 1).map((b) => b.from + 20);
    return [...behind, ...beside]
      .map((x) => ({ run: number, x }))
      .concat({ run: number } as { run: number; x: number });
  });
  return { ...job, unit: { ...job.unit, joins: { by: 'hand', at } } };
}
