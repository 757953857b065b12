import type { Subject } from '../../src/vocabulary/finding';
import type { Part } from '../../src/vocabulary/part';
import type { AppState } from '../store/store';

/** Whether there is something to be shown of it. */
export const canBeShown = ({ part, run, path }: Subject): boolean => Boolean(part ?? run ?? path);

/** Picks out what a finding is about: its part in the view, its run on the rod. */
export function showSubject(
  { part, run }: Subject,
  parts: readonly Part[],
  actions: Pick<AppState, 'select' | 'setRun'>,
): void {
  const found = part === undefined ? undefined : parts.find(({ mark }) => mark === part);
  if (found) actions.select(found.mark, found.run);
  else if (run !== undefined) {
    actions.select(null);
    actions.setRun(run);
  }
}
