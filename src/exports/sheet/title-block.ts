import type { Vec2 } from '../../vocabulary/geometry';
import { type Ink, line } from './ink';
import { CAPTION_MM, NOTE_MM, TITLE_MM } from './lettering';

/** What the title block says. Fields left out are drawn empty, to be written in by hand. */
export interface SheetInfo {
  /** The job's name: the title. */
  readonly job: string;
  /** The unit's name. */
  readonly unit: string;
  readonly units: 'mm' | 'inch';
  readonly client?: string;
  /** Legal owner of the drawing: the workshop. */
  readonly owner?: string;
  readonly creator?: string;
  readonly approvedBy?: string;
  /** As it is to be printed. */
  readonly date?: string;
  /** Identification number; the drawing's own id where there is none. */
  readonly number?: string;
  readonly sheetNumber?: string;
}

/** At most 180 wide, in the lower right corner (ISO 5457, ISO 7200; from memory). */
export const BLOCK_WIDTH = 180;
const ROW = 10;
export const BLOCK_HEIGHT = 4 * ROW;

interface Cell {
  readonly caption: string;
  readonly text: string;
  readonly width: number;
  readonly height?: number;
}

/**
 * The title block with the mandatory fields of ISO 7200:2004 (owner, number, date of issue, sheet, title, approval, creator, kind of
 * document), scale with the sheet it holds for, and units. `corner` is the lower right corner of the frame, paper mm.
 */
export function titleBlock(
  drawing: { id: string; title: string },
  info: SheetInfo,
  { scale, sheet }: { scale: number; sheet: string },
  corner: Vec2,
): readonly Ink[] {
  const units = info.units === 'inch' ? 'inches' : 'millimetres';
  const rows: readonly (readonly Cell[])[] = [
    [
      { caption: 'Owner', text: info.owner ?? '', width: 60 },
      { caption: 'Client', text: info.client ?? '', width: 60 },
      { caption: 'Dimensions in', text: units, width: 30 },
      { caption: 'Scale', text: `1:${scale} on ${sheet}`, width: 30 },
    ],
    [
      { caption: 'Created by', text: info.creator ?? '', width: 60 },
      { caption: 'Title', text: info.job, width: 120, height: TITLE_MM },
    ],
    [
      { caption: 'Approved by', text: info.approvedBy ?? '', width: 60 },
      { caption: 'Unit', text: info.unit, width: 60 },
      { caption: 'Type of document', text: drawing.title, width: 60 },
    ],
    [
      { caption: 'Date of issue', text: info.date ?? '', width: 60 },
      { caption: 'Identification number', text: info.number ?? drawing.id, width: 90 },
      { caption: 'Sheet', text: info.sheetNumber ?? '1', width: 30 },
    ],
  ];
  const left = corner[0] - BLOCK_WIDTH;
  const top = corner[1] + BLOCK_HEIGHT;
  const ink: Ink[] = [
    line(
      [
        [left, corner[1]],
        [left, top],
        [corner[0], top],
      ],
      'wide',
    ),
  ];
  rows.forEach((row, i) => {
    const upper = top - i * ROW;
    if (i > 0)
      ink.push(
        line([
          [left, upper],
          [corner[0], upper],
        ]),
      );
    let x = left;
    for (const cell of row) {
      if (x > left)
        ink.push(
          line([
            [x, upper],
            [x, upper - ROW],
          ]),
        );
      ink.push(letters(cell.caption, CAPTION_MM, [x + 1.2, upper - 1 - CAPTION_MM], cell.width));
      if (cell.text !== '')
        ink.push(letters(cell.text, cell.height ?? NOTE_MM, [x + 1.2, upper - ROW + 1.6], cell.width));
      x += cell.width;
    }
  });
  return ink;
}

const letters = (text: string, height: number, at: Vec2, width: number): Ink => ({
  kind: 'text',
  at,
  text,
  height,
  anchor: 'start',
  turned: false,
  atMost: width - 2.4,
});
