import { largeEnough } from '../least-offcut';
import type { Scaled } from './scaled';

/** Area of a cell left over, clear of the kerf; 0 where it can't be used again. */
export function offcutIn(scaled: Scaled, length: number, width: number): number {
  return largeEnough(length, width, scaled.leastOffcut) ? (length - scaled.kerf) * (width - scaled.kerf) : 0;
}
