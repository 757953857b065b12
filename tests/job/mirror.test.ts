import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rooms } from '../../src/elements/index.ts';
import { mirrorJob } from '../../src/job/mirror.ts';
import { makeChecker } from '../../src/job/read.ts';
import { newJob } from '../../src/job/start.ts';
import type { Job, JoinMark, Run } from '../../src/vocabulary/job.ts';
import { anyJob } from './arbitrary.ts';

const start = newJob('Servery', rooms);

const run = (length: number, deflectionDeg: number, through: Run['through'], rest: Partial<Run> = {}): Run => ({
  length,
  over: 'frame',
  deflectionDeg,
  through,
  ...rest,
});

const unit: Job = {
  ...start,
  survey: {
    walls: [{ name: 'bay', directionDeg: 100, leanDeg: 1 }],
    levels: [
      { run: 1, along: 200, height: 4 },
      { run: 3, along: 0, height: -2 },
    ],
  },
  unit: {
    ...start.unit,
    plan: {
      runs: [
        run(1000, 90, 'this', { rhythm: { by: 'marks', marks: [70.1, 400, 930] } }),
        run(2000, -45, 'next'),
        run(3000, 0, 'this', { rhythm: { by: 'count', count: 4 } }),
      ],
      leftEnd: { kind: 'wall', wall: 'bay' },
      rightEnd: { kind: 'return', length: 500 },
    },
  },
};

describe('the unit in a mirror', () => {
  it('has its runs, corners, ends, marks and levels the other way round', () => {
    const { unit: seen, survey } = mirrorJob(unit);
    expect(seen.plan).toEqual({
      runs: [
        run(3000, -45, 'this', { rhythm: { by: 'count', count: 4 } }),
        run(2000, 90, 'next'),
        run(1000, 0, 'this', { rhythm: { by: 'marks', marks: [70, 600, 929.9] } }),
      ],
      leftEnd: { kind: 'return', length: 500 },
      rightEnd: { kind: 'wall', wall: 'bay' },
    });
    expect(survey.levels).toEqual([
      { run: 3, along: 800, height: 4 },
      { run: 1, along: 3000, height: -2 },
    ]);
    expect(seen.elements.frame).toEqual({ ...start.unit.elements.frame, datum: 'right' });
    expect(seen.elements.pillar).toEqual(start.unit.elements.pillar);
  });

  it('turns walls with the plan: one that stood square to the end it meets still does', () => {
    // Plan of 45° in all: a wall square to the first run (90°) meets, in the mirror, the last run, which runs at 45°.
    const square = { ...unit, survey: { walls: [{ name: 'bay', directionDeg: 90, leanDeg: 1 }], levels: [] } };
    const [wall] = mirrorJob(square).survey.walls;
    const between = (((wall!.directionDeg - 45) % 180) + 180) % 180;
    expect(between).toBe(90);
    expect(wall).toMatchObject({ name: 'bay', leanDeg: 1 });
  });

  it('asks for the frame’s length only where it is needed', () => {
    const over = (rhythm: Run['rhythm']): Job => ({
      ...start,
      unit: { ...start.unit, plan: { ...start.unit.plan, runs: [run(2400, 0, 'this', { over: 'top', rhythm })] } },
    });
    expect(mirrorJob(over({ by: 'pitch', pitch: 700 })).unit.plan.runs[0]!.rhythm).toEqual({ by: 'pitch', pitch: 700 });
    const marked = over({ by: 'marks', marks: [100, 500] });
    expect(() => mirrorJob(marked)).toThrow(
      'run 1 is not taken over the frame: its frame length is needed to mirror it',
    );
    const asked: number[] = [];
    const seen = mirrorJob(marked, (index) => {
      asked.push(index);
      return 2295;
    });
    expect(seen.unit.plan.runs[0]!.rhythm).toEqual({ by: 'marks', marks: [1795, 2195] });
    expect(asked.every((index) => index === 0)).toBe(true);
  });

  it('has joins at its corners the other way round: a return’s corner is the other return’s', () => {
    const marked = (at: readonly JoinMark[]): Job => ({
      ...unit,
      unit: { ...unit.unit, joins: { by: 'hand', at } },
    });
    const seen = (at: readonly JoinMark[]) => {
      const { joins } = mirrorJob(marked(at)).unit;
      return joins.by === 'hand' ? joins.at : [];
    };
    // Three runs: corners are 0 (left return), 1, 2 and 3 (right return).
    expect(seen([{ run: 0 }, { run: 1 }, { run: 2 }, { run: 3 }])).toEqual([
      { run: 3 },
      { run: 2 },
      { run: 1 },
      { run: 0 },
    ]);
    // Along the last run of 3000, now the first.
    expect(seen([{ run: 3, x: 700 }])).toEqual([{ run: 1, x: 2300 }]);
    // Of a run that the plan has not nothing is made: it stays.
    expect(seen([{ run: 4 }, { run: 5, x: 100 }])).toEqual([{ run: 4 }, { run: 5, x: 100 }]);
  });

  it('leaves the job given alone, and shares book and tools', () => {
    const before = structuredClone(unit);
    const seen = mirrorJob(unit);
    expect(unit).toEqual(before);
    expect(seen.stock).toBe(unit.stock);
    expect(seen.tools).toBe(unit.tools);
  });

  it('seen twice is the unit itself', () => expect(mirrorJob(mirrorJob(unit))).toEqual(unit));

  it('seen twice is itself for any job with sizes to a thousandth (seed 7303)', () => {
    const check = makeChecker(rooms);
    fc.assert(
      fc.property(anyJob(rooms).map(toThousandths), (job) => {
        const { runs } = job.unit.plan;
        const lengthOf = (of: readonly Run[]) => (index: number) => of[index]!.length - 50;
        const seen = mirrorJob(job, lengthOf(runs), () => 4);
        expect(mirrorJob(seen, lengthOf(seen.unit.plan.runs), () => 4)).toEqual(job);
        expect(check(seen)).toEqual({ ok: true, value: seen });
      }),
      { seed: 7303, numRuns: 200 },
    );
  });
});

/** A job with its sizes to a thousandth, marks and levels on their runs, and walls anywhere but at −180°, which is 180° as well. */
function toThousandths(job: Job): Job {
  const coarse = <T>(value: T): T =>
    JSON.parse(JSON.stringify(value, (_, item) => (typeof item === 'number' ? round(item) : item)));
  const plan = coarse(job.unit.plan);
  const survey = coarse(job.survey);
  const onto = (length: number, at: number) => round((at + 2000) % (length - 50));
  const runs = plan.runs.map((old): Run => {
    if (old.rhythm?.by !== 'marks') return old;
    const marks = [...new Set(old.rhythm.marks.map((mark) => onto(old.length, mark)))].sort((a, b) => a - b);
    return { ...old, rhythm: { by: 'marks', marks } };
  });
  const walls = survey.walls.map((wall) => (wall.directionDeg === -180 ? { ...wall, directionDeg: 180 } : wall));
  const { openings, bays, joins } = coarse({ ...job.unit, elements: {} });
  const along = <T extends { readonly run: number; readonly x?: number }>(thing: T): T =>
    thing.x === undefined || thing.run < 1 ? thing : { ...thing, x: onto(runs[thing.run - 1]!.length, thing.x) };
  const unit = {
    ...job.unit,
    openings: openings.map(along),
    bays,
    joins:
      joins.by === 'hand' ? { ...joins, at: joins.at.filter((m) => m.run > 0 || m.x === undefined).map(along) } : joins,
  };
  const levels = survey.levels.map((level) => ({
    ...level,
    along: onto(plan.runs[level.run - 1]!.length, level.along),
  }));
  return { ...job, survey: { walls, levels }, unit: { ...unit, plan: { ...plan, runs } } };
}

const round = (value: number) => Math.round(value * 1000) / 1000 + 0;
