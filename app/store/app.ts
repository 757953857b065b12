import { newJob } from '../../src/flow';
import { createAppStore } from './store';

/** The one store of this page. Starts on an empty job until the saved one, or the example, has been read. */
export const app = createAppStore(newJob('New job'));
