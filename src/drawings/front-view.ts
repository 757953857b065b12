import { SAME_LENGTH } from '../base/tolerance';
import type { Drawing, Stroke } from '../vocabulary/drawing';
import type { Part } from '../vocabulary/part';
import type { RodRun } from '../vocabulary/rod';
import { limitsOf, within } from './clip';
import { chain, dimension, running } from './dimension';
import type { Drawable } from './drawable';
import { strokesOf } from './paint';
import { boundsOf, type Seen, seenFromFront, withoutHidden } from './view';

/** Chains of dimensions stand this far apart on paper, mm: room for a figure above each line and one below. */
const CHAIN = 10;

/** Centre lines run this far past what they are the middle of, model mm (3 mm on paper at 1:10). */
const PAST = 30;

/** The finished front of a run: what is seen, centre lines of pillars, widths below, heights on the right. */
export function frontView(design: Drawable, run: RodRun): Drawing {
  const { job, rod } = design;
  const limits = limitsOf(run, rod.layers);
  const all = seenFromFront(partsOf(design, run), run).flatMap((seen) => within(seen, limits) ?? []);
  const shown = withoutHidden(all);
  const points = all.flatMap((seen) => seen.outline);
  const { min, max } = boundsOf([...points, [0, 0], [run.length, rod.height]]);
  const along = { axis: 'horizontal', base: Math.min(0, min[1]), units: job.units } as const;
  const bays = [...run.pillars, ...run.bays].flatMap(({ from, to }) => [from, to]);
  const strokes: Stroke[] = [
    ...shown.flatMap((seen) => strokesOf(seen, 'paper')),
    ...run.pillars.map((pillar) => centreLine(pillar.centre, rod.frameHeight)),
    ...chain({ ...along, offsetMm: -CHAIN }, bays),
    dimension({ ...along, offsetMm: -2 * CHAIN }, 0, run.length, 'frame '),
    ...overall(design, run, { ...along, offsetMm: -3 * CHAIN }),
    ...running({ axis: 'vertical', base: max[0], units: job.units, offsetMm: CHAIN }, 0, heights(shown, rod)),
  ];
  return { id: `${run.id}-front`, title: `${run.name}: front elevation`, strokes, bounds: { min, max } };
}

/** The run's own parts; for a return also what covers it from the run it comes off: the top, which lies above the frame. */
function partsOf({ parts, rod }: Drawable, run: RodRun): readonly Part[] {
  const comesOff = run.jobIndex === null ? (run.left.neighbour ?? run.right.neighbour) : undefined;
  const isOver = (part: Part): boolean =>
    part.run === comesOff && part.place.origin[2] >= rod.frameHeight - SAME_LENGTH;
  return parts.filter((part) => part.run === run.id || isOver(part));
}

const centreLine = (x: number, height: number): Stroke => ({
  kind: 'line',
  points: [
    [x, -PAST],
    [x, height],
  ],
  pen: 'narrow',
  style: 'chain',
});

/** The run's length over the layer to which the client's size was taken; over the frame, that is shown already. */
function overall({ job, rod }: Drawable, run: RodRun, scheme: Parameters<typeof dimension>[0]): readonly Stroke[] {
  const over = run.jobIndex === null ? undefined : job.unit.plan.runs[run.jobIndex]?.over;
  const layer = over === undefined ? undefined : rod.layers[over];
  if (!layer || Math.abs(layer.outer) < SAME_LENGTH) return [];
  const from = -run.left.grows * layer.outer;
  const to = run.length + run.right.grows * layer.outer;
  return [dimension(scheme, from, to, `over ${layer.name} `)];
}

/** Heights at which something that is seen when finished ends or begins: where no other piece of its kind runs past, so a panel frame counts as one. */
function heights(shown: readonly Seen[], { frameHeight, height }: Drawable['rod']): readonly number[] {
  const finished = shown.filter((seen) => seen.part.from === 'finished');
  const ends = finished.flatMap((seen) =>
    [seen.min[1], seen.max[1]].filter(
      (y) =>
        !finished.some(
          (other) =>
            other.part.kind === seen.part.kind && other.min[1] < y - SAME_LENGTH && other.max[1] > y + SAME_LENGTH,
        ),
    ),
  );
  return [...ends.filter((y) => y > SAME_LENGTH), frameHeight, height];
}
