import { describe, expect, it } from 'vitest';
import { withWallRenamed } from '../../../app/decisions/plan-edits';
import { type Keyed, keyed } from '../../../app/decisions/row-keys';
import { addWall } from '../../../src/job/edits';
import { addOpening, removeOpening, setOpening } from '../../../src/job/edits-making';
import type { Job, Opening } from '../../../src/vocabulary/job';
import { sampleJob } from '../sample';

const hole = (name: string): Opening => ({
  name,
  run: 1,
  through: 'front',
  use: 'socket',
  x: 400,
  z: 500,
  width: 86,
  height: 86,
});

const three = ['One', 'Two', 'Three'].map(hole).reduce(addOpening, { ...sampleJob() });
const begin = (rows: readonly object[]): Keyed => keyed({ rows: [], keys: [], next: 0 }, rows);
const goOn = (before: Keyed, job: Job): Keyed => keyed(before, job.unit.openings);
const first = begin(three.unit.openings);

describe('what a row is known by on the page', () => {
  it('is another for each row', () => {
    expect(new Set(first.keys).size).toBe(three.unit.openings.length);
  });

  it('goes with the row that is removed, and the others keep theirs', () => {
    const [a, b, c] = first.keys;
    expect(goOn(first, removeOpening(three, 1)).keys).toEqual([a, c]);
    expect(goOn(first, removeOpening(three, 0)).keys).toEqual([b, c]);
  });

  it('stays while a row is changed, its name too', () => {
    expect(goOn(first, setOpening(three, 1, { name: 'Tap', width: 60 })).keys).toEqual(first.keys);
    const walled = ['West', 'North'].reduce(
      (job, name) => addWall(job, { name, directionDeg: 90, leanDeg: 0 }),
      sampleJob(),
    );
    const before = begin(walled.survey.walls);
    expect(keyed(before, withWallRenamed(walled, 0, 'East').survey.walls).keys).toEqual(before.keys);
  });

  it('is never given to another row again', () => {
    const last = goOn(first, removeOpening(three, 2));
    const again = goOn(last, addOpening(removeOpening(three, 2), hole('Four')));
    expect(again.keys.slice(0, 2)).toEqual(first.keys.slice(0, 2));
    expect(first.keys).not.toContain(again.keys[2]);
  });
});
