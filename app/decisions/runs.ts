import type { Design } from '../../src/vocabulary/design';
import type { RodRun } from '../../src/vocabulary/rod';

/** Runs that the job itself has, by their numbers (1 = first), as choices. */
export const runOptions = ({ job, rod }: Design): readonly { readonly value: string; readonly label: string }[] =>
  job.unit.plan.runs.map((_, i) => ({
    value: String(i + 1),
    label: rod.runs.find((run) => run.jobIndex === i)?.name ?? `Run ${i + 1}`,
  }));

/** The run on the rod with this number in the job; undefined where there is none. */
export const runOfNumber = ({ rod }: Design, number: number): RodRun | undefined =>
  rod.runs.find((run) => run.jobIndex === number - 1);
