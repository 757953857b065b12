import type { Part } from '../../vocabulary/part';

/** Lengths in a problem are kept to a hundredth of a millimetre: the noise of the last digits must not part twins. */
export const hundredth = (mm: number): number => Math.round(mm * 100) / 100;

/** What is left on a part, to be taken off in fitting, in all: it is sawn so much longer and wider than its finished size. mm. */
export function leftOn({ oversize = [] }: Pick<Part, 'oversize'>): {
  readonly length: number;
  readonly width: number;
} {
  let [length, width] = [0, 0];
  for (const { on, amount } of oversize) {
    if (on === 'length') length += amount;
    else width += amount;
  }
  return { length, width };
}

/** What can be got out of one length of stock, its trimmed ends off. */
export const within = (length: number, trim: number): number => length - 2 * trim;

/** A trim may take all there is; then nothing is left. */
export const fits = (size: number, room: number): boolean => size <= room + NOISE;

/** Far below the hundredth that sizes are kept to, mm. */
const NOISE = 1e-6;
