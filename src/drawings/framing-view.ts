import { figures } from '../base/figure';
import type { Plate } from '../vocabulary/backing';
import type { Drawing, Stroke } from '../vocabulary/drawing';
import type { Vec2 } from '../vocabulary/geometry';
import type { RodRun } from '../vocabulary/rod';
import { chain, dimension, running, type Scheme, withBeyond } from './dimension';
import type { Drawable } from './drawable';
import { joinLines, joinNames, joinsOn } from './joins';
import { openingLines, openingNote, openingsIn } from './openings';
import { strokesOf } from './paint';
import { boundsOf, isBehindFrame, type Seen, seenFrom } from './view';

const CHAIN = 10;
/** Height of the marks written on the timber, mm on paper, and the least that may be read (both of ISO 3098-1). */
const MARK_MM = 2.5;
const LEAST_MARK_MM = 1.8;
/** Joins run this far past the frame, model mm. */
const PAST = 30;

type Span = readonly [number, number];

/**
 * The front frame of a run with the skin off, what stands behind it left out: every member with its mark, stud centres and joins as running dimensions from the datum of
 * the rod, * clear gaps between studs below, then the plates and the frame line one over the other; heights to the undersides of the noggins
 * on the right, the whole height on the left.
 */
export function framingView(design: Drawable, run: RodRun): Drawing {
  const { job, rod } = design;
  const figure = figures(job);
  const members = seenFrom(
    'front',
    design.parts.filter((part) => part.run === run.id && part.from === 'framed' && !isBehindFrame(part, run, rod)),
    run,
  );
  const joins = joinsOn(run, rod);
  const openings = openingsIn(design, run);
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
    ...members.map((seen) => markOf(seen, placeOf(seen, figure))),
    ...openingLines(openings),
    ...joinLines(joins, min[1] - PAST, max[1] + PAST),
    ...running(above, 0, centres, joins.some(({ x }) => x === 0) ? undefined : '0 frame line'),
    ...joinNames(above, joins),
    ...gaps.map(([a, b]) => dimension({ ...below, offsetMm: -CHAIN }, a, b)),
    ...platesRow({ ...below, offsetMm: -2 * CHAIN }, framing?.plates ?? [], plates, frameLine),
    ...withBeyond({ ...below, offsetMm: -3 * CHAIN }, frameLine, plates, 'frame line '),
    ...chain({ ...upright, base: min[0], offsetMm: -CHAIN }, [0, rod.frameLow, rod.frameHeight]),
    ...running({ ...upright, offsetMm: CHAIN }, 0, lows),
  ];
  const notes = [
    ...(centres.length > 0 ? ['Stud centres are from the left end of the frame line, as on the rod.'] : []),
    ...(lows.length > 0 ? ['Noggin heights are to their undersides.'] : []),
    ...openings.map((one) => openingNote(one, figure)),
  ];
  return { id: `${run.id}-framing`, title: `${run.name}: framing`, strokes, notes, bounds: { min, max } };
}

/** The plates, one length for each section, and in the same row what the frame line has beyond them. */
function platesRow(scheme: Scheme, lengths: readonly Plate[], whole: Span, frameLine: Span): readonly Stroke[] {
  const [first, ...others] = withBeyond(scheme, whole, frameLine, 'plates ');
  if (lengths.length < 2 || !first) return [...(first ? [first] : []), ...others];
  return [...lengths.map(({ from, to }) => dimension(scheme, from, to, 'plates ')), ...others];
}

/** The mark along the longer way of the member, in its middle; where it can't be lettered there, the sheet's notes say `otherwise`, if anything. */
export function markOf({ part, min, max }: Seen, otherwise: string): Stroke {
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
    otherwise,
  };
}

const placeOf = ({ part, min, max }: Seen, figure: (mm: number) => string): string =>
  `${part.mark} at ${figure(min[0])} to ${figure(max[0])}, ${figure(min[1])} up`;
