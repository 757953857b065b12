import { describe, expect, it } from 'vitest';
import { design, readJob, writeJob } from '../../src/flow';
import { HOLDS } from './holds/index';
import { PINNED } from './pinned';
import { overlaps, referee, touchingNothing } from './referee';

describe('jobs that once failed', () => {
  it.each(Object.entries(PINNED))('%s', { timeout: 60_000 }, async (_, job) => {
    expect(readJob(writeJob(job)).ok).toBe(true);
    const made = design(job);
    for (const [name, property] of Object.entries(HOLDS)) expect(property(made).wrong, name).toEqual([]);
    expect(overlaps(await referee(), made.parts, 1)).toEqual([]);
    expect(touchingNothing(await referee(), made.parts, 0.5)).toEqual([]);
  });
});
