import { describe, expect, it } from 'vitest';
import {
  endOfKind,
  rhythmOfKind,
  roomForRun,
  withNextRun,
  withNextWall,
  withWallRenamed,
} from '../../app/decisions/plan-edits';
import { createAppStore } from '../../app/store/store';
import { design, newJob, readJob, writeJob } from '../../src/flow';
import { setRhythm } from '../../src/job/edits';
import { MOST } from '../../src/job/fields';
import type { Job } from '../../src/vocabulary/job';
import { sampleJob } from './sample';

const fits = (job: Job) => readJob(writeJob(job));

describe('edits of the form', () => {
  it('adds a run over the layer of the last one, round a corner', () => {
    const job = withNextRun(sampleJob());
    const [, second, third] = job.unit.plan.runs;
    expect(job.unit.plan.runs).toHaveLength(3);
    expect(second?.deflectionDeg).toBe(90);
    expect(third?.over).toBe('frame');
  });

  it('stops adding runs where the job file does', () => {
    let job = newJob('Long');
    while (roomForRun(job)) job = withNextRun(job);
    expect(job.unit.plan.runs).toHaveLength(MOST.runs);
    expect(fits(job).ok).toBe(true);
  });

  it('gives new walls free names, and an end keeps its wall when that gets another name', () => {
    let job = withNextWall(withNextWall(newJob('Walls')));
    expect(job.survey.walls.map(({ name }) => name)).toEqual(['Wall 1', 'Wall 2']);
    job = { ...job, unit: { ...job.unit, plan: { ...job.unit.plan, leftEnd: { kind: 'wall', wall: 'Wall 1' } } } };
    job = withWallRenamed(job, 0, 'Kitchen');
    expect(job.unit.plan.leftEnd).toEqual({ kind: 'wall', wall: 'Kitchen' });
    expect(fits(job)).toEqual({ ok: true, value: job });
    expect(withNextWall(job).survey.walls.map(({ name }) => name)).toEqual(['Kitchen', 'Wall 2', 'Wall 3']);
  });

  it('begins a rhythm of its own with what stands there now, so that the pillars stay', () => {
    const job = newJob('Bays');
    const run = design(job).rod.runs[0];
    for (const by of ['count', 'marks'] as const) {
      const changed = setRhythm(job, 0, rhythmOfKind(by, run));
      expect(fits(changed).ok).toBe(true);
      const now = design(changed).rod.runs[0];
      expect(now?.pillars.map(({ centre }) => Math.round(centre * 100) / 100)).toEqual(
        run?.pillars.map(({ centre }) => Math.round(centre * 100) / 100),
      );
    }
    expect(rhythmOfKind('pillars', run)).toBeUndefined();
    expect(fits(setRhythm(job, 0, rhythmOfKind('pitch', run))).ok).toBe(true);
  });

  it('makes ends that a job file may have', () => {
    const job = newJob('Ends');
    for (const kind of ['wall', 'free', 'return'] as const) {
      const plan = { ...job.unit.plan, leftEnd: endOfKind(kind, 'plinth'), rightEnd: endOfKind(kind, 'top') };
      expect(fits({ ...job, unit: { ...job.unit, plan } }).ok, kind).toBe(true);
    }
    expect(endOfKind('return', 'plinth')).toMatchObject({ kind: 'return', over: 'plinth' });
  });

  it('ties a new wall to an end that stands against one and has none, square to it', () => {
    const job = sampleJob();
    const wall = { kind: 'wall' } as const;
    const both: Job = { ...job, unit: { ...job.unit, plan: { ...job.unit.plan, leftEnd: wall, rightEnd: wall } } };
    const one = withNextWall(both);
    expect(one.unit.plan).toMatchObject({ leftEnd: { kind: 'wall', wall: 'Wall 1' }, rightEnd: wall });
    expect(one.survey.walls[0]?.directionDeg).toBe(90);
    const two = withNextWall(one);
    expect(two.unit.plan.rightEnd).toEqual({ kind: 'wall', wall: 'Wall 2' });
    // The second run turns 90° against the first, and its wall with it.
    expect(two.survey.walls[1]?.directionDeg).toBe(180);
    const three = withNextWall(two);
    expect(three.unit.plan).toBe(two.unit.plan);
    expect(withNextWall(job).unit.plan).toMatchObject({ leftEnd: { kind: 'free' }, rightEnd: { wall: 'Wall 1' } });
  });

  it('finds nothing out of square in a wall just added, whichever way the last run goes', () => {
    const job = newJob('Square');
    const inside = { ...job.unit.plan.runs[0]!, deflectionDeg: -91.4 };
    const plan = { ...job.unit.plan, runs: [inside, job.unit.plan.runs[0]!], rightEnd: { kind: 'wall' } as const };
    const walled = withNextWall(withNextWall({ ...job, unit: { ...job.unit, plan } }));
    expect(walled.survey.walls.map(({ directionDeg }) => directionDeg)).toEqual([90, -1.4]);
    expect(design(walled).findings.filter(({ subject }) => subject.path?.startsWith('/survey/walls'))).toEqual([]);
  });

  it('goes through the store as plain data, untouched parts shared, and can be undone', () => {
    const start = newJob('Store');
    const store = createAppStore(start);
    store.getState().edit('Add a run', withNextRun);
    const { document } = store.getState();
    expect(document.unit.plan.runs).toHaveLength(start.unit.plan.runs.length + 1);
    expect(document.stock).toBe(start.stock);
    expect(document.unit.elements).toBe(start.unit.elements);
    expect(structuredClone(document)).toEqual(document);
    store.getState().undo();
    expect(store.getState().document).toEqual(start);
    store.getState().edit('Nothing', (job) => job as Job);
    expect(store.getState().past).toEqual([]);
  });
});
