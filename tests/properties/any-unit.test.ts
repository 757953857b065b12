import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { design } from '../../src/flow';
import { SEED } from '../base/seed';
import { HOLDS } from './holds/index';
import { anyWhole } from './random-whole';
import { holdTo, sampleOf } from './sample';

/** Fronts are many; units with everything on are bigger, and fewer. */
const FRONTS = 500;
const WHOLE = 200;

/** A property that looks at openings or joins finds none in a front that has none. */
const NOT_IN_FRONTS = new Set([
  'every opening is cut where it is wished, and no frame part meets its hole',
  'what joins are nothing to is the same in one piece and parted',
]);

describe(`${FRONTS} random fronts (seed ${SEED})`, () => {
  const sample = sampleOf(FRONTS, SEED);

  it.each(Object.entries(HOLDS).filter(([name]) => !NOT_IN_FRONTS.has(name)))(
    '%s',
    { timeout: 120_000 },
    (_, property) => {
      const { wrong, looked } = holdTo(property, sample);
      expect(wrong.slice(0, 5), `${wrong.length} of ${FRONTS} units`).toEqual([]);
      expect(looked, 'nothing was looked at').toBeGreaterThan(FRONTS);
    },
  );
});

describe(`${WHOLE} random units with everything on (seed ${SEED})`, () => {
  const sample = fc.sample(anyWhole, { numRuns: WHOLE, seed: SEED }).map((job) => design(job));

  it.each(Object.entries(HOLDS))('%s', { timeout: 120_000 }, (name, property) => {
    const { wrong, looked } = holdTo(property, sample);
    expect(wrong.slice(0, 5), `${wrong.length} of ${WHOLE} units`).toEqual([]);
    // Few of the openings wished by chance find a place, and not every unit is parted.
    expect(looked, 'nothing was looked at').toBeGreaterThan(NOT_IN_FRONTS.has(name) ? 10 : WHOLE);
  });
});
