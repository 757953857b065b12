import { figures } from '../base/figure';
import type { Design } from '../vocabulary/design';
import type { Drawing, Stroke } from '../vocabulary/drawing';
import type { Mark, RodRun } from '../vocabulary/rod';
import { running } from './dimension';
import { runOf } from './elevation';
import { type JoinMark, joinLines, joinsOn } from './joins';

/** What a rod is drawn from. */
type Settable = Pick<Design, 'job' | 'rod' | 'framing' | 'marks'>;

const LANES = ['front', 'skin', 'timber', 'behind'] as const satisfies readonly Mark['lane'][];

/** A lane's width on paper, mm, and the distance of two lanes: room for running figures between. */
const BAND_MM = 7;
const PITCH_MM = 27;
const NAME_MM = 2.5;
/** How far the lines of joins run past the uppermost lane on paper, mm: clear of its name. */
const JOIN_MM = 6;

/** The scale of a rod: 1:10 as long as that fits an A3 sheet, else 1:20. */
const scaleFor = (length: number): number => (length <= 3600 ? 10 : 20);

/**
 * The rod of a run as drawn on a setting-out board: a lane each for front, skin and timber (and behind, where something is marked
 * there), pillars and studs at their width, joins through all lanes, and running measurements from the datum, the left end of the frame line. Model mm along
 * x; the lanes' y is only for show.
 */
export function rodDrawing(design: Settable, runId: string): Drawing {
  const run = runOf(design, runId);
  const scale = scaleFor(run.length);
  const lanes = LANES.filter((lane) => lane !== 'behind' || marksOf(design, run, lane).length > 0);
  const joins = joinsOn(run, design.rod);
  const foot = -(lanes.length - 1) * PITCH_MM * scale;
  const head = (BAND_MM + (joins.length > 0 ? JOIN_MM : 0)) * scale;
  const tops = lanes.map((_, i) => -i * PITCH_MM * scale);
  const strokes = [
    ...lanes.flatMap((lane, i) => laneStrokes(design, run, lane, tops[i]!, scale)),
    // Not between the lanes, where the figures stand: many of them are of the joins themselves.
    ...tops.flatMap((y, i) => joinLines(joins, y, i === 0 ? head : y + BAND_MM * scale)),
    ...joins.map((join) => joinName(join, head + scale / 2)),
  ];
  const xs = [0, run.length, ...(design.marks[run.id] ?? []).map((mark) => mark.x)];
  return {
    id: `${run.id}-rod`,
    title: `${run.name}: rod`,
    scale,
    strokes,
    bounds: {
      min: [Math.min(...xs), foot],
      max: [Math.max(...xs), head + (joins.length > 0 ? 2 * NAME_MM * scale : 0)],
    },
  };
}

const joinName = ({ id, x }: JoinMark, y: number): Stroke => ({
  kind: 'text',
  at: [x, y],
  text: id,
  heightMm: NAME_MM,
  anchor: 'middle',
  turned: false,
});

const marksOf = (design: Settable, run: RodRun, lane: Mark['lane']): readonly Mark[] =>
  (design.marks[run.id] ?? []).filter((mark) => mark.lane === lane);

function laneStrokes(design: Settable, run: RodRun, lane: Mark['lane'], y: number, scale: number): readonly Stroke[] {
  const top = y + BAND_MM * scale;
  const marks = marksOf(design, run, lane).map((mark) => mark.x);
  const solids = solidsOf(design, run, lane);
  const stops = [...marks, ...(lane === 'front' ? solids.flat() : []), run.length];
  return [
    {
      kind: 'text',
      at: [scale, top + 1.5 * scale],
      text: lane,
      heightMm: NAME_MM,
      anchor: 'start',
      turned: false,
    },
    ...solids.map(([from, to]) => band(from, to, y, top, lane === 'timber' ? 'timber' : 'paper')),
    ...marks.map(
      (x): Stroke => ({
        kind: 'line',
        points: [
          [x, y],
          [x, top],
        ],
        pen: 'narrow',
        style: 'continuous',
      }),
    ),
    band(0, run.length, y, top, 'none'),
    ...running({ axis: 'horizontal', base: y, figure: figures(design.job), offsetMm: -3 }, 0, stops),
  ];
}

/** What stands in a lane with a width of its own: pillars on the front, studs in the timber. */
function solidsOf(design: Settable, run: RodRun, lane: Mark['lane']): readonly (readonly [number, number])[] {
  if (lane === 'front') return run.pillars.map(({ from, to }) => [from, to] as const);
  if (lane !== 'timber') return [];
  return (design.framing.find((one) => one.run === run.id)?.studs ?? []).map(({ from, to }) => [from, to] as const);
}

const band = (from: number, to: number, low: number, high: number, fill: 'paper' | 'timber' | 'none'): Stroke => ({
  kind: 'polygon',
  points: [
    [from, low],
    [to, low],
    [to, high],
    [from, high],
  ],
  fill,
  pen: 'wide',
});
