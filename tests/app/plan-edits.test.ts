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
      const plan = { ...job.unit.plan, leftEnd: endOfKind(kind), rightEnd: endOfKind(kind) };
      expect(fits({ ...job, unit: { ...job.unit, plan } }).ok, kind).toBe(true);
    }
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
