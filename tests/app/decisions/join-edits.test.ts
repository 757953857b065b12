import { describe, expect, test } from 'vitest';
import {
  joinablePillar,
  joinsOfKind,
  joinWords,
  marksOfJoins,
  newMark,
  withJoin,
} from '../../../app/decisions/join-edits';
import { newOpening } from '../../../app/decisions/new-opening';
import { design, newJob, readJob, writeJob } from '../../../src/flow';
import { addOpening, setJoins } from '../../../src/job/edits-making';
import type { Job } from '../../../src/vocabulary/job';
import { jobOf } from '../../elements/job-of';

const job = jobOf({ runs: [{ deflectionDeg: 90 }, {}] });
const made = design(job);
const [run] = made.rod.runs;
// Four pillars of 140 in a run of 2400: bays of (2400 − 4 × 140) / 3 = 613.33, the second pillar's centre at 140 + 613.33 + 70 = 823.33.
const straight = design(jobOf({}));
const [line] = straight.rod.runs;
const CENTRE = 2470 / 3;

/** Whether a job can be read back from its file; the way in of these jobs takes more than a file may say. */
const reads = (of: Job): boolean => readJob(writeJob({ ...of, carry: newJob('').carry })).ok;

describe('joins by hand', () => {
  test('a pillar between the ends can be joined behind, once', () => {
    expect(joinablePillar(straight, line!, 800)?.centre).toBeCloseTo(CENTRE, 6);
    expect(joinablePillar(straight, line!, 70)).toBeUndefined();
    expect(joinablePillar(straight, line!, 450)).toBeUndefined();
    const joined = design(withJoin(straight.job, straight, { run: 1, x: CENTRE }));
    expect(joined.joins).toHaveLength(1);
    expect(joinablePillar(joined, joined.rod.runs[0]!, CENTRE)).toBeUndefined();
  });

  test('a new mark is behind the free pillar nearest to the middle', () => {
    const first = newMark(made, run);
    expect(run!.pillars.map(({ centre }) => centre)).toContain(first.x);
    const joined = design(withJoin(job, made, first));
    const second = newMark(joined, joined.rod.runs[0]);
    expect(second.run).toBe(1);
    expect(second.x).not.toBeCloseTo(first.x!, 3);
    // Where every pillar between is taken, the middle.
    const all = design(withJoin(joined.job, joined, second));
    expect(all.joins).toHaveLength(2);
    expect(newMark(all, all.rod.runs[0]).x).toBe(Math.round(all.rod.runs[0]!.length / 2));
  });

  test('what was found by itself stays when it is marked by hand', () => {
    const carried = { ...job, carry: { ...job.carry, vanLength: 1600 } };
    const least = design(setJoins(carried, { by: 'least' }));
    expect(least.joins.length).toBeGreaterThan(1);
    const hand = design(setJoins(carried, joinsOfKind('hand', least)));
    expect(hand.joins).toEqual(least.joins);
    expect(marksOfJoins(hand)).toEqual(marksOfJoins(least));
    const more = withJoin(least.job, least, { run: 2, x: 1 });
    expect(more.unit.joins).toMatchObject({ by: 'hand', at: [...marksOfJoins(least), { run: 2, x: 1 }] });
  });

  test('a join is said with its run, its place and what it is behind', () => {
    const cornered = design(setJoins(job, { by: 'hand', at: [{ run: 1 }] }));
    expect(cornered.joins.map((join) => joinWords(join, cornered, String))).toEqual([
      'J1: right-hand end of Run A, at the corner',
    ]);
  });
});

describe('a new opening', () => {
  test('begins in the middle of the first bay, where nothing is in its way', () => {
    const opening = newOpening(straight.job, line);
    // 140 + 613.33 / 2 = 446.67.
    expect(opening.x).toBe(447);
    const placed = design(addOpening(straight.job, opening));
    expect(placed.openings).toHaveLength(1);
    expect(reads(placed.job)).toBe(true);
  });

  test('goes by the run in hand, and has a name of its own', () => {
    const second = newOpening(job, made.rod.runs[1]);
    expect(second.run).toBe(2);
    const more = addOpening(addOpening(job, { ...second, name: 'Opening 3' }), { ...second, name: 'x' });
    expect(newOpening(more, run).name).toBe('Opening 4');
  });

  test('is there even where every place is refused, so that it can be moved', () => {
    // No bay is as wide as the hole.
    const narrow = jobOf({ runs: [{ length: 300 }] });
    const opening = newOpening(narrow, design(narrow).rod.runs[0]);
    expect(reads(addOpening(narrow, opening))).toBe(true);
  });
});
