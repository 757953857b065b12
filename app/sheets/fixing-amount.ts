import type { FixingLine } from '../../src/vocabulary/making';

/** An amount of fixings: whole things as they are, stuff to a tenth at most. */
export const fixingAmount = (value: number, unit: FixingLine['unit']): string =>
  unit === 'pieces' ? String(Math.ceil(value)) : `${Number(value.toFixed(1))} ${unit}`;
