import { expect, test } from 'vitest';
import { stripsOf } from '../../../app/rod/strips';
import { flapsBeside } from '../../../app/rod/widths';
import { design } from '../../../src/flow';
import { jobOf } from '../../elements/job-of';

const flap = { width: 720, hinge: 'left', gate: true } as const;
const made = design(jobOf({ runs: [{ length: 1900, flap }, { length: 1300 }, { length: 1000 }] }));
const [left, right, last] = made.rod.runs;

test('the gap of a flap is written past the end of the run at its left, and before the run at its right', () => {
  expect(flapsBeside(made.rod, left!)).toEqual([{ from: 1900, to: 2620, of: 'flap' }]);
  expect(flapsBeside(made.rod, right!)).toEqual([{ from: -720, to: 0, of: 'flap' }]);
  expect(flapsBeside(made.rod, last!)).toEqual([]);
});

test('it stands among the widths of the front, and nowhere else', () => {
  const lanes = stripsOf(made, left!).filter(({ widths }) => widths.some(({ of }) => of === 'flap'));
  expect(lanes.map(({ lane }) => lane)).toEqual(['front']);
  expect(lanes[0]!.widths.filter(({ of }) => of === undefined)).toHaveLength(left!.bays.length + left!.pillars.length);
});
