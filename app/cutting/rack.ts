import { type CuttingKeep, memoryKeep, openCuttingKeep } from '../effects/cutting-keep';
import { type Exchange, type Exchanged, inverse } from '../effects/rack';
import type { AppStore } from '../store/store';
import type { Notice } from '../store/view';
import type { Cutting } from './store';
import { number } from './words';

/** The rack as the screen uses it. Nothing here rejects: what can't be done is said. */
export interface Rack {
  readonly keep: () => Promise<CuttingKeep>;
  exchange(exchange: Exchange): Promise<Exchanged | undefined>;
  /** An exchange that is a step of its own among those to undo. */
  change(label: string, exchange: Exchange, tell?: (done: Exchanged) => Notice): Promise<Exchanged | undefined>;
  undo(done: Exchanged): Promise<void>;
  redo(done: Exchanged): Promise<void>;
}

export const NOT_KEPT = 'This browser keeps no offcut rack between visits: what is put in is forgotten with the page.';
const NOT_DONE = 'The rack could not be changed. Nothing in it is lost; try again.';

/** What has been taken in from a file, in words: nobody should look for an offcut by a mark that it hasn't any more. */
export function takenInWords({ in: put, anew, already }: Exchanged): Notice {
  return {
    tone: 'info',
    text: put.length === 0 ? 'Nothing is put into the rack.' : `Put into the rack: ${number(put.length, 'offcut')}.`,
    lines: [
      ...(already.length > 0 ? [`There already: ${already.join(', ')}.`] : []),
      ...(anew.length > 0
        ? [`Marked anew, for another has the mark: ${anew.map(({ was, mark }) => `${was} is now ${mark}`).join(', ')}.`]
        : []),
    ],
  };
}

/** What is said of a deed, and not any longer when it is undone, unless something else has been said since. */
export function wordOf(app: AppStore, notice: Notice): { say(): void; takeBack(): void } {
  return {
    say: () => app.getState().notify(notice),
    takeBack() {
      if (app.getState().notice === notice) app.getState().notify(null);
    },
  };
}

/** A browser whose database has not opened by then is taken to keep nothing, ms. */
const PATIENCE = 4000;

/** Says what it is told as soon as the cutting is looked at, and once: what is done ahead troubles nobody who does not look. */
function sayerInTime(app: AppStore): (text: string) => void {
  const waiting = new Set<string>();
  return (text) => {
    const say = () => app.getState().notify({ tone: 'trouble', text });
    if (app.getState().view.pane === 'cutting') return say();
    if (waiting.has(text)) return;
    waiting.add(text);
    const stop = app.subscribe(({ view }) => {
      if (view.pane !== 'cutting') return;
      stop();
      waiting.delete(text);
      say();
    });
  };
}

/** Opens the rack and shows what lies in it; other tabs are told of changes, and heard. */
export function openRack(app: AppStore, cutting: Cutting, open: () => Promise<CuttingKeep> = openCuttingKeep): Rack {
  const others = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('counterwright rack');
  const sayInTime = sayerInTime(app);
  let opened: Promise<CuttingKeep> | undefined;

  const late = (): Promise<never> =>
    new Promise((_, reject) => setTimeout(() => reject(new Error('too long in coming')), PATIENCE));
  const keep = (): Promise<CuttingKeep> => {
    opened ??= Promise.race([open(), late()]).catch(() => {
      sayInTime(NOT_KEPT);
      return memoryKeep();
    });
    return opened;
  };

  const show = async (): Promise<void> => {
    try {
      cutting.setState({ rack: await (await keep()).rack() });
    } catch {
      sayInTime('The rack could not be looked into.');
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
    async change(label, wanted, tell) {
      const done = await exchange(wanted);
      if (!done) return undefined;
      const word = tell && wordOf(app, tell(done));
      if (done.in.length + done.out.length > 0)
        app.getState().did(label, {
          undo() {
            word?.takeBack();
            void undo(done);
          },
          redo() {
            word?.say();
            void redo(done);
          },
        });
      word?.say();
      return done;
    },
    undo,
    redo,
  };
}
