/**
 * To a millionth of a mm or degree, never −0: without the noise of the last digits, so that turning a measurement round twice
 * gives the old number back.
 */
export const kept = (value: number): number => Number(value.toFixed(6)) + 0;

/** The same direction above −180 and up to 180 degrees. */
export function withinHalfTurn(deg: number): number {
  const turned = kept(deg - 360 * Math.round(deg / 360));
  return turned === -180 ? 180 : turned;
}
