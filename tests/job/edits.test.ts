import { describe, expect, it } from 'vitest';
import { rooms } from '../../src/elements/index.ts';
import * as edits from '../../src/job/edits.ts';
import { getAt } from '../../src/job/path.ts';
import { makeChecker } from '../../src/job/read.ts';
import { newJob } from '../../src/job/start.ts';
import type { Job, Run } from '../../src/vocabulary/job.ts';

const check = makeChecker(rooms);
const plain: Omit<Run, 'deflectionDeg'> = { length: 1200, over: 'frame', through: 'this' };
const start = frozen(newJob('Servery', rooms));

/** So that an edit which writes into the job it was given throws. */
function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

/** Three runs, corners of 90 and −45, a level along each. */
const three = frozen(
  [1, 2, 3].reduce(
    (job, run) => edits.addLevel(job, { run, along: 100 * run, height: run }),
    edits.addRun(
      edits.addRun(edits.setRun(start, 0, { length: 1000 }), 1, plain, 90),
      2,
      { ...plain, length: 1500 },
      -45,
    ),
  ),
);

const corners = (job: Job) => job.unit.plan.runs.map((run) => [run.length, run.deflectionDeg]);
const levels = (job: Job) => job.survey.levels.map((level) => [level.run, level.along]);

describe('setting one value', () => {
  it('changes that value, shares the rest, and leaves the old job alone', () => {
    const job = edits.setAt(start, '/unit/plan/runs/0/length', 3000);
    expect(job.unit.plan.runs[0]!.length).toBe(3000);
    expect(start.unit.plan.runs[0]!.length).toBe(2400);
    expect(job.stock).toBe(start.stock);
    expect(job.unit.elements).toBe(start.unit.elements);
    expect(job.unit.plan.leftEnd).toBe(start.unit.plan.leftEnd);
    expect(edits.setAt(start, ['unit', 'plan', 'runs', 0, 'length'], 3000)).toEqual(job);
  });

  it('gives back the very job when nothing changes', () => {
    expect(edits.setAt(start, '/unit/height', start.unit.height)).toBe(start);
    expect(edits.setElement(start, 'frame', 'datum', 'left')).toBe(start);
    expect(edits.setRun(start, 0, { length: 2400, over: 'frame' })).toBe(start);
    expect(edits.setEnd(start, 'left', start.unit.plan.leftEnd)).toBe(start);
    expect(edits.removeWall(start, 'none')).toBe(start);
  });

  it('adds and takes away what is optional', () => {
    const rhythm = { by: 'count', count: 4 } as const;
    const counted = edits.setAt(start, '/unit/plan/runs/0/rhythm', rhythm);
    expect(counted).toEqual(edits.setRhythm(start, 0, rhythm));
    expect(edits.setAt(counted, '/unit/plan/runs/0/rhythm', undefined)).toEqual(start);
    expect(Object.hasOwn(edits.setRhythm(counted, 0, undefined).unit.plan.runs[0]!, 'rhythm')).toBe(false);
  });

  it.each([
    '/unit/plan/runs/1/length',
    '/unit/plan/runs/-1',
    '/unit/plan/runs/x',
    '/nothing/here',
    '/name/first',
    '',
    'name',
    '/__proto__/x',
  ])('throws for a path that leads nowhere: %j', (path) => expect(() => edits.setAt(start, path, 1)).toThrow());

  it('reads at a path', () => {
    expect(getAt(start, '/unit/plan/runs/0/over')).toBe('frame');
    expect(getAt(start, '/unit/plan/runs/7/over')).toBeUndefined();
    expect(getAt(start, '/constructor')).toBeUndefined();
  });

  it('sets a decision of a room', () => {
    const job = edits.setElement(start, 'pillar', 'width', 90);
    expect(job.unit.elements.pillar).toEqual({ ...start.unit.elements.pillar, width: 90 });
    expect(job.unit.elements.frame).toBe(start.unit.elements.frame);
  });
});

describe('runs', () => {
  it('are added at the right end, and turned against their neighbour', () => {
    expect(corners(three)).toEqual([
      [1000, 90],
      [1200, -45],
      [1500, 0],
    ]);
    expect(check(three)).toEqual({ ok: true, value: three });
  });

  it('are added at the left end; levels stay with their runs', () => {
    const job = edits.addRun(three, 0, { ...plain, length: 800 }, 30);
    expect(corners(job)).toEqual([
      [800, 30],
      [1000, 90],
      [1200, -45],
      [1500, 0],
    ]);
    expect(levels(job)).toEqual([
      [2, 100],
      [3, 200],
      [4, 300],
    ]);
  });

  it('are added between two; the corner that was there moves to the right', () => {
    const job = edits.addRun(three, 1, { ...plain, length: 800 }, 10);
    expect(corners(job)).toEqual([
      [1000, 10],
      [800, 90],
      [1200, -45],
      [1500, 0],
    ]);
    expect(levels(job)).toEqual([
      [1, 100],
      [3, 200],
      [4, 300],
    ]);
    expect(job.unit.plan.runs[3]).toBe(three.unit.plan.runs[2]);
  });

  it('are removed with their levels', () => {
    const without = (index: number) => edits.removeRun(three, index);
    expect([corners(without(0)), levels(without(0))]).toEqual([
      [
        [1200, -45],
        [1500, 0],
      ],
      [
        [1, 200],
        [2, 300],
      ],
    ]);
    expect([corners(without(1)), levels(without(1))]).toEqual([
      [
        [1000, 90],
        [1500, 0],
      ],
      [
        [1, 100],
        [2, 300],
      ],
    ]);
    expect([corners(without(2)), levels(without(2))]).toEqual([
      [
        [1000, 90],
        [1200, 0],
      ],
      [
        [1, 100],
        [2, 200],
      ],
    ]);
  });

  it('number 1 to 40', () => {
    let job: Job = start;
    while (job.unit.plan.runs.length < 40) job = edits.addRun(job, 1, plain);
    expect(check(job).ok).toBe(true);
    expect(() => edits.addRun(job, 40, plain)).toThrow('at most 40 runs');
    expect(() => edits.removeRun(start, 0)).toThrow('the only run');
    expect(() => edits.removeRun(three, 3)).toThrow('no run 3: the plan has 3');
    expect(() => edits.addRun(three, 4, plain)).toThrow('place 4 of 3');
  });
});

describe('the survey', () => {
  it('takes a wall away with what stood against it', () => {
    const walled = edits.addWall(start, { name: 'bay', directionDeg: 90, leanDeg: 0 });
    const job = edits.setEnd(walled, 'right', { kind: 'wall', wall: 'bay' });
    expect(check(job).ok).toBe(true);
    const without = edits.removeWall(job, 'bay');
    expect(without.unit.plan.rightEnd).toEqual({ kind: 'wall' });
    expect(without.survey.walls).toEqual([]);
    expect(check(without).ok).toBe(true);
    expect(() => edits.addWall(job, { name: 'bay', directionDeg: 0, leanDeg: 0 })).toThrow("a wall 'bay' already");
  });

  it('takes a level away', () =>
    expect(levels(edits.removeLevel(three, 1))).toEqual([
      [1, 100],
      [3, 300],
    ]));
});
