import { formatLength } from '../base/lengths';
import { tenth } from '../base/tenth';

/** A dimension's figure: millimetres to the tenth without a unit (ISO 129-1), or inches as the job shows them. */
export function figureOf(mm: number, units: 'mm' | 'inch'): string {
  return units === 'inch' ? formatLength(mm, 'inch') : String(tenth(mm));
}
