import { figures } from '../base/figure';
import { SAME_LENGTH } from '../base/tolerance';
import type { Drawing, Stroke } from '../vocabulary/drawing';
import type { RodRun } from '../vocabulary/rod';
import { chain, dimension, running } from './dimension';
import type { Drawable } from './drawable';
import { markOf } from './framing-view';
import { partsOf } from './front-view';
import { joinLines, joinNames, joinsOn } from './joins';
import { strokesOf } from './paint';
import { boundsOf, isBehindFrame, type Seen, seenFrom, withoutHidden } from './view';

const CHAIN = 10;
/** Joins run this far past what is seen, model mm. */
const PAST = 30;

/**
 * A run from behind, as seen by those who serve; neighbours are left out. Model mm: x to the right from the right-hand end of the frame
 * line (which is at the left here), y up. Below: cross frames and the clear widths between them, then the frame line; above: joins; on
 * the right: heights; on the left: the clear height of the carcass.
 */
export function behindView(design: Drawable, run: RodRun): Drawing {
  const { job, rod } = design;
  const figure = figures(job);
  const turned = (x: number): number => run.length - x;
  const shown = withoutHidden(seenFrom('behind', partsOf(design, run), run));
  const { min, max } = boundsOf([...shown.flatMap((seen) => seen.outline), [0, 0], [run.length, rod.height]]);
  const joins = joinsOn(run, rod);
  const fitted = shown.filter(({ part }) => isBehindFrame(part, run, rod) || part.place.origin[2] >= rod.frameHeight);
  const frames = run.crossLines.flatMap(({ from, to }) => [turned(to), turned(from)]);
  const below = { axis: 'horizontal', base: Math.min(0, min[1]), figure } as const;
  const { low, high } = rod.carcass ?? { low: 0, high: rod.frameHeight };
  const strokes: Stroke[] = [
    ...shown.flatMap((seen) => strokesOf(seen, seen.part.from === 'framed' ? 'timber' : 'paper')),
    ...fitted
      .filter((seen) => isClear(seen, shown.slice(shown.indexOf(seen) + 1)))
      .map((seen) => markOf(seen, seen.part.from === 'framed' ? '' : `${seen.part.mark} (${seen.part.where})`)),
    ...joinLines(
      joins.map(({ id, x }) => ({ id, x: turned(x) })),
      min[1] - PAST,
      max[1] + PAST,
    ),
    ...chain({ ...below, offsetMm: -CHAIN }, frames),
    dimension({ ...below, offsetMm: -(frames.length > 0 ? 2 : 1) * CHAIN }, 0, run.length, 'frame line '),
    ...joinNames({ axis: 'horizontal', base: max[1], figure, offsetMm: CHAIN }, joins, turned),
    ...chain({ axis: 'vertical', base: min[0], figure, offsetMm: -CHAIN }, [0, low, high]),
    ...running({ axis: 'vertical', base: max[0], figure, offsetMm: CHAIN }, 0, [
      ...heights(fitted),
      rod.frameHeight,
      rod.height,
    ]),
  ];
  const { bays } = run;
  const notes = [
    'Seen from behind: the left end of the frame line is at the right, and joins are measured from there. Neighbouring runs are left out.',
    ...run.backBays.flatMap(({ index, wish, bay }) =>
      wish && wish.purpose !== 'open'
        ? [
            `From the right, space ${index + 1}${bay === undefined ? '' : `, behind bay ${bays[bay]!.index + 1}`}: ${wish.purpose}.`,
          ]
        : [],
    ),
  ];
  return { id: `${run.id}-behind`, title: `${run.name}: from behind`, strokes, notes, bounds: { min, max } };
}

/** Where finished things end: what lies flat at its upper face, what stands at its lower and upper edge. */
const heights = (fitted: readonly Seen[]): readonly number[] =>
  fitted
    .filter(({ part }) => part.from === 'finished')
    .flatMap(({ part, min, max }) =>
      max[1] - min[1] < part.size.thickness + SAME_LENGTH ? [max[1]] : [min[1], max[1]],
    );

/** Whether nothing nearer lies over the middle of a part, where its mark is lettered along its longer way. */
function isClear({ min, max }: Seen, nearer: readonly Seen[]): boolean {
  const [width, height] = [max[0] - min[0], max[1] - min[1]];
  const spots = [1 / 4, 1 / 2, 3 / 4].map((share) =>
    width > height ? [min[0] + share * width, min[1] + height / 2] : [min[0] + width / 2, min[1] + share * height],
  );
  const over = (one: Seen): boolean =>
    spots.some(([x, y]) => one.min[0] < x! && one.max[0] > x! && one.min[1] < y! && one.max[1] > y!);
  return !nearer.some(over);
}
