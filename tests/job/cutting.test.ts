import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { defaultsOf } from '../../src/base/fields.ts';
import { cutBatches, design, newJob, readJob, writeJob } from '../../src/flow.ts';
import { cuttingFields } from '../../src/job/fields-cutting.ts';
import { edited, type Loose } from './loose.ts';

const good = writeJob(newJob('Servery'));
const issuesOf = (change: (job: Loose) => unknown) => {
  const read = readJob(edited(good, change));
  return read.ok ? [] : read.issues;
};
const itemOf = (job: Loose, id: string): Loose => job.stock.items.find((item: Loose) => item.id === id);

describe('decisions about cutting', () => {
  it('a file without them takes their defaults; one with some keeps those', () => {
    const without = readJob(edited(good, (job) => delete job.cutting));
    expect(without.ok && without.value.cutting).toEqual(defaultsOf(cuttingFields));
    const some = readJob(edited(good, (job) => (job.cutting = { barTrim: 0, stages: '2' })));
    expect(some.ok && some.value.cutting).toEqual({ ...defaultsOf(cuttingFields), barTrim: 0, stages: '2' });
  });

  it('each only in its range, and no others', () => {
    expect(issuesOf((job) => (job.cutting.barTrim = -1))).toMatchObject([{ path: '/cutting/barTrim' }]);
    expect(issuesOf((job) => (job.cutting.stages = '4'))).toMatchObject([{ path: '/cutting/stages' }]);
    expect(issuesOf((job) => (job.cutting.luck = 1))).toMatchObject([{ path: expect.stringContaining('/cutting') }]);
  });

  it('a file of version 1 is cut too: each of its sheets for itself', () => {
    const read = readJob(readFileSync(join(import.meta.dirname, 'version-1.job.json'), 'utf8'));
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const made = design(read.value);
    const { batches, findings } = cutBatches(made);
    // Two plates of 4763 are too long for 4800 less 20 at each end.
    expect(findings.map(({ rule, value }) => [rule, value])).toEqual(Array(2).fill(['longer-than-bar', 4763]));
    expect(new Set(batches.flatMap(({ marks }) => marks.flat(2))).size).toBe(made.parts.length - 2);
    for (const { problem, from } of batches)
      if (problem.kind === 'sheets') expect([problem.stock.length, from.length]).toEqual([1, 1]);
  });
});

describe('sheets of one stuff', () => {
  it('say so in the starting book', () => {
    const [usual, long] = ['mdf-12', 'mdf-12-long'].map((id) => newJob('x').stock.items.find((item) => item.id === id));
    expect(usual).not.toHaveProperty('stuff');
    expect(long).toMatchObject({ stuff: 'mdf-12' });
  });

  it('are of one thickness', () => {
    const [issue] = issuesOf((job) => (itemOf(job, 'mdf-12-long').thickness = 11));
    expect(issue).toMatchObject({ path: expect.stringMatching(/^\/stock\/items\/\d+\/stuff$/) });
    expect(issue.message).toBe('is cut together with "mdf-12", which is 12 mm thick; this is 11');
  });

  it('have all a grain, or none', () => {
    expect(issuesOf((job) => (itemOf(job, 'mdf-12').grain = true))).toHaveLength(1);
    expect(
      issuesOf((job) => {
        itemOf(job, 'mdf-12').grain = true;
        itemOf(job, 'mdf-12-long').grain = true;
      }),
    ).toEqual([]);
  });

  it('are not called by something that is no sheet', () => {
    const [issue] = issuesOf((job) => (itemOf(job, 'mdf-6').stuff = 'oak-40'));
    expect(issue.message).toBe('found "oak-40", which is no sheet');
  });
});
