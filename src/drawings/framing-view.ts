import { figures } from '../base/figure';
import type { Drawing, Stroke } from '../vocabulary/drawing';
import type { Vec2 } from '../vocabulary/geometry';
import type { RodRun } from '../vocabulary/rod';
import { dimension, running, withBeyond } from './dimension';
import type { Drawable } from './drawable';
import { strokesOf } from './paint';
import { boundsOf, type Seen, seenFromFront } from './view';

const CHAIN = 10;
/** Height of the marks written on the timber, mm on paper, and the least that may be read (both of ISO 3098-1). */
const MARK_MM = 2.5;
const LEAST_MARK_MM = 1.8;

/**
 * The frame of a run with the skin off: every member with its mark, stud centres as running dimensions from the datum of the rod,
 * clear gaps between studs below, then the plates and the frame line one over the other; heights to the undersides of the noggins
 * on the right, the whole height on the left.
 */
export function framingView(design: Drawable, run: RodRun): Drawing {
  const { job, rod } = design;
  const figure = figures(job);
  const members = seenFromFront(
    design.parts.filter((part) => part.run === run.id && part.from === 'framed'),
    run,
  );
  const framing = design.framing.find((one) => one.run === run.id);
  const plates = [framing?.from ?? 0, framing?.to ?? run.length] as const;
  const frameLine = [0, run.length] as const;
  const { min, max } = boundsOf([
    ...members.flatMap((seen) => seen.outline),
    ...[...plates, ...frameLine].map((x): Vec2 => [x, rod.frameHeight]),
    [0, 0],
  ]);
  const studs = [...(framing?.studs ?? [])].sort((a, b) => a.from - b.from);
  const noggins = framing?.noggins ?? [];
  const gaps = studs.slice(1).flatMap((stud, i) => {
    const left = studs[i]!.to;
    return stud.from > left ? [[left, stud.from] as const] : [];
  });
  const centres = studs.map((stud) => (stud.from + stud.to) / 2);
  const lows = noggins.map((noggin) => noggin.low);
  const above = { axis: 'horizontal', base: max[1], figure, offsetMm: CHAIN } as const;
  const below = { axis: 'horizontal', base: min[1], figure } as const;
  const upright = { axis: 'vertical', base: max[0], figure } as const;
  const strokes: Stroke[] = [
    ...members.flatMap((seen) => strokesOf(seen, 'timber')),
    ...members.map((seen) => markOf(seen, figure)),
    ...running(above, 0, centres, '0 frame line'),
    ...gaps.map(([a, b]) => dimension({ ...below, offsetMm: -CHAIN }, a, b)),
    ...withBeyond({ ...below, offsetMm: -2 * CHAIN }, plates, frameLine, 'plates '),
    ...withBeyond({ ...below, offsetMm: -3 * CHAIN }, frameLine, plates, 'frame line '),
    dimension({ ...upright, base: min[0], offsetMm: -CHAIN }, 0, rod.frameHeight),
    ...running({ ...upright, offsetMm: CHAIN }, 0, lows),
  ];
  const notes = [
    ...(centres.length > 0 ? ['Stud centres are from the left end of the frame line, as on the rod.'] : []),
    ...(lows.length > 0 ? ['Noggin heights are to their undersides.'] : []),
  ];
  return { id: `${run.id}-framing`, title: `${run.name}: framing`, strokes, notes, bounds: { min, max } };
}

/** The mark along the longer way of the member, in its middle; where it can't be lettered there, the member's place and its mark. */
function markOf({ part, min, max }: Seen, figure: (mm: number) => string): Stroke {
  const [width, height] = [max[0] - min[0], max[1] - min[1]];
  const turned = height > width;
  const [x, y] = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
  return {
    kind: 'text',
    at: [x, y],
    text: part.mark,
    heightMm: MARK_MM,
    leastMm: LEAST_MARK_MM,
    anchor: 'middle',
    turned,
    room: turned ? [height, width] : [width, height],
    otherwise: `${part.mark} at ${figure(min[0])} to ${figure(max[0])}, ${figure(min[1])} up`,
  };
}
