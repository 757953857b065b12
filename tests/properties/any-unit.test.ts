import { describe, expect, it } from 'vitest';
import { SEED } from '../base/seed';
import { HOLDS } from './holds/index';
import { holdTo, sampleOf } from './sample';

const COUNT = 500;

describe(`${COUNT} random units (seed ${SEED})`, () => {
  const sample = sampleOf(COUNT, SEED);

  it.each(Object.entries(HOLDS))('%s', { timeout: 120_000 }, (_, property) => {
    const { wrong, looked } = holdTo(property, sample);
    expect(wrong.slice(0, 5), `${wrong.length} of ${COUNT} units`).toEqual([]);
    expect(looked, 'nothing was looked at').toBeGreaterThan(COUNT);
  });
});
