import { figures } from '../../src/base/figure';
import { formatLength, MM_PER_INCH } from '../../src/base/lengths';
import type { Job } from '../../src/vocabulary/job';

type Units = Job['units'];

/** What decides how a length is written: the job's units, and its rounding step. */
export interface Written {
  readonly units: Units;
  readonly tools: Pick<Job['tools'], 'roundingStep'>;
}

const unitOf = (units: Units): string => (units === 'mm' ? ' mm' : '');

/** A length as it is written on rod, lists and sheets: to the job's own step, without unit. */
export const figure = (mm: number, job: Written): string => figures(job)(mm);

/** The same with its unit: `1200 mm`, `47 1/4"`. */
export const length = (mm: number, job: Written): string => figure(mm, job) + unitOf(job.units);

/** To the hundredth of a millimetre, or the thousandth of an inch: nobody can cut nearer. */
const exactFigure = (mm: number, units: Units): string =>
  units === 'mm' ? formatLength(mm, units) : `${Number((mm / MM_PER_INCH).toFixed(3))}"`;

/** A length as it was worked out, not rounded to the job's step, with its unit. */
export const exactLength = (mm: number, units: Units): string => exactFigure(mm, units) + unitOf(units);

/** Length × width × thickness with the unit once. */
export const exactSize = (lengths: readonly number[], units: Units): string =>
  lengths.map((mm) => exactFigure(mm, units)).join(' × ') + unitOf(units);

/** A name from the stock book with its sizes kept on one line: "Sawn whitewood 38 × 89" breaks before 38 only. */
export const unbroken = (name: string): string => name.replaceAll(' × ', '\u00a0×\u00a0');

/** A weight to the tenth of a kilogram; light things to the gram, so that nothing weighs nothing. */
export const weight = (kg: number): string =>
  Math.abs(kg) < 1 ? `${(kg * 1000).toFixed(0)} g` : `${kg.toFixed(1)} kg`;

/** An angle to the hundredth of a degree, without trailing noughts. */
export const angle = (deg: number): string => `${Number(deg.toFixed(2))}°`;

/** Metres or square metres to two places. */
export const amount = (value: number, unit: string): string => `${value.toFixed(2)} ${unit}`;

/** A change as a person writes it, `+12 mm`, `−0.4 kg`; null where nothing would be seen of it. */
export function change(now: number, before: number, show: (value: number) => string): string | null {
  const by = now - before;
  const text = show(Math.abs(by));
  return /[1-9]/.test(text) ? `${by > 0 ? '+' : '−'}${text}` : null;
}
