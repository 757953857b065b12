import type { Design } from '../../src/vocabulary/design';
import { design } from '../store/designs';
import { useApp } from '../store/hooks';

/** All that followed from the job before the last edit, to say what that edit changed; null on a job just opened. */
export function useBefore(): Design | null {
  const previous = useApp((state) => state.previous);
  if (!previous) return null;
  try {
    return design(previous);
  } catch {
    // What came before could not be worked out: then there is nothing to compare with.
    return null;
  }
}
