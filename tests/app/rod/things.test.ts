import { describe, expect, test } from 'vitest';
import {
  aboveOn,
  foundOf,
  joinsOn,
  movedTo,
  nudged,
  openingsOn,
  pathOf,
  snapped,
  stepOf,
  toStep,
} from '../../../app/rod/things';
import { design } from '../../../src/flow';
import type { Opening } from '../../../src/vocabulary/job';
import { jobOf } from '../../elements/job-of';

const socket: Opening = {
  name: 'Socket',
  run: 1,
  through: 'front',
  use: 'socket',
  x: 447,
  z: 550,
  width: 145,
  height: 85,
};
// On the first pillar between, whose middle is at 823.33.
const refused: Opening = { ...socket, name: 'Meter', x: 823 };
const made = design(
  jobOf({ openings: [socket, refused, { ...socket, run: 2, name: 'far' }], runs: [{ deflectionDeg: 90 }, {}] }),
);
const [run] = made.rod.runs;

describe('openings on the rod', () => {
  test('each is where the job wishes it, and one without a place says so', () => {
    const [first, second, ...more] = openingsOn(made, run!);
    expect(first).toMatchObject({ from: 374.5, to: 519.5, low: 507.5, high: 592.5, refused: false });
    expect(second).toMatchObject({ from: 750.5, to: 895.5, refused: true });
    expect(more).toEqual([]);
    const found = foundOf({ kind: 'opening', index: 1 }, made);
    expect(found[0]).toMatchObject({ severity: 'stop', subject: { path: '/unit/openings/1' } });
  });

  test('one through the top lies back from its front edge, and a pipe is as high as it is wide', () => {
    const through = design(
      jobOf({
        openings: [
          { ...socket, through: 'top', z: 200 },
          { ...socket, use: 'pipe', width: 60, height: 999 },
        ],
      }),
    );
    const [top, pipe] = openingsOn(through, through.rod.runs[0]!);
    // 200 ± 85 / 2.
    expect(top).toMatchObject({ low: 157.5, high: 242.5 });
    expect(pipe).toMatchObject({ low: 520, high: 580 });
  });

  test('the board has room for the top where something goes through it, and for the tags of joins', () => {
    expect(aboveOn(made, run!)).toEqual({ tags: false });
    const through = design(jobOf({ openings: [{ ...socket, through: 'top', z: 200 }], depth: 500 }));
    expect(aboveOn(through, through.rod.runs[0]!)).toEqual({ tags: false, topDepth: 500 });
    const joined = design(jobOf({ joins: { by: 'hand', at: [{ run: 1, x: 2470 / 3 }] } }));
    expect(aboveOn(joined, joined.rod.runs[0]!)).toEqual({ tags: true });
  });
});

describe('joins on the rod', () => {
  // Behind a pillar; in the middle of nothing; at the corner.
  const at = [{ run: 1, x: 2470 / 3 }, { run: 1, x: 3 }, { run: 1 }];
  const joined = design(jobOf({ runs: [{ deflectionDeg: 90 }, {}], joins: { by: 'hand', at } }));
  const [first, second] = joined.rod.runs;

  test('those that stand, those that were refused, and those at the corner on either side of it', () => {
    expect(joinsOn(joined, first!)).toEqual([
      { id: 'J1', x: expect.closeTo(2470 / 3, 6), thing: { kind: 'join', index: 0 }, refused: false },
      { id: '?', x: 3, thing: { kind: 'join', index: 1 }, refused: true },
      { id: 'J2', x: first!.length, thing: null, refused: false },
    ]);
    expect(joinsOn(joined, second!)).toEqual([{ id: 'J2', x: 0, thing: null, refused: false }]);
    expect(foundOf({ kind: 'join', index: 1 }, joined)[0]?.subject.path).toBe('/unit/joins/at/1');
  });

  test('one that was found by itself can’t be taken hold of', () => {
    const job = jobOf({ joins: { by: 'least' }, carry: { vanLength: 1600 } });
    const found = design(job);
    const [only] = joinsOn(found, found.rod.runs[0]!);
    expect(only).toMatchObject({ thing: null, refused: false });
  });
});

describe('moving by hand', () => {
  test('arrow keys go a step along, and up where there is a height; others mean nothing', () => {
    expect(nudged('ArrowRight', 10, undefined, 1)).toEqual({ x: 11 });
    expect(nudged('ArrowLeft', 10, 5, 10)).toEqual({ x: 0 });
    expect(nudged('ArrowUp', 10, 5, 1)).toEqual({ x: 10, z: 6 });
    expect(nudged('ArrowUp', 10, undefined, 1)).toBeNull();
    expect(nudged('Enter', 10, 5, 1)).toBeNull();
  });

  test('a join drawn within 12 mm of the middle of a pillar goes there, to the nearer of two; not to one at an end', () => {
    const pillars = [
      { centre: 70, where: 'left' },
      { centre: 823.33, where: 'between' },
      { centre: 840, where: 'between' },
    ] as const;
    expect(snapped(811.4, pillars)).toBe(823.33);
    expect(snapped(811.3, pillars)).toBe(811.3);
    expect(snapped(832, pillars)).toBe(840);
    expect(snapped(831, pillars)).toBe(823.33);
    expect(snapped(72, pillars)).toBe(72);
    expect(snapped(72, [])).toBe(72);
  });

  test('a step is a millimetre, or a sixteenth of an inch, and places fall on it', () => {
    expect(stepOf('mm')).toBe(1);
    expect(stepOf('inch')).toBe(1.5875);
    expect(toStep(447.4, 1)).toBe(447);
    expect(toStep(447.4, 1.5875)).toBe(447.675);
  });

  test('an opening and a join by hand are set in the job; nothing beyond what a job may say', () => {
    const moved = movedTo(made.job, { kind: 'opening', index: 1 }, 500, 600);
    expect(moved.unit.openings[1]).toEqual({ ...refused, x: 500, z: 600 });
    expect(moved.unit.openings[0]).toBe(made.job.unit.openings[0]);
    expect(movedTo(made.job, { kind: 'opening', index: 0 }, -9e9).unit.openings[0]?.x).toBe(-2000);
    const job = jobOf({ joins: { by: 'hand', at: [{ run: 1, x: 800 }] } });
    expect(movedTo(job, { kind: 'join', index: 0 }, 900).unit.joins).toEqual({ by: 'hand', at: [{ run: 1, x: 900 }] });
    expect(movedTo(job, { kind: 'bay', run: 1, bay: 1 }, 900)).toBe(job);
  });

  test('a bay has a place in the job only once something is said of it', () => {
    expect(pathOf({ kind: 'bay', run: 1, bay: 2 }, made.job)).toBeUndefined();
    expect(pathOf({ kind: 'join', index: 3 }, made.job)).toBe('/unit/joins/at/3');
  });
});
