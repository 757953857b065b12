import fc from 'fast-check';
import { rooms } from '../../src/flow';
import { bayFields } from '../../src/job/fields-making';
import type { Decision, Field } from '../../src/vocabulary/field';
import type { BayPurpose, BayWish, Carry, Flap, Job, JoinMark, Joins, Opening } from '../../src/vocabulary/job';
import { anyJob } from './random-job';

const tenth = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.ceil(min * 10), max: Math.floor(max * 10) }).map((n) => n / 10);

/** Values near a field's default, as a joiner would choose; any of a few words. */
function near(field: Field, job: Job): fc.Arbitrary<Decision> {
  switch (field.kind) {
    case 'choice':
      return fc.constantFrom(...field.options.map((o) => o.value));
    case 'switch':
      return fc.boolean();
    case 'count':
      return fc.integer({ min: Math.max(field.min, field.default - 1), max: Math.min(field.max, field.default + 2) });
    case 'length':
    case 'number':
      return fc.oneof(
        fc.constant(field.default),
        tenth(Math.max(field.min, field.default * 0.7), Math.min(field.max, field.default * 1.4 + 10)),
      );
    case 'lengths':
      return fc.constant(field.default);
    case 'stock': {
      const ids =
        field.of === 'cutter'
          ? job.tools.cutters.map((c) => c.id)
          : job.stock.items.filter((i) => i.kind === field.of).map((i) => i.id);
      return field.optional ? fc.constantFrom('', field.default, ...ids) : fc.constantFrom(field.default, ...ids);
    }
  }
}

/** What joiners choose where the default is to have none: 0 and some usual sizes. */
const USUAL: Readonly<Record<string, readonly number[]>> = {
  'carcass.toeHeight': [0, 100, 120, 150],
  'frame.cableWay': [0, 20, 32],
  'pillar.baseHeight': [0, 0, 60, 90],
  'pillar.capHeight': [0, 0, 45, 80],
  'worktop.height': [0, 0, 720, 800, 850, 900],
};

/** Rooms whose decisions `anyJob` already varies, with what it leaves at its default there. */
const TOLD: Readonly<Record<string, readonly string[]>> = {
  frame: ['timber', 'lay', 'centres', 'method', 'datum', 'nogginRows'],
  cladding: ['sheet', 'floorGap', 'trim'],
  pillar: [
    'sheet',
    'width',
    'cornerWidth',
    'rhythm',
    'pitch',
    'bays',
    'flutes',
    'fluteMargin',
    'fluteSpacing',
    'fluteDepth',
  ],
  plinth: ['sheet', 'height', 'overhang', 'cutter'],
  skirting: ['moulding'],
  panel: ['moulding', 'margin', 'rows', 'rowGap'],
  top: ['hardwood', 'overhang', 'endOverhang', 'corner'],
};

const PURPOSES: readonly BayPurpose[] = ['open', 'shelves', 'appliance', 'sink', 'bin', 'doors', 'drawers'];

const bayWish = (runs: number): fc.Arbitrary<BayWish> =>
  fc.record({
    run: fc.integer({ min: 1, max: runs }),
    bay: fc.integer({ min: 1, max: 4 }),
    panels: fc.boolean(),
    purpose: fc.constantFrom(...PURPOSES),
    count: fc.integer({ min: 1, max: 4 }),
    shelves: fc.constantFrom('fixed' as const, 'standards' as const, 'holes' as const),
    width: fc.oneof(fc.constant(0), tenth(200, 700)),
    height: fc.oneof(fc.constant(0), tenth(200, 900)),
    depth: fc.oneof(fc.constant(0), tenth(150, 600)),
    besides: fc.constant(bayFields.besides.default),
    above: fc.constant(bayFields.above.default),
    behind: fc.constant(bayFields.behind.default),
  });

const opening = (job: Job): fc.Arbitrary<Opening> =>
  fc.integer({ min: 1, max: job.unit.plan.runs.length }).chain((run) =>
    fc.record({
      name: fc.constant('hole'),
      run: fc.constant(run),
      through: fc.constantFrom('front' as const, 'front' as const, 'top' as const),
      use: fc.constantFrom('socket' as const, 'pipe' as const, 'grille' as const),
      x: tenth(0, job.unit.plan.runs[run - 1].length),
      z: tenth(20, 1000),
      width: tenth(20, 300),
      height: tenth(20, 200),
    }),
  );

const joins = (job: Job): fc.Arbitrary<Joins> =>
  fc.oneof(
    fc.constant<Joins>({ by: 'none' }),
    { weight: 3, arbitrary: fc.constant<Joins>({ by: 'least' }) },
    fc
      .array(
        fc.integer({ min: 0, max: job.unit.plan.runs.length }).chain((run) =>
          fc.oneof(
            fc.constant<JoinMark>({ run }),
            tenth(0, job.unit.plan.runs[Math.max(0, run - 1)].length).map(
              (x): JoinMark => ({ run: Math.max(1, run), x }),
            ),
          ),
        ),
        { maxLength: 6 },
      )
      .map((at): Joins => ({ by: 'hand', at })),
  );

/** Ways in, from a wide one to a narrow one. */
const carry: fc.Arbitrary<Partial<Carry>> = fc.record({
  vanLength: tenth(1500, 4000),
  people: fc.integer({ min: 1, max: 4 }),
  liftKg: tenth(16, 50),
  routeDoorWidth: tenth(600, 1000),
  corridorBefore: fc.constantFrom(0, 900, 1200),
  corridorAfter: fc.constantFrom(0, 1000, 1500),
});

const flap: fc.Arbitrary<Flap | undefined> = fc.oneof(
  { weight: 3, arbitrary: fc.constant(undefined) },
  fc.record({
    width: tenth(500, 900),
    hinge: fc.constantFrom('left' as const, 'right' as const),
    gate: fc.boolean(),
  }),
);

/** Any job with everything on: rooms' other decisions, joins, openings, single bays, flaps, the way in. */
export const anyWhole: fc.Arbitrary<Job> = anyJob.chain((job) =>
  fc
    .record({
      decided: fc.record(
        Object.fromEntries(
          rooms.map((room) => [
            room.kind,
            fc.record(
              Object.fromEntries(
                Object.entries(room.fields)
                  .filter(([key]) => !TOLD[room.kind]?.includes(key))
                  .map(([key, field]) => {
                    const usual = USUAL[`${room.kind}.${key}`];
                    return [key, usual ? fc.constantFrom(...usual) : near(field, job)];
                  }),
              ),
            ),
          ]),
        ),
      ),
      joins: joins(job),
      carry,
      openings: fc.array(opening(job), { maxLength: 4 }),
      bays: fc.uniqueArray(bayWish(job.unit.plan.runs.length), { maxLength: 5, selector: (b) => `${b.run} ${b.bay}` }),
      flaps: fc.array(flap, { minLength: 4, maxLength: 4 }),
      tolerance: tenth(0, 8),
    })
    .map(
      ({ decided, carry: way, flaps, tolerance, ...said }): Job => ({
        ...job,
        carry: { ...job.carry, ...way },
        fit: { ...job.fit, tolerance },
        unit: {
          ...job.unit,
          ...said,
          plan: {
            ...job.unit.plan,
            // A flap hangs between runs in one line; elsewhere it would only be refused.
            runs: job.unit.plan.runs.map((run, i) =>
              flaps[i] && i < job.unit.plan.runs.length - 1 ? { ...run, deflectionDeg: 0, flap: flaps[i] } : run,
            ),
          },
          elements: Object.fromEntries(
            Object.entries(job.unit.elements).map(([kind, own]) => [kind, { ...own, ...decided[kind] }]),
          ),
        },
      }),
    ),
);
