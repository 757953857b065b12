import fc from 'fast-check';
import { expect, it } from 'vitest';
import { rooms } from '../../src/elements/index.ts';
import { makeReader } from '../../src/job/read.ts';
import { newJob } from '../../src/job/start.ts';
import { writeJob } from '../../src/job/write.ts';
import { edited, type Loose } from './loose.ts';

const read = makeReader(rooms);
const good = writeJob(newJob('Servery', rooms));

/** Every place of a file, as steps. */
function placesOf(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [path];
  const within = Object.entries(value).flatMap(([key, item]) => placesOf(item, [...path, key]));
  return path.length === 0 ? within : [path, ...within];
}

const foreign = fc.oneof(
  fc.jsonValue({ maxDepth: 4 }),
  fc.constantFrom(0, -1, 1e9, 1e308, -1e308, 5e-324, 0.1 + 0.2, '', 'NaN', '__proto__', 'left', null, true, [], {}),
);

/** Whatever came back is either a job or 1 to 20 issues with words and a pointer each. */
function expectAnAnswer(text: string): void {
  const result = read(text);
  if (result.ok) return;
  expect(result.issues.length).toBeGreaterThan(0);
  expect(result.issues.length).toBeLessThanOrEqual(20);
  for (const { path, message } of result.issues) {
    expect(path).toMatch(/^(\/|$)/);
    expect(message.length).toBeGreaterThan(0);
    expect(message.length).toBeLessThan(1000);
  }
}

it('any text gets an answer (seed 7304)', () => {
  fc.assert(fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.json()), expectAnAnswer), {
    seed: 7304,
    numRuns: 500,
  });
});

it('any values at any places of a job get an answer, and what is taken is written and read alike (seed 7305)', () => {
  const places = placesOf(JSON.parse(good));
  const changes = fc.array(fc.tuple(fc.constantFrom(...places), foreign), { minLength: 1, maxLength: 3 });
  fc.assert(
    fc.property(changes, (list) => {
      const text = edited(good, (job) => {
        for (const [steps, value] of list) {
          const group: Loose = steps.slice(0, -1).reduce((at: Loose, step) => at?.[step], job);
          if (typeof group === 'object' && group !== null) group[steps.at(-1)!] = value;
        }
      });
      expectAnAnswer(text);
      const result = read(text);
      if (result.ok) expect(read(writeJob(result.value))).toEqual(result);
    }),
    { seed: 7305, numRuns: 500 },
  );
});
