import fc from 'fast-check';
import { layers } from '../../src/flow.ts';
import {
  endFields,
  jobFields,
  rhythmFields,
  runFields,
  stockFields,
  surveyFields,
  toolFields,
  unitFields,
} from '../../src/job/fields.ts';
import { cuttingFields } from '../../src/job/fields-cutting.ts';
import {
  bayFields,
  carryFields,
  fitFields,
  flapFields,
  joinFields,
  openingFields,
} from '../../src/job/fields-making.ts';
import type { RoomWords } from '../../src/job/schema.ts';
import { newJob, startingStock, startingTools } from '../../src/job/start.ts';
import type { Decision, Field, Fields } from '../../src/vocabulary/field.ts';
import type {
  BayWish,
  EndCondition,
  Flap,
  Job,
  Joins,
  Opening,
  Rhythm,
  Run,
  Survey,
} from '../../src/vocabulary/job.ts';

/** Any number of a range, whole ones and limits often; never −0, which JSON writes as 0. */
function numberIn(min: number, max: number): fc.Arbitrary<number> {
  return fc.oneof(
    fc.constantFrom(min, max),
    fc.integer({ min: Math.ceil(min), max: Math.floor(max) }),
    fc.double({ min, max, noNaN: true }).map((value) => value + 0),
  );
}

/** Any value that a field takes, with the ids of the starting book. */
export function decision(field: Field): fc.Arbitrary<Decision> {
  switch (field.kind) {
    case 'length':
    case 'number':
      return numberIn(field.min, field.max);
    case 'count':
      return fc.integer({ min: field.min, max: field.max }).filter((n) => !field.odd || n === 0 || n % 2 === 1);
    case 'choice':
      return fc.constantFrom(...field.options.map((option) => option.value));
    case 'switch':
      return fc.boolean();
    case 'stock': {
      const items = startingStock.items.filter((item) => item.kind === field.of);
      const ids = (field.of === 'cutter' ? startingTools.cutters : items).map(({ id }) => id);
      return fc.constantFrom(...(field.optional ? [...ids, ''] : ids));
    }
    case 'lengths':
      return fc
        .uniqueArray(numberIn(field.min, field.max), { maxLength: field.maxItems })
        .map((list) => list.sort((a, b) => a - b));
  }
}

const numeric = (field: Field) => decision(field) as fc.Arbitrary<number>;

/** Any values of a group of fields. */
const every = (fields: Fields): fc.Arbitrary<Record<string, Decision>> =>
  fc.record(Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, decision(field)])));

const joins = (runs: number): fc.Arbitrary<Joins> =>
  fc.oneof(
    fc.constantFrom<Joins>({ by: 'none' }, { by: 'least' }),
    fc
      .array(
        fc.record({ run: fc.integer({ min: 0, max: runs }), x: numeric(joinFields.x) }, { requiredKeys: ['run'] }),
        {
          maxLength: 6,
        },
      )
      .map((at): Joins => ({ by: 'hand', at })),
  );

/** Openings, and bays of which each is told of once. */
const openings = (runs: number) =>
  fc.array(
    fc
      .tuple(every(openingFields), fc.string({ unit: 'grapheme', maxLength: 20 }), fc.integer({ min: 1, max: runs }))
      .map(([o, name, run]) => ({ ...o, name, run }) as unknown as Opening),
    { maxLength: 5 },
  );
const bays = (runs: number) =>
  fc.uniqueArray(
    fc
      .tuple(every(bayFields), fc.integer({ min: 1, max: runs }), fc.integer({ min: 1, max: 6 }))
      .map(([b, run, bay]) => ({ ...b, run, bay }) as unknown as BayWish),
    { maxLength: 5, selector: (b) => `${b.run} ${b.bay}` },
  );

const rhythm: fc.Arbitrary<Rhythm> = fc.oneof(
  fc.record({ by: fc.constant('count' as const), count: numeric(rhythmFields.count) }),
  fc.record({ by: fc.constant('pitch' as const), pitch: numeric(rhythmFields.pitch) }),
  fc.record({
    by: fc.constant('marks' as const),
    marks: fc.uniqueArray(numeric(rhythmFields.mark), { maxLength: 12 }).map((marks) => marks.sort((a, b) => a - b)),
  }),
);

const run: fc.Arbitrary<Run> = fc.record(
  {
    length: numeric(runFields.length),
    over: fc.constantFrom(...layers),
    deflectionDeg: numeric(runFields.deflectionDeg),
    through: fc.constantFrom('this' as const, 'next' as const),
    rhythm,
    flap: every(flapFields) as unknown as fc.Arbitrary<Flap>,
  },
  { requiredKeys: ['length', 'over', 'deflectionDeg', 'through'] },
);

const wallName = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 20 }).filter((name) => name.length <= 80);

function end(walls: readonly string[]): fc.Arbitrary<EndCondition> {
  return fc.oneof(
    fc.constant<EndCondition>({ kind: 'wall' }),
    ...(walls.length > 0 ? [fc.constantFrom(...walls).map((wall): EndCondition => ({ kind: 'wall', wall }))] : []),
    fc.constant<EndCondition>({ kind: 'free' }),
    numeric(endFields.length).map((length): EndCondition => ({ kind: 'return', length })),
  );
}

const survey = (runs: number): fc.Arbitrary<Survey> =>
  fc.record({
    walls: fc.uniqueArray(
      fc.record(
        {
          name: wallName,
          directionDeg: numeric(surveyFields.directionDeg),
          leanDeg: numeric(surveyFields.leanDeg),
          skirtingHeight: numeric(surveyFields.skirtingHeight),
          skirtingThickness: numeric(surveyFields.skirtingThickness),
        },
        { requiredKeys: ['name', 'directionDeg', 'leanDeg'] },
      ),
      { maxLength: 4, selector: (wall) => wall.name },
    ),
    levels: fc.array(
      fc.record({
        run: fc.integer({ min: 1, max: runs }),
        along: numeric(surveyFields.along),
        height: numeric(surveyFields.height),
      }),
      { maxLength: 6 },
    ),
  });

/** Any job that the schema allows, with the starting stock book at any density and price. */
export function anyJob(rooms: readonly RoomWords[]): fc.Arbitrary<Job> {
  const elements = fc.record(
    Object.fromEntries(
      rooms.map(({ kind, fields }) => [
        kind,
        fc.record(Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, decision(field)]))),
      ]),
    ),
  );
  const free = fc.string({ unit: 'binary', maxLength: 60 });
  const shape = fc.array(run, { minLength: 1, maxLength: 12 }).chain((runs) =>
    survey(runs.length).chain((surveyed) => {
      const names = surveyed.walls.map((wall) => wall.name);
      return fc.record({
        runs: fc.constant(runs),
        surveyed: fc.constant(surveyed),
        leftEnd: end(names),
        rightEnd: end(names),
        joins: joins(runs.length),
        openings: openings(runs.length),
        bays: bays(runs.length),
      });
    }),
  );
  return fc
    .record({
      shape,
      elements,
      name: free,
      notes: free,
      units: decision(jobFields.units) as fc.Arbitrary<Job['units']>,
      height: numeric(unitFields.height),
      depth: numeric(unitFields.depth),
      roundingStep: numeric(toolFields.roundingStep),
      densityKgM3: numeric(stockFields.densityKgM3),
      carry: every(carryFields),
      fit: every(fitFields),
      cutting: every(cuttingFields),
    })
    .map(({ shape: { runs, surveyed, leftEnd, rightEnd, ...said }, ...made }): Job => {
      const start = newJob(made.name, rooms);
      return {
        ...start,
        site: { ...start.site, notes: made.notes },
        units: made.units,
        survey: surveyed,
        carry: made.carry as unknown as Job['carry'],
        fit: made.fit as unknown as Job['fit'],
        cutting: made.cutting as unknown as Job['cutting'],
        unit: {
          ...start.unit,
          plan: { runs, leftEnd, rightEnd },
          height: made.height,
          depth: made.depth,
          elements: made.elements as Job['unit']['elements'],
          ...said,
        },
        stock: { ...start.stock, items: start.stock.items.map((item) => ({ ...item, densityKgM3: made.densityKgM3 })) },
        tools: { ...start.tools, roundingStep: made.roundingStep },
      };
    });
}
