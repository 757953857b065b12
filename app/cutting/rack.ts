import { type CuttingKeep, memoryKeep, openCuttingKeep } from '../effects/cutting-keep';
import { type Exchange, type Exchanged, inverse } from '../effects/rack';
import type { AppStore } from '../store/store';
import type { Cutting } from './store';

/** The rack as the screen uses it. Nothing here rejects: what can't be done is said. */
export interface Rack {
  readonly keep: () => Promise<CuttingKeep>;
  exchange(exchange: Exchange): Promise<Exchanged | undefined>;
  /** An exchange that is a step of its own among those to undo. */
  change(label: string, exchange: Exchange): Promise<Exchanged | undefined>;
  undo(done: Exchanged): Promise<void>;
  redo(done: Exchanged): Promise<void>;
}

export const NOT_KEPT = 'This browser keeps no offcut rack between visits: what is put in is forgotten with the page.';
const NOT_DONE = 'The rack could not be changed. Nothing in it is lost; try again.';

/** A browser whose database has not opened by then is taken to keep nothing, ms. */
const PATIENCE = 4000;

/** Says it as soon as the cutting is looked at: what is done ahead troubles nobody who does not. */
function sayInTime(app: AppStore, text: string): void {
  const say = () => app.getState().notify({ tone: 'trouble', text });
  if (app.getState().view.pane === 'cutting') say();
  else {
    const stop = app.subscribe(({ view }) => {
      if (view.pane !== 'cutting') return;
      stop();
      say();
    });
  }
}

/** Opens the rack and shows what lies in it; other tabs are told of changes, and heard. */
export function openRack(app: AppStore, cutting: Cutting, open: () => Promise<CuttingKeep> = openCuttingKeep): Rack {
  const others = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('counterwright rack');
  let opened: Promise<CuttingKeep> | undefined;

  const late = (): Promise<never> =>
    new Promise((_, reject) => setTimeout(() => reject(new Error('too long in coming')), PATIENCE));
  const keep = (): Promise<CuttingKeep> => {
    opened ??= Promise.race([open(), late()]).catch(() => {
      sayInTime(app, NOT_KEPT);
      return memoryKeep();
    });
    return opened;
  };

  const show = async (): Promise<void> => {
    try {
      cutting.setState({ rack: await (await keep()).rack() });
    } catch {
      sayInTime(app, 'The rack could not be looked into.');
    }
  };
  others?.addEventListener('message', () => void show());
  void show();

  const exchange: Rack['exchange'] = async (wanted) => {
    try {
      const done = await (await keep()).exchange(wanted);
      await show();
      others?.postMessage('changed');
      return done;
    } catch {
      app.getState().notify({ tone: 'trouble', text: NOT_DONE });
      return undefined;
    }
  };

  const undo: Rack['undo'] = async (done) => void (await exchange(inverse(done)));
  const redo: Rack['redo'] = async (done) =>
    void (await exchange({ out: done.out.map(({ mark }) => mark), in: done.in }));
  return {
    keep,
    exchange,
    async change(label, wanted) {
      const done = await exchange(wanted);
      if (done) app.getState().did(label, { undo: () => void undo(done), redo: () => void redo(done) });
      return done;
    },
    undo,
    redo,
  };
}
