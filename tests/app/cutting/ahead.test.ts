import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { planAhead, QUIET } from '../../../app/cutting/ahead';
import type { Rack } from '../../../app/cutting/rack';
import { AHEAD } from '../../../app/cutting/store';
import { type CutSoFar, memoryKeep } from '../../../app/effects/cutting-keep';
import { codeOf } from '../../../app/shell/late';
import { newJob } from '../../../src/flow';
import { setAt } from '../../../src/job/edits';
import { board, fewer } from './board';
import { batch, dearer, plan } from './plans';

describe('batches taken up ahead', () => {
  it('get their quick plan and a short search, which goes on when somebody looks', () => {
    const { cutting, asked, answer, held, orders } = board();
    cutting.takeAhead('job', [batch]);
    expect(asked()).toMatchObject([{ batch: 'mdf', ms: AHEAD, ahead: true }]);
    answer(dearer);
    expect(held()).toMatchObject({ stand: 'first', shown: { plan: dearer }, before: null });
    cutting.takeAhead('job', [batch]);
    expect(orders.at(-1)).toMatchObject({ say: 'plan' });
    cutting.take('job', [batch]);
    expect(asked()).toHaveLength(1);
    expect(orders.at(-1)).toMatchObject({ say: 'go on', batch: 'mdf', revision: held().revision, ms: 2000 });
    expect(orders.at(-2)).toMatchObject({ say: 'first', batch: 'mdf' });
    answer(plan, 'done', 300);
    // At the first opening there was nothing before it.
    expect(held()).toMatchObject({ stand: 'done', shown: { plan }, before: null });
    const said = orders.length;
    cutting.take('job', [batch]);
    expect(orders).toHaveLength(said);
  });

  it('go on from where the short search came to, for the usual time', () => {
    const { cutting, asked, answer, held, orders } = board();
    cutting.takeAhead('job', [batch]);
    answer(dearer, 'time', 160);
    cutting.letBe('job');
    cutting.take('job', [batch]);
    expect(held()).toMatchObject({ stand: 'bettering', spent: 160, allowed: 2160, shown: { plan: dearer } });
    expect(asked()).toHaveLength(1);
    expect(orders.at(-1)).toMatchObject({ say: 'go on', revision: held().revision, ms: 2000 });
  });

  it('stay as they are when somebody looks, where the short search came to its end', () => {
    const { cutting, answer, held, orders } = board();
    cutting.takeAhead('job', [batch]);
    answer(plan, 'done', 20);
    const said = orders.length;
    cutting.take('job', [batch]);
    expect(orders).toHaveLength(said);
    expect(held()).toMatchObject({ stand: 'done', shown: { plan } });
    expect(held().ahead).toBeUndefined();
  });

  it('are begun again when somebody looks, where the worker failed before', () => {
    const { cutting, asked, answer, held } = board();
    cutting.takeAhead('job', [batch]);
    cutting.hear({ say: 'trouble', batch: 'mdf', revision: held().revision, why: 'offline' });
    expect(held().stand).toBe('failed');
    cutting.take('job', [batch]);
    expect(held().stand).toBe('waiting');
    expect(asked()).toHaveLength(2);
    answer(plan);
    expect(held()).toMatchObject({ stand: 'first', shown: { plan } });
  });

  it('are compared with what was looked at last, whatever was planned unseen between', () => {
    const { cutting, answer, held } = board();
    cutting.take('job', [batch]);
    answer(plan, 'done');
    const seen = held().shown;
    cutting.takeAhead('job', [fewer]);
    answer(dearer);
    cutting.takeAhead('job', [{ ...fewer, problem: { ...fewer.problem, kerf: 1 } } as typeof fewer]);
    answer(dearer);
    cutting.take('job', [{ ...fewer, problem: { ...fewer.problem, kerf: 1 } } as typeof fewer]);
    expect(held().before).toBe(seen);
    // What was unseen is not taken for a plan that has been bettered.
    cutting.take('job', [fewer]);
    expect(held().stand).toBe('waiting');
  });

  it('are asked for again where they were called off before their plan was there', () => {
    const { cutting, asked, orders, held } = board();
    cutting.takeAhead('job', [batch]);
    cutting.letBe('job');
    expect(orders.at(-1)).toMatchObject({ say: 'forget', batch: 'mdf' });
    cutting.letBe('job');
    cutting.take('job', [batch]);
    expect(orders.filter(({ say }) => say === 'forget')).toHaveLength(1);
    expect(asked()).toMatchObject([{ ms: AHEAD }, { ms: 2000, revision: held().revision }]);
    expect(asked()[1]).not.toHaveProperty('ahead');
  });

  it('are asked for again where their short search was called off', () => {
    const { cutting, asked, answer, orders, held } = board();
    cutting.takeAhead('job', [batch]);
    answer(dearer, 'bettering', 40);
    cutting.letBe('job');
    expect(orders.at(-1)).toMatchObject({ say: 'forget', batch: 'mdf' });
    cutting.take('job', [batch]);
    expect(asked()).toMatchObject([{ ms: AHEAD }, { ms: 2000, revision: held().revision }]);
    expect(held()).toMatchObject({ shown: { plan: dearer }, spent: 0, allowed: 2000 });
    // What is still on its way of the one that was called off is not about this one.
    const { revision } = held();
    expect(revision).toBeGreaterThan(asked()[0]!.revision);
    cutting.hear({ say: 'trouble', batch: 'mdf', revision: asked()[0]!.revision, why: 'late' });
    expect(held().stand).toBe('bettering');
  });
});

describe('planning ahead', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  function quiet(cut: readonly CutSoFar[] = []) {
    const all = board();
    all.app.getState().open(newJob('Bar'));
    const rack = { keep: async () => ({ ...memoryKeep(), cutOf: async () => cut }) } as unknown as Rack;
    const stop = planAhead(all.app, all.cutting, rack, (act) => act());
    const wait = (ms: number) => vi.advanceTimersByTimeAsync(ms);
    const lower = () => all.app.getState().edit('Lower', (job) => setAt(job, '/unit/height', 1040));
    return { ...all, stop, wait, lower };
  }

  it('waits until the job has been quiet for a moment, and begins anew with every edit', async () => {
    const { app, cutting, asked, orders, wait, lower } = quiet();
    await wait(QUIET - 10);
    lower();
    await wait(QUIET - 10);
    expect(asked()).toHaveLength(0);
    await wait(20);
    expect(asked().length).toBeGreaterThan(0);
    expect(asked().every((order) => order.say === 'plan' && order.ms === AHEAD)).toBe(true);
    expect(cutting.getState().documentId).toBe(app.getState().documentId);
    const before = asked().length;
    app.getState().undo();
    expect(
      orders.filter(({ say }) => say === 'forget'),
      'all called off at once',
    ).toHaveLength(before);
    await wait(2 * QUIET);
    expect(asked().length).toBeGreaterThan(before);
  });

  it('leaves the job alone while the cutting is looked at, while a gesture goes on, and when it is stopped', async () => {
    const looked = quiet();
    looked.app.getState().setPane('cutting');
    await looked.wait(2 * QUIET);
    expect(looked.asked()).toHaveLength(0);
    const drawn = quiet();
    drawn.app.getState().edit('Draw', (job) => setAt(job, '/unit/height', 1040), 'drag');
    await drawn.wait(2 * QUIET);
    expect(drawn.asked()).toHaveLength(0);
    drawn.app.getState().endGesture();
    await drawn.wait(2 * QUIET);
    expect(drawn.asked().length).toBeGreaterThan(0);
    const stopped = quiet();
    stopped.stop();
    await stopped.wait(2 * QUIET);
    expect(stopped.asked()).toHaveLength(0);
  });

  it('leaves a job alone of which something has been cut', async () => {
    const kept = quiet([{ documentId: 'd', batch, plan, copies: [], locked: [0], done: false }]);
    await kept.wait(2 * QUIET);
    expect(kept.asked()).toHaveLength(0);
    const { app, cutting, answer, held, asked, wait, lower } = quiet();
    cutting.setState({ documentId: app.getState().documentId });
    cutting.take('job', [batch]);
    answer(plan, 'done');
    cutting.put('mdf', { ...held(), locked: [0] });
    lower();
    await wait(2 * QUIET);
    expect(asked()).toHaveLength(1);
    expect(held().locked).toEqual([0]);
  });
});

it('code that comes late is fetched once, and again only where it could not be had', async () => {
  const loads = [() => Promise.reject(new Error('no network')), async () => ({ default: 'the part' })];
  let asked = 0;
  const code = codeOf(() => loads[asked++]!());
  await expect(code.fetch()).rejects.toThrow('no network');
  expect(code.part).toBeUndefined();
  await expect(Promise.all([code.fetch(), code.fetch()])).resolves.toEqual(['the part', 'the part']);
  expect(code.part).toBe('the part');
  expect(asked).toBe(2);
});
