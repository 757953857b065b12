import type { AnyCutPlan, Offcut } from '../../src/vocabulary/cut-plan';
import type { Cutters } from '../effects/cutting';
import type { AppStore } from '../store/store';
import { freshCopies, laidOf } from './copies';
import { atWork, type Held } from './held';
import { leftFor, offcutsUsed } from './left-over';
import { type Rack, wordOf } from './rack';
import type { Cutting } from './store';

/** Does something to batches that can be taken back with the other steps; afterwards each stands as it then does. */
export function deed(app: AppStore, cutting: Cutting, label: string, act: () => void): void {
  const before = cutting.getState().held;
  act();
  let after = cutting.getState().held;
  const touched = Object.keys(after).filter((id) => before[id] && before[id] !== after[id]);
  if (touched.length === 0) return;
  app.getState().did(label, {
    undo() {
      // What a search has found since then comes back with it.
      after = cutting.getState().held;
      putBack(cutting, before, touched);
    },
    redo: () => putBack(cutting, after, touched),
  });
}

/** Where a batch's pieces have changed since, what was done has nothing to be put back on. */
function putBack(cutting: Cutting, all: Readonly<Record<string, Held>>, ids: readonly string[]): void {
  for (const id of ids) {
    const held = all[id];
    if (held && cutting.getState().held[id]?.key === held.key) cutting.put(id, held);
  }
}

export function planAnew(app: AppStore, cutting: Cutting, id: string): void {
  const held = cutting.getState().held[id];
  if (held) deed(app, cutting, `Plan ${held.batch.name} anew`, () => cutting.planAnew(id));
}

/** Marks a sheet or bar as cut already, or takes the mark off: the rest is planned round it. */
export function lock(app: AppStore, cutting: Cutting, id: string, index: number, on: boolean): void {
  const held = cutting.getState().held[id];
  if (!held?.shown) return;
  const others = held.locked.filter((one) => one !== index);
  const thing = held.shown.plan.kind === 'sheets' ? 'Sheet' : 'Bar';
  const locked = on ? [...others, index].sort((a, b) => a - b) : others;
  // Without what was cut a better one may be possible than was proven round it.
  const shown =
    !on && held.boundByCut ? { ...held.shown, plan: { ...held.shown.plan, bound: 0, proven: false } } : held.shown;
  const none = locked.length === 0;
  deed(app, cutting, `${thing} ${index + 1} ${on ? 'is cut' : 'is not cut'}`, () => {
    cutting.put(id, { ...held, shown, locked, unlocked: held.unlocked && !none });
    if (none && held.boundByCut) cutting.planAnew(id);
  });
}

/** Plans that come back from the worker are copies: what they lay is compared. */
const sameLaying = (a: AnyCutPlan, b: AnyCutPlan): boolean =>
  JSON.stringify(laidOf(a).map(({ pieces }) => pieces)) === JSON.stringify(laidOf(b).map(({ pieces }) => pieces));

/** Strips and pieces in such an order that the saws are set less often, in all plans that nobody has begun to cut. */
export async function rearrange(app: AppStore, cutting: Cutting, cutters: Pick<Cutters, 'ask'>): Promise<void> {
  const { order, held } = cutting.getState();
  const free = order.job.flatMap((id) => {
    const one = held[id];
    return one?.shown && one.locked.length === 0 && !atWork(one) ? [{ held: one, shown: one.shown }] : [];
  });
  const { notify } = app.getState();
  const reply = await cutters
    .ask({ what: 'rearranged', planned: free.map(({ shown: { batch, plan } }) => ({ batch, plan })) })
    .catch(() => undefined);
  if (reply?.what !== 'rearranged') return notify({ tone: 'trouble', text: 'The plans could not be rearranged.' });
  const moved = free.flatMap(({ held: one, shown }, i) => {
    const plan = reply.planned[i]?.plan;
    // What has changed in the meantime is let be.
    const still = cutting.getState().held[one.batch.id] === one;
    return plan && still && !sameLaying(plan, shown.plan) ? [{ one, shown, plan }] : [];
  });
  if (moved.length === 0) return notify({ tone: 'info', text: 'No other order needs fewer settings.' });
  deed(app, cutting, 'Rearrange for fewer settings', () => {
    for (const { one, shown, plan } of moved)
      cutting.put(one.batch.id, { ...one, before: shown, shown: { ...shown, plan, copies: freshCopies(plan) } });
  });
}

const named = (offcuts: readonly Offcut[]): string => offcuts.map(({ mark }) => mark).join(', ');

/** What the rack is being told of: a second press before it has answered must not put the leftovers in twice. */
const beingTold = new WeakSet<Held>();

/** All of a batch is cut: what it leaves goes into the rack, and what it took from there has left it. One step to undo. */
export async function accept(
  app: AppStore,
  cutting: Cutting,
  rack: Rack,
  id: string,
  isBlank: (material: string) => boolean,
): Promise<void> {
  const before = cutting.getState().held[id];
  if (!before?.shown || before.done || beingTold.has(before)) return;
  const { shown } = before;
  beingTold.add(before);
  const note = app.getState().document.name;
  const wanted = offcutsUsed(shown);
  const done = await rack.exchange({ out: wanted, in: leftFor(shown, cutting.getState().rack, isBlank, note) });
  if (!done) return void beingTold.delete(before);
  const after: Held = { ...before, locked: laidOf(shown.plan).map((_, i) => i), done: true };
  cutting.put(id, after);
  const gone = wanted.filter((mark) => !done.out.some((one) => one.mark === mark));
  const word = wordOf(app, {
    tone: 'info',
    text:
      done.in.length > 0
        ? `Put into the rack: ${named(done.in)}.`
        : 'Nothing is left that is large enough for the rack.',
    lines: [
      ...(done.out.length > 0 ? [`Taken out of it: ${named(done.out)}.`] : []),
      ...(gone.length > 0 ? [`No longer there: ${gone.join(', ')}.`] : []),
    ],
  });
  app.getState().did(`${before.batch.name} is cut`, {
    undo() {
      word.takeBack();
      putBack(cutting, { [id]: before }, [id]);
      void rack.undo(done);
    },
    redo() {
      word.say();
      putBack(cutting, { [id]: after }, [id]);
      void rack.redo(done);
    },
  });
  word.say();
}
