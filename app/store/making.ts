import { making } from '../../src/flow';
import type { Making } from '../../src/vocabulary/making';
import { useDesign } from './hooks';

/** All that is worked out about the making of the job on the board: never stored, only remembered. */
export const useMaking = (): Making => making(useDesign());
