import { formatExact, formatLength } from '../../src/base/lengths';

type Units = 'mm' | 'inch';

/** A length with its unit: `1200 mm`, `47 1/4"`. */
export const length = (mm: number, units: Units): string =>
  units === 'mm' ? `${formatLength(mm, units)} mm` : formatLength(mm, units);

/** A length with nothing rounded away, with its unit. */
export const exactLength = (mm: number, units: Units): string =>
  units === 'mm' ? `${formatExact(mm, units)} mm` : formatExact(mm, units);

/** Length × width × thickness with the unit once. */
export const exactSize = (lengths: readonly number[], units: Units): string =>
  lengths.map((mm) => formatExact(mm, units)).join(' × ') + (units === 'mm' ? ' mm' : '');

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
