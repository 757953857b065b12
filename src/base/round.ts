/** The nearest whole number of steps; a half goes up. The noise of the last digits doesn't decide. */
export function toStep(length: number, step: number): number {
  const steps = Math.floor(length / step + 0.5 + 1e-9);
  return Number((steps * step).toPrecision(12));
}
