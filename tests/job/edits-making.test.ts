import { describe, expect, it } from 'vitest';
import { rooms } from '../../src/elements/index.ts';
import { addRun, removeRun, setEnd, setRun } from '../../src/job/edits.ts';
import { addJoin, removeFlap, removeJoin, setFlap, setJoins } from '../../src/job/edits-making.ts';
import { newJob } from '../../src/job/start.ts';
import type { Flap, Job, JoinMark, Run } from '../../src/vocabulary/job.ts';

const FLAP: Flap = { width: 700, hinge: 'left', gate: true };
const run = (length: number, deflectionDeg: number, rest: Partial<Run> = {}): Run => ({
  length,
  over: 'frame',
  deflectionDeg,
  through: 'this',
  ...rest,
});
const { deflectionDeg: _, ...plain } = run(800, 0);
const start = newJob('Servery', rooms);
const jobOf = (runs: readonly Run[], marks: readonly JoinMark[], rightEnd: Job['unit']['plan']['rightEnd']): Job => ({
  ...start,
  unit: {
    ...start.unit,
    plan: { ...start.unit.plan, runs, rightEnd },
    joins: { by: 'hand', at: marks },
  },
});
const FREE = { kind: 'free' } as const;
const RETURN = { kind: 'return', length: 500 } as const;
const marksOf = ({ unit: { joins } }: Job): readonly JoinMark[] => (joins.by === 'hand' ? joins.at : []);
const flapsOf = (job: Job) => job.unit.plan.runs.map(({ flap }) => flap?.width);

describe('a run added', () => {
  // A corner of 90 after the first run, through the next one's frame; a flap after the second.
  const three = jobOf(
    [run(1000, 90, { through: 'next' }), run(1200, 0, { flap: FLAP }), run(1500, 0)],
    [{ run: 0 }, { run: 1 }, { run: 1, x: 400 }, { run: 2, x: 600 }],
    FREE,
  );

  it('between two has the corner at its right end, with the join marked there and which frame goes through', () => {
    const job = addRun(three, 1, plain, 0);
    expect(job.unit.plan.runs.map((r) => [r.length, r.deflectionDeg, r.through])).toEqual([
      [1000, 0, 'this'],
      [800, 90, 'next'],
      [1200, 0, 'this'],
      [1500, 0, 'this'],
    ]);
    // The left return's corner and what lies along the first run stay.
    expect(marksOf(job)).toEqual([{ run: 0 }, { run: 2 }, { run: 1, x: 400 }, { run: 3, x: 600 }]);
  });

  it('where a flap hangs has the flap on its right, and none on its left', () => {
    const job = addRun(three, 2, plain, 0);
    expect(flapsOf(job)).toEqual([undefined, undefined, 700, undefined]);
    expect(Object.hasOwn(job.unit.plan.runs[1]!, 'flap')).toBe(false);
    expect(job.unit.plan.runs[2]).toEqual({ ...plain, deflectionDeg: 0, flap: FLAP });
  });

  it('first leaves the left return’s corner where it is, and moves every other', () => {
    expect(marksOf(addRun(three, 0, plain, 0))).toEqual([
      { run: 0 },
      { run: 2 },
      { run: 2, x: 400 },
      { run: 3, x: 600 },
    ]);
  });

  it('last is what a flap there waited for; a mark there stays, but goes with the corner to a return', () => {
    const last = (rightEnd: Job['unit']['plan']['rightEnd']) =>
      addRun(jobOf([run(1000, 0, { flap: FLAP })], [{ run: 1 }], rightEnd), 1, plain, 0);
    expect(flapsOf(last(FREE))).toEqual([700, undefined]);
    expect(marksOf(last(FREE))).toEqual([{ run: 1 }]);
    expect(marksOf(last(RETURN))).toEqual([{ run: 2 }]);
  });
});

describe('a run taken away', () => {
  it('at the right end takes the flap and the join on its left with it', () => {
    const straight = jobOf([run(1000, 0), run(1200, 0, { flap: FLAP }), run(1500, 0)], [{ run: 1 }, { run: 2 }], FREE);
    const job = removeRun(straight, 2);
    expect(flapsOf(job)).toEqual([undefined, undefined]);
    expect(Object.hasOwn(job.unit.plan.runs[1]!, 'flap')).toBe(false);
    expect(job.unit.plan.runs[0]).toBe(straight.unit.plan.runs[0]);
    expect(marksOf(job)).toEqual([{ run: 1 }]);
  });

  it('at a return leaves the join at the return’s corner', () => {
    const returned = jobOf([run(1000, 90), run(1200, 0)], [{ run: 1 }, { run: 2 }, { run: 2, x: 300 }], RETURN);
    expect(marksOf(removeRun(returned, 1))).toEqual([{ run: 1 }]);
    const [mark] = marksOf(removeRun(jobOf([run(1000, 90), run(1200, 0)], [{ run: 1 }], RETURN), 1));
    expect(mark).toBeUndefined();
  });

  it('between two keeps the flap and the join on its left, and takes those on its right', () => {
    const flaps = jobOf(
      [run(1000, 0, { flap: FLAP }), run(1200, 0, { flap: { ...FLAP, width: 600 } }), run(1500, 0)],
      [{ run: 1 }, { run: 2 }, { run: 3, x: 100 }],
      FREE,
    );
    const job = removeRun(flaps, 1);
    expect(flapsOf(job)).toEqual([700, undefined]);
    expect(marksOf(job)).toEqual([{ run: 1 }, { run: 2, x: 100 }]);
  });
});

describe('added and taken away again the unit is what it was', () => {
  const marks: readonly JoinMark[] = [{ run: 0 }, { run: 1 }, { run: 1, x: 400 }, { run: 2, x: 600 }];
  const runs = [run(1000, 90, { through: 'next' }), run(1200, 0, { flap: FLAP }), run(1500, 0)];

  it.each([
    ['first', 0, FREE, marks],
    ['first, with returns', 0, RETURN, [...marks, { run: 3 }]],
    ['last', 3, FREE, marks],
    ['last, before a return', 3, RETURN, [...marks, { run: 3 }]],
  ] as const)('%s', (_name, at, rightEnd, at_marks) => {
    const job = jobOf(runs, at_marks, rightEnd);
    const again = removeRun(addRun(job, at, plain, 0), at);
    expect(again).toEqual(job);
  });

  it('in the middle of a straight front, but for the corner that went with it', () => {
    const job = jobOf(
      [run(1000, 0), run(1500, 0)],
      [
        { run: 1, x: 400 },
        { run: 2, x: 600 },
      ],
      FREE,
    );
    expect(removeRun(addRun(job, 1, plain, 0), 1)).toEqual(job);
  });
});

describe('surveyed walls', () => {
  // Square to the second run, which is turned by 30 against the first.
  const wall = { name: 'bay', directionDeg: 120, leanDeg: 1 };
  const walled: Job = {
    ...jobOf([run(1000, 30), run(1500, 0)], [], FREE),
    survey: { levels: [], walls: [wall] },
  };
  const directions = (job: Job) => job.survey.walls.map(({ directionDeg }) => directionDeg);

  it('stay where they are in the room when another run is the first', () => {
    const less = removeRun(walled, 0);
    expect(directions(less)).toEqual([90]);
    // −45 and 90: from the new first run the wall lies at 120 − 45; turned by 90 past half a turn.
    expect(directions(addRun(walled, 0, plain, -45))).toEqual([75]);
    expect(directions(addRun(walled, 0, plain, 90))).toEqual([-150]);
    expect(removeRun(addRun(walled, 0, plain, 90), 0).survey).toEqual(walled.survey);
    expect(less.survey.walls[0]).toMatchObject({ name: 'bay', leanDeg: 1 });
  });

  it('are left alone where the first run stays', () => {
    expect(addRun(walled, 1, plain, 10).survey.walls[0]).toBe(wall);
    expect(removeRun(walled, 1).survey.walls[0]).toBe(wall);
    expect(addRun(walled, 0, plain, 0).survey.walls[0]).toBe(wall);
  });
});

describe('joins by hand', () => {
  it('are marked once at each place: another x in the same run is another join', () => {
    const one = addJoin(start, { run: 1, x: 785 });
    expect(marksOf(one)).toEqual([{ run: 1, x: 785 }]);
    expect(addJoin(one, { run: 1, x: 785 })).toBe(one);
    expect(marksOf(addJoin(one, { run: 1, x: 1600 }))).toEqual([
      { run: 1, x: 785 },
      { run: 1, x: 1600 },
    ]);
    expect(marksOf(addJoin(one, { run: 1 }))).toEqual([{ run: 1, x: 785 }, { run: 1 }]);
    expect(marksOf(addJoin(one, { run: 2, x: 785 }))).toHaveLength(2);
  });

  it('replace another way of parting, and are taken away by number', () => {
    const two = addJoin(addJoin(setJoins(start, { by: 'least' }), { run: 1, x: 785 }), { run: 1, x: 1600 });
    expect(marksOf(removeJoin(two, 0))).toEqual([{ run: 1, x: 1600 }]);
    expect(() => removeJoin(two, 2)).toThrow('no join 2 marked by hand');
    expect(() => removeJoin(setJoins(two, { by: 'none' }), 0)).toThrow('no join 0');
  });
});

describe('a flap', () => {
  it('is hung, changed and taken away', () => {
    const two = addRun(setRun(setEnd(start, 'right', FREE), 0, { length: 1000 }), 1, plain, 0);
    const hung = setFlap(two, 0, { width: 650 });
    expect(flapsOf(hung)).toEqual([650, undefined]);
    expect(setFlap(hung, 0, { hinge: 'right' }).unit.plan.runs[0]!.flap).toMatchObject({ width: 650, hinge: 'right' });
    expect(removeFlap(hung, 0)).toEqual(two);
  });
});
