import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { design, readJob, writeJob } from '../../src/flow.ts';
import { mirrorJob } from '../../src/job/mirror.ts';
import type { Design } from '../../src/vocabulary/design.ts';

const folder = join(import.meta.dirname, '..', '..', 'public', 'examples');

const frameLength = (made: Design) => (index: number) => {
  const run = made.rod.runs.find((candidate) => candidate.jobIndex === index);
  if (!run) throw new Error(`the rod has no run ${index + 1}`);
  return run.length;
};

const bayCount = (made: Design) => (index: number) =>
  made.rod.runs.find((candidate) => candidate.jobIndex === index)?.bays.length ?? 0;

/** Bay widths run by run, to a hundredth; from the right when mirrored. */
function bays(made: Design, mirrored: boolean): string[][] {
  const runs = made.rod.runs.map((run) => run.bays.map((bay) => (bay.to - bay.from).toFixed(2)));
  return mirrored ? runs.reverse().map((widths) => widths.reverse()) : runs;
}

describe('an example in a mirror', () => {
  it.each(readdirSync(folder))('%s is made of as much, divided alike', (file) => {
    const read = readJob(readFileSync(join(folder, file), 'utf8'));
    if (!read.ok) throw new Error(`${file}: ${JSON.stringify(read.issues)}`);
    const made = design(read.value);
    const mirrored = mirrorJob(read.value, frameLength(made), bayCount(made));
    const seen = design(mirrored);
    expect(readJob(writeJob(mirrored))).toEqual({ ok: true, value: mirrored });
    expect(seen.parts).toHaveLength(made.parts.length);
    expect(seen.totals.weightKg).toBeCloseTo(made.totals.weightKg, 6);
    expect(bays(seen, true)).toEqual(bays(made, false));
    expect(mirrorJob(mirrored, frameLength(seen), bayCount(seen))).toEqual(read.value);
  });
});
