import type { Drawing, Stroke } from '../../vocabulary/drawing';
import type { Vec2 } from '../../vocabulary/geometry';
import type { Dimension } from './along';
import { drawDimensions } from './dimensions';
import type { Box, Ink, Lettering } from './ink';
import { around, boxOf, textWidth } from './lettering';

/** A drawing at a scale: what to ink, in order, and the box it fills. Paper mm; the model's origin stays the origin. */
export interface Layout {
  readonly ink: readonly Ink[];
  /** The dimensions' figures, which are in `ink` too. */
  readonly figures: readonly Lettering[];
  readonly box: Box;
  /** Some figure had to go far from its span: hard to read, a larger scale would be better. */
  readonly crowded: boolean;
  /** What writing that fits nowhere would have said, in the order of the strokes. */
  readonly unwritten: readonly string[];
}

/** Lays a drawing out at a scale: `scale` is the number that the model is divided by (20 for 1:20). */
export function layOut(drawing: Drawing, scale: number): Layout {
  const toPaper = ([x, y]: Vec2): Vec2 => [x / scale, y / scale];
  const unwritten: string[] = [];
  const things = drawing.strokes.flatMap((stroke) => {
    const inked = inkOf(stroke, scale, toPaper);
    const instead = stroke.kind === 'text' && inked.length === 0 ? (stroke.otherwise ?? stroke.text) : '';
    if (instead !== '') unwritten.push(instead);
    return inked;
  });
  const { ink: lines, figures, crowded } = drawDimensions(drawing.strokes.filter(isDimension), scale);
  const ink = [...things, ...lines, ...figures];
  const bounds = [toPaper(drawing.bounds.min), toPaper(drawing.bounds.max)];
  return { ink, figures, crowded, unwritten, box: around([...bounds, ...ink.flatMap(extentOf)])! };
}

const isDimension = (stroke: Stroke): stroke is Dimension => stroke.kind === 'dimension';

function inkOf(stroke: Stroke, scale: number, toPaper: (p: Vec2) => Vec2): readonly Ink[] {
  switch (stroke.kind) {
    case 'polygon':
      return [{ ...stroke, kind: 'path', points: stroke.points.map(toPaper), closed: true, style: 'continuous' }];
    case 'line':
      return [{ ...stroke, kind: 'path', points: stroke.points.map(toPaper), closed: false, fill: 'none' }];
    case 'text': {
      const { at, text, anchor, turned, room } = stroke;
      const height = heightOf(stroke, scale);
      if (height === undefined) return [];
      const [x, y] = toPaper(at);
      const low = room ? height / 2 : 0;
      const letters: Lettering = {
        kind: 'text',
        at: turned ? [x + low, y] : [x, y - low],
        text,
        height,
        anchor,
        turned,
      };
      return height < stroke.heightMm ? [groundOf(letters), letters] : [letters];
    }
    case 'dimension':
      return [];
  }
}

/** The height of a text in its room: as it should be, or the least; none when it fits at neither. */
function heightOf(stroke: Extract<Stroke, { kind: 'text' }>, scale: number): number | undefined {
  const { text, heightMm, leastMm, room } = stroke;
  if (!room) return heightMm;
  const fits = (height: number): boolean => textWidth(text, height) <= room[0] / scale && height <= room[1] / scale;
  return [heightMm, leastMm ?? heightMm].find(fits);
}

/** Round writing that fills its timber the outline is interrupted, mm of paper. */
const ROUND = 0.3;

/** What small writing on timber is written on: the lines of the timber's outline would run through it. */
function groundOf(letters: Lettering): Ink {
  const { min, max } = boxOf(letters);
  const [x0, y0, x1, y1] = [min[0] - ROUND, min[1] - ROUND, max[0] + ROUND, max[1] + ROUND];
  const points: readonly Vec2[] = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
  return { kind: 'path', points, closed: true, fill: 'timber', pen: 'none', style: 'continuous' };
}

function extentOf(ink: Ink): readonly Vec2[] {
  if (ink.kind === 'path') return ink.points;
  if (ink.kind === 'circle') {
    const [x, y] = ink.at;
    return [
      [x - ink.radius, y - ink.radius],
      [x + ink.radius, y + ink.radius],
    ];
  }
  const box = boxOf(ink);
  return [box.min, box.max];
}
