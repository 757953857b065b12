import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { design, elevation, newJob, readJob, rodDrawing, rooms, writeJob } from '../../src/flow';
import { runFields, unitFields } from '../../src/job/fields';
import type { Decision, Field } from '../../src/vocabulary/field';
import type { Job } from '../../src/vocabulary/job';
import { SEED } from '../base/seed';
import { anyJob } from '../job/arbitrary';
import { HOLDS } from './holds/index';

/** Units of a dozen runs of 30 m with a pillar every hand's breadth are allowed too: so there are fewer of these. */
const COUNT = 80;

/** Whatever a job asks, these hold. The others are for units of the sizes such units have. */
const ALWAYS = ['every number is finite', 'every part has a size and a weight', 'runs lie end to end, turned as asked'];

/** What a design of any job must be: there, with nothing wrong in it, and drawable. */
function faultsOf(job: Job): readonly string[] {
  const made = design(job);
  const wrong = ALWAYS.flatMap((name) => HOLDS[name](made).wrong);
  if (made.rod.runs.length < job.unit.plan.runs.length) wrong.push('a run is missing');
  for (const run of made.rod.runs) {
    if (!run.sound && !made.findings.some((f) => f.severity === 'stop' && f.subject.run === run.id))
      wrong.push(`nothing is said of run ${run.id}`);
  }
  for (const { rule, message, remedy, source } of made.findings)
    if (!message || !remedy || !source || /NaN|undefined|Infinity/.test(message))
      wrong.push(`${rule} says "${message}"`);
  return wrong;
}

/** The ends of a field's range, and every option of a choice. */
function limitsOf(field: Field, job: Job): readonly Decision[] {
  switch (field.kind) {
    case 'length':
    case 'number':
    case 'count':
      return [field.min, field.max];
    case 'choice':
      return field.options.map((o) => o.value);
    case 'switch':
      return [false, true];
    case 'lengths':
      return [[], [field.min, field.max]];
    case 'stock': {
      const ids =
        field.of === 'cutter'
          ? job.tools.cutters.map((c) => c.id)
          : job.stock.items.filter((i) => i.kind === field.of).map((i) => i.id);
      return field.optional ? [...ids, ''] : ids;
    }
  }
}

const withDecision = (job: Job, kind: string, key: string, value: Decision): Job => ({
  ...job,
  unit: { ...job.unit, elements: { ...job.unit.elements, [kind]: { ...job.unit.elements[kind], [key]: value } } },
});

/** Two corners and a return, so that every kind of end is there. */
const start: Job = (() => {
  const job = newJob('limits');
  const run = (length: number, deflectionDeg: number) => ({
    length,
    over: 'plinth',
    deflectionDeg,
    through: 'this' as const,
  });
  return {
    ...job,
    unit: {
      ...job.unit,
      plan: {
        runs: [run(3000, 90), run(1800, -60), run(2400, 0)],
        leftEnd: { kind: 'wall' },
        rightEnd: { kind: 'return', length: 480 },
      },
    },
  };
})();

describe('decisions at the ends of their ranges', () => {
  const each = rooms.flatMap((room) =>
    Object.entries(room.fields).flatMap(([key, field]) =>
      limitsOf(field, start).map((value) => ({
        name: `${room.kind}.${key} = ${JSON.stringify(value)}`,
        job: withDecision(start, room.kind, key, value),
      })),
    ),
  );

  it.each(each)('$name', ({ job }) => {
    expect(readJob(writeJob(job)).ok).toBe(true);
    expect(faultsOf(job)).toEqual([]);
  });

  const sizes = [runFields.length.min, runFields.length.max].flatMap((length) =>
    [runFields.deflectionDeg.min, 0, runFields.deflectionDeg.max].flatMap((turn) =>
      [unitFields.height.min, unitFields.height.max].flatMap((height) =>
        [unitFields.depth.min, unitFields.depth.max].map((depth) => ({ length, turn, height, depth })),
      ),
    ),
  );

  it.each(sizes)('runs of $length turning $turn, $height high and $depth deep', ({ length, turn, height, depth }) => {
    const runs = start.unit.plan.runs.map((run) => ({ ...run, length, deflectionDeg: turn }));
    const job = { ...start, unit: { ...start.unit, height, depth, plan: { ...start.unit.plan, runs } } };
    expect(readJob(writeJob(job)).ok).toBe(true);
    expect(faultsOf(job)).toEqual([]);
  });
});

describe(`${COUNT} random jobs from the whole of the schema (seed ${SEED})`, () => {
  it('are worked out and drawn, with nothing wrong in them', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(anyJob(rooms), (job) => {
        expect(faultsOf(job)).toEqual([]);
        const made = design(job);
        for (const run of made.rod.runs.slice(0, 2)) {
          for (const drawing of [elevation(made, run.id, 'framing'), rodDrawing(made, run.id)])
            expect(drawing.strokes.length).toBeGreaterThan(0);
        }
      }),
      { seed: SEED, numRuns: COUNT, endOnFailure: true },
    );
  });
});
