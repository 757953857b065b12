import { useStore } from 'zustand';
import type { Design } from '../../src/vocabulary/design';
import type { RodRun } from '../../src/vocabulary/rod';
import { app } from './app';
import { design } from './designs';
import type { AppState } from './store';

/** One piece of the app's state; the component is drawn again only when that piece changes. */
export function useApp<T>(selector: (state: AppState) => T): T {
  return useStore(app, selector);
}

/** All that follows from the job on the board. Never stored: it is worked out from it, and remembered. */
export function useDesign(): Design {
  return design(useApp((state) => state.document));
}

/** The run on the rod: the one chosen while it exists, else the first. */
export function useCurrentRun(): RodRun | undefined {
  const chosen = useApp((state) => state.view.run);
  const { rod } = useDesign();
  return rod.runs.find((run) => run.id === chosen) ?? rod.runs[0];
}
