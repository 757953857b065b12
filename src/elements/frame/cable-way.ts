import { flatBoard } from '../../base/box';
import type { Stuff } from '../../base/stuff';
import { tenth } from '../../base/tenth';
import type { Noggin } from '../../vocabulary/backing';
import type { Finding } from '../../vocabulary/finding';
import type { Outline, Vec2 } from '../../vocabulary/geometry';
import type { FrameTimber, RodRun } from '../../vocabulary/rod';
import type { Board } from '../../vocabulary/shape';

/** A hole leaves at least this part of the noggin's depth on each side of it (common practice, no source). */
const LEAST_BESIDE = 1 / 3;

/** A noggin shorter than this many diameters is not bored: it would split (common practice, no source). */
const LEAST_LENGTH = 3;

/** A narrower hole passes no cable, mm (common practice, no source). */
const LEAST_BORE = 8;

/** A noggin that is just long enough is not left unbored by float noise, mm. */
const NOISE = 1e-6;

/** Whether the timber is deep enough for cable ways of that diameter, mm. */
const deepEnough = (diameter: number, depth: number): boolean => (depth - diameter) / 2 >= depth * LEAST_BESIDE - 1e-9;

/** Whether a noggin of that length gets a cable way. */
export const isBored = (length: number, diameter: number, depth: number): boolean =>
  diameter >= LEAST_BORE && deepEnough(diameter, depth) && length >= LEAST_LENGTH * diameter - NOISE;

/** Cable ways wider than the timber allows, or too narrow for a cable: none is bored. */
export function unfit(diameter: number, { depth }: FrameTimber): readonly Finding[] {
  if (diameter > 0 && diameter < LEAST_BORE) return [tooNarrow(diameter)];
  if (diameter <= 0 || deepEnough(diameter, depth)) return [];
  const most = depth * (1 - 2 * LEAST_BESIDE);
  return [
    {
      severity: 'stop',
      rule: 'cable-way-too-wide',
      subject: { path: '/unit/elements/frame/cableWay' },
      value: diameter,
      limit: most,
      message: `Cable ways of ${tenth(diameter)} mm leave ${tenth((depth - diameter) / 2)} mm of the noggins at each side; a third of their depth, ${tenth(depth / 3)} mm, must stay.`,
      source: 'common practice, no source',
      remedy: `Bore ${Math.floor(most * 10 + 1e-6) / 10} mm at most, or use deeper timber. No noggin is bored.`,
    },
  ];
}

const tooNarrow = (diameter: number): Finding => ({
  severity: 'warn',
  rule: 'cable-way-too-narrow',
  subject: { path: '/unit/elements/frame/cableWay' },
  value: diameter,
  limit: LEAST_BORE,
  message: `Cable ways of ${tenth(diameter)} mm pass no cable; ${LEAST_BORE} mm is the least.`,
  source: 'common practice, no source',
  remedy: `Bore ${LEAST_BORE} mm or more, or none. No noggin is bored.`,
});

const circle = ([x, y]: Vec2, radius: number): Outline => ({
  start: [x - radius, y],
  segments: [
    { to: [x + radius, y], radius },
    { to: [x - radius, y], radius },
  ],
});

/** A noggin lying flat, with a hole up through its middle. */
export function boredNoggin(
  run: RodRun,
  { from, to, low, high }: Noggin,
  depth: number,
  diameter: number,
): Stuff<Board> & { readonly work: readonly string[] } {
  const { shape, place } = flatBoard(run, { from, to, back: -depth, front: 0, low, high });
  const middle = (to - from) / 2;
  return {
    shape: { ...shape, sawn: true, holes: [circle([middle, depth / 2], diameter / 2)] },
    place,
    work: [`hole ${tenth(diameter)}, ${tenth(middle)} from the left end, in the middle of its depth, upright`],
  };
}
