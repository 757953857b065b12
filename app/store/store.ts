import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Job } from '../../src/vocabulary/job';
import type { BuildStage } from '../../src/vocabulary/part';
import { type Deed, type Step, withStep } from './history';
import { newId } from './ids';
import {
  firstView,
  type Keeping,
  type ListName,
  type Look,
  type Notice,
  type Pane,
  type Thing,
  type View,
} from './view';

/** An edit: the job as it is to be. One that changes nothing gives back the job itself. */
type Recipe = (job: Job) => Job;

/** What there was before a gesture, for when it is taken back. */
interface LaidBy {
  readonly previous: Job | null;
  readonly future: readonly Step[];
}

const NOTHING: LaidBy = { previous: null, future: [] };

export interface Actions {
  /**
   * Changes the job and remembers how to undo it. Edits with the same `gesture` count as one step until
   * `endGesture`, another edit, undo, redo or open. An edit that changes nothing leaves no step.
   */
  edit(label: string, recipe: Recipe, gesture?: string): void;
  /** Remembers how to take back something that has been done beside the job, as a step among the edits. */
  did(label: string, deed: Deed): void;
  endGesture(): void;
  /** Takes the open gesture back as if it had never been begun. */
  cancelGesture(): void;
  undo(): void;
  redo(): void;
  /** Puts another job on the board; the history of the one before is forgotten. */
  open(job: Job, documentId?: string): void;
  /** The same work goes on as another document, when another tab has the old one. */
  renameDocument(documentId: string): void;
  /** Picks out a part by its mark; with `run`, brings that run on to the rod too. */
  select(mark: string | null, run?: string): void;
  /** Takes an opening, a join or a bay in hand; a part that was picked out is put down. With `run`, brings that run on to the rod too. */
  take(thing: Thing | null, run?: string): void;
  setRun(run: string): void;
  setMode(mode: BuildStage): void;
  look(request: Look): void;
  setShowDimensions(show: boolean): void;
  /** Draws the sections apart: 0 together, 1 as far as it goes. */
  setApart(apart: number): void;
  setSiteShown(shown: boolean): void;
  setStep(step: number): void;
  setPane(pane: Pane): void;
  setList(list: ListName): void;
  /** Folds the rod away under what is in the middle, or unfolds it there. */
  foldRod(folded: boolean): void;
  notify(notice: Notice | null): void;
  setKeeping(keeping: Keeping): void;
}

/** All that the app remembers. What follows from the job is never stored: see `useDesign`. */
export interface AppState extends Actions {
  readonly document: Job;
  readonly documentId: string;
  /** The job before the last edit, undo or redo, for "what has this changed?". Null on a fresh job. */
  readonly previous: Job | null;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** The gesture still going on; its edits are not committed yet. */
  readonly gesture: string | null;
  /** From before the gesture began: it comes back when the gesture is cancelled. */
  readonly laidBy: LaidBy;
  readonly view: View;
  readonly notice: Notice | null;
  readonly keeping: Keeping;
}

export type AppStore = StoreApi<AppState>;

/** A board with one job on it. */
export function createAppStore(initial: Job, documentId: string = newId()): AppStore {
  return createStore<AppState>()((set, get) => {
    const look = (change: Partial<View>): void => set({ view: { ...get().view, ...change } });
    return {
      document: initial,
      documentId,
      previous: null,
      past: [],
      future: [],
      gesture: null,
      laidBy: NOTHING,
      view: firstView,
      notice: null,
      keeping: 'untouched',

      edit(label, recipe, gesture) {
        const { document, past, previous, future, laidBy, gesture: open } = get();
        const next = recipe(document);
        if (next === document) return;
        const last = past.at(-1);
        const goesOn = gesture !== undefined && gesture === open && last !== undefined;
        set({
          document: next,
          previous: goesOn ? previous : document,
          past: goesOn
            ? [...past.slice(0, -1), { label, before: last.before, after: next }]
            : withStep(past, { label, before: document, after: next }),
          future: [],
          laidBy: goesOn ? laidBy : { previous, future },
          gesture: gesture ?? null,
        });
      },

      did(label, deed) {
        const { document, past } = get();
        set({
          past: withStep(past, { label, before: document, after: document, deed }),
          future: [],
          laidBy: NOTHING,
          gesture: null,
        });
      },

      endGesture() {
        if (get().gesture !== null) set({ gesture: null });
      },

      cancelGesture() {
        const { gesture, past, laidBy } = get();
        const last = past.at(-1);
        if (gesture === null || !last) return;
        set({
          document: last.before,
          past: past.slice(0, -1),
          previous: laidBy.previous,
          future: laidBy.future,
          gesture: null,
        });
      },

      undo() {
        const { document, previous, past, future } = get();
        const step = past.at(-1);
        if (!step) return;
        set({
          document: step.before,
          previous: step.deed ? previous : document,
          past: past.slice(0, -1),
          future: [step, ...future],
          gesture: null,
        });
        step.deed?.undo();
      },

      redo() {
        const { document, previous, past, future } = get();
        const [step, ...rest] = future;
        if (!step) return;
        set({
          document: step.after,
          previous: step.deed ? previous : document,
          past: [...past, step],
          future: rest,
          gesture: null,
        });
        step.deed?.redo();
      },

      open(job, id = newId()) {
        const { view } = get();
        set({
          document: job,
          documentId: id,
          previous: null,
          past: [],
          future: [],
          gesture: null,
          laidBy: NOTHING,
          view: {
            ...view,
            selected: null,
            thing: null,
            step: 0,
            run: '',
            camera: { request: 'room', serial: view.camera.serial + 1 },
          },
        });
      },

      renameDocument: (id) => set({ documentId: id }),
      select: (mark, run) => look({ selected: mark, thing: null, ...(run === undefined ? {} : { run }) }),
      take: (thing, run) => look({ thing, selected: null, ...(run === undefined ? {} : { run }) }),
      setRun: (run) => look({ run }),
      setMode: (mode) => look({ mode }),
      look: (request) => look({ camera: { request, serial: get().view.camera.serial + 1 } }),
      setShowDimensions: (show) => look({ showDimensions: show }),
      setApart: (apart) => look({ apart: Math.max(0, Math.min(1, apart)) }),
      setSiteShown: (shown) => look({ siteShown: shown }),
      setStep: (step) => look({ step: Math.max(0, step) }),
      setPane: (pane) => look({ pane }),
      setList: (list) => look({ list }),
      foldRod: (folded) => {
        const { pane, rodFolded } = get().view;
        look({ rodFolded: { ...rodFolded, [pane]: folded } });
      },
      notify: (notice) => set({ notice }),
      setKeeping: (keeping) => set({ keeping }),
    };
  });
}
