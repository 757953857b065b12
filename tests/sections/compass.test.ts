import { expect, test } from 'vitest';
import { design } from '../../src/flow';
import { compassOf, Growing, isEmpty, ownOf } from '../../src/sections/compass';
import { jobOf } from '../elements/job-of';

const runsOf = (...turns: readonly number[]) =>
  design(
    jobOf({
      runs: [...turns, 0].map((deflectionDeg) => ({ length: 2000, deflectionDeg })),
    }),
  ).rod.runs.filter((run) => run.jobIndex !== null);

test('an L has two directions, a canted front four', () => {
  expect(compassOf(runsOf(90)).directions).toHaveLength(2);
  expect(compassOf(runsOf(45)).directions).toHaveLength(4);
  expect(compassOf(runsOf(45, 45)).directions).toHaveLength(4);
});

test('room grows by lines across a run, and is told along any other', () => {
  const runs = runsOf(90);
  const compass = compassOf(runs);
  const room = new Growing(compass);
  expect(isEmpty(room)).toBe(true);
  room.line(runs[0], 100, -50, 20);
  room.line(runs[0], 400, -50, 20);
  room.up(0, 900);
  const widths = runs.map((run) => {
    const { along, front } = ownOf(compass, run);
    return [along, front].map((k) => room.reaches[k].most - room.reaches[k].least);
  });
  expect(widths[0][0]).toBeCloseTo(300, 9);
  expect(widths[0][1]).toBeCloseTo(70, 9);
  expect(widths[1][0]).toBeCloseTo(70, 9);
  expect(widths[1][1]).toBeCloseTo(300, 9);
  expect(isEmpty(room)).toBe(false);
});
