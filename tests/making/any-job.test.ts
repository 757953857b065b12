import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  assemblyCsv,
  fixingsCsv,
  mapCsv,
  partFixingsCsv,
  sectionsCsv,
  siteCsv,
  spacersCsv,
} from '../../src/exports/making';
import { design, layoutsBySpacers, making, newJob, rooms } from '../../src/flow';
import type { Job } from '../../src/vocabulary/job';
import { SEED } from '../base/seed';
import { anyJob } from '../job/arbitrary';

const COUNT = 25;

/** Every table of a job's making, and all of it as text. */
function toldOf(job: Job): readonly string[] {
  const made = design(job);
  const worked = making(made);
  return [
    JSON.stringify(worked, (_, value) => {
      if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`a number is ${value}`);
      return value;
    }),
    sectionsCsv(made),
    fixingsCsv(worked.fixings),
    partFixingsCsv(worked.fixings),
    spacersCsv(worked.spacers, job),
    assemblyCsv(worked.steps),
    mapCsv(worked.maps, job),
    siteCsv(worked, job),
    JSON.stringify(layoutsBySpacers(job)),
  ];
}

describe('the making', () => {
  it('of the same design is worked out once', () => {
    const made = design(newJob('x'));
    expect(making(made)).toBe(making(made));
  });

  it(`of ${COUNT} random jobs from the whole of the schema is told without a hitch (seed ${SEED})`, {
    timeout: 300_000,
  }, () => {
    fc.assert(
      fc.property(anyJob(rooms), (job) => {
        for (const text of toldOf(job)) expect(text).not.toMatch(/NaN|undefined|Infinity/);
      }),
      { seed: SEED, numRuns: COUNT, endOnFailure: true },
    );
  });
});
