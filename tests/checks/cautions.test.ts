import { expect, test } from 'vitest';
import { cautionsOf, design } from '../../src/flow';
import { jobOf } from '../elements/job-of';

const made = design(jobOf({ runs: [{ length: 3000 }], depth: 600 }));
const says = (parts: typeof made.parts): string => cautionsOf({ job: made.job, parts }).join(' ');

test('dust, oily rags and the heaviest part are warned of where they come in', () => {
  const all = says(made.parts);
  expect(all).toContain('dust is harmful');
  expect(all).toContain('Rags wet with oil');
  const heaviest = [...made.parts].sort((a, b) => b.weightKg - a.weightKg)[0];
  expect(all).toContain(`${heaviest.mark} alone weighs`);
});
test('and not where they do not', () => {
  const frame = says(made.parts.filter((p) => p.kind === 'frame'));
  expect(frame).not.toMatch(/dust|Rags|alone weighs/);
  expect(frame).toContain('licensed people');
});
