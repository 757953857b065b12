import { formatLength, type LengthUnits } from './lengths';
import { toStep } from './round';

/** How a job writes its lengths: its units, and the step (mm, above 0) to which they are shown. */
export interface Figuring {
  readonly units: LengthUnits;
  readonly step: number;
}

/**
 * A length in mm as it is shown to people, on lists, drawings and rod alike: to the job's step, without a unit (ISO 129-1); inches
 * to their own step, 1/64, with the inch mark. Rounded by itself from its exact value, so that running figures gather no errors.
 */
const figureOf = (mm: number, { units, step }: Figuring): string =>
  formatLength(units === 'mm' ? toStep(mm, step) : mm, units);

/** How a job writes its lengths, as a function. */
export const figures =
  (job: { readonly units: LengthUnits; readonly tools: { readonly roundingStep: number } }) =>
  (mm: number): string =>
    figureOf(mm, { units: job.units, step: job.tools.roundingStep });
