import { describe, expect, test } from 'vitest';
import { longestStock } from '../../src/checks/stock-length';
import { design } from '../../src/flow';
import type { Oversize } from '../../src/vocabulary/part';
import { jobOf, partsOf } from '../elements/job-of';

const made = design(jobOf({ runs: [{ length: 4795 }] }));
const [plate] = partsOf(made, 'PL');
const said = (...oversize: Oversize[]) => longestStock({ job: made.job, parts: [{ ...plate, oversize }] });
const left = (amount: number, on: Oversize['on'] = 'length'): Oversize => ({
  side: 'left end',
  amount,
  on,
  reason: '',
});

describe('a piece with stuff left on', () => {
  test('must come out of its stock with that: 4795 + 2 · 3 = 4801', () => {
    expect(said(left(3), left(3))).toMatchObject([{ rule: 'longer-than-stock', value: 4801, limit: 4800 }]);
    expect(said(left(3), left(3))[0].message).toContain('4801 mm long with the 6 mm left on');
    expect(said(left(3), left(2))).toEqual([]);
  });
  test('on its width is no longer for it', () => expect(said(left(30, 'width'))).toEqual([]));
});
