import { setAt } from '../../src/job/edits';
import { app } from '../store/app';

/** One decision, at its path in the job, as an edit that can be undone. The value has passed its field. */
export const decide = (label: string, path: string, value: unknown): void =>
  app.getState().edit(label, (job) => setAt(job, path, value));
