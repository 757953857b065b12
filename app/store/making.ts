import { making } from '../../src/flow';
import type { Making } from '../../src/vocabulary/making';
import { useDesign } from './hooks';

/** All that is worked out about the making of the job on the board: never stored, remembered for as long as the job is alive. */
export const useMaking = (): Making => making(useDesign());
