import { expect, test } from 'vitest';
import { teamWords } from '../../../app/facts/Sections';
import { fittedOf, fittedTogether } from '../../../app/sheets/fitted';
import { fixingAmount } from '../../../app/sheets/fixing-amount';
import { length } from '../../../app/shell/format';
import { layoutWords } from '../../../src/exports/layout-words';
import { newJob, rooms } from '../../../src/flow';

test('a part is on its section or for the site; of several each place is named once', () => {
  expect(fittedOf({ fitted: 'site' })).toBe('site');
  expect(fittedOf({ fitted: 'workshop', inSection: 'S2' })).toBe('S2');
  expect(fittedTogether(['S1', 'site', 'S1', ''])).toBe('S1, site');
});

test('fixings are whole things, stuff to a tenth', () => {
  expect(fixingAmount(20.2, 'pieces')).toBe('21');
  expect(fixingAmount(300.44, 'g')).toBe('300.4 g');
  expect(fixingAmount(0.94, 'm of bead')).toBe('0.9 m of bead');
});

test('what the people may lift is said with its rule', () => {
  const { carry } = newJob('x');
  expect(teamWords({ ...carry, people: 1, liftKg: 20 })).toBe(
    '1 × 20 kg: alone (HSE L23, for teams). Not a legal limit.',
  );
  expect(teamWords({ ...carry, people: 5, liftKg: 25 })).toContain(
    'three lift half of the sum; beyond three no more is counted',
  );
});

test('a layout is told by what has to be decided, as the forms say it', () => {
  const job = newJob('x');
  const words = layoutWords(
    {
      spacers: 3,
      studs: 9,
      noggins: 8,
      decisions: [
        { kind: 'frame', key: 'centres', value: 450 },
        { kind: 'frame', key: 'method', value: 'equal' },
        { kind: 'frame', key: 'nogginRows', value: 2 },
      ],
    },
    rooms,
    (mm) => length(mm, job),
  );
  expect(words).toMatch(/: 450 mm; /);
  expect(words).toMatch(/rows.*: 2$/i);
  expect(words).not.toContain('nogginRows');
});
