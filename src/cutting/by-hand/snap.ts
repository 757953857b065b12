import type { Rect } from '../../vocabulary/cut-plan';

/** Noise of sums, mm. */
const NOISE = 1e-6;

/** Whether two rectangles are a kerf apart. */
export const clear = (a: Rect, b: Rect, kerf: number): boolean =>
  b.x - a.x - a.length >= kerf - NOISE ||
  a.x - b.x - b.length >= kerf - NOISE ||
  b.y - a.y - a.width >= kerf - NOISE ||
  a.y - b.y - b.width >= kerf - NOISE;

export const within = (a: Rect, sheet: Rect): boolean =>
  a.x >= sheet.x - NOISE &&
  a.y >= sheet.y - NOISE &&
  a.x + a.length <= sheet.x + sheet.length + NOISE &&
  a.y + a.width <= sheet.y + sheet.width + NOISE;

/**
 * Places for a rectangle near to where it was put: against the edges of the sheet, a kerf from others, and flush with them; what lies so in both
 * directions first, then in one, then just where it was put; each the nearest first.
 * @param reach how far it may be moved, mm
 */
export function placesNear(
  put: Rect,
  others: readonly Rect[],
  sheet: Rect,
  kerf: number,
  reach: number,
): readonly Rect[] {
  const xs = near(
    put.x,
    put.length,
    reach,
    [sheet.x, sheet.x + sheet.length],
    others.map((o) => [o.x, o.length]),
    kerf,
  );
  const ys = near(
    put.y,
    put.width,
    reach,
    [sheet.y, sheet.y + sheet.width],
    others.map((o) => [o.y, o.width]),
    kerf,
  );
  const byDistance = (a: Rect, b: Rect): number =>
    Math.hypot(a.x - put.x, a.y - put.y) - Math.hypot(b.x - put.x, b.y - put.y) || a.x - b.x || a.y - b.y;
  const both = xs.flatMap((x) => ys.map((y) => ({ ...put, x, y })));
  const one = [...xs.map((x) => ({ ...put, x })), ...ys.map((y) => ({ ...put, y }))];
  return [...both.sort(byDistance), ...one.sort(byDistance), put];
}

function near(
  at: number,
  size: number,
  reach: number,
  [low, high]: readonly [number, number],
  others: readonly (readonly [at: number, size: number])[],
  kerf: number,
): readonly number[] {
  const all = [
    low,
    high - size,
    ...others.flatMap(([from, own]) => [from + own + kerf, from - kerf - size, from, from + own - size]),
  ];
  return [...new Set(all.filter((one) => Math.abs(one - at) <= reach).map((one) => Math.round(one * 1e6) / 1e6))];
}
