import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rooms } from '../../src/elements/index.ts';
import { makeReader } from '../../src/job/read.ts';
import { newJob } from '../../src/job/start.ts';
import { writeJob } from '../../src/job/write.ts';
import { anyJob } from './arbitrary.ts';

const read = makeReader(rooms);

describe('writing', () => {
  it('any job of the schema’s ranges comes back unchanged (seed 7301)', () => {
    const check = fc.property(anyJob(rooms), (job) => {
      expect(read(writeJob(job))).toEqual({ ok: true, value: job });
    });
    fc.assert(check, { seed: 7301, numRuns: 200 });
  });

  it('gives the same text for what was read from it', () => {
    const text = writeJob(newJob('Servery', rooms));
    const job = read(text);
    expect(job.ok && writeJob(job.value)).toBe(text);
  });

  it('keeps every digit of a number, and leaves out what is not there', () => {
    const start = newJob('Servery', rooms);
    const [run] = start.unit.plan.runs;
    const length = 1234.5678901234567;
    const plan = { ...start.unit.plan, runs: [{ ...run!, length, rhythm: undefined }] };
    const text = writeJob({ ...start, unit: { ...start.unit, plan } });
    expect(text).toContain(`{ "length": ${length}, "over": "frame", "deflectionDeg": 0, "through": "this" }`);
    expect(JSON.parse(text).unit.plan.runs[0].length).toBe(length);
  });

  it('has short lines and ends in one line break', () => {
    const text = writeJob(newJob('Servery', rooms));
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(130);
    expect(text.endsWith('}\n')).toBe(true);
  });
});
