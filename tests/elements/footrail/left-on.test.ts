import { expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { jobOf, partsOf, rulesOf } from '../job-of';

test('what is left on a foot rail at its walls comes out of the same stock, 3000 long: 2980 + 2 · 15 = 3010 needs two', () => {
  const made = (scribe: number) =>
    design(jobOf({ runs: [{ length: 2980 }], elements: { footrail: { wanted: true } }, fit: { scribe } }));
  expect(partsOf(made(10), 'FR')).toHaveLength(1);
  const rails = partsOf(made(15), 'FR');
  expect(rails).toHaveLength(2);
  for (const { size, oversize } of rails)
    expect(size.length + (oversize ?? []).reduce((sum, o) => sum + o.amount, 0)).toBeLessThanOrEqual(3000);
  expect(rulesOf(made(15))).not.toContain('longer-than-stock');
});
