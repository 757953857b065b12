import { formatLength, type LengthUnits } from '../../src/base/lengths';

/** A length in full, with its unit: "1203.33 mm". */
export const exactly = (mm: number, units: LengthUnits): string =>
  units === 'mm' ? `${formatLength(mm, units)} mm` : formatLength(mm, units);

/**
 * A length as it is written on a rod: to the joiner's own step (mm), without unit. Each figure is rounded by itself from its
 * exact value, so running measurements do not gather errors. Inches have their own step, 1/64.
 */
export function toTheStep(mm: number, units: LengthUnits, step: number): string {
  return formatLength(units === 'mm' && step > 0 ? Math.round(mm / step) * step : mm, units);
}
