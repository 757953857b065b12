import type { Drawing, Stroke } from '../vocabulary/drawing';
import type { RodRun } from '../vocabulary/rod';
import { dimension, running } from './dimension';
import type { Drawable } from './drawable';
import { strokesOf } from './paint';
import { boundsOf, type Seen, seenFromFront } from './view';

const CHAIN = 10;
/** Height of the marks written on the timber, mm on paper (ISO 3098-1). */
const MARK_MM = 2.5;

/**
 * The frame of a run with the skin off: every member with its mark where that fits, stud centres as running dimensions from the
 * end the studs are set out from, clear gaps between studs below, heights to the undersides of the noggins
 * on the right, the whole height on the left.
 */
export function framingView(design: Drawable, run: RodRun): Drawing {
  const { job, rod } = design;
  const units = job.units;
  const members = seenFromFront(
    design.parts.filter((part) => part.run === run.id && part.from === 'framed'),
    run,
  );
  const framing = design.framing.find((one) => one.run === run.id);
  const from = framing?.from ?? 0;
  const to = framing?.to ?? run.length;
  const { min, max } = boundsOf([...members.flatMap((seen) => seen.outline), [from, 0], [to, rod.frameHeight]]);
  const studs = [...(framing?.studs ?? [])].sort((a, b) => a.from - b.from);
  const gaps = studs.slice(1).flatMap((stud, i) => {
    const left = studs[i]!.to;
    return stud.from > left ? [[left, stud.from] as const] : [];
  });
  const datum = rod.timber.datum === 'right' ? to : from;
  const above = { axis: 'horizontal', base: max[1], units, offsetMm: CHAIN } as const;
  const below = { axis: 'horizontal', base: min[1], units } as const;
  const upright = { axis: 'vertical', base: max[0], units } as const;
  const strokes: Stroke[] = [
    ...members.flatMap((seen) => strokesOf(seen, 'timber')),
    ...members.map(markOf),
    ...running(
      above,
      datum,
      studs.map((stud) => (stud.from + stud.to) / 2),
    ),
    ...gaps.map(([a, b]) => dimension({ ...below, offsetMm: -CHAIN }, a, b)),
    dimension({ ...below, offsetMm: -2 * CHAIN }, from, to, 'frame '),
    dimension({ ...upright, base: min[0], offsetMm: -CHAIN }, 0, rod.frameHeight),
    ...running(
      { ...upright, offsetMm: CHAIN },
      0,
      (framing?.noggins ?? []).map((noggin) => noggin.low),
    ),
  ];
  return { id: `${run.id}-framing`, title: `${run.name}: framing`, strokes, bounds: { min, max } };
}

/** The mark along the longer way of the member, in its middle. */
function markOf({ part, min, max }: Seen): Stroke {
  const [width, height] = [max[0] - min[0], max[1] - min[1]];
  const turned = height > width;
  const [x, y] = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
  return {
    kind: 'text',
    at: [x, y],
    text: part.mark,
    heightMm: MARK_MM,
    anchor: 'middle',
    turned,
    room: turned ? [height, width] : [width, height],
  };
}
