/** A length is kept to this part of a millimetre: far below any rule, far above the noise of the last digits. */
const CLEAN = 1e9;

/** The nearest whole number of steps; a half goes up. The noise of the last digits doesn't decide. */
export function toStep(length: number, step: number): number {
  const steps = Math.floor(length / step + 0.5 + 1e-9);
  return Math.round(steps * step * CLEAN) / CLEAN;
}
