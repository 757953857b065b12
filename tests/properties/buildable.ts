import type { Design } from '../../src/vocabulary/design';

/** Designs with one of these findings say themselves that something is in the way of something. */
const IN_THE_WAY = new Set(['plan-folds', 'run-too-short', 'top-squeezed', 'blocks-overlap']);

export const cannotBeBuilt = ({ findings }: Design): boolean => findings.some((f) => IN_THE_WAY.has(f.rule));
