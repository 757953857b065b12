import { expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { jobOf } from '../job-of';

test('two fillets of one section at a sharp corner, glued up, are said once, with both runs', () => {
  const made = design(jobOf({ runs: [{ length: 3000, deflectionDeg: 140 }, { length: 3000 }] }));
  expect(made.parts.filter((p) => p.code === 'FI')).toHaveLength(2);
  const said = made.findings.filter((f) => f.rule === 'fillet-glued-up');
  expect(said).toHaveLength(1);
  expect(said[0].message).toContain('The corner fillets of runs A and B are');
});
