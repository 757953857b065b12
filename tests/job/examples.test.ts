import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { rooms } from '../../src/elements/index.ts';
import { makeReader } from '../../src/job/read.ts';
import { writeJob } from '../../src/job/write.ts';
import { examples } from '../tools/examples.ts';

const folder = join(import.meta.dirname, '..', '..', 'public', 'examples');
const files = readdirSync(folder).sort();
const read = makeReader(rooms);

describe('examples', () => {
  it('are the ones that examples.ts makes, and no others', () => {
    expect(files).toEqual(Object.keys(examples(rooms)).sort());
  });

  it.each(files)(
    '%s is read, and is complete as the program would write it (npx tsx tests/tools/write-examples.ts)',
    (file) => {
      const text = readFileSync(join(folder, file), 'utf8');
      const job = read(text);
      expect(job).toMatchObject({ ok: true });
      expect(job.ok && writeJob(job.value)).toBe(text);
      expect(job).toEqual({ ok: true, value: examples(rooms)[file] });
    },
  );

  it('show every kind of corner and end, and sizes over several layers', () => {
    const jobs = Object.values(examples(rooms));
    const runs = jobs.flatMap((job) => job.unit.plan.runs);
    const ends = jobs.flatMap((job) => [job.unit.plan.leftEnd.kind, job.unit.plan.rightEnd.kind]);
    expect(new Set(ends)).toEqual(new Set(['wall', 'free', 'return']));
    expect(new Set(runs.map((run) => run.over))).toEqual(new Set(['plinth', 'top', 'frame']));
    expect(new Set(runs.map((run) => run.deflectionDeg))).toEqual(new Set([0, 90, 45, -91.4]));
  });
});
