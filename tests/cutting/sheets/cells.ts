import type { Cell } from '../../../src/cutting/sheets/cell';

export type Way = 'along' | 'across';

export const pieceCell = (piece: number, length: number, width: number, turned = false): Cell => ({
  kind: 'piece',
  piece,
  length,
  width,
  turned,
});

export const leftCell = (length: number, width: number): Cell => ({ kind: 'left', length, width });

export const cutCell = (way: Way, length: number, width: number, ...parts: Cell[]): Cell => ({
  kind: 'cut',
  way,
  length,
  width,
  parts,
});
