import type { Drawing } from '../vocabulary/drawing';
import type { Vec2 } from '../vocabulary/geometry';
import type { Box, Ink } from './sheet/ink';
import { type Layout, layOut } from './sheet/layout';
import { noteInk, noteLines, notesHeight } from './sheet/notes';
import { drawingSpace, type Fit, fits, fitsAt, roll, SHEETS, type SheetSize } from './sheet/sheets';
import { BLOCK_HEIGHT, BLOCK_WIDTH, type SheetInfo, titleBlock } from './sheet/title-block';
import { escapeXml, svgOf } from './sheet/write';

export type { SheetInfo } from './sheet/title-block';

/** Between the drawing and the frame or the title block, mm of paper. */
const MARGIN = 5;

/**
 * A drawing on a sheet, as SVG in millimetres of paper: the sheet (A4 to A1, landscape) and the scale (ISO 5455) are the first at
 * which it fits, frame and title block round it, its notes beside the block. What fits none comes on a length of roll. `least` is
 * the smallest sheet to be used.
 */
export function sheetSvg(drawing: Drawing, info: SheetInfo, least = SHEETS[0].name): string {
  const { sheet, scale, layout } = choose(drawing, least);
  const space = drawingSpace(sheet);
  const notes = notesOn(sheet, drawing, layout);
  const room = above(space, notes);
  const shift: Vec2 = [
    (room.min[0] + room.max[0] - layout.box.min[0] - layout.box.max[0]) / 2,
    (room.min[1] + room.max[1] - layout.box.min[1] - layout.box.max[1]) / 2,
  ];
  const onSheet = ([x, y]: Vec2): Vec2 => [x, sheet.height - y];
  const placed = ([x, y]: Vec2): Vec2 => onSheet([x + shift[0], y + shift[1]]);
  const [x0, y0] = space.min;
  const [x1, y1] = space.max;
  const frame: Ink = {
    kind: 'path',
    points: [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ],
    closed: true,
    fill: 'none',
    pen: 'extra-wide',
    style: 'continuous',
  };
  const furniture = [
    frame,
    ...titleBlock(drawing, info, { scale, sheet: sheet.name }, [x1, y0]),
    ...noteInk(notes, [x0 + MARGIN, y0 + MARGIN]),
  ];
  const title = escapeXml(`${info.job}: ${drawing.title}`);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${sheet.width}mm" height="${sheet.height}mm" viewBox="0 0 ${sheet.width} ${sheet.height}" font-family="Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif" fill="#111">`,
    `<title>${title}</title>`,
    `<rect width="${sheet.width}" height="${sheet.height}" fill="#fff"/>`,
    '<g stroke-linejoin="round" stroke-linecap="round">',
    ...layout.ink.map((ink) => svgOf(ink, placed)),
    '</g>',
    '<g>',
    ...furniture.map((ink) => svgOf(ink, onSheet)),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** Whether the smallest sheet holds a drawing. */
export const fitsSmallest = (drawing: Drawing): boolean =>
  choose(drawing, SHEETS[0].name).sheet.name === SHEETS[0].name;

/**
 * The first sheet and scale that hold the drawing with its dimensions where they can be read; else a roll at the smallest scale at
 * which they can; and where they can at none, the first sheet that holds it or a roll at the smallest scale.
 */
function choose(drawing: Drawing, least: string): Fit & { readonly layout: Layout } {
  const { min, max } = drawing.bounds;
  const all = drawing.scale === undefined ? fits(Math.max(max[0] - min[0], max[1] - min[1])) : fitsAt(drawing.scale);
  const smallest = SHEETS.findIndex((sheet) => sheet.name === least);
  const toTry = all.filter(({ sheet }) => SHEETS.indexOf(sheet) >= smallest);
  const layouts = new Map<number, Layout>();
  const layoutAt = (scale: number): Layout => {
    const layout = layouts.get(scale) ?? layOut(drawing, scale);
    layouts.set(scale, layout);
    return layout;
  };
  const holds = ({ sheet, scale }: Fit): boolean => {
    const layout = layoutAt(scale);
    const room = sizeOf(above(drawingSpace(sheet), notesOn(sheet, drawing, layout)));
    return sizeOf(layout.box).every((side, i) => side <= room[i]);
  };
  const isReadable = (scale: number): boolean => !layoutAt(scale).crowded;
  const scales = [...new Set(toTry.map((fit) => fit.scale))].sort((a, b) => b - a);
  const best = toTry.find((fit) => holds(fit) && isReadable(fit.scale));
  const readable = best ? undefined : scales.find(isReadable);
  const found = best ?? (readable === undefined ? toTry.find(holds) : undefined);
  if (found) return { ...found, layout: layoutAt(found.scale) };
  const scale = readable ?? scales[0];
  const layout = layoutAt(scale);
  const [width, height] = sizeOf(layout.box);
  const [roomWide, roomHigh] = sizeOf(above(drawingSpace(SHEETS[0]), notesOn(SHEETS[0], drawing, layout)));
  const sheet = roll(width + SHEETS[0].width - roomWide, height + SHEETS[0].height - roomHigh);
  return { sheet, scale, layout };
}

const sizeOf = ({ min, max }: Box): Vec2 => [max[0] - min[0], max[1] - min[1]];

/** The notes' lines on a sheet, to the left of its title block. */
const notesOn = (sheet: SheetSize, drawing: Drawing, layout: Layout): readonly string[] => {
  const { min, max } = drawingSpace(sheet);
  return noteLines(drawing.notes ?? [], layout.unwritten, max[0] - min[0] - BLOCK_WIDTH - 2 * MARGIN);
};

/** The room above the title block and the notes. */
const above = ({ min, max }: Box, notes: readonly string[]): Box => ({
  min: [min[0] + MARGIN, min[1] + Math.max(BLOCK_HEIGHT, MARGIN + notesHeight(notes)) + MARGIN],
  max: [max[0] - MARGIN, max[1] - MARGIN],
});
