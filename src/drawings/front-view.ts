import { figures } from '../base/figure';
import { SAME_LENGTH } from '../base/tolerance';
import type { Drawing, Stroke } from '../vocabulary/drawing';
import type { Part } from '../vocabulary/part';
import type { RodRun } from '../vocabulary/rod';
import { limitsOf, within } from './clip';
import { chain, dimension, running } from './dimension';
import type { Drawable } from './drawable';
import { bayChains, floorStops, overhangs } from './front-chains';
import { joinLines, joinNames, joinsOn } from './joins';
import { neighboursOf } from './neighbours';
import { openingNote, openingsIn } from './openings';
import { strokesOf } from './paint';
import { boundsOf, type Seen, seenFrom, withoutHidden } from './view';

/** Chains of dimensions stand this far apart on paper, mm: room for a figure above each line and one below. */
const CHAIN = 10;

/** Centre lines run this far past what they are the middle of, model mm (3 mm on paper at 1:10). */
const PAST = 30;

/**
 * The finished front of a run: what is seen, neighbours at inside corners in section, centre lines of pillars. Below, from the floor
 * down: what stands on the floor, pillars and bays, the frame line, the size asked for. Above: frames in the bays and what the top
 * runs past the frame line, then the joins. Heights on the right.
 */
export function frontView(design: Drawable, run: RodRun): Drawing {
  const { job, rod } = design;
  const figure = figures(job);
  const limits = limitsOf(run, rod.layers);
  const own = seenFrom('front', partsOf(design, run), run).flatMap((seen) => within(seen, limits) ?? []);
  const before = neighboursOf(design, run);
  const all = [...own, ...before.seen];
  const shown = withoutHidden(all);
  const ownShown = shown.filter((seen) => own.includes(seen));
  const cut = before.section.flatMap((stroke) => ('points' in stroke ? stroke.points : []));
  const points = [...all.flatMap((seen) => seen.outline), ...cut];
  const { min, max } = boundsOf([...points, [0, 0], [run.length, rod.height]]);
  const along = { axis: 'horizontal', base: Math.min(0, min[1]), figure } as const;
  const above = { axis: 'horizontal', base: max[1], figure, offsetMm: CHAIN } as const;
  const frames = bayChains(above, run, ownShown);
  const past = overhangs(
    above,
    run,
    own.filter((seen) => seen.min[1] >= rod.frameHeight - SAME_LENGTH),
  );
  const joins = joinsOn(run, rod);
  const rows = [
    chain({ ...along, offsetMm: 0 }, floorStops(run, ownShown, before.seen)),
    chain(
      { ...along, offsetMm: 0 },
      [...run.pillars, ...run.bays].flatMap(({ from, to }) => [from, to]),
    ),
    [
      dimension({ ...along, offsetMm: 0 }, 0, run.length, 'frame line '),
      ...rod.flaps
        .filter(({ left }) => left === run.id)
        .map(({ width }) => dimension({ ...along, offsetMm: 0 }, run.length, run.length + width, 'gap ')),
    ],
    overall(design, run, { ...along, offsetMm: 0 }),
  ];
  const strokes: Stroke[] = [
    ...shown.flatMap((seen) => strokesOf(seen, 'paper')),
    ...before.section,
    ...run.pillars.map((pillar) => centreLine(pillar.centre, rod.frameHeight)),
    ...joinLines(joins, min[1] - PAST, max[1] + PAST),
    ...inRows(rows),
    ...frames.strokes,
    ...past,
    ...joinNames({ ...above, offsetMm: 2 * CHAIN }, joins),
    ...running({ axis: 'vertical', base: max[0], figure, offsetMm: CHAIN }, 0, heights(ownShown, rod)),
  ];
  const notes = [
    ...(frames.alike ? ['What is dimensioned over the first bay is alike in all bays.'] : []),
    ...(past.length > 0 ? ['Above its ends: how far the front edge of the top runs past the frame line.'] : []),
    ...openingsIn(design, run).map((one) => openingNote(one, figure)),
    ...(joins.length > 0 ? [`${joins.map(({ id }) => id).join(', ')}: where the unit is taken apart.`] : []),
    ...before.runs.map((letter) => `Run ${letter} is cut just before this front and shown in section.`),
  ];
  return { id: `${run.id}-front`, title: `${run.name}: front elevation`, strokes, notes, bounds: { min, max } };
}

/** Rows of dimensions one below the other; an empty row, or one that says what the row before it said, takes no place. */
function inRows(rows: readonly (readonly Stroke[])[]): readonly Stroke[] {
  const said = (row: readonly Stroke[]): string =>
    row.map((one) => (one.kind === 'dimension' ? `${one.from[0].toFixed(2)} ${one.text}` : '')).join('; ');
  const kept = rows.filter((row, i) => row.length > 0 && (i === 0 || said(row) !== said(rows[i - 1]!)));
  return kept.flatMap((row, i) => row.map((stroke) => ({ ...stroke, offsetMm: -CHAIN * (i + 1) }) as Stroke));
}

/** The run's own parts; for a return also what covers it from the run it comes off: the top, which lies above the frame. */
export function partsOf({ parts, rod }: Drawable, run: RodRun): readonly Part[] {
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

/** The run's length over the layer to which its size was taken; over the frame, that is shown already. */
function overall({ job, rod }: Drawable, run: RodRun, scheme: Parameters<typeof dimension>[0]): readonly Stroke[] {
  const over = takenOver(job.unit.plan, run);
  const layer = over === undefined ? undefined : rod.layers[over];
  if (!layer || Math.abs(layer.outer) < SAME_LENGTH) return [];
  const beyond = (end: RodRun['left']): number =>
    end.kind === 'corner' ? end.grows * layer.outer : over === rod.top.layer ? end.topBeyond : 0;
  return [dimension(scheme, -beyond(run.left), run.length + beyond(run.right), `over ${layer.name} `)];
}

/** The layer to which the size of a run, or of a return, was taken. */
function takenOver({ runs, leftEnd, rightEnd }: Drawable['job']['unit']['plan'], run: RodRun): string | undefined {
  if (run.jobIndex !== null) return runs[run.jobIndex]?.over;
  const end = run.left.neighbour === undefined ? leftEnd : rightEnd;
  return end.kind === 'return' ? end.over : undefined;
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
