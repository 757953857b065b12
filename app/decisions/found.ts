import { useDeferredValue, useMemo, useState } from 'react';
import { setAt } from '../../src/job/edits';
import type { Design } from '../../src/vocabulary/design';
import type { Finding } from '../../src/vocabulary/finding';
import type { Job } from '../../src/vocabulary/job';
import { design } from '../store/designs';
import { useApp } from '../store/hooks';

/** The findings about a place in the job, or anything below it, worst first as they come. */
export const foundAt = (findings: readonly Finding[], path: string): readonly Finding[] =>
  findings.filter(({ subject }) => subject.path === path || subject.path?.startsWith(`${path}/`));

export interface Trial {
  /** What follows from the job with what is being typed taken as if it were decided already. */
  readonly made: Design;
  /** For the input of one decision: told what is typed. */
  readonly typing: (path: string) => (value: unknown) => void;
}

/** What would follow from the job if what is being typed were decided: the job itself is left alone. */
export function useTrial(): Trial {
  const job = useApp((state) => state.document);
  const [typed, setTyped] = useState<{ readonly on: Job; readonly path: string; readonly value: unknown } | null>(null);
  // The text comes first; the working-out may lag behind quick fingers.
  const late = useDeferredValue(typed);
  // What was typed on another job is no longer about this one: its path may lead nowhere here.
  const tried = useMemo(() => (late?.on === job ? setAt(job, late.path, late.value) : job), [job, late]);
  return {
    made: design(tried),
    typing: (path) => (value) => setTyped(value === undefined ? null : { on: job, path, value }),
  };
}
